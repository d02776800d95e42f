/** Every table with its rows and columns moved, doubled and padded: the same, or a fault of what stands twice. */
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type Cell, isBlank } from '../../src/tables/cell.ts';
import { random } from './random.ts';
import { expectSame, nothing, read, sayReadings, text } from './readings.ts';
import { times } from './seed.ts';
import { isMeasured, type Spot, spotsOf, withSpot } from './spots.ts';
import { type Reading, workbooks } from './workbooks.ts';

vi.setConfig({ testTimeout: 180_000 }); // where other work goes on beside
afterAll(() => sayReadings('shapes of tables'));

describe.each(workbooks.map((workbook) => [workbook.name, workbook] as const))('%s', (_, workbook) => {
  const { grids } = workbook;
  const spots = spotsOf(workbook);
  let sound: Reading;
  beforeAll(() => {
    sound = read(workbook, grids);
    expect(sound.faults).toEqual([]);
  });
  const tables = Object.keys(grids);
  const shapeOf = (table: string) => spots.find((spot) => spot.table === table)?.shape;
  const changed = (table: string, change: (grid: Cell[][]) => Cell[][]): Reading =>
    read(workbook, { ...grids, [table]: change((grids[table] ?? []).map((line) => [...line])) });
  const blankLine = (grid: readonly Cell[][]) =>
    Array.from({ length: grid[0]?.length ?? 0 }, () => random.some(nothing, 1)[0]);

  test.each(tables)('%s: columns in another order are the same', (table) => {
    for (let run = 0; run < times(2); run++) {
      const width = grids[table]?.[0]?.length ?? 0;
      const order = random.shuffled(Array.from({ length: width }, (_, at) => at));
      const reading = changed(table, (grid) => grid.map((line) => order.map((at) => line[at])));
      if (shapeOf(table) !== 'across') expectSame(workbook, reading, sound, `${table} ${order}`);
      else expect(reading.faults).toEqual([]);
    }
  });

  test.each(tables)('%s: blank lines, blank columns and a title are no part of it', (table) => {
    for (let run = 0; run < times(2); run++) {
      const reading = changed(table, (grid) => {
        for (let more = 0; more < 3; more++) grid.splice(random.below(grid.length + 1), 0, blankLine(grid));
        const at = random.below((grid[0]?.length ?? 0) + 1);
        const wider = grid.map((line) => line.toSpliced(at, 0, random.some(nothing, 1)[0]));
        const trailing = wider.map((line) => [...line, '', null]);
        return [
          ['A title of one’s own', ...Array.from({ length: (trailing[0]?.length ?? 1) - 1 }, () => '')],
          ...trailing,
        ];
      });
      expectSame(workbook, reading, sound, table);
    }
  });

  const ownColumns = tables.filter((table) => shapeOf(table) !== 'across'); // a column there is a package
  test.each(ownColumns)('%s: a column more that is nobody’s is not read', (table) => {
    const reading = changed(table, (grid) =>
      grid.map((line, row) => [...line, row === 0 ? 'zq own remarks' : row === 1 ? '' : 7]),
    );
    expectSame(workbook, reading, sound, table);
  });

  test.each(tables)('%s: a column pasted twice is a fault of the second', (table) => {
    const width = grids[table]?.[0]?.length ?? 0;
    for (const at of random.some([...Array(width).keys()], times(3))) {
      const reading = changed(table, (grid) => grid.map((line) => [...line, line[at]]));
      const head = String(grids[table]?.[0]?.[at]);
      const found = reading.faults.some(
        (fault) =>
          fault.table === table &&
          fault.row === 1 &&
          fault.column === head &&
          fault.expected === 'a header that stands once',
      );
      expect(found, `${table} ${head}: ${text(reading)}`).toBe(true);
    }
  });

  test.each(tables)('%s: a row pasted twice is a fault of the second', (table) => {
    const first = shapeOf(table) === 'rows' ? 2 : 1;
    const height = grids[table]?.length ?? 0;
    for (const at of random.some([...Array(height).keys()].slice(first), times(4))) {
      if ((grids[table]?.[at] ?? []).every(isBlank)) continue;
      const isKnown = spots.some((spot) => spot.table === table && spot.row === at);
      if (!isKnown) continue;
      const reading = changed(table, (grid) => [...grid, [...(grid[at] ?? [])]]);
      expect(
        reading.faults.some((fault) => fault.table === table && fault.row === height + 1),
        `${table} row ${at + 1}: ${text(reading)}`,
      ).toBe(true);
    }
  });

  test('two headers exchanged are a fault where their units are of two kinds', () => {
    const heads = spots.filter(
      (spot) => spot.role === 'label' && spot.shape === 'rows' && isMeasured(spot, spots),
    );
    const unitOf = (spot: Spot) => grids[spot.table]?.[1]?.[spot.column];
    const pairs = heads.flatMap((one) =>
      heads.flatMap((other): [Spot, Spot][] =>
        one.table === other.table &&
        one.column < other.column &&
        one.field.unit !== undefined &&
        other.field.unit !== undefined &&
        one.field.unit !== other.field.unit &&
        unitOf(one) !== unitOf(other) // two kinds may share a unit
          ? [[one, other]]
          : [],
      ),
    );
    for (const [one, other] of random.some(pairs, times(30))) {
      const reading = read(workbook, withSpot(withSpot(grids, one, other.cell), other, one.cell));
      const where = [`unit of ${one.field.label}`, `unit of ${other.field.label}`];
      const found = reading.faults.some(
        ({ table, row, column }) => table === one.table && row === 2 && where.includes(column),
      );
      expect(found, `${one.table} ${one.field.label} ${other.field.label}: ${text(reading)}`).toBe(true);
    }
  });
});
