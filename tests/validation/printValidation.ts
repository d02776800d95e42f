/** Prints predicted against published figures: node --import ./src/local/register.mjs tests/validation/printValidation.ts */
import Table from 'cli-table3';
import { certificatedAircraft, figures, figureUnits } from './certificatedAircraft.ts';
import { compareAll, percent, signedPercent, summaries } from './validation.ts';

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
      : `${found.predicted.toFixed(0)} for ${found.published} ${signedPercent(found.error)}`;
  });
  table.push([aircraft.name, aircraft.used, ...cells]);
}
console.log('Predicted for published. Published figures from memory and secondary sources.');
console.log(table.toString());

const summary = new Table({
  head: ['', 'figures', 'rms error', 'mean error', 'worst'],
  style: { head: [], border: [] },
});
for (const { title, count, rms, mean, worst } of summaries())
  summary.push([title, count, percent(rms), signedPercent(mean), percent(worst)]);
console.log(summary.toString());
