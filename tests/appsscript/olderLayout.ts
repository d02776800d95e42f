import type { WorkbookSnapshot } from '../../src/local/host/snapshot.ts';
import type { Layout, SheetLayout, TableLayout } from '../../src/workbook/layout.ts';

/** Fields that the older layout did not have: of every table the last ones that may be missing. */
export const laterFields: Readonly<Record<string, readonly string[]>> = {
  airframe: ['CG height', 'kit price', 'show heights in'],
  components: ['lead time', 'source'],
  equipment: ['supplied by', 'excludes'],
  mission: ['least rate of climb', 'slope'],
  packages: ['lead time', 'oxygen fitted'],
  tanks: ['tank weight'],
};

const laterSheets = ['Cooling', 'Cost'];

const olderTable = (table: TableLayout): TableLayout => ({
  ...table,
  title: `${table.title}, as it was called`,
  fields: table.fields.filter(({ label }) => !laterFields[table.table]?.includes(label)),
});

const olderSheet = (sheet: SheetLayout): SheetLayout => ({
  ...sheet,
  question: `${sheet.question} (as it was asked)`,
  tables: sheet.tables.map(olderTable),
});

/** A layout as an earlier version might have had it: fewer sheets, fewer fields, other words. */
export const olderLayout = (layout: Layout): Layout => ({
  ...layout,
  version: 0.5,
  sheets: layout.sheets.filter(({ name }) => !laterSheets.includes(name)).map(olderSheet),
});

/** A workbook that was laid out before there were any looks: plain cells, nothing offered, no pictures. */
export function withoutLooks(snapshot: WorkbookSnapshot): WorkbookSnapshot {
  const { sheets, ...model } = snapshot.model as { sheets: object[] };
  const plain = {
    styles: {},
    formats: {},
    borders: {},
    cols: {},
    rows: {},
    dataValidationRules: [],
    conditionalFormats: [],
    figures: [],
    areGridLinesVisible: true,
    panes: undefined,
  };
  return {
    ...snapshot,
    model: { ...model, sheets: sheets.map((sheet) => ({ ...sheet, ...plain })) },
    charts: [],
    validationRules: [],
    formatRules: [],
    protections: [],
  };
}

const withLittleRoom = (table: TableLayout): TableLayout => ({ ...table, room: Math.min(table.room, 3) });

/** A layout with few blocks, no pictures and little room in its tables, which is laid out in a moment. */
export const quickLayout = (layout: Layout): Layout => ({
  ...layout,
  sheets: layout.sheets.map((sheet) => ({
    ...sheet,
    tables: sheet.tables.map(withLittleRoom),
    results: sheet.results
      .filter((result) => ['PACKAGE_COMPARISON', 'COST_TABLE'].includes(result.function))
      .map((result) => ({ ...result, charts: [] })),
  })),
});

/** A layout without blocks: nothing is computed when a cell changes. */
export const withoutBlocks = (layout: Layout): Layout => ({
  ...layout,
  sheets: layout.sheets.map((sheet) => ({ ...sheet, tables: sheet.tables.map(withLittleRoom), results: [] })),
});

/** Sheets of every kind: lines, blocks with bars, with curves, tables of every shape alone, beside each other and a block. */
const kindsOfSheets = ['Start', 'Comparison', 'Range and fuel', 'Quote', 'Seats and tanks', 'Packages'];
const kindsOfBlocks = ['PACKAGE_COMPARISON', 'WEIGHT_BUILD_UP', 'PAYLOAD_RANGE', 'QUOTE_LINES'];

/** All tables on few sheets, one sheet of every kind: the whole way of laying out, in the shortest time. */
export function smallLayout(layout: Layout): Layout {
  const kept = layout.sheets.filter(({ name }) => kindsOfSheets.includes(name));
  const others = layout.sheets.filter(({ name }) => !kindsOfSheets.includes(name));
  const rest = {
    ...(others.find(({ role }) => role === 'data') as SheetLayout),
    tables: others.flatMap((each) => each.tables),
  };
  return {
    ...layout,
    sheets: [...kept, rest].map((sheet) => ({
      ...sheet,
      tables: sheet.tables.map(withLittleRoom),
      results: sheet.results.filter((result) => kindsOfBlocks.includes(result.function)),
    })),
  };
}
