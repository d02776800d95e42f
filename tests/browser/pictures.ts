/** `npm run pictures`: the README's pictures, taken of the real pages. */
import { mkdirSync, rmSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { load, openPreview, panelOf, select } from './preview.ts';

const folder = fileURLToPath(new URL('../../.github/pictures/', import.meta.url));
const largest = 150_000; // bytes

mkdirSync(folder, { recursive: true });
rmSync('out/pictures', { recursive: true, force: true }); // a workbook that nobody has worked on
const preview = await openPreview('--out', 'out/pictures');
const { page, address } = preview;

async function take(name: string): Promise<void> {
  const path = join(folder, `${name}.png`);
  await page.waitForTimeout(1_500); // the engine draws figures in its own time
  await page.screenshot({ path });
  const { size } = statSync(path);
  console.log(`${relative(process.cwd(), path)} ${(size / 1000).toFixed(0)} kB`);
  if (size > largest) throw new Error(`${name} is larger than ${largest / 1000} kB`);
}

try {
  await page.setViewportSize({ width: 1200, height: 720 });
  await load(page, address);
  await panelOf(page)
    .getByRole('radio', { name: /^Rowan/ })
    .check();
  await panelOf(page).locator('#figures').getByText('Total with tax').waitFor();
  await select(page, 'Comparison', 2, 4);
  await take('comparison');
  await select(page, 'Loading', 0, 0);
  await take('loading');
  await panelOf(page).getByRole('button', { name: 'Issue quote' }).click();
  await page.frameLocator('#dialog iframe').getByRole('heading', { name: 'Quote Q-0001 A' }).waitFor();
  await take('quote');
} finally {
  await preview.close();
}
