/** What stands in place of results. */
import { expect, test } from 'vitest';
import { faultsBlock } from '../../src/assessment/faultsBlock.ts';
import { type Fault, faultText } from '../../src/tables/faults.ts';

const faults = (count: number): Fault[] =>
  Array.from({ length: count }, (_, index) => ({
    table: 'stations',
    row: index + 1,
    rowName: `seat ${index + 1}`,
    column: 'arm',
    got: '"x"',
    expected: 'a number',
  }));

test('a line a fault, in one cell each', () => {
  const two = faults(2);
  expect(faultsBlock(two)).toEqual([
    ['No result: 2 faults in the tables. Correct what is listed here.'],
    ...two.map((fault) => [faultText(fault)]),
  ]);
  expect(faultsBlock(faults(1))[0]).toEqual([
    'No result: 1 fault in the tables. Correct what is listed here.',
  ]);
});

test('40 are listed, the others counted', () => {
  expect(faultsBlock(faults(40))).toHaveLength(41);
  const many = faultsBlock(faults(43));
  expect(many).toHaveLength(42);
  expect(many[0]).toEqual(['No result: 43 faults in the tables. Correct what is listed here.']);
  expect(many[40]).toEqual([faultText(faults(43)[39] as Fault)]);
  expect(many[41]).toEqual(['and 3 more, which follow when these are corrected']);
});
