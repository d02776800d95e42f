/** The cards as they are printed: those of the plain aircraft, and of the builder's. */
import { describe, expect, test } from 'vitest';
import { printedCards } from '../../src/assessment/printedCards.ts';
import { asBuilt } from './asBuilt.ts';
import { catalogueOf } from './flightFixture.ts';
import { airframe, plain } from './plainCards.ts';

const printed = (grids = plain) => printedCards(catalogueOf(grids));
const cards = (grids = plain) => printed(grids).groups.flatMap((group) => group.cards);
const card = (name: string, grids = plain) => {
  const found = cards(grids).find(({ title }) => title.endsWith(`: ${name}`));
  if (found === undefined) throw new Error(`no card ${name}`);
  return found;
};

test('on the ground, in the air, at both ends of the CG range, numbered through', () => {
  const { title, words, groups } = printed();
  expect(title).toBe('Turnstone with Elm');
  expect(groups.map((group) => [group.title, group.cards.length])).toEqual([
    ['On the ground', 5],
    ['In the air', 7],
    ['Stalls at both ends of the CG range', 2],
  ]);
  const titles = groups.flatMap((group) => group.cards.map((each) => each.title));
  expect(titles[0]).toBe('Card 1: fuel flow on the ground');
  expect(titles[13]).toBe('Card 14: stall, aft CG');
  expect(words[0]).toMatch(/^Phase one: at least 25 h .* else 40 h/);
  expect(words[1]).toContain('PREDICTED');
  expect(words[2]).toBe('Estimates for choosing and quoting an engine, not for flight.');
});

describe('a line', () => {
  const line = (name: string, label: string, grids = plain) =>
    card(name, grids).figures.find((each) => each.label.startsWith(label));

  test('prediction, band, limit and unit: 2,700 rpm within 3 %, at most as many', () => {
    expect(line('static rpm', 'engine rpm')).toEqual({
      label: 'engine rpm',
      predicted: '2,700',
      band: '2,620 – 2,780', // 2,619 and 2,781 in steps of 10
      limit: 'at most 2,700',
      unit: 'rpm',
      words: '',
    });
  });

  test('no band without a prediction, and not known where there is no limit either', () => {
    const none = { ...plain, 'fuel points': [] };
    expect(line('fuel flow', '75 % lean', none)).toMatchObject({
      predicted: 'not known',
      band: '',
      limit: '',
    });
    expect(line('first flights', 'VNO')).toMatchObject({ predicted: '', band: '', limit: 'at most 136' }); // 70 m/s
    expect(line('first flights', 'takeoff weight')).toMatchObject({ band: '', limit: 'at most 2,204.6' });
  });

  test('the least allowed; words; no indent', () => {
    expect(line('stall, aft CG', 'least margin')).toMatchObject({ limit: 'at least 0.0', unit: 'in' });
    expect(line('unusable fuel', 'wing tanks')?.words).toMatch(/^more than that is no usable fuel/);
    expect(line('first flights', 'at, calibrated')).toMatchObject({ unit: 'kt' });
  });
});

test('heads of what is filled in: the label, and the unit where there is one', () => {
  expect(card('stall, forward CG').columns).toEqual(['weight, lb', 'flaps', 'calibrated airspeed, kt']);
  expect(card('first flights').columns).toEqual([]);
  const metric = airframe('show weights in', 'kg', '', airframe('show speeds in', 'km/h'));
  expect(card('stall, forward CG', metric).columns).toEqual([
    'weight, kg',
    'flaps',
    'calibrated airspeed, km/h',
  ]);
});

test('what is recorded, reduced and minded goes along', () => {
  for (const { setUp, record, reduce, caution } of cards())
    for (const words of [setUp, record, reduce, caution]) expect(words.length).toBeGreaterThan(10);
});

test('the builder’s aircraft with the package that it is weighed for or is its baseline', () => {
  const { catalogue } = asBuilt();
  expect(printedCards(catalogue).title).toBe('Godwit with Rowan');
});
