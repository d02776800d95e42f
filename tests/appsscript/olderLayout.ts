import type { Layout, SheetLayout, TableLayout } from '../../src/workbook/layout.ts';

/** Fields that the older layout did not have: of every table the last ones that may be missing. */
const laterFields: Readonly<Record<string, readonly string[]>> = {
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

/** A layout with few blocks and no pictures, which is laid out in a moment. */
export const quickLayout = (layout: Layout): Layout => ({
  ...layout,
  sheets: layout.sheets.map((sheet) => ({
    ...sheet,
    results: sheet.results
      .filter((result) => ['PACKAGE_COMPARISON', 'COST_TABLE'].includes(result.function))
      .map((result) => ({ ...result, charts: [] })),
  })),
});
