/** `npm run preview`: the workbook as a page in the browser, on this machine only. */
import { Command, InvalidArgumentError } from 'commander';
import { endingOf } from '../ending.ts';
import { folderArgument } from '../folderArgument.ts';
import type { PreviewOptions } from './servePreview.ts';

function portOf(text: string): number {
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new InvalidArgumentError('must be a whole number up to 65535');
  return port;
}

const program = new Command('npm run preview --')
  .description('Shows the workbook of a folder of CSV tables as a page in the browser, on this machine only.')
  .addArgument(folderArgument)
  .option('-o, --out <folder>', 'where saved tables and the work in hand go', 'out')
  .option('--in-place', 'save over the tables that were opened', false)
  .option('--port <number>', 'port on 127.0.0.1; 0 for any that is free', portOf, 8317)
  .exitOverride()
  .action(async (folder: string, options: PreviewOptions) => {
    const { servePreview } = await import('./servePreview.ts'); // help and refusals need not wait for it
    await servePreview(folder, options);
  });

await endingOf(() => program.parseAsync());
