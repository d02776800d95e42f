/** What the comparison and the mission's block show of a mission. */
import { describe, expect, test } from 'vitest';
import { type Comparison, compare } from '../../src/assessment/assess.ts';
import type { ComparisonRow } from '../../src/assessment/comparisonRows.ts';
import { missionFigures, missionRows, missionTitle, verdictText } from '../../src/assessment/missionRows.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import { assessed, godwit, packageOf, show, si, withMission } from './sampleCatalogue.ts';

const shown = (rows: readonly ComparisonRow[]) => rows.map((row) => [row.label, row.shown]);
const valueIn = (rows: readonly ComparisonRow[], comparison: Comparison, name: string, label: string) => {
  const row = rows.find((each) => each.label === label);
  if (row === undefined) throw new Error(`no line ${label}`);
  return row.value(packageOf(comparison, name), comparison);
};
const verdictOf = (name: string, catalogue: Catalogue) => {
  const { mission } = assessed(name, catalogue);
  if (mission === undefined) throw new Error('no mission');
  return verdictText(mission);
};

test('the mission in a line', () => {
  expect(missionTitle(compare(godwit))).toBe('Mission: 4 × 180 lb, 60 lb of bags, 350 nmi');
});

describe('the lines of the comparison', () => {
  test('verdict and figures; none where no distance is given', () => {
    const rows = missionRows(compare(godwit));
    expect(shown(rows)).toEqual([
      ['can it', undefined],
      ['  stopped by', undefined],
      ['  flying, out and back', 'hours'],
      ['  fuel burnt, out and back', 'fuel'],
      ['  price of the flights', 'money'],
    ]);
    expect(rows.filter(({ differs }) => differs)).toEqual([]);
    expect(missionRows(compare(withMission({ distance: undefined })))).toEqual([]);
  });

  test('Rowan goes and nothing stops it; Larch runs hot', () => {
    const comparison = compare(godwit);
    const value = (name: string, label: string) => valueIn(missionRows(comparison), comparison, name, label);
    expect(value('Rowan', 'can it')).toBe('yes');
    expect(value('Rowan', '  stopped by')).toBe('–');
    expect(value('Larch', 'can it')).toBe('NO');
    expect(value('Larch', '  stopped by')).toBe('cooling');
  });

  test('hours, gallons of 6 lb and money are those of both legs', () => {
    const comparison = compare(godwit);
    const { mission } = packageOf(comparison, 'Rowan');
    const [out, back] = mission!.legs!;
    const value = (label: string) => valueIn(missionRows(comparison), comparison, 'Rowan', label) as number;
    const seconds = out.flown.time + back.flown.time;
    expect(value('  flying, out and back')).toBeCloseTo(seconds, 6);
    // What is aboard at the start, less what is left on landing
    const pounds = show('mass', out.fuel - out.fuelLeft + back.fuel - back.fuelLeft, 'lb');
    expect(show('volume', value('  fuel burnt, out and back'), 'US gal')).toBeCloseTo(pounds / 6, 6);
    // 6.60 a gallon; service, overhaul and upkeep are 39.85 an hour, see mission.test.ts
    expect(value('  price of the flights')).toBeCloseTo((pounds / 6) * 6.6 + (seconds / 3600) * 39.85, 4);
  });

  test('no flight: no hours, no fuel, no price', () => {
    const comparison = compare({ ...godwit, knownPoints: [] });
    for (const label of ['  flying, out and back', '  fuel burnt, out and back', '  price of the flights'])
      expect(valueIn(missionRows(comparison), comparison, 'Rowan', label)).toBeUndefined();
  });
});

describe('the verdict in a word', () => {
  test('not known where something needed is not', () => {
    expect(verdictOf('Rowan', { ...godwit, knownPoints: [] })).toBe('not known');
  });

  test('yes, with the number of things that were not looked at', () => {
    const airframe = { ...godwit.airframe, neverExceedSpeed: undefined };
    expect(verdictOf('Rowan', { ...godwit, airframe })).toBe('yes, 1 open');
    expect(verdictOf('Rowan', { ...godwit, airframe, cooling: [] })).toBe('yes, 3 open'); // either leg’s cooling
  });

  test('doubtful where only the stated weights let it go', () => {
    const limited = (weight: number) => ({
      ...godwit,
      airframe: { ...godwit.airframe, maximumTakeoffWeight: si('mass', weight, 'lb') },
    });
    const fuel = Math.max(...assessed('Rowan').mission!.legs!.map((leg) => show('mass', leg.fuel, 'lb')));
    // 1,379 lb and 0.5 % of scatter, people and bags of 780 lb: 3 lb less than that are within the scatter's 6.9
    const counted = 1379 * 1.005 + 780 + fuel;
    expect(verdictOf('Rowan', limited(counted - 3))).toBe('doubtful');
    expect(verdictOf('Rowan', limited(counted - 30))).toBe('NO');
  });
});

test('the figures of either leg', () => {
  const catalogue = withMission({
    headwind: si('speed', 20, 'kt'),
    refuel: false,
    distance: si('distance', 200, 'nmi'),
  });
  const comparison = compare(catalogue);
  expect(shown(missionFigures)).toEqual([
    ['empty weight counted on', 'weight'],
    ['flying, out', 'hours'],
    ['fuel aboard, out', 'fuel'],
    ['left on landing, out', 'fuel'],
    ['cruise, out, true', 'speed'],
    ['flying, back', 'hours'],
    ['fuel aboard, back', 'fuel'],
    ['left on landing, back', 'fuel'],
    ['cruise, back, true', 'speed'],
    ['  fuel burnt, out and back', 'fuel'],
    ['  price of the flights', 'money'],
  ]);
  const value = (label: string) => valueIn(missionFigures, comparison, 'Rowan', label) as number;
  expect(show('mass', value('empty weight counted on'), 'lb')).toBeCloseTo(1379 * 1.005, 6);
  const [out, back] = packageOf(comparison, 'Rowan').mission!.legs!;
  expect(out.flown.time).toBeGreaterThan(back.flown.time + 60); // the headwind
  for (const [leg, name] of [
    [out, 'out'],
    [back, 'back'],
  ] as const) {
    expect(value(`flying, ${name}`)).toBe(leg.flown.time);
    expect(show('volume', value(`fuel aboard, ${name}`), 'US gal')).toBeCloseTo(
      show('mass', leg.fuel, 'lb') / 6,
      6,
    );
    expect(show('volume', value(`left on landing, ${name}`), 'US gal')).toBeCloseTo(
      show('mass', leg.fuelLeft, 'lb') / 6,
      6,
    );
    expect(value(`cruise, ${name}, true`)).toBe(leg.flown.cruiseSpeed);
  }
  // Without fuel there the way home is aboard on landing
  expect(value('left on landing, out')).toBeCloseTo(value('fuel aboard, back'), 9);
  const unknown = compare({ ...catalogue, knownPoints: [] });
  for (const { label } of missionFigures.slice(1))
    expect(valueIn(missionFigures, unknown, 'Rowan', label)).toBeUndefined();
});

test('no mission, no figure', () => {
  const comparison = compare(withMission({ distance: undefined }));
  for (const { label } of missionFigures)
    expect(valueIn(missionFigures, comparison, 'Rowan', label)).toBeUndefined();
});
