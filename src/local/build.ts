import { readdirSync } from 'node:fs';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'esbuild';
import { actions } from '../appsscript/actions.ts';
import { formulas, tableFunctions } from '../functions/library.ts';
import { layout } from '../workbook/sheets.ts';
import { actionText, functionText, libraryName } from './entryText.ts';
import { shortNames } from './shortNames.ts';
import { readTableFolder } from './tableFolder.ts';
import { withoutHelp } from './withoutHelp.ts';

const root = new URL('../../', import.meta.url);
export const distFolder = fileURLToPath(new URL('dist/', root));
const samplesFolder = fileURLToPath(new URL('samples/', root));

/** The library as one minified global; nothing of it runs but definitions. */
async function libraryText(): Promise<string> {
  const result = await bundle({
    entryPoints: [fileURLToPath(new URL('src/appsscript/script.ts', root))],
    bundle: true,
    format: 'iife',
    globalName: libraryName,
    target: 'es2020',
    minify: true,
    charset: 'utf8',
    plugins: [withoutHelp],
    mangleProps: new RegExp(`^(?:${shortNames().join('|')})$`),
    legalComments: 'none',
    write: false,
  });
  return result.outputFiles[0]?.text ?? '';
}

/** The pushed script: the library, then every custom function and every action as a readable declaration. */
export async function scriptText(): Promise<string> {
  const declarations = [
    ...[...formulas, ...tableFunctions].map(functionText),
    ...Object.keys(actions).map(actionText),
  ];
  return `${[await libraryText(), ...declarations].join('\n\n').trim()}\n`;
}

/** Data in an HTML file, which the script reads on demand; nothing in it looks like markup. */
const dataFile = (data: unknown) =>
  JSON.stringify(data).replace(
    /[<>&\u0080-\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** The HTML files beside the script, by name. */
export function dataFiles(): Readonly<Record<string, string>> {
  const names = readdirSync(samplesFolder).sort();
  const samples = names.map((name) => [name, readTableFolder(`${samplesFolder}${name}`).grids]);
  return { Layout: dataFile(layout), Samples: dataFile(Object.fromEntries(samples)) };
}

/** Writes everything that is pushed to Apps Script, and nothing else, into dist/. */
export async function build(): Promise<string> {
  await rm(distFolder, { recursive: true, force: true });
  await mkdir(distFolder, { recursive: true });
  const script = await scriptText();
  await writeFile(`${distFolder}Code.js`, script);
  for (const [name, text] of Object.entries(dataFiles())) await writeFile(`${distFolder}${name}.html`, text);
  await writeFile(`${distFolder}appsscript.json`, await readFile(new URL('appsscript.json', root)));
  return script;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const script = await build();
  console.log(
    `dist/Code.js ${(Buffer.byteLength(script) / 1000).toFixed(1)} kB, ${Object.keys(dataFiles()).join('.html, ')}.html, appsscript.json`,
  );
}
