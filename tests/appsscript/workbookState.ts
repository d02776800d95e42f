import { parseA1, positionsOf } from '../../src/local/host/a1.ts';
import type { Zone } from '../../src/local/host/engine.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';

type Json = Record<string, unknown>;

interface Sheet extends Json {
  readonly id: string;
  readonly name: string;
  readonly cells: Json;
}

interface ValidationRule extends Json {
  readonly ranges: readonly string[];
}

/** What is offered where, however the host divides its cells among ranges and rules. */
function rulesByCells(rules: readonly ValidationRule[]): string[] {
  const cells = rules.flatMap(({ ranges, id, ...rule }) =>
    ranges.flatMap((range) => {
      const zone = parseA1(range, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY) as Zone;
      return [...positionsOf(zone)].map(({ col, row }) => `${row} ${col} ${JSON.stringify(rule)}`);
    }),
  );
  return cells.sort();
}

/**
 * All that a workbook holds and looks like, without the numbers by which the host happens to call its parts: two
 * workbooks laid out on different ways are the same when this is.
 */
export function workbookState(host: LocalHost): Json {
  const { model, properties, charts, protections } = snapshotOf(host.workbook);
  const { sheets, styles, formats, borders, namedRanges } = model as unknown as {
    sheets: Sheet[];
    styles: Json;
    formats: Json;
    borders: Json;
    namedRanges: Json;
  };
  const nameOf = new Map(sheets.map(({ id, name }) => [id, name]));
  const named = (value: unknown) =>
    JSON.parse(
      JSON.stringify(value, (key, inner) => {
        if (key === 'sheetId' || key === '_sheetId') return nameOf.get(inner) ?? inner;
        return key === 'id' || key === 'chartId' ? undefined : inner;
      }),
    );
  const meant = (uses: unknown, meanings: Json) =>
    Object.entries((uses ?? {}) as Json)
      .map(([zone, id]) => `${zone} ${JSON.stringify(meanings[String(id)])}`)
      .sort();
  const sorted = (list: unknown) => (named(list) as unknown[]).map((each) => JSON.stringify(each)).sort();
  return {
    sheets: sheets.map((sheet) => ({
      ...named(sheet),
      figures: (sheet.figures as unknown[]).length,
      styles: meant(sheet.styles, styles),
      formats: meant(sheet.formats, formats),
      borders: meant(sheet.borders, borders),
      dataValidationRules: rulesByCells(sheet.dataValidationRules as ValidationRule[]),
      conditionalFormats: (sheet.conditionalFormats as { rule: unknown; ranges: unknown }[]).map(
        ({ rule, ranges }) => named({ rule, ranges }),
      ),
    })),
    namedRanges: Object.entries(namedRanges).sort(),
    charts: named(charts),
    protections: sorted(protections),
    properties: properties
      .map(([key, value]) => [key, value.replace(/\d+/g, (id) => nameOf.get(id) ?? id)])
      .sort(),
  };
}

/** Contents of every cell that holds something, by sheet and place. */
export function cellContents(host: LocalHost): Map<string, string> {
  const { getters } = host.workbook.model;
  const contents = new Map<string, string>();
  for (const sheetId of getters.getSheetIds()) {
    for (const cell of getters.getCells(sheetId)) {
      const { col, row } = getters.getCellPosition(cell.id);
      const text = cell.isFormula ? cell.compiledFormula.toFormulaString(getters) : cell.content;
      if (text !== '') contents.set(`${getters.getSheetName(sheetId)} ${row + 1} ${col + 1}`, text);
    }
  }
  return contents;
}
