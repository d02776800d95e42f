/** `npm run preview`: the workbook as a page in the browser, on this machine only. */
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command, InvalidArgumentError } from 'commander';
import { readTableFolder } from '../tableFolder.ts';
import { openingData, workbookTables } from './opening.ts';
import { startServer } from './server.ts';
import { shown, storageOf } from './storage.ts';

const samples = fileURLToPath(new URL('../../../samples/', import.meta.url));

interface Options {
  readonly out: string;
  readonly inPlace: boolean;
  readonly port: number;
}

function portOf(text: string): number {
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new InvalidArgumentError('must be a whole number up to 65535');
  return port;
}

async function run(folder: string, { out, inPlace, port }: Options): Promise<void> {
  const { grids, remarks } = readTableFolder(folder);
  for (const { table, text } of remarks) console.error(`${table}: ${text}`);
  const storage = storageOf(folder, out, inPlace);
  const opening = await openingData(grids, storage);
  const token = randomBytes(24).toString('base64url');
  const { address } = await startServer(
    storage,
    { json: JSON.stringify(opening), tables: workbookTables },
    token,
    port,
  );
  console.log(`The workbook is at ${address} for as long as this runs (Ctrl+C ends it).`);
  console.log(`Save writes the tables to ${shown(storage.target)}.`);
}

const program = new Command('npm run preview --')
  .description('Shows the workbook of a folder of CSV tables as a page in the browser, on this machine only.')
  .argument('[folder]', 'folder of tables, one CSV file each', join(samples, 'godwit'))
  .option('-o, --out <folder>', 'where saved tables and the work in hand go', 'out')
  .option('--in-place', 'save over the tables that were opened', false)
  .option('--port <number>', 'port on 127.0.0.1; 0 for any that is free', portOf, 8317)
  .exitOverride()
  .action(run);

try {
  await program.parseAsync();
} catch (error) {
  const { exitCode, code, message } = error as { exitCode?: number; code?: string; message: string };
  const fromCommander = code?.startsWith('commander.') ?? false;
  if (!fromCommander) console.error(code === 'EADDRINUSE' ? `${message}: choose another --port` : message);
  process.exitCode = fromCommander ? (exitCode === 0 ? 0 : 2) : 1;
}
