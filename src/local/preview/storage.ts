import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve } from 'node:path';
import type { Cell, Grid } from '../../tables/cell.ts';
import { csvOfGrid, fileNameOf } from '../tableFolder.ts';

/** Where the page's work goes. */
export interface Storage {
  /** The folder that was opened, and the one that tables are saved to. */
  readonly folder: string;
  readonly target: string;
  /** The work as it stands, saved without being asked. */
  readonly autosave: string;
}

/**
 * @param outFolder where everything goes that is not asked for by name
 * @param inPlace saves over the tables that were opened
 */
export function storageOf(folder: string, outFolder: string, inPlace: boolean): Storage {
  const source = resolve(folder);
  const name = basename(source);
  const target = inPlace ? source : resolve(outFolder, `${name}-edited`); // another name: never the source
  const mark = createHash('sha256').update(source).digest('hex').slice(0, 8); // two folders may have one name
  return { folder: source, target, autosave: resolve(outFolder, `${name}-${mark}.autosave.json`) };
}

/** A path as a person standing here would write it. */
export const shown = (path: string): string => relative(process.cwd(), path) || '.';

/** Writes a file whole or not at all. */
async function writeWhole(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(`${path}.part`, text);
  await rename(`${path}.part`, path);
}

export async function readAutosave({ autosave }: Storage): Promise<string | undefined> {
  try {
    return await readFile(autosave, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

export const writeAutosave = ({ autosave }: Storage, text: string): Promise<void> =>
  writeWhole(autosave, text);

export const dropAutosave = ({ autosave }: Storage): Promise<void> => rm(autosave, { force: true });

const isCell = (value: unknown): value is Cell =>
  value === null || ['string', 'number', 'boolean'].includes(typeof value);

const isGrid = (value: unknown): value is Grid =>
  Array.isArray(value) && value.every((row) => Array.isArray(row) && row.every(isCell));

/**
 * Writes tables as CSV.
 * @param tables rows of cells by the table's name
 * @param known names that a table may have
 * @returns the files' names
 * @throws RangeError when something else is among them; nothing is written then
 */
export async function writeTables(
  { target }: Storage,
  tables: Readonly<Record<string, unknown>>,
  known: readonly string[],
): Promise<string[]> {
  const files = Object.entries(tables).map(([name, grid]) => {
    if (!known.includes(name)) throw new RangeError(`there is no table "${name}"`);
    if (!isGrid(grid)) throw new RangeError(`the ${name} table must be rows of cells`);
    return { file: fileNameOf(name as Parameters<typeof fileNameOf>[0]), text: csvOfGrid(grid) };
  });
  for (const { file, text } of files) await writeWhole(join(target, file), text);
  return files.map(({ file }) => file);
}
