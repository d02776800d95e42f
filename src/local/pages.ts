import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';

const folder = new URL('../sidebar/', import.meta.url);
const placeholder = '/* SCRIPT */';
const stylePlaceholder = '/* PRINT */'; // in pages that are printed

/** A page with its script inside: nothing is fetched from anywhere. */
function page(name: string): string {
  const result = buildSync({
    entryPoints: [fileURLToPath(new URL(`${name}.ts`, folder))],
    bundle: true,
    format: 'iife',
    target: 'es2020',
    minify: true,
    charset: 'ascii',
    legalComments: 'none',
    write: false,
  });
  const script = result.outputFiles[0]?.text ?? '';
  if (/<\/script|<!--/i.test(script)) throw new Error(`the script of ${name} would end its element`);
  const html = readFileSync(new URL(`${name}.html`, folder), 'utf8');
  if (!html.includes(placeholder)) throw new Error(`${name}.html has no ${placeholder}`);
  const style = readFileSync(new URL('print.css', folder), 'utf8');
  return html.replace(stylePlaceholder, () => style).replace(placeholder, () => script);
}

/** The pages that are pushed beside the script, by their file names. */
export function pageFiles(): Readonly<Record<string, string>> {
  return { QuotePage: page('quotePage'), CardsPage: page('cardsPage'), Panel: page('panel') };
}
