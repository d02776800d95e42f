import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'esbuild';
import { actions } from '../appsscript/actions.ts';
import { plainJson } from '../appsscript/plainJson.ts';
import { formulas, tableFunctions } from '../functions/library.ts';
import { layout } from '../workbook/sheets.ts';
import { withAddOns } from './addOnManifest.ts';
import { actionText, functionText, libraryName, triggers, triggerText } from './entryText.ts';
import { pageFiles } from './pages.ts';
import { readTableFolder } from './tableFolder.ts';
import { withoutHelp } from './withoutHelp.ts';

const root = new URL('../../', import.meta.url);
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

export interface BuildOptions {
  /** Whether the whole library stands in Code.js. */
  readonly oneFile?: boolean;
  /** Address of the picture of an add-on with a card beside the sheet; without one there is no card. */
  readonly addOn?: string;
}

/** Everything that is pushed to Apps Script, by file name. */
export async function pushedFiles({
  oneFile = false,
  addOn,
}: BuildOptions = {}): Promise<Readonly<Record<string, string>>> {
  const pages = Object.entries(await dataFiles(oneFile)).map(([name, text]) => [`${name}.html`, text]);
  const manifest = await readFile(new URL('appsscript.json', root), 'utf8');
  return {
    'Code.js': await scriptText(oneFile),
    ...Object.fromEntries(pages),
    'appsscript.json': addOn === undefined ? manifest : withAddOns(manifest, addOn),
  };
}
