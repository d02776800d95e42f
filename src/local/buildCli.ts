/** `npm run build`: writes dist/, which is pushed to Apps Script. */
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { Command, InvalidArgumentError } from 'commander';
import { type BuildOptions, pushedFiles } from './build.ts';
import { endingOf } from './ending.ts';

const distFolder = fileURLToPath(new URL('../../dist/', import.meta.url));

function pictureOf(text: string): string {
  if (!URL.canParse(text) || new URL(text).protocol !== 'https:')
    throw new InvalidArgumentError('must be an address that begins with https://');
  return text;
}

const program = new Command('npm run build --')
  .description('Writes dist/: what is pushed to Apps Script, and nothing else.')
  .option('--one-file', 'the whole library in Code.js', false)
  .option(
    '--add-on <picture>',
    'an add-on with a card beside the sheet; https address of its picture',
    pictureOf,
  )
  .exitOverride()
  .action(async (options: BuildOptions) => {
    const files = await pushedFiles(options);
    await rm(distFolder, { recursive: true, force: true });
    await mkdir(distFolder, { recursive: true });
    for (const [name, text] of Object.entries(files)) {
      await writeFile(`${distFolder}${name}`, text);
      console.log(`dist/${name} ${(Buffer.byteLength(text) / 1000).toFixed(1)} kB`);
    }
  });

await endingOf(() => program.parseAsync());
