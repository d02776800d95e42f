import type { TableName } from '../tables/catalogue.ts';
import type { Fields, FieldUnit } from '../tables/field.ts';
import type { Table } from '../tables/table.ts';

/** One column or attribute of a table as the sheet shows it. */
export interface FieldLayout {
  readonly label: string;
  /** What it means and, where it may be left empty, what then stands for it. */
  readonly help: string;
  readonly unit?: FieldUnit;
  readonly customaryUnit: string;
  readonly choices?: readonly string[];
  readonly tickBox?: boolean;
  /** Its values are names that stand in the first column of this table, or its column heads. */
  readonly namesFrom?: TableName;
}

/** An input table: a title and a help row above its header, so that its rows are numbered as the sheet's. */
export interface TableLayout {
  readonly table: TableName;
  /** Name of its range, and of the custom functions' argument. */
  readonly range: string;
  readonly title: string;
  readonly shape: Table<Fields>['shape'];
  readonly fields: readonly FieldLayout[];
  /** Further columns: one for each record of other tables. */
  readonly perRecordOf: readonly { readonly table: TableName; readonly field: FieldLayout }[];
  /** Empty rows kept below the records; for a table across, empty columns kept for records. */
  readonly room: number;
}

/** A block computed by one call of a custom function. */
export interface ResultLayout {
  readonly function: string;
  readonly title: string;
  /** Named ranges, in the order of the function's arguments. */
  readonly arguments: readonly string[];
  /** Cells kept free for the largest block. */
  readonly rows: number;
  readonly columns: number;
}

export type Role = 'everybody' | 'buyer' | 'seller' | 'builder' | 'data';

/** A sheet: its tables side by side from the first column, its results to the right of them. */
export interface SheetLayout {
  readonly name: string;
  readonly question: string;
  readonly role: Role;
  readonly tables: readonly TableLayout[];
  readonly results: readonly ResultLayout[];
}

/** What the workbook is. Plain data: the pushed script reads it from a file when it lays out, and never else. */
export interface Layout {
  readonly version: number;
  readonly units: Readonly<Partial<Record<FieldUnit, readonly string[]>>>;
  /** In reading order. */
  readonly sheets: readonly SheetLayout[];
}

/** As many packages as charts and blocks keep room for. */
export const largestPackageCount = 8;
