/** Prints predicted against published figures: node --import ./src/local/register.mjs tests/validation/printValidation.ts */
import Table from 'cli-table3';
import { certificatedAircraft, figures, figureUnits } from './certificatedAircraft.ts';
import { type Comparison, compareAll, rootMeanSquare } from './validation.ts';

const percent = (fraction: number) => `${(100 * fraction).toFixed(1)} %`;
const signed = (fraction: number) => (fraction < 0 ? percent(fraction) : `+${percent(fraction)}`);

const comparisons = compareAll();
const table = new Table({
  head: ['type certificate', 'constants', ...figures.map((figure) => `${figure}, ${figureUnits[figure]}`)],
  style: { head: [], border: [] },
});
for (const aircraft of certificatedAircraft) {
  const cells = figures.map((figure) => {
    const found = comparisons.find((one) => one.aircraft === aircraft && one.figure === figure);
    return found === undefined
      ? 'not published'
      : `${found.predicted.toFixed(0)} for ${found.published} ${signed(found.error)}`;
  });
  table.push([aircraft.name, aircraft.used, ...cells]);
}
console.log('Predicted for published. Published figures from memory and secondary sources.');
console.log(table.toString());

const summary = new Table({
  head: ['', 'figures', 'rms error', 'mean error', 'worst'],
  style: { head: [], border: [] },
});
function summarise(title: string, chosen: readonly Comparison[]): void {
  const mean = chosen.reduce((sum, { error }) => sum + error, 0) / chosen.length;
  const worst = Math.max(...chosen.map(({ error }) => Math.abs(error)));
  summary.push([title, chosen.length, percent(rootMeanSquare(chosen)), signed(mean), percent(worst)]);
}
for (const figure of figures)
  summarise(
    figure,
    comparisons.filter((one) => one.figure === figure),
  );
summarise(
  'held out',
  comparisons.filter((one) => one.aircraft.used === 'held out'),
);
summarise(
  'used in the choice',
  comparisons.filter((one) => one.aircraft.used === 'choice'),
);
summarise('all', comparisons);
console.log(summary.toString());
