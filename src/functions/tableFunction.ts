import { faultsBlock } from '../assessment/faultsBlock.ts';
import {
  type Catalogue,
  type CatalogueReading,
  readCatalogue,
  type TableGrids,
  tableNames,
} from '../tables/catalogue.ts';
import { type Cell, type Grid, isBlank } from '../tables/cell.ts';
import { inputTables } from '../tables/inputTables.ts';
import { mustBe, notFinite, refusal, tooManyArguments } from './messages.ts';
import { argumentOfTable, tableHelp } from './tableArguments.ts';

export interface TableArgument {
  readonly name: string;
  readonly help: string;
  readonly optional: boolean;
}

/** A custom function that takes the workbook's tables and spills one labelled block. */
export interface TableFunction {
  readonly name: string;
  readonly help: string;
  readonly arguments: readonly TableArgument[];
  readonly call: (cells: readonly (Cell | Grid)[]) => Cell[][];
}

const tableArguments: readonly TableArgument[] = tableNames.map((table) => ({
  name: argumentOfTable(table),
  help: tableHelp[table],
  optional: !inputTables[table].required,
}));

function gridsOf(cells: readonly (Cell | Grid)[]): TableGrids {
  const grids: Record<string, Grid> = {};
  tableNames.forEach((table, index) => {
    const value = cells[index];
    if (!Array.isArray(value) && isBlank(value as Cell)) return;
    if (!Array.isArray(value))
      throw mustBe(argumentOfTable(table), 'the range of the table with its headers', value as Cell);
    grids[table] = value as Grid;
  });
  return grids;
}

/** Every row as long as the longest: a sheet takes rectangles only. @throws RangeError when a number is not finite */
function rectangular(block: readonly (readonly Cell[])[]): Cell[][] {
  const width = Math.max(1, ...block.map((row) => row.length));
  return block.map((row) =>
    Array.from({ length: width }, (_, column) => {
      const cell = row[column] ?? null;
      if (typeof cell === 'number' && !Number.isFinite(cell)) throw notFinite(String(row[0]));
      return cell;
    }),
  );
}

/** The cells as they were, whatever their owner does with them later. */
const copied = (grids: TableGrids): TableGrids =>
  Object.fromEntries(tableNames.map((name) => [name, grids[name]?.map((row) => [...row])]));

const sameGrid = (one: Grid | undefined, other: Grid | undefined) =>
  one?.length === other?.length &&
  (one ?? []).every((row, index) => {
    const cells = other?.[index] ?? [];
    return row.length === cells.length && row.every((cell, column) => cell === cells[column]);
  });

let last: { readonly grids: TableGrids; readonly reading: CatalogueReading } | undefined;

/** Reads the tables, or says again what they said: a spreadsheet that computes all its blocks gives each the same ones. */
function readOnce(grids: TableGrids): CatalogueReading {
  const before = last;
  if (before !== undefined && tableNames.every((name) => sameGrid(before.grids[name], grids[name])))
    return before.reading;
  const reading = readCatalogue(grids);
  last = { grids: copied(grids), reading };
  return reading;
}

/**
 * Makes a table function. Where the tables have faults, the block lists all of them in place of the results, for a thrown
 * message would show on hover only.
 */
export function tableFunction(declaration: {
  name: string;
  help: string;
  extras?: readonly TableArgument[];
  compute: (catalogue: Catalogue, extras: readonly Cell[]) => readonly (readonly Cell[])[];
}): TableFunction {
  const { name, help, extras = [], compute } = declaration;
  const all = [...tableArguments, ...extras];
  return {
    name,
    help,
    arguments: all,
    call: (cells) => {
      try {
        if (cells.length > all.length) throw tooManyArguments(all.length, cells.length);
        const reading = readOnce(gridsOf(cells));
        if (reading.catalogue === undefined) return rectangular(faultsBlock(reading.faults));
        const own = extras.map((_, index) => cells[tableArguments.length + index] as Cell);
        return rectangular(compute(reading.catalogue, own));
      } catch (error) {
        throw refusal(name, error);
      }
    },
  };
}
