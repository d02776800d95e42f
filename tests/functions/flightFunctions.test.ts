/** FLIGHT_TABLE and COOLING_CHECK as a sheet calls them: shape of the blocks, and their figures against the assessment. */
import { describe, expect, test } from 'vitest';
import { call } from '../../src/functions/library.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { fromSi } from '../../src/units.ts';
import { comparisonOf, flightOf, withCells } from '../assessment/flightFixture.ts';
import { sample } from '../sample.ts';
import { tableArguments } from '../tableArguments.ts';
import { expectBlock } from './expectBlock.ts';

const godwit = sample('godwit');

function block(name: string, grids: TableGrids, packageName?: string): Cell[][] {
  const cells = tableArguments(grids);
  return call(name, packageName === undefined ? cells : [...cells, packageName]) as Cell[][];
}

/** The rows of a section below its title and header, to the next row whose first cell is not a number. */
function curveOf(rows: Cell[][], title: string): { header: Cell[]; points: Cell[][] } {
  const at = rows.findIndex(([cell]) => String(cell).startsWith(title));
  if (at < 0) throw new Error(`no section ${title}`);
  const points = rows.slice(at + 2);
  const end = points.findIndex(([cell]) => typeof cell !== 'number');
  return { header: rows[at + 1]!, points: end < 0 ? points : points.slice(0, end) };
}

describe.each(['godwit', 'sanderling', 'minimal'])('%s', (name) => {
  test.each(['FLIGHT_TABLE', 'COOLING_CHECK'])(
    '%s is a rectangle of finite numbers, texts and blanks',
    (table) => expectBlock(block(table, sample(name))),
  );
});

describe('FLIGHT_TABLE', () => {
  const rows = block('FLIGHT_TABLE', godwit);
  const climb = curveOf(rows, 'Best rate of climb');
  const part = curveOf(rows, 'Level speed at 75 %');
  const full = curveOf(rows, 'Level speed at full throttle');

  test('three curves, x first, a column for each package, every row with an x', () => {
    for (const { header, points } of [climb, part, full]) {
      expect(header.slice(0, 5)).toEqual(['pressure altitude, ft', 'Rowan', 'Larch', 'Hazel', 'Alder']);
      expect(points.map(([x]) => x)).toEqual(Array.from({ length: 31 }, (_, step) => step * 1000));
    }
  });

  test('figures are those of the assessment, in the workbook’s units', () => {
    const { seaLevel, levelAt } = flightOf(godwit, 'Larch');
    expect(climb.points[0]![2]).toBe(
      Math.round(fromSi('climb', seaLevel.bestRate.continuous.rateOfClimb, 'ft/min')),
    );
    const level = levelAt(0.75, 8000 * 0.3048);
    expect(part.points[8]![2]).toBeCloseTo(level.possible ? fromSi('speed', level.trueAirspeed, 'kt') : 0, 1);
  });

  test('climb falls with height, and is blank above where it has ended', () => {
    for (const column of [1, 2, 3, 4]) {
      const rates = climb.points.map((row) => row[column]);
      const ends = rates.indexOf(null);
      expect(ends).toBeGreaterThan(8);
      expect(rates.slice(ends).every((cell) => cell === null)).toBe(true);
      const known = rates.slice(0, ends) as number[];
      known.slice(1).forEach((rate, index) => {
        expect(rate).toBeLessThan(known[index]!);
      });
    }
  });

  test('full throttle is never slower than 75 %', () => {
    full.points.forEach((row, index) => {
      for (const column of [1, 2, 3, 4])
        if (typeof row[column] === 'number')
          expect(row[column]).toBeGreaterThanOrEqual(part.points[index]![column] as number);
    });
  });

  test('a package alone, however its name is typed', () => {
    const alone = block('FLIGHT_TABLE', godwit, ' larch ');
    expect(curveOf(alone, 'Best rate of climb').header).toEqual(['pressure altitude, ft', 'Larch', null]);
    expect(curveOf(alone, 'Best rate of climb').points.map((row) => row[1])).toEqual(
      climb.points.map((row) => row[2]),
    );
  });

  test('a name that is none is refused with those there are', () => {
    expect(() => block('FLIGHT_TABLE', godwit, 'Elder')).toThrow(
      'FLIGHT_TABLE: package must be one of Rowan, Larch, Hazel, Alder, got "Elder"',
    );
  });

  test('without a known point every curve is blank and every figure not known', () => {
    const unknown = block('FLIGHT_TABLE', { ...godwit, 'known points': [] });
    expect(
      curveOf(unknown, 'Best rate').points.every((row) => row.slice(1, 5).every((cell) => cell === null)),
    ).toBe(true);
    const ceiling = unknown.find(([cell]) => cell === 'service ceiling')!;
    expect(ceiling.slice(2, 6)).toEqual(['not known', 'not known', 'not known', 'not known']);
  });

  test('metric: 0 to 9,000 m', () => {
    const metric = curveOf(block('FLIGHT_TABLE', sample('sanderling')), 'Best rate of climb');
    expect(metric.points.map(([x]) => x)).toEqual(Array.from({ length: 31 }, (_, step) => step * 300));
  });
});

describe('COOLING_CHECK', () => {
  const rows = block('COOLING_CHECK', godwit);
  const columns = rows.find(([name]) => name === 'Package')!;
  const lines = rows.filter(([name, stream]) => name === 'Larch' && stream === 'coolant');
  const cell = (line: Cell[], name: string) => line[columns.indexOf(name)];

  test('one line for each rating and speed, with the verdict', () => {
    expect(lines.map((line) => [cell(line, 'Power'), cell(line, 'At'), cell(line, 'Verdict')])).toEqual([
      ['MCP', 'best rate speed', 'TOO HOT'],
      ['MCP', 'cooling climb speed', 'holds'],
      ['takeoff, 5 min', 'best rate speed', 'TOO HOT if held until steady'],
      ['takeoff, 5 min', 'cooling climb speed', 'TOO HOT if held until steady'],
    ]);
  });

  test('temperature, limit, margin and exits agree with each other', () => {
    for (const line of rows.filter((row) => ['holds', 'TOO HOT'].includes(String(row.at(-1))))) {
      const margin = (cell(line, 'Limit') as number) - (cell(line, 'Temperature') as number);
      expect(Math.abs(margin - (cell(line, 'Margin') as number))).toBeLessThanOrEqual(1); // each rounded to 1 °F
      if (Math.abs(margin) <= 1) continue;
      const needed = cell(line, 'Exit needed') as number;
      const built = cell(line, 'Exit built') as number;
      if (margin > 0) expect(needed).toBeLessThanOrEqual(built);
      else expect(needed).toBeGreaterThan(built);
    }
  });

  test('margin against OAT falls through zero at the highest OAT', () => {
    const { header, points } = curveOf(rows, 'Least margin');
    expect(header.slice(0, 5)).toEqual(['OAT at the field, °C', 'Rowan', 'Larch', 'Hazel', 'Alder']);
    expect(points.map(([x]) => x)).toEqual(Array.from({ length: 12 }, (_, step) => 5 * step - 10));
    const margins = points.map((row) => row[2] as number);
    margins.slice(1).forEach((margin, index) => {
      expect(margin).toBeLessThan(margins[index]!);
    });
    const above = margins.findIndex((margin) => margin < 0);
    const [before, after] = [margins[above - 1]!, margins[above]!];
    const crossing = (points[above - 1]![0] as number) + (5 * before) / (before - after);
    const highest = rows
      .filter(([name, , power, at]) => name === 'Larch' && power === 'MCP' && at === 'cooling climb speed')
      .map((line) => cell(line, 'Highest OAT at the field') as number);
    expect(Math.abs(crossing - Math.min(...highest))).toBeLessThan(0.6); // shown to 1 °C
  });

  test('a stream that is not known still shows its heat and what it takes', () => {
    const grids = withCells(godwit, 'cooling', ['Larch', 'coolant'], { 'core NTU': '' });
    const line = block('COOLING_CHECK', grids).find(
      ([name, stream]) => name === 'Larch' && stream === 'coolant',
    )!;
    expect(cell(line, 'Verdict')).toBe('not known');
    expect(cell(line, 'Temperature')).toBeNull();
    // 0.55 × 160 hp × √(T_std/T_hot) at 3,000 ft = 84.6 hp = 3,590 Btu/min
    expect(cell(line, 'Heat')).toBe(3590);
    // Air leaving half way from 89.2 °F to the limit of 248 °F: 3,588/(0.24 × 79.4) lb/min
    expect(Math.abs((cell(line, 'Airflow') as number) - 188.3)).toBeLessThan(1);
    // Air of 3,000 ft and 31.8 °C, 90,812 Pa/(287.053 × 304.93 K) = 1.0375 kg/m³, at 94 kt: 1.4235 kg/s/(1.0375 × 48.36 m/s)
    expect(Math.abs((cell(line, 'Inlet, least') as number) - 43.98)).toBeLessThanOrEqual(0.5);
  });

  test('without a known point nothing is judged', () => {
    const unknown = block('COOLING_CHECK', { ...godwit, 'known points': [] });
    expect(unknown.filter(([, text]) => text === 'not known: see the findings')).toHaveLength(4);
  });
});

test('the comparison shows flight and cooling of every package', () => {
  const rows = block('PACKAGE_COMPARISON', godwit);
  const at = (label: string) => rows.find(([cell]) => cell === label)!.slice(1, 6);
  const { assessments } = comparisonOf(godwit);
  expect(at('service ceiling').slice(1)).toEqual(
    assessments.map(
      ({ flight }) => Math.round(fromSi('height', flight!.ceiling.pressureAltitude, 'ft') / 100) * 100,
    ),
  );
  // The margins are those of COOLING_CHECK at maximum continuous power
  const margins = (speed: string, name: string, stream?: string) =>
    block('COOLING_CHECK', godwit)
      .filter(
        ([owner, of, power, when]) =>
          owner === name && power === 'MCP' && when === speed && (stream ?? of) === of,
      )
      .map((line) => line[11] as number);
  const [larch, alder] = ['Larch', 'Alder'].map((name) => margins('cooling climb speed', name, 'coolant')[0]);
  expect(at('coolant, margin in climb').slice(1)).toEqual(['–', larch, '–', alder]);
  expect(at('least margin, best-rate speed').slice(1)).toEqual(
    ['Rowan', 'Larch', 'Hazel', 'Alder'].map((name) => Math.min(...margins('best rate speed', name))),
  );
});
