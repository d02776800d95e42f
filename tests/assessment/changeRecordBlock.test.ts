/**
 * CHANGE_RECORD of the Wren of tests/tables/smallBuild.ts, by hand in lb and in: the mean of 900 and 917 lb, 71,625 and 72,801
 * lb·in, is 908.5 lb and 72,213 lb·in. The record itself has tests in changeRecord.test.ts.
 */
import { describe, expect, test } from 'vitest';
import { changeRecordBlock } from '../../src/assessment/changeRecordBlock.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { type BuildCells, buildOf, catalogueOf, smallBuild } from '../tables/smallBuild.ts';
import { put, smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute } from './flightFixture.ts';

const small: TableGrids = smallWorkbook();

function blockOf(build: Partial<BuildCells> = smallBuild(), grids = small): Cell[][] {
  const catalogue = catalogueOf(grids);
  return changeRecordBlock(catalogue, buildOf(build, catalogue), packageNamed(catalogue, 'Ash'));
}
const weighed = () => ({ ...smallBuild(), changes: smallBuild().changes.slice(0, 2) });
const withChanges = (...rows: Cell[][]) => ({ ...weighed(), changes: [...weighed().changes, ...rows] });
const lineOf = (label: string, block = blockOf()) => block.find(([cell]) => cell === label)?.slice(1);

test('title, head, units, the weighing, then every entry', () => {
  expect(blockOf().slice(0, 6)).toEqual([
    ['Changes since the weighing'],
    [
      ...['Date', 'Item', 'Weight', 'Arm', 'Moment', 'Basic empty weight', 'CG', 'CG moved by'],
      ...['This entry', 'All since the weighing', 'Reason'],
    ],
    ['', '', 'lb', 'in', 'lb·in', 'lb', 'in', 'in'],
    ['2026-03-08', 'weighing', null, null, null, 908.5, 79.49],
    // 72,288/909 is 79.525, from 79.486
    ['2026-04-01', 'beacon', 0.5, 150, 75, 909, 79.52, 0.04, 'negligible', 'negligible', null],
    // 72,528/915 is 79.266; more than 1 lb (AC 43.13-1B 10-2c)
    [
      ...['2026-05-01', 'heavier battery', 6, 40, 240, 915, 79.27, -0.26],
      ...['to be recorded', 'to be recorded', 'starter'],
    ],
  ]);
});

test('what it weighs now, with its CG, moment and useful load, on the day of the last entry', () => {
  expect(blockOf().slice(6, 10)).toEqual([
    ['Basic empty weight on 2026-05-01', null, 915, 'lb'],
    ['CG', null, 79.27, 'in'],
    ['moment', null, 72_528, 'lb·in'],
    ['Useful load', null, 685, 'lb'],
  ]);
});

test('no change: on the day of the weighing', () => {
  const block = blockOf(weighed());
  expect(lineOf('Basic empty weight on 2026-03-08', block)).toEqual([null, 908.5, 'lb']);
});

describe('an entry whose weight is not known', () => {
  const block = () =>
    blockOf(withChanges(['2026-04-01', 'paint', '', 95, ''], ['2026-04-02', 'hook', 0.5, 80, '']));

  test('not known, without a moment, and whether it is negligible neither', () => {
    const [paint, hook] = block().slice(4, 6);
    expect(paint).toEqual([
      ...['2026-04-01', 'paint', 'not known', 95, null, 908.5, 79.49, 0, 'NOT KNOWN', 'NOT KNOWN', null],
    ]);
    expect(hook?.slice(8, 10)).toEqual(['negligible', 'NOT KNOWN']);
  });

  test('a new weighing is due, and why; else it is not', () => {
    expect(lineOf('New weighing', block())).toEqual([null, 'DUE', 'the weight of "paint" is not known']);
    expect(lineOf('New weighing')).toEqual([null, 'not due', null]);
  });
});

describe('remarks', () => {
  const after = (label: string, block: Cell[][]) =>
    block.slice(block.findIndex(([cell]) => cell === label) + 1);
  const remarks = (block: Cell[][]) => {
    const lines = after('New weighing', block);
    return lines.slice(
      0,
      lines.findIndex(([cell]) => String(cell).startsWith('The menu item')),
    );
  };

  test('what counts as negligible: with a MAC the CG as well', () => {
    expect(remarks(blockOf())).toEqual([
      [
        'Negligible: 1 lb up to 5,000 lb empty; the CG is not judged, for the airframe table has no MAC (AC 43.13-1B 10-2c).',
      ],
    ]);
    const mac = withAttribute(small, 'airframe', 'MAC length', 50, 'in');
    expect(remarks(blockOf(smallBuild(), mac))).toEqual([
      [
        'Negligible: 1 lb up to 5,000 lb empty, and the CG moved by less than 0.05 % MAC (AC 43.13-1B 10-2c).',
      ],
    ]);
  });

  test('changes before the weighing are in it', () => {
    const earlier = withChanges(['2026-02-01', 'lamp', 1, 80, ''], ['2026-02-02', 'hook', 1, 80, '']);
    expect(remarks(blockOf(earlier))[0]).toEqual([
      '2 earlier than the weighing, which has them in it: lamp, hook',
    ]);
  });

  test('an option not ticked that went in as a change, however it is typed; one that is ticked is another', () => {
    const changes = withChanges(
      ['2026-04-01', 'FAIRINGS', 12, 88, ''],
      ['2026-04-02', 'autopilot', 9, 120, ''],
      ['2026-04-03', 'radio', 1, 70, ''],
    );
    expect(remarks(blockOf(changes)).at(-1)).toEqual([
      'In the equipment table too, leave unticked there, for this weight has it: FAIRINGS, autopilot',
    ]);
  });
});

describe('below', () => {
  test('the rows to adopt, after the menu item that does it', () => {
    const block = blockOf();
    const at = block.findIndex(([cell]) => String(cell).startsWith('The menu item "Take weighing in …"'));
    expect(block[at + 1]?.[0]).toBe('attribute');
    expect(block[at + 2]).toEqual(['empty weight', 915, 'lb', 'before 2026-05-01: 900 lb']);
  });

  test('no weighing that counts: where to begin, and nothing else', () => {
    const none = [['Changes'], ['No weighing to begin from: enter one in the weighings table.']];
    expect(blockOf({})).toEqual(none);
    const build = smallBuild();
    build.weighings.forEach((row, index) => {
      if (row[0] === 'A' || row[0] === 'B') put(build.weighings, index + 1, 'level', false);
    });
    expect(blockOf(build)).toEqual(none);
  });
});
