/**
 * Tables kept as a folder of CSV files, one a table, named like it with hyphens: `fuel-points.csv`.
 *
 * A cell is typed as a spreadsheet types what is pasted into it: a number, TRUE or FALSE, else text. A leading
 * apostrophe keeps a text that looks like something else ("'12" is the text 12) and is not part of it.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { buildTables } from '../tables/build.ts';
import { type Cell, type Grid, isDate } from '../tables/cell.ts';
import { dayOf } from '../tables/day.ts';
import type { Remark } from '../tables/faults.ts';
import { inputNames } from '../tables/inputs.ts';

/** Every table a folder may hold: those a package is compared from, the terms of a quote, the builder's. */
const folderTables = [...inputNames, ...buildTables] as const;
export type FolderTable = (typeof folderTables)[number];
export type FolderGrids = Readonly<Partial<Record<FolderTable, Grid>>>;

export interface TableFolder {
  readonly grids: FolderGrids;
  /** CSV files that are no table. */
  readonly remarks: readonly Remark[];
}

export function fileNameOf(table: FolderTable): string {
  return `${table.replace(/ /g, '-')}.csv`;
}

/**
 * Reads the tables of a folder; a table without file is absent.
 * @throws Error when the folder does not exist or holds none of the tables, or a file is no comma-separated UTF-8 text
 */
export function readTableFolder(folder: string): TableFolder {
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    throw new Error(`there is no folder "${folder}"`);
  const grids: Partial<Record<FolderTable, Grid>> = {};
  const remarks: Remark[] = [];
  for (const file of readdirSync(folder).sort()) {
    if (!/\.csv$/i.test(file)) continue;
    const table = folderTables.find((name) => fileNameOf(name) === file);
    if (table === undefined) remarks.push({ table: file, text: 'is none of the tables and is not read' });
    else grids[table] = gridOfCsv(textOfFile(join(folder, file)), file);
  }
  if (Object.keys(grids).length === 0) {
    throw new Error(`"${folder}" holds none of the tables: ${folderTables.map(fileNameOf).join(', ')}`);
  }
  return { grids, remarks };
}

/** Writes the tables given, making the folder where there is none; files of other tables are left as they are. */
export function writeTableFolder(folder: string, grids: FolderGrids): void {
  mkdirSync(folder, { recursive: true });
  for (const table of folderTables) {
    const grid = grids[table];
    if (grid !== undefined) writeFileSync(join(folder, fileNameOf(table)), csvOfGrid(grid));
  }
}

/**
 * Cells of a CSV text, rows filled up to the longest. An empty line is an empty row, as rows are counted in messages;
 * those at the end are dropped.
 * @throws Error when quotes do not close or values are separated by something other than commas
 */
export function gridOfCsv(text: string, file: string): Grid {
  const lines = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const header = lines.slice(0, lines.search(/\n|$/));
  if (!header.includes(',') && /[;\t]/.test(header))
    throw new Error(`${file}: values must be separated by commas, got ${quotedLine(header)}`);
  const { data, errors } = Papa.parse<string[]>(lines, { delimiter: ',', newline: '\n' });
  const [error] = errors;
  if (error !== undefined) throw new Error(`${file}, row ${(error.row ?? 0) + 1}: ${error.message}`);
  while (data.at(-1)?.every((cell) => cell === '')) data.pop();
  const width = Math.max(0, ...data.map((row) => row.length));
  return data.map((row) => Array.from({ length: width }, (_, column) => typed(row[column] ?? '')));
}

/** The CSV text of a grid, which `gridOfCsv` reads as the same cells; a date becomes the text of its day. */
export function csvOfGrid(grid: Grid): string {
  return `${Papa.unparse(
    grid.map((row) => row.map(written)),
    { newline: '\n' },
  )}\n`;
}

const numberForm = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

function typed(text: string): Cell {
  if (text.startsWith("'")) return text.slice(1);
  const word = text.trim();
  if (numberForm.test(word) && Number.isFinite(Number(word))) return Number(word);
  if (/^(true|false)$/i.test(word)) return word.toLowerCase() === 'true';
  return text;
}

/** Text that would be typed as something else, or that a spreadsheet would take for a formula, gets an apostrophe. */
function written(cell: Cell): string {
  if (cell === null || cell === undefined) return '';
  if (isDate(cell)) return dayOf(cell) ?? '';
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell === 'number') return String(cell);
  return typed(cell) !== cell || /^[=+\-@]/.test(cell) ? `'${cell}` : cell;
}

function textOfFile(path: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path));
  } catch (error) {
    if (error instanceof TypeError) throw new Error(`${path} must be UTF-8 text`);
    throw error;
  }
}

const quotedLine = (line: string) => `"${line.length > 40 ? `${line.slice(0, 40)}…` : line}"`;
