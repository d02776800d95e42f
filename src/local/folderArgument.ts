import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Argument } from 'commander';

const samples = fileURLToPath(new URL('../../samples/', import.meta.url));

/** The folder a command works on. */
export const folderArgument = new Argument('[folder]', 'folder of tables, one CSV file each').default(
  join(samples, 'godwit'),
  'samples/godwit',
);
