import type { Cell, WriteSheet } from 'hucre/xlsx';
import { writeXlsx } from 'hucre/xlsx';
import { scriptValue } from './host/cellValue.ts';
import type { CellPosition, Zone } from './host/engine.ts';
import type { Workbook } from './host/workbook.ts';
import { fileCharts, straightened } from './workbookFileCharts.ts';
import { fileFormatRules, fileValidations } from './workbookFileRules.ts';
import { absoluteReference, cellStyle, defaultFont, pointsPerPixel, rgb } from './workbookFileStyle.ts';
import { rewriteZip } from './zipArchive.ts';

const noteName = 'About this file';
const note = [
  'This file is a copy of a workbook with its numbers as they stood when it was written.',
  'Computed cells hold values, not formulas: changing an input here recalculates nothing.',
];

/** The workbook as an .xlsx file: values, looks, names, validation rules and charts, behind a sheet that says what it is. */
export async function workbookFile(workbook: Workbook): Promise<Uint8Array> {
  const { getters } = workbook.model;
  const namedRanges = getters.getNamedRanges().map(({ name, range }) => ({
    name,
    range: absoluteReference(workbook, range),
  }));
  const noteSheet = { name: noteName, columns: [{ width: 90 }], rows: note.map((line) => [line]) };
  const sheets = getters.getSheetIds().map((sheetId) => fileSheet(workbook, sheetId));
  const file = await writeXlsx({
    namedRanges,
    sheets: [noteSheet, ...sheets],
    defaultFont,
  });
  return rewriteZip(file, (name, text) =>
    /^xl\/charts\/chart\d+\.xml$/.test(name) ? straightened(text()) : undefined,
  );
}

function fileSheet(workbook: Workbook, sheetId: string): WriteSheet {
  const { getters } = workbook.model;
  const zone = usedZone(workbook, sheetId);
  const cells = new Map<string, Partial<Cell>>();
  for (let row = 0; row <= zone.bottom; row++) {
    for (let col = 0; col <= zone.right; col++) {
      const cell = fileCell(workbook, { sheetId, col, row });
      if (cell) cells.set(`${row},${col}`, cell);
    }
  }
  const { xSplit, ySplit } = getters.getPaneDivisions(sheetId);
  const colour = getters.getSheet(sheetId).color;
  const charts = fileCharts(workbook, sheetId);
  // A chart is as wide as the columns below it, which may hold nothing
  const columns = Math.max(zone.right + 1, ...charts.map(({ anchor }) => anchor.to?.col ?? 0));
  return {
    name: getters.getSheetName(sheetId),
    cells,
    rows: [],
    columns: Array.from({ length: columns }, (_, col) => ({
      width: characters(getters.getColSize(sheetId, col)),
      hidden: getters.isColHidden(sheetId, col),
    })),
    rowDefs: rowDefinitions(workbook, sheetId, zone),
    merges: getters.getMerges(sheetId).map(({ top, bottom, left, right }) => ({
      startRow: top,
      endRow: bottom,
      startCol: left,
      endCol: right,
    })),
    freezePane: { rows: ySplit, columns: xSplit },
    // Printed one page wide, its headers on every page
    pageSetup: {
      orientation: 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      ...(ySplit > 0 ? { printTitlesRow: `$1:$${ySplit}` } : {}),
    },
    hidden: !getters.isSheetVisible(sheetId),
    view: {
      showGridLines: getters.getGridLinesVisibility(sheetId),
      ...(colour ? { tabColor: { rgb: rgb(colour) } } : {}),
    },
    dataValidations: fileValidations(workbook, sheetId),
    conditionalRules: fileFormatRules(workbook, sheetId),
    charts,
  };
}

const truth = '"TRUE";"TRUE";"FALSE"';

/** A cell's value and looks; undefined when it has neither. An error keeps its message as a comment. */
function fileCell(workbook: Workbook, position: CellPosition): Partial<Cell> | undefined {
  const { getters } = workbook.model;
  const evaluated = workbook.evaluated(position);
  const style = cellStyle(
    getters.getCell(position)?.style ?? {},
    evaluated.format,
    getters.getCellBorder(position),
  );
  const hasStyle = Object.keys(style).length > 0;
  if (evaluated.value === null || evaluated.value === '')
    return hasStyle ? { value: null, style } : undefined;
  const { value, type } = evaluated;
  if (type === 'error') {
    const text = String(scriptValue(workbook.engine, evaluated));
    const comment = evaluated.message ? { comment: { text: String(evaluated.message) } } : {};
    return { value: text, type: 'string', style, ...comment };
  }
  // Without a format of their own LibreOffice shows some truth values as 1 and 0.
  if (typeof value === 'boolean') return { value, type: 'boolean', style: { ...style, numFmt: truth } };
  return { value, type: typeof value as 'string' | 'number', style };
}

/** From the first cell to the last one that holds something or looks like something. */
function usedZone(workbook: Workbook, sheetId: string): Zone {
  workbook.flush();
  const { getters } = workbook.model;
  const positions = [
    ...getters.getEvaluatedCellsPositions(sheetId),
    ...getters.getCells(sheetId).map((cell) => getters.getCellPosition(cell.id)),
  ];
  const last = (of: (position: CellPosition) => number) =>
    positions.reduce((furthest, position) => Math.max(furthest, of(position)), 0);
  return { left: 0, top: 0, right: last(({ col }) => col), bottom: last(({ row }) => row) };
}

function rowDefinitions(workbook: Workbook, sheetId: string, zone: Zone): NonNullable<WriteSheet['rowDefs']> {
  const { getters } = workbook.model;
  const rows: NonNullable<WriteSheet['rowDefs']> = new Map();
  for (let row = 0; row <= zone.bottom; row++) {
    const height = getters.getUserRowSize(sheetId, row);
    const hidden = getters.isRowHidden(sheetId, row);
    if (height === undefined && !hidden) continue;
    rows.set(row, { hidden, ...(height === undefined ? {} : { height: height * pointsPerPixel }) });
  }
  return rows;
}

/** Width of a column in characters of the default font, from pixels: 7 a character and 5 of padding. */
function characters(pixels: number): number {
  return Math.max(0, (pixels - 5) / 7);
}
