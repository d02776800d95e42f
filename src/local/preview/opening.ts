import { createHash } from 'node:crypto';
import { basename, resolve } from 'node:path';
import type { Grid } from '../../tables/cell.ts';
import { layout } from '../../workbook/sheets.ts';
import { headerRow } from '../../workbook/tableSource.ts';
import { dataFiles, scriptText } from '../build.ts';
import { functionDescriptors } from '../localWorkbook.ts';
import type { OpeningData } from './openingData.ts';
import { type Storage, shown } from './storage.ts';

const digest = (value: unknown) => createHash('sha256').update(JSON.stringify(value)).digest('hex');

const layouts = layout.sheets.flatMap((sheet) => sheet.tables);

/** Names of all tables that a workbook has. */
export const workbookTables: readonly string[] = layouts.map(({ table }) => table);

/** @throws Error naming each table whose header is not found: the workbook could not take it up */
function refuseHeaderless(tables: Readonly<Record<string, Grid>>): void {
  const lost = layouts
    .filter(({ table }) => tables[table] !== undefined)
    .filter((each) => headerRow(each, tables[each.table] ?? []) < 0);
  if (lost.length > 0)
    throw new Error(lost.map(({ table }) => `${table}: no header row is found in this table`).join('\n'));
}

export async function openingData(
  tables: Readonly<Record<string, Grid>>,
  storage: Storage,
): Promise<OpeningData> {
  refuseHeaderless(tables);
  const code = await scriptText();
  const files = await dataFiles();
  return {
    name: basename(resolve(storage.folder)),
    target: shown(storage.target),
    isInPlace: storage.target === storage.folder,
    tables,
    code,
    files,
    functions: functionDescriptors,
    tablesDigest: digest(tables),
    scriptDigest: digest([code, files]),
  };
}
