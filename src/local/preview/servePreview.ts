import { randomBytes } from 'node:crypto';
import { readTableFolder } from '../tableFolder.ts';
import { openingData, workbookTables } from './opening.ts';
import { startServer } from './server.ts';
import { shown, storageOf } from './storage.ts';

/** What `npm run preview` was asked for. */
export interface PreviewOptions {
  readonly out: string;
  readonly inPlace: boolean;
  readonly port: number;
}

/** Serves the page of a folder's workbook until the process ends. */
export async function servePreview(folder: string, { out, inPlace, port }: PreviewOptions): Promise<void> {
  const { grids, remarks } = readTableFolder(folder);
  for (const { table, text } of remarks) console.error(`${table}: ${text}`);
  const storage = storageOf(folder, out, inPlace);
  const opening = await openingData(grids, storage);
  const token = randomBytes(24).toString('base64url');
  const served = { opening: JSON.stringify(opening), tables: workbookTables };
  const { address } = await startServer(storage, served, token, port).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') throw new Error(`port ${port} is taken: choose another --port`);
      throw error;
    },
  );
  console.log(`The workbook is at ${address} for as long as this runs (Ctrl+C ends it).`);
  console.log(`Save writes the tables to ${shown(storage.target)}.`);
}
