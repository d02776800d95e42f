import type { TableName } from '../tables/catalogue.ts';

/** How a table is called as an argument, and its range in the workbook: its name as one word. */
export const argumentOfTable = (table: string) => table.replace(/ /g, '_');

/** What the help says of each table argument, besides its name: short, for every table function repeats it. */
export const tableHelp: Readonly<Record<TableName, string>> = {
  airframe: 'table, headers included',
  envelope: 'CG limits',
  stations: 'seats, baggage',
  loadings: 'by name',
  tanks: 'of fuel',
  packages: 'engine packages',
  'fuel points': 'consumption',
  'power points': 'at altitude',
  cooling: 'streams',
  'known points': 'measured flight',
  components: 'weights',
  equipment: 'options',
  allowances: 'of weights',
  mission: 'of the buyer',
  rates: 'prices',
};
