import type { TableName } from '../tables/catalogue.ts';

/** How a table is called as an argument: its name as one word. */
export const argumentOfTable = (table: TableName) => table.replace(/ /g, '_');

/** Tables that may be left out, or be empty. */
export const optionalTables: ReadonlySet<TableName> = new Set<TableName>([
  'loadings',
  'fuel points',
  'power points',
  'cooling',
  'known points',
  'equipment',
  'allowances',
  'mission',
  'rates',
]);

/** What the help says of each table argument. */
export const tableHelp: Readonly<Record<TableName, string>> = {
  airframe: 'the airframe table with its headers',
  envelope: 'the CG envelope table',
  stations: 'the seats and baggage table',
  loadings: 'the named loadings',
  tanks: 'the fuel tanks table',
  packages: 'the engine packages table',
  'fuel points': 'fuel consumption at power settings',
  'power points': 'power against altitude, from the maker',
  cooling: 'the cooling streams',
  'known points': 'measured flight of this airframe',
  components: 'the weight build-up of the packages',
  equipment: 'the options',
  allowances: 'how well weights are known',
  mission: 'what the buyer wants to do',
  rates: 'prices of fuel, labour, tax',
};
