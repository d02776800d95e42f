/** Every table function, through the pushed script, on tables with hostile cells that may well be read as sound. */
import { afterAll, describe, expect, test } from 'vitest';
import { tableFunctions } from '../../src/functions/library.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { oddCells } from './cells.ts';
import { random } from './random.ts';
import { type Argument, answer, watch } from './script.ts';
import { say, times } from './seed.ts';
import { faultOf } from './sound.ts';
import { type Spot, spotsOf, withSpot } from './spots.ts';
import { everyTable, type Grids, tableOf } from './workbooks.ts';

const grids = everyTable;
const spots = spotsOf({ grids });
const numbers = spots.filter(({ role, cell }) => role === 'value' && typeof cell === 'number');

/** A number that a limit may let through: greater and smaller by so many powers of ten, on the limits, of another sign. */
function stretched(value: number): number {
  const kind = random.below(6);
  if (kind === 0) return -value;
  if (kind === 1) return [0, 1, -1, 1e12, -1e12, 1e-11, 100, 0.5][random.below(8)] as number;
  if (kind === 2) return Math.round(value * 10 ** (4 * random.next() - 2));
  return value * 10 ** ((kind === 3 ? 16 : 2) * (random.next() - 0.5));
}

type Change = (before: Grids) => Grids;

const anyCell = (): Change => {
  const [spot] = random.some(spots, 1) as [Spot];
  return (before) => withSpot(before, spot, random.some(oddCells, 1)[0]);
};
const anyNumber = (): Change => {
  const [spot] = random.some(numbers, 1) as [Spot];
  return (before) => withSpot(before, spot, Number(stretched(Number(spot.cell)).toPrecision(6)));
};
const exchanged = (): Change => {
  const [one, other] = random.some(spots, 2) as [Spot, Spot];
  return (before) => withSpot(withSpot(before, one, other.cell), other, one.cell);
};
const tableGone = (): Change => {
  const [name] = random.some(Object.keys(grids), 1) as [string];
  const left: Argument = random.some<Argument>([[], [[]], [['']], [[null, null]], '', null, undefined], 1)[0];
  return (before) => ({ ...before, [name]: left as Grids[string] });
};
const rowOrColumnGone = (): Change => {
  const [spot] = random.some(spots, 1) as [Spot];
  return (before) => {
    const grid = before[spot.table];
    if (!Array.isArray(grid) || grid.length < 2) return before;
    const left =
      random.below(2) === 0
        ? grid.filter((_, row) => row !== spot.row)
        : grid.map((line) => line.filter((_: Cell, column: number) => column !== spot.column));
    return { ...before, [spot.table]: left };
  };
};

/** Most changes leave the tables readable: then everything behind the readers gets to see the numbers. */
const plans: readonly (() => Change[])[] = [
  () => [anyNumber()],
  () => [anyNumber()],
  () => Array.from({ length: 3 }, anyNumber),
  () => [anyCell()],
  () => [rowOrColumnGone()],
  () => [exchanged()],
  () => [tableGone()],
  () => [anyNumber(), anyCell(), rowOrColumnGone()],
];

function argumentsOf(name: string, of: Grids): Argument[] {
  const described = tableFunctions.find((each) => each.name === name);
  return (described?.arguments ?? []).map((argument) => {
    const table = tableOf(argument.name);
    if (table !== undefined) return of[table];
    const named: Argument[] = ['', 'Ash', ' birch ', undefined];
    return random.below(10) > 0
      ? random.some(named, 1)[0]
      : random.some<Argument>([...oddCells, [['Ash', 'Birch']]], 1)[0];
  });
}

const words = (name: string) => {
  const { arguments: all } = tableFunctions.find((each) => each.name === name) ?? { arguments: [] };
  return [...all.map((each) => `${each.name} must be`), ...known];
};

/** What only the tables together show, each naming what to look at. */
const known = [
  'package must be one of',
  'takes at most',
  'discount must be at most the price',
  'the empty weight of the airframe must be more',
];

let calls = 0;
let withResults = 0;
let said = 0;
afterAll(() =>
  say(
    `table functions: ${calls} calls, ${withResults} with results, ${said} refused, the rest lists of faults`,
  ),
);

describe('gives a rectangle of finite numbers, texts and blanks, or says what is wrong', () => {
  test('every function on the same spoilt tables', { timeout: 600_000 }, () => {
    const problems = new Map<string, string>();
    for (let run = 0; run < times(500); run++) {
      const [plan] = random.some(plans, 1);
      const changes = (plan as () => Change[])();
      const spoilt = changes.reduce((sum, change) => change(sum), grids);
      const faulty = () => `${run}: ${difference(spoilt)}`;
      let isRead = true;
      for (const { name } of tableFunctions) {
        if (!isRead && random.below(4) > 0) continue; // one list of faults is like another
        const cells = argumentsOf(name, spoilt);
        const given = watch(() => answer(name, cells));
        calls++;
        if ('message' in given) said++;
        else if (String((given.value as Cell[][])[0]?.[0]).startsWith('No result:')) isRead = false;
        else withResults++;
        const fault = faultOf(name, given, words(name), cells);
        if (fault !== '')
          problems.set(`${name}: ${fault}`.slice(0, 120), `${fault} after ${faulty()}`.slice(0, 600));
      }
    }
    expect([...problems.values()]).toEqual([]);
    expect(withResults / calls).toBeGreaterThan(0.5); // else little behind the readers has been tried
  });
});

/** The cells that were changed, for the message. */
function difference(spoilt: Grids): string {
  return Object.entries(spoilt)
    .flatMap(([table, grid]) => {
      const before = grids[table] ?? [];
      if (!Array.isArray(grid) || grid.length !== before.length) return [`${table}: other rows`];
      return grid.flatMap((line, row) =>
        line.length !== before[row]?.length
          ? [`${table}: other columns`]
          : line.flatMap((cell: Cell, column: number) =>
              cell === before[row]?.[column]
                ? []
                : [
                    `${table} ${row + 1},${column + 1} ${String(line[0])} ${String(before[0]?.[column])}: ${String(before[row]?.[column])} → ${String(cell).slice(0, 60)}`,
                  ],
            ),
      );
    })
    .join('; ');
}
