import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** Where a package's files are, asked as the package that needs it would ask. */
function packageFolder(name: string, from: string): string {
  const entry = createRequire(from).resolve(name);
  const end = entry.lastIndexOf(join('node_modules', ...name.split('/')));
  return join(entry.slice(0, end), 'node_modules', ...name.split('/'));
}

const own = import.meta.url;
const engine = packageFolder('@odoo/o-spreadsheet', own);
const fromEngine = join(engine, 'package.json'); // owl, bootstrap and the icons are the engine's to choose
const owl = packageFolder('@odoo/owl', fromEngine);
const bootstrap = packageFolder('bootstrap', fromEngine);
const icons = dirname(createRequire(fromEngine).resolve('font-awesome/package.json'));
const pageFolder = fileURLToPath(new URL('page/', import.meta.url));

/** Every file that the page may ask for, by its path; nothing else is ever read for it. */
const files: Readonly<Record<string, string>> = {
  '/page.css': join(pageFolder, 'page.css'),
  '/assets/o_spreadsheet.js': join(engine, 'dist/o_spreadsheet.min.iife.js'),
  '/assets/o_spreadsheet.css': join(engine, 'dist/o_spreadsheet.css'),
  '/assets/o_spreadsheet.xml': join(engine, 'dist/o_spreadsheet.xml'),
  '/assets/owl.js': join(owl, 'dist/owl.iife.js'),
  '/assets/bootstrap.css': join(bootstrap, 'dist/css/bootstrap.min.css'),
  '/assets/chart.js': join(packageFolder('chart.js', own), 'dist/chart.umd.js'),
  '/assets/luxon.js': join(packageFolder('luxon', own), 'build/global/luxon.min.js'),
  '/assets/chart-dates.js': join(
    packageFolder('chartjs-adapter-luxon', own),
    'dist/chartjs-adapter-luxon.umd.min.js',
  ),
  '/assets/icons/css/font-awesome.css': join(icons, 'css/font-awesome.min.css'),
  '/assets/icons/fonts/fontawesome-webfont.woff2': join(icons, 'fonts/fontawesome-webfont.woff2'),
};

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.xml': 'text/xml; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.woff2': 'font/woff2',
};

export interface Asset {
  readonly type: string;
  readonly content: Buffer | string;
}

export const typeOf = (path: string): string => types[extname(path)] ?? 'application/octet-stream';

/** A file of the page's packages; undefined for a path that names none. */
export async function packageAsset(path: string): Promise<Asset | undefined> {
  const file = Object.hasOwn(files, path) ? files[path] : undefined;
  if (file === undefined) return undefined;
  return { type: typeOf(path), content: await readFile(file) };
}

/** The page's own script, and its HTML with what only this start knows. */
export async function pageAssets(token: string): Promise<Readonly<Record<string, Asset>>> {
  const { outputFiles } = await build({
    entryPoints: [join(pageFolder, 'page.ts')],
    bundle: true,
    format: 'iife',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    write: false,
  });
  const html = await readFile(join(pageFolder, 'page.html'), 'utf8');
  return {
    '/': { type: typeOf('page.html'), content: html.replace('{{token}}', token) },
    '/page.js': { type: typeOf('page.js'), content: outputFiles[0]?.text ?? '' },
  };
}
