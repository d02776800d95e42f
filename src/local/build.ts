import { readdirSync } from 'node:fs';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'esbuild';
import { actions } from '../appsscript/actions.ts';
import { plainJson } from '../appsscript/plainJson.ts';
import { formulas, tableFunctions } from '../functions/library.ts';
import { layout } from '../workbook/sheets.ts';
import { actionText, functionText, libraryName, triggers, triggerText } from './entryText.ts';
import { pageFiles } from './pages.ts';
import { readTableFolder } from './tableFolder.ts';
import { withoutHelp } from './withoutHelp.ts';

const root = new URL('../../', import.meta.url);
const distFolder = fileURLToPath(new URL('dist/', root));
const samplesFolder = fileURLToPath(new URL('samples/', root));

/** A part of the script as one minified global; nothing of it runs but definitions. */
async function bundled(entry: string): Promise<string> {
  const result = await bundle({
    entryPoints: [fileURLToPath(new URL(`src/appsscript/${entry}.ts`, root))],
    bundle: true,
    format: 'iife',
    globalName: libraryName,
    target: 'es2020',
    minify: true,
    charset: 'utf8',
    plugins: [withoutHelp],
    legalComments: 'none',
    write: false,
  });
  return result.outputFiles[0]?.text ?? '';
}

/** Code.js: the library of the formula functions, then every custom function and action as a readable declaration. */
export async function scriptText(inOneFile = false): Promise<string> {
  const declarations = [
    ...[...formulas, ...tableFunctions].map(functionText),
    ...triggers.map(triggerText),
    ...Object.keys(actions).map(actionText),
  ];
  const library = await bundled(inOneFile ? 'scriptInOneFile' : 'script');
  return `${[library, ...declarations].join('\n\n').trim()}\n`;
}

/** The HTML files beside the script, by name: data, which the script reads on demand, and pages. */
export async function dataFiles(inOneFile = false): Promise<Readonly<Record<string, string>>> {
  const names = readdirSync(samplesFolder).sort();
  const samples = names.map((name) => [name, readTableFolder(`${samplesFolder}${name}`).grids]);
  return {
    ...(inOneFile ? {} : { Library: plainJson(await bundled('library')) }),
    Layout: plainJson(layout),
    Samples: plainJson(Object.fromEntries(samples)),
    ...pageFiles(),
  };
}

/** Everything that is pushed to Apps Script, by file name. */
export async function pushedFiles(inOneFile = false): Promise<Readonly<Record<string, string>>> {
  const pages = Object.entries(await dataFiles(inOneFile)).map(([name, text]) => [`${name}.html`, text]);
  return {
    'Code.js': await scriptText(inOneFile),
    ...Object.fromEntries(pages),
    'appsscript.json': await readFile(new URL('appsscript.json', root), 'utf8'),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const files = await pushedFiles(process.argv.includes('--one-file'));
  await rm(distFolder, { recursive: true, force: true });
  await mkdir(distFolder, { recursive: true });
  for (const [name, text] of Object.entries(files)) await writeFile(`${distFolder}${name}`, text);
  const sizes = Object.entries(files).map(
    ([name, text]) => `dist/${name} ${(Buffer.byteLength(text) / 1000).toFixed(1)} kB`,
  );
  console.log(sizes.join('\n'));
}
