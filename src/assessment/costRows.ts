import type { Assessment, Comparison } from './assess.ts';
import { breakEven } from './breakEven.ts';
import type { ComparisonRow } from './comparisonRows.ts';
import type { Amount } from './cost.ts';
import type { Shown } from './display.ts';
import { type HourlyCost, hourlyCauses } from './hourlyCost.ts';

const amountRow = (
  label: string,
  shown: Shown,
  value: (assessment: Assessment) => Amount,
): ComparisonRow => ({
  label,
  shown,
  differs: true,
  // An amount with a missing part is words, so that nothing is subtracted from it
  value: (assessment, { context: { display } }) => {
    const { value: found, complete } = value(assessment);
    if (complete) return found;
    return found === 0 ? undefined : `≥ ${display.number(shown, found)}`;
  },
});

const moneyRow = (
  label: string,
  shown: 'money' | 'moneyPerHour',
  value: (assessment: Assessment) => number | undefined,
): ComparisonRow => ({ label, shown, differs: false, value });

const causeRow = (cause: keyof HourlyCost) =>
  moneyRow(`  ${hourlyCauses[cause]}`, 'moneyPerHour', ({ cost }) => cost.perHour[cause]);

function breakEvenText({ cost }: Assessment, { baseline, context: { display } }: Comparison) {
  if (cost === baseline.cost) return 'baseline';
  const found = breakEven(cost, baseline.cost);
  if (found === undefined) return undefined;
  if (!('time' in found)) return found.cheaper === 'never' ? 'never' : 'at once';
  return found.cheaper === 'after' ? found.time : `up to ${display.number('wholeHours', found.time)}`;
}

const readyToFly = amountRow('ready to fly, tax and labour in', 'money', ({ cost }) => cost.readyToFly);
const hour = amountRow('an hour of flight', 'moneyPerHour', ({ cost }) => cost.hour);
const lifetime = amountRow('bought and flown all years', 'money', ({ cost }) => cost.lifetime);
const breakEvenRow: ComparisonRow = {
  label: 'cheaper than baseline after',
  shown: 'wholeHours',
  differs: false,
  value: breakEvenText,
};

export const costTitle = ({ context: { catalogue, display } }: Comparison) =>
  `Cost: ${display.text('wholeHours', catalogue.rates.hoursPerYear)} a year, ${catalogue.rates.years} years`;

/** What the comparison shows of it. */
export const costRows: readonly ComparisonRow[] = [
  readyToFly,
  hour,
  causeRow('fuel'),
  causeRow('engine'),
  lifetime,
  breakEvenRow,
];

/** All of it. */
export const costDetail: readonly ComparisonRow[] = [
  readyToFly,
  moneyRow('  kit, package and options', 'money', ({ price }) => price.total),
  moneyRow('  tax', 'money', ({ price }) => price.tax),
  moneyRow('  still to buy, without tax', 'money', ({ price }) => price.builder),
  moneyRow('  labour', 'money', ({ cost }) => cost.labour),
  hour,
  ...(Object.keys(hourlyCauses) as (keyof HourlyCost)[]).map(causeRow),
  lifetime,
  breakEvenRow,
];
