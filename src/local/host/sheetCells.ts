import { parseA1, splitSheetName } from './a1.ts';
import type { Zone } from './engine.ts';
import type { GoogleRange, GoogleSheet } from './google.ts';
import { clearRange } from './rangeClearing.ts';
import { createRangeList } from './rangeList.ts';
import { writeCell } from './rangeValues.ts';
import type { SheetContext } from './sheet.ts';
import type { Workbook } from './workbook.ts';

/** Ranges of a sheet, and what concerns all its cells. */
export function sheetCells({ workbook, sheetId, sheet }: SheetContext): Partial<GoogleSheet> {
  const { getters } = workbook.model;
  const rows = () => getters.getNumberRows(sheetId);
  const columns = () => getters.getNumberCols(sheetId);
  const whole = (): Zone => ({ left: 0, top: 0, right: columns() - 1, bottom: rows() - 1 });

  return {
    getRange(
      first: string | number,
      column?: number,
      numRows: number = 1,
      numColumns: number = 1,
    ): GoogleRange {
      if (typeof first === 'string') return rangeOfReference(workbook, sheetId, first);
      if (column === undefined) throw new Error('Sheet.getRange: a row needs a column');
      const left = column - 1;
      const top = first - 1;
      const zone = { left, top, right: left + numColumns - 1, bottom: top + numRows - 1 };
      return workbook.range(sheetId, zone);
    },

    getRangeList(references: string[]) {
      if (references.length === 0) throw new Error('Sheet.getRangeList: there must be at least one range');
      return createRangeList(
        workbook,
        sheetId,
        references.map((reference) => zoneOfReference(workbook, sheetId, reference)),
      );
    },

    getDataRange() {
      const { row, column } = lastCell(workbook, sheetId);
      const zone = { left: 0, top: 0, right: Math.max(column, 1) - 1, bottom: Math.max(row, 1) - 1 };
      return workbook.range(sheetId, zone);
    },

    getLastRow: () => lastCell(workbook, sheetId).row,
    getLastColumn: () => lastCell(workbook, sheetId).column,

    appendRow(values: unknown[]) {
      const { row } = lastCell(workbook, sheetId);
      if (row === rows()) {
        const sheetName = getters.getSheetName(sheetId);
        const last = row - 1;
        workbook.dispatch('ADD_COLUMNS_ROWS', {
          sheetId,
          sheetName,
          dimension: 'ROW',
          base: last,
          quantity: 1,
          position: 'after',
        });
      }
      for (const [col, value] of values.entries()) writeCell(workbook, { sheetId, col, row }, value);
      return sheet();
    },

    clear() {
      clearRange({ workbook, sheetId, zone: whole() }, { contentsOnly: true, formatOnly: true });
      return sheet();
    },
    clearContents() {
      clearRange({ workbook, sheetId, zone: whole() }, { contentsOnly: true });
      return sheet();
    },
    clearFormats() {
      clearRange({ workbook, sheetId, zone: whole() }, { formatOnly: true });
      return sheet();
    },
  };
}

/** @throws Error when the reference is neither A1 notation nor a named range of the sheet */
export const rangeOfReference = (workbook: Workbook, sheetId: string, text: string): GoogleRange =>
  workbook.range(sheetId, zoneOfReference(workbook, sheetId, text));

function zoneOfReference(workbook: Workbook, sheetId: string, text: string): Zone {
  const { getters } = workbook.model;
  const { sheetName, reference } = splitSheetName(text);
  const isHere = sheetName === undefined || sheetName === getters.getSheetName(sheetId);
  const zone = isHere
    ? parseA1(reference, getters.getNumberRows(sheetId), getters.getNumberCols(sheetId))
    : undefined;
  if (zone) return zone;
  const named = getters.getNamedRange(text)?.range;
  if (named?.sheetId === sheetId) return named.zone;
  throw new Error(`Range not found: ${text}`);
}

/** Number of the last row and of the last column that hold something, 0 in an empty sheet. */
function lastCell(workbook: Workbook, sheetId: string): { row: number; column: number } {
  workbook.flush();
  const { getters } = workbook.model;
  let row = 0;
  let column = 0;
  for (const position of getters.getEvaluatedCellsPositions(sheetId)) {
    const { value } = getters.getEvaluatedCell(position);
    const isBlank = value === null || value === '';
    if (isBlank && !getters.getCell(position)?.isFormula) continue;
    row = Math.max(row, position.row + 1);
    column = Math.max(column, position.col + 1);
  }
  return { row, column };
}
