/** The machine's own programs, and how they are run. */
import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const isThere = (path: string): boolean => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** Headless Chromium with a fresh profile, which by itself asks nobody for anything. */
export function launchChromium(): Promise<Browser> {
  const executablePath = process.env.CHROMIUM ?? places.find(isThere);
  if (executablePath === undefined)
    throw new Error('no Chromium: install it, or name its program in the environment variable CHROMIUM');
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

/** `npm start` on the sample: its workbook and report in a folder. */
export function writeGodwit(folder: string): void {
  const script = ['--import', './src/local/register.mjs', 'src/local/cli.ts', '--out', folder];
  execFileSync(process.execPath, script, { cwd: fileURLToPath(new URL('../../', import.meta.url)) });
}

/** Words of a PDF (Poppler). */
export const pdfText = (path: string): string =>
  execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });

/** Pages of a PDF and their size in points. */
export function pdfPages(path: string): { readonly count: number; readonly size: string } {
  const told = execFileSync('pdfinfo', [path], { encoding: 'utf8' });
  const field = (name: string) => new RegExp(`^${name}:\\s*(.*)$`, 'm').exec(told)?.[1] ?? '';
  return { count: Number(field('Pages')), size: field('Page size') };
}

/** Opens a spreadsheet file in LibreOffice and gives it back in another form. */
export function convertInLibreOffice(path: string, form: string, folder: string): void {
  const profile = `-env:UserInstallation=file://${folder}/profile`;
  execFileSync('soffice', [profile, '--headless', '--convert-to', form, '--outdir', folder, path], {
    stdio: 'pipe',
  });
}
