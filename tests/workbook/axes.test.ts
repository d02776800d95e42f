import { expect, test } from 'vitest';
import type { Cell } from '../../src/tables/cell.ts';
import { axisTitles, isAboveZero } from '../../src/workbook/axes.ts';
import type { ChartLayout } from '../../src/workbook/layout.ts';

const chart: ChartLayout = {
  title: 'Level speed against altitude',
  kind: 'curves',
  curves: 'packages',
  part: { row: 1, rows: 3, column: 0 },
  up: 'true airspeed',
  fromZero: true,
  unit: { above: true, pattern: ', ([^,]+)$' },
  row: 4,
  column: 1,
  width: 620,
  height: 420,
};
const block: Cell[][] = [
  ['Level speed, kt', null],
  ['pressure altitude, ft (density)', 'Elm'],
  [0, 120],
  [8000, 131],
  ['Something else', -1],
];

test('axes say what their numbers are and the unit that they are in now', () => {
  expect(axisTitles(chart, block)).toEqual({ hAxis: 'pressure altitude, ft', vAxis: 'true airspeed, kt' });
  const metric = [['Level speed, km/h', null], ['pressure altitude, m', 'Elm'], ...block.slice(2)];
  expect(axisTitles(chart, metric)).toEqual({
    hAxis: 'pressure altitude, m',
    vAxis: 'true airspeed, km/h',
  });
});

test('the values of bars lie across', () => {
  const bars: ChartLayout = {
    ...chart,
    kind: 'stacked bars',
    up: 'installed weight',
    part: { row: 0, rows: 3, column: 0 },
    unit: { above: false, pattern: ', (.+)$' },
  };
  expect(axisTitles(bars, [['Package, lb', 'engine']])).toEqual({ hAxis: 'installed weight, lb' });
});

test('an axis begins at zero where no curve goes below', () => {
  expect(isAboveZero(chart, block)).toBe(true);
  expect(isAboveZero(chart, [...block.slice(0, 3), [8000, -0.5]])).toBe(false);
});
