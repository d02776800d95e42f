/** A unit that a person changes: the charts say it at once, by the trigger that Google runs at every edit. */
import { expect, test } from 'vitest';
import { localHost } from '../../src/local/localWorkbook.ts';
import { sample } from '../sample.ts';

const grids = sample('minimal');
const host = await localHost();
host.run('layOutTables_', grids);

/** Titles of all axes, by the chart's title. */
const axes = () =>
  Object.fromEntries(
    host.workbook.charts.map(({ spec: { options } }) => {
      const { title, hAxis, vAxis } = options as { title: string } & Record<string, { title?: string }>;
      return [title.trim(), [hAxis?.title, vAxis?.title].join(' | ')];
    }),
  );

/** The cell in which the airframe's attribute has its value. */
function valueCell(attribute: string): string {
  const column = host.values('Airframe!A1:A80').map(([label]) => label);
  return `Airframe!B${column.indexOf(attribute) + 1}`;
}

test('the charts say the unit of their numbers, before and after', () => {
  const payload = 'Payload against range';
  const weights = 'What each package weighs installed, by system';
  const before = axes();
  expect(before[payload]).toMatch(/nmi.* \| payload, lb$/);
  expect(before[weights]).toMatch(/^installed weight, lb/);
  host.type(valueCell('show weights in'), 'kg');
  host.type(valueCell('show speeds in'), 'km/h');
  const metric = axes();
  expect(metric[payload]).toMatch(/ km.* \| payload, kg$/);
  expect(metric[weights]).toMatch(/^installed weight, kg/);
  host.type(valueCell('show weights in'), '');
  host.type(valueCell('show speeds in'), '');
  expect(axes()).toEqual(before);
});

test('an edit of something else asks no more than how many cells it was', () => {
  host.workbook.calls.reset();
  host.type(valueCell('CLmax clean'), '1.4');
  expect(host.workbook.calls.names).toEqual(['Range.getNumRows', 'Range.getNumColumns']);
});

test('while somebody else lays out, the charts are left to them', () => {
  const before = axes();
  const { lock } = host.workbook;
  lock.isHeldElsewhere = true;
  expect(() => host.type(valueCell('show fuel in'), 'L')).toThrow(/try again in a moment/);
  expect(host.values(valueCell('show fuel in'))).toEqual([['L']]);
  expect(axes()).toEqual(before);
  lock.isHeldElsewhere = false;
  host.run('layOutTables_', {});
  expect(axes()['Fuel flow against power']).toMatch(/fuel flow, L\/h$/);
});
