/** What must hold for the whole assessment, whatever the tables say: rows in another order, a twin, other units. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Assessment, Comparison } from '../../src/assessment/assess.ts';
import { comparisonBlock } from '../../src/assessment/comparisonBlock.ts';
import type { TableGrids, TableName } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { numbersOf } from '../hostile/numbers.ts';
import { otherUnits } from '../tables/otherUnits.ts';
import {
  assessed,
  column,
  godwit,
  ground,
  headers,
  named,
  onTheGround,
  type Row,
  records,
  withCell,
  withRecords,
} from './changedGodwit.ts';

const shuffled = <T>(list: readonly T[]) => fc.shuffledSubarray([...list], { minLength: list.length });

/** Both have the same numbers, to so many parts of each. */
function expectSame(one: Assessment, other: Assessment, relative: number): void {
  const [first, second] = [numbersOf(one), numbersOf(other)];
  expect([...second.keys()]).toEqual([...first.keys()]);
  for (const [path, value] of first) {
    const found = second.get(path)!;
    if (found === value) continue; // infinite ones too
    expect(Math.abs(found - value), `${path}: ${value} and ${found}`).toBeLessThanOrEqual(
      relative * Math.max(Math.abs(value), 1e-6),
    );
  }
}

describe('order of rows', () => {
  // The envelope is read in rising order only
  const tables = ['components', 'fuel points', 'power points', 'allowances', 'equipment'] as const;

  test.each(tables)('%s in any order', (table) => {
    const findings = (comparison: Comparison) =>
      comparison.findings
        .map(({ package: name, subject, gravity }) => `${name} ${subject} ${gravity}`)
        .sort();
    const lines = (comparison: Comparison) => comparisonBlock(comparison).filter((line) => line.length > 1);
    fc.assert(
      fc.property(shuffled(records(table)), (rows) => {
        const other = assessed(withRecords(table, rows));
        expect(lines(other)).toEqual(lines(ground));
        expect(findings(other)).toEqual(findings(ground));
      }),
      { numRuns: 15 },
    );
  });

  test('packages in any order', () => {
    const grid = onTheGround.packages!;
    const names = ground.assessments.map((each) => each.package.name);
    fc.assert(
      fc.property(shuffled(names), (order) => {
        const columns = order.map((name) => headers('packages').indexOf(name));
        const reordered = grid.map((row) => [row[0], row[1], ...columns.map((at) => row[at]), row.at(-1)]);
        const other = assessed({ ...onTheGround, packages: reordered as Grid });
        for (const name of names) expectSame(named(ground, name), named(other, name), 1e-12);
      }),
      { numRuns: 15 },
    );
  });
});

test('a package against its twin differs by nothing', () => {
  fc.assert(
    fc.property(fc.constantFrom('Rowan', 'Larch', 'Hazel', 'Alder'), (name) => {
      const twin = (table: TableName) =>
        records(table).flatMap((row) => (row[0] === name ? [row, withCell(row, 0, 'Twin')] : [row]));
      const at = headers('packages').indexOf(name);
      const packages = onTheGround.packages!.map((row, index) => [
        ...row.slice(0, -1),
        index === 0 ? 'Twin' : row[at],
        row.at(-1),
      ]);
      const airframe = onTheGround.airframe!.map((row) =>
        row[0] === 'baseline package' ? withCell(row as Row, 1, name) : row,
      );
      // What fits this package fits its twin
      const fits = (table: TableName) =>
        records(table).map((row) => {
          const cell = row[column(table, 'fits')];
          return String(cell ?? '').includes(name)
            ? withCell(row, column(table, 'fits'), `${cell}, Twin`)
            : row;
        });
      let grids: TableGrids = { ...onTheGround, packages: packages as Grid, airframe: airframe as Grid };
      for (const table of ['components', 'fuel points', 'power points'] as const)
        grids = withRecords(table, twin(table), grids);
      for (const table of ['equipment', 'tanks'] as const) grids = withRecords(table, fits(table), grids);
      const comparison = assessed(grids);
      expectSame(named(comparison, name), named(comparison, 'Twin'), 1e-12);
      const differences = comparisonBlock(comparison)
        .filter(([label]) => String(label).trim() === `against ${name}`)
        .map((line) => line.at(-1))
        .filter((cell) => cell !== null); // of amounts that are not known
      expect(differences.length).toBeGreaterThan(5);
      for (const difference of differences) expect(difference).toBe(0);
    }),
    { numRuns: 4 },
  );
});

describe('units of input', () => {
  const other = (unit: Cell) => otherUnits[String(unit)];

  /** Attributes down: the unit stands in a column, its values beside it. */
  function attributesConverted(grid: Grid, unitColumn: number, chosen: readonly boolean[]): Grid {
    return grid.map((row, index) => {
      const [unit, convert] = other(row[unitColumn]) ?? [];
      if (!chosen[index] || convert === undefined) return row;
      return row.map((cell, at) => {
        if (at === unitColumn) return unit;
        return typeof cell === 'number' ? convert(cell) : cell;
      });
    });
  }
  /** Records down: the units stand in the second row. */
  function recordsConverted(grid: Grid, chosen: readonly boolean[]): Grid {
    const units = grid[1] ?? [];
    return grid.map((row, index) =>
      row.map((cell, at) => {
        const [unit, convert] = other(units[at]) ?? [];
        if (index === 0 || !chosen[at] || convert === undefined) return cell;
        if (index === 1) return unit;
        return typeof cell === 'number' ? convert(cell) : cell;
      }),
    );
  }
  const inOtherUnits = (grids: TableGrids, chosen: readonly boolean[]): TableGrids =>
    Object.fromEntries(
      Object.entries(grids).map(([table, grid]) => {
        const turned = chosen.slice(table.length % 5); // another pattern for each table
        if (table === 'packages') return [table, attributesConverted(grid, 1, turned)];
        if (['airframe', 'mission', 'rates'].includes(table))
          return [table, attributesConverted(grid, 2, turned)];
        return [table, recordsConverted(grid, turned)];
      }),
    );
  const choices = fc.array(fc.boolean(), { minLength: 80, maxLength: 80 });

  test('change no weight, balance, payload, fuel or installation figure', () => {
    fc.assert(
      fc.property(choices, (chosen) => {
        const other = assessed(inOtherUnits(onTheGround, chosen));
        ground.assessments.forEach((each, index) => {
          expectSame(each, other.assessments[index]!, 1e-7);
        });
      }),
      { numRuns: 25 },
    );
  });

  test('nor climb, ceiling, stall speed and the fuel of the mission', () => {
    const shown = (comparison: Comparison) =>
      comparison.assessments.flatMap(({ flight, mission }) => [
        flight!.seaLevel.bestRate.takeoff.rateOfClimb,
        flight!.ceiling.pressureAltitude,
        flight!.stall.landing,
        ...mission!.legs!.map(({ fuel }) => fuel),
      ]);
    const before = shown(assessed(godwit));
    fc.assert(
      fc.property(choices, (chosen) => {
        const after = shown(assessed(inOtherUnits(godwit, chosen)));
        expect(after).toHaveLength(before.length);
        // ceilings are sought to 0.1 m, speeds to 1 mm/s, fuel to 1 g
        for (const [index, value] of after.entries())
          expect(Math.abs(value / before[index]! - 1)).toBeLessThan(1e-4);
      }),
      { numRuns: 3 },
    );
  });
});
