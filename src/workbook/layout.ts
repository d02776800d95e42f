import type { Grid } from '../tables/cell.ts';
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
  /** A tick box where an empty cell means no; elsewhere an empty cell means something else, and a box would hide it. */
  readonly tickBox?: boolean;
  /** Its values are numbers. */
  readonly isNumber?: boolean;
  /** Its values are names that stand in the first column of this table, or its column heads. */
  readonly namesFrom?: string;
}

/** An input table: a title and a help row above its header, so that its rows are numbered as the sheet's. */
export interface TableLayout {
  readonly table: string;
  /** Name of its range, and of the custom functions' argument. */
  readonly range: string;
  readonly title: string;
  readonly shape: Table<Fields>['shape'];
  readonly fields: readonly FieldLayout[];
  /** Further columns: one for each record of other tables. */
  readonly perRecordOf: readonly { readonly table: string; readonly field: FieldLayout }[];
  /** Empty rows kept below the records; for a table across, empty columns kept for records. */
  readonly room: number;
}

/** How the curves of a chart belong to packages. */
export type CurveOrder =
  /** first the limits, then a curve a package */
  | 'limits, packages'
  | 'packages'
  /** two curves a package: rich solid, lean in its dash */
  | 'packages twice'
  /** a group of parts each, not packages */
  | 'groups';

/** A native chart over part of a block; the first of its columns is the x axis, the others are curves. */
export interface ChartLayout {
  readonly title: string;
  readonly kind: 'curves' | 'stacked bars';
  readonly curves: CurveOrder;
  /**
   * Its part of the block, counted from the block's first cell, with its row of heads: the same however many packages,
   * stations or streams there are. A block's last part has the room that is kept for the block.
   */
  readonly part: { readonly row: number; readonly rows: number; readonly column: number };
  /** What its values are; the x axis has the title of its column. */
  readonly up: string;
  readonly fromZero: boolean;
  /** Its values' unit: the group of this pattern in the line above the heads, or in the first head. */
  readonly unit: { readonly above: boolean; readonly pattern: string };
  /** Cell of its corner. */
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
}

/** A block computed by one call of a custom function. */
export interface ResultLayout {
  readonly function: string;
  readonly title: string;
  /** Named ranges, in the order of the function's arguments. */
  readonly arguments: readonly string[];
  /** Its first cell; on a sheet with tables, columns count from the first free one. */
  readonly row: number;
  readonly column: number;
  /** Cells kept free for the largest block. */
  readonly rows: number;
  readonly columns: number;
  /** Column of the block, counted from 0, from which packages stand side by side. */
  readonly packagesFrom?: number;
  /** Columns of sentences, counted from 0, which take as many lines as they need. */
  readonly sentences?: readonly number[];
  readonly charts: readonly ChartLayout[];
}

export type Role = 'everybody' | 'buyer' | 'seller' | 'builder' | 'data';

/** A line of the first sheet, and how it looks. */
export interface StartLine {
  readonly text: string;
  readonly note?: string;
  readonly look?: 'heading' | 'input' | 'stop' | 'check' | 'note' | 'unknown';
}

/** A sheet: its tables side by side from the first column, its results to the right of them. */
export interface SheetLayout {
  readonly name: string;
  readonly question: string;
  /** How to read it, in a line. */
  readonly reading: string;
  readonly role: Role;
  readonly lines: readonly StartLine[];
  readonly tables: readonly TableLayout[];
  readonly results: readonly ResultLayout[];
  readonly frozenRows: number;
  readonly frozenColumns: number;
  /** Widths of the columns of a sheet without tables, in pixels; the last one holds for the rest. */
  readonly widths: readonly number[];
}

/** What the workbook is. Plain data: the pushed script reads it from a file when it lays out, and never else. */
export interface Layout {
  readonly version: number;
  readonly units: Readonly<Partial<Record<FieldUnit, readonly string[]>>>;
  /** In reading order. */
  readonly sheets: readonly SheetLayout[];
}

/** Contents of tables by their names. */
export type Grids = Readonly<Record<string, Grid | undefined>>;

/** As many packages as charts and blocks keep room for. */
export const largestPackageCount = 8;
