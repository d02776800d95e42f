/**
 * How long a person waits for the page: `npm run bench:page`. Milliseconds here, on this machine; no test asserts them.
 */
import { rmSync } from 'node:fs';
import { median } from 'simple-statistics';
import { load, openPreview, panelOf, placeOf, select, typeInto } from './preview.ts';

const repetitions = 7;
const folder = 'out/bench';

rmSync(folder, { recursive: true, force: true }); // a workbook that nobody has worked on
const preview = await openPreview('--out', folder);
const { page, address } = preview;

const line = (what: string, times: readonly number[], wanted: number) => {
  const of = `${median([...times]).toFixed(0)} ms (${Math.min(...times).toFixed(0)} to ${Math.max(...times).toFixed(0)})`;
  console.log(`${what.padEnd(52)} ${of.padStart(20)}, wanted ${wanted}`);
};

async function repeated(job: (index: number) => Promise<number>): Promise<number[]> {
  const times: number[] = [];
  for (let index = 0; index < repetitions; index++) times.push(await job(index));
  return times;
}

try {
  const opening = await repeated(() => load(page, address));
  line('page opened, every block computed', opening, 4000);

  const { col, row } = await placeOf(page, 'Equipment', 'rescue parachute', 'fitted');
  const edits = await repeated(async (index) => {
    await select(page, 'Equipment', col, row);
    return typeInto(page, index % 2 === 0 ? 'TRUE' : 'FALSE');
  });
  line('option typed, every block computed and painted', edits, 300);

  await select(page, 'Comparison', 2, 4);
  const total = async () => (await placeOf(page, 'Comparison', 'total, without tax', 'Rowan')).value;
  const ticks = await repeated(async () => {
    const before = await total();
    const from = performance.now();
    await panelOf(page).getByLabel('pitot heat').click();
    while ((await total()) === before) if (performance.now() - from > 10_000) throw new Error('no answer');
    return performance.now() - from;
  });
  line('option ticked in the panel, seen in the sheet', ticks, 300);
} finally {
  await preview.close();
}
