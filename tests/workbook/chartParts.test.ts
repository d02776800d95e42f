/**
 * What a chart draws keeps its place: whatever is added to the tables or taken away, the cells of every chart hold the
 * curves that it is of, and nothing else, without the workbook being laid out again.
 */
import { describe, expect, test } from 'vitest';
import { call } from '../../src/functions/library.ts';
import { argumentOfTable } from '../../src/functions/tableArguments.ts';
import { type Cell, isBlank } from '../../src/tables/cell.ts';
import {
  type ChartLayout,
  type Grids,
  largestPackageCount,
  type ResultLayout,
} from '../../src/workbook/layout.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { recordNames } from '../../src/workbook/tableSource.ts';
import { tableLayouts } from '../../src/workbook/tables.ts';
import { quoteTerms } from '../quoteTerms.ts';
import { sample } from '../sample.ts';
import { withMoreRecords, withPackages, withValues } from './grownTables.ts';

const godwit = sample('godwit');
const charted = layout.sheets.flatMap(({ results }) => results).filter(({ charts }) => charts.length > 0);

function blockOf({ function: name, arguments: ranges }: ResultLayout, grids: Grids): Cell[][] {
  const tables = Object.entries(grids);
  const given = ranges.map(
    (range) => tables.find(([table]) => argumentOfTable(table as never) === range)?.[1],
  );
  return call(
    name,
    given.map((grid) => grid ?? ''),
  ) as Cell[][];
}

/** What stands above each curve of a chart, the first being the x axis; undefined for names of systems. */
function headsOf({ title, curves }: ChartLayout, packages: readonly string[]): string[] | undefined {
  const x = {
    'Fuel flow against power': 'power',
    'Payload against range': 'range',
    'Least cooling margin against outside air temperature': 'OAT at the field',
    'Best rate of climb against altitude': 'pressure altitude',
    'Level speed against altitude, up to 75 % power': 'pressure altitude',
    'Every loading the seats and tanks allow, inside the CG limits': 'CG',
  }[title];
  if (curves === 'groups') return undefined;
  if (curves === 'limits, packages') return [String(x), 'CG limits', ...packages];
  if (curves === 'packages') return [String(x), ...packages];
  return [String(x), ...packages.flatMap((name) => [`${name} rich`, `${name} lean`])];
}

const widthOf = ({ curves }: ChartLayout, { columns }: ResultLayout) =>
  ({
    groups: columns,
    packages: 1 + largestPackageCount,
    'packages twice': 1 + 2 * largestPackageCount,
    'limits, packages': 2 + largestPackageCount,
  })[curves];

const trimmed = (cells: readonly Cell[]) => cells.slice(0, cells.findLastIndex((cell) => !isBlank(cell)) + 1);

function expectOnlyItsOwn(grids: Grids): void {
  const packages = recordNames(tableLayouts.packages, grids.packages);
  for (const result of charted) {
    const block = blockOf(result, grids);
    expect(String(block[0]?.[0]), JSON.stringify(block.slice(0, 8))).not.toMatch(/^No result/);
    expect(block.length, result.function).toBeLessThanOrEqual(result.rows);
    for (const chart of result.charts) {
      const { row, rows, column } = chart.part;
      const cells = Array.from({ length: rows }, (_, r) =>
        Array.from({ length: widthOf(chart, result) }, (_, c): Cell => block[row + r]?.[column + c] ?? null),
      );
      const [heads = [], ...points] = cells;
      if (chart.curves === 'groups') {
        expect(points.map(([name]) => name).filter((name) => !isBlank(name))).toEqual(packages);
        expect(trimmed(heads).slice(-2), chart.title).toEqual(['other', 'removed']);
      } else {
        const words = (heads: readonly Cell[]) =>
          heads.map((head) =>
            String(head)
              .replace(/[,(].*/, '')
              .trim(),
          );
        expect(words(trimmed(heads)), chart.title).toEqual(words(headsOf(chart, packages) ?? []));
        // numbers from the first row to the last, or to where the block ends
        const filled = points.findLastIndex((line) => line.some((cell) => !isBlank(cell))) + 1;
        for (const [x] of points.slice(0, filled)) expect(x, chart.title).toEqual(expect.any(Number));
        expect(filled === points.length || row + 1 + filled === block.length, chart.title).toBe(true);
      }
      for (const [, ...values] of points) {
        for (const value of values) expect(isBlank(value) || Number.isFinite(value), chart.title).toBe(true);
      }
      const isWhole = row + rows >= block.length || typeof block[row + rows]?.[column] !== 'number';
      expect(isWhole, `${chart.title}: no row left out`).toBe(true);
      const beside = block
        .slice(row, row + rows)
        .flatMap((line) => line.slice(column + widthOf(chart, result)));
      if (chart.kind === 'curves')
        expect(beside.every(isBlank), `${chart.title}: no curve left out`).toBe(true);
    }
  }
}

describe('every chart draws what it is of', () => {
  const counts = Array.from({ length: largestPackageCount }, (_, index) => index + 1);
  test.each(counts)('with %i packages', (count) => expectOnlyItsOwn(withPackages(godwit, count)));

  test.each([
    ['cooling', 5, 'stream'],
    ['stations', 6, 'station'],
    ['tanks', 3, 'tank'],
    ['loadings', 12, 'loading'],
    ['components', 9, 'component'],
    ['equipment', 7, 'item'],
    ['known points', 2, 'source'],
  ] as const)('with more %s', (table, more, naming) => {
    const grids =
      table === 'cooling'
        ? { ...godwit, cooling: [...(godwit.cooling ?? []), ...otherStreams(godwit)] }
        : withMoreRecords(godwit, table, more, naming);
    expectOnlyItsOwn(grids);
  });

  test('with fewer: no cooling streams, no fuel points, no power points, no known points', () => {
    for (const table of ['cooling', 'fuel points', 'power points', 'known points'] as const) {
      expectOnlyItsOwn({ ...godwit, [table]: (godwit[table] ?? []).slice(0, 2) });
    }
  });

  test('with heights and everything else in other units', () => {
    const metric = {
      'show heights in': 'm',
      'show weights in': 'kg',
      'show speeds in': 'km/h',
      'show arms in': 'mm',
    };
    expectOnlyItsOwn(withValues(godwit, 'airframe', metric));
  });

  test('with another mission: higher, farther, without a stop', () => {
    expectOnlyItsOwn(
      withValues(godwit, 'mission', {
        distance: 700,
        'cruise altitude': 12000,
        'refuel at destination': false,
      }),
    );
  });
});

test('no block outgrows its room with as many packages as there is room for, and as many seats and tanks', () => {
  const seated = withMoreRecords(withPackages(godwit, largestPackageCount), 'stations', 8, 'station');
  const grids = { ...seated, quote: quoteTerms('Larch') };
  for (const result of layout.sheets.flatMap(({ results }) => results)) {
    const block = blockOf(result, grids);
    expect(block.length, result.function).toBeLessThanOrEqual(result.rows);
    expect(block[0]?.length ?? 0, result.function).toBeLessThanOrEqual(result.columns);
  }
});

/** Streams that the packages of the sample have not got yet. */
function otherStreams(grids: Grids): Cell[][] {
  const [, , ...lines] = grids.cooling ?? [];
  const first = lines[0] ?? [];
  const known = new Set(lines.map(([name, stream]) => `${name} ${stream}`));
  return recordNames(tableLayouts.packages, grids.packages).flatMap((name) =>
    ['oil', 'charge air']
      .filter((stream) => !known.has(`${name} ${stream}`))
      .map((stream) => [name, stream, ...first.slice(2)]),
  );
}
