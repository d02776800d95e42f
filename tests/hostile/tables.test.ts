/** Every table with its cells, units and headers spoilt: named as a fault where it stands, or read as what it says. */
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type Cell, isBlank, nameKey, quoted } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import { unitsOf } from '../../src/units.ts';
import { meaning, oddCells } from './cells.ts';
import { random } from './random.ts';
import { say, times } from './seed.ts';
import {
  declaredFields,
  type Grids,
  isMeasured,
  type Reading,
  type Spot,
  spotsOf,
  toldBy,
  type Workbook,
  withSpot,
  workbooks,
} from './workbooks.ts';

vi.setConfig({ testTimeout: 180_000 }); // where other work goes on beside

let readings = 0;
let named = 0;
const read = (workbook: Workbook, grids: Grids): Reading => {
  readings++;
  const reading = workbook.read(grids);
  if (reading.faults.length > 0) named++;
  return reading;
};
afterAll(() => say(`tables: ${readings} readings, ${named} with faults`));

const nothing = ['', ' ', null, undefined, '\u00a0', '\u200b'] as const;

const text = ({ faults }: Reading) => faults.map(faultText).join('\n');

/** The fault of this very cell, quoting it. */
function expectFault(reading: Reading, { table, at, row, field, role }: Spot, cell: Cell, why: string): void {
  // a name, or a number, in the place of a unit makes its row a record
  const isTakenForRecord = role === 'unit' && (field.key || typeof cell === 'number');
  const found = reading.faults.some(
    (fault) =>
      fault.table === table &&
      fault.row === at.row &&
      (fault.column === at.column || (isTakenForRecord && fault.column === '')) &&
      (fault.got === quoted(cell) || (isBlank(cell) && fault.got === 'an empty cell') || fault.column === ''),
  );
  if (!found)
    expect.fail(
      `${why}: ${table} ${field.label} ${role} row ${row + 1}: ${quoted(cell)} is not named in\n${text(reading)}`,
    );
}

const texts = new WeakMap<Reading, string>();
/** The sound reading is asked again and again. */
function told(reading: Reading): string {
  const before = texts.get(reading);
  if (before !== undefined) return before;
  const now = toldBy(reading.value);
  texts.set(reading, now);
  return now;
}

function expectSame(workbook: Workbook, one: Reading, other: Reading, why: string): void {
  if (one.faults.length > 0) expect.fail(`${workbook.name}, ${why}: ${text(one)}`);
  if (told(one) !== told(other)) expect(JSON.parse(told(one)), why).toEqual(JSON.parse(told(other)));
}

type Kind = 'number' | 'text' | 'term' | 'names' | 'choice' | 'flag' | 'day';

/** What a field takes, found by asking it. */
function kindOf({ read: readField, choices, unit }: Spot['field']): Kind {
  const takes = (cell: Cell) => 'value' in readField(cell, unit === undefined ? '' : 'x');
  if (choices !== undefined) return choices.includes('TRUE') ? 'flag' : 'choice';
  if (unit !== undefined) return 'number';
  if (takes('2026-03-14') && !takes('a name')) return 'day';
  if (!takes('a name')) return 'number';
  const one = readField('a, b', '');
  if ('value' in one && Array.isArray(one.value)) return 'names';
  return takes(5) ? 'text' : 'term';
}

/** What every kind of field refuses, whatever the table. */
const refusedBy: Readonly<Record<Kind, readonly Cell[]>> = {
  number: oddCells.filter((cell) => meaning(cell) === 'refused'),
  text: [true, false, new Date(0), new Date(Number.NaN), '#REF!', '#BEZUG!'],
  term: [true, 12, new Date(0), '#N/A'],
  names: [true, new Date(0), '#N/A'],
  choice: [true, 12, new Date(0), '#N/A', 'another', 'x'.repeat(5000), '1,5', 'toString', '__proto__'],
  flag: [1, 0, 12, new Date(0), '#N/A', 'perhaps', 'x', '\u2713', 'TRUEE'],
  day: [
    true,
    12,
    45_000,
    '#N/A',
    'yesterday',
    '3/4/26',
    '14.03.2026',
    '2026-02-30',
    '2026-3-4',
    new Date(Number.NaN),
  ],
};

/** The same in another spelling. */
function respelt(cell: Cell, kind: Kind): Cell[] {
  if (kind === 'number') {
    const value = meaning(cell) as number;
    const plainly = String(value);
    const forms = [
      plainly,
      ` ${plainly} `,
      `\u00a0${plainly}\u00a0`,
      `${plainly}\u200b`,
      `\t${plainly}`,
      value,
    ];
    const positive =
      value > 0 ? [`+${plainly}`] : value < 0 ? [plainly.replace('-', '\u2212')] : ['-0', '+0', -0];
    return [
      ...forms,
      ...positive,
      plainly.includes('.') ? `${plainly}0` : `${plainly}.`,
      plainly.replace(/^0\./, '.'),
    ];
  }
  const word = String(cell);
  if (kind === 'day') return [` ${word}`, `${word}\u00a0`, new Date(`${word}T12:00:00`)];
  if (kind === 'flag') {
    const yes = ['TRUE', 'true', ' Yes ', 'yes', '\u00a0TRUE', true];
    return cell === true || nameKey(word) === 'true' ? yes : ['FALSE', 'False', 'no', ' NO', false];
  }
  const spaced = [
    ` ${word}`,
    `${word}\u00a0`,
    `\u200b${word}`,
    word.replace(/ /g, '\u00a0'),
    word.replace(/ /g, '  '),
  ];
  return kind === 'term' || kind === 'choice' ? [...spaced, word.toUpperCase(), word.toLowerCase()] : spaced;
}

describe.each(workbooks.map((workbook) => [workbook.name, workbook] as const))('%s', (_, workbook) => {
  const { grids } = workbook;
  const spots = spotsOf(workbook);
  const values = spots.filter(({ role, cell }) => role === 'value' && !isBlank(cell));
  let sound: Reading;
  beforeAll(() => {
    sound = read(workbook, grids);
    expect(sound.faults).toEqual([]);
  });
  /** Some of a list, others every run; of each field at least one. */
  const some = (list: readonly Spot[], each: number) => {
    const groups = new Map<unknown, Spot[]>();
    for (const spot of list) {
      const key = spot.field;
      groups.set(key, [...(groups.get(key) ?? []), spot]);
    }
    return [...groups.values()].flatMap((group) => random.some(group, times(each)));
  };

  test('what is no value of a field is a fault of that cell', () => {
    for (const spot of some(values, 1)) {
      for (const cell of random.some(refusedBy[kindOf(spot.field)], times(3)))
        expectFault(read(workbook, withSpot(grids, spot, cell)), spot, cell, 'refused');
    }
  });

  test('the same value spelt otherwise is the same', () => {
    for (const spot of some(values, 1)) {
      for (const cell of random.some(respelt(spot.cell, kindOf(spot.field)), times(2)))
        expectSame(
          workbook,
          read(workbook, withSpot(grids, spot, cell)),
          sound,
          `${spot.table} ${spot.field.label} ${quoted(cell)}`,
        );
    }
  });

  test('a cell left empty is missed, or is what the field says it is, never 0', () => {
    for (const spot of some(values, 1)) {
      const empty = random.some(nothing, 1)[0];
      const reading = read(workbook, withSpot(grids, spot, empty));
      if (spot.field.required) expectFault(reading, spot, empty, 'required');
      else if (reading.faults.length === 0) {
        const asNull = read(workbook, withSpot(grids, spot, null));
        expectSame(workbook, reading, asNull, `${spot.table} ${spot.field.label} empty`);
        expect(spot.field.fallback?.value).not.toBeNaN();
      } else
        expect(
          reading.faults.some(({ table }) => table === spot.table),
          text(reading),
        ).toBe(true);
    }
  });

  test('a share in a cell shown as per cent is not taken for hundredths of one', () => {
    for (const spot of values.filter(({ field }) => field.unit === 'fraction')) {
      const percent = Number(spot.cell);
      if (percent === 0) continue;
      const share = percent / 100;
      const unitCell = spots.find(
        (each) =>
          each.role === 'unit' &&
          each.table === spot.table &&
          each.field === spot.field &&
          (spot.shape === 'rows' || each.row === spot.row),
      ) as Spot;
      if (unitCell.cell !== '%') continue;
      expectFault(read(workbook, withSpot(grids, spot, share)), spot, share, 'per cent');
    }
  });

  const units = spots.filter((spot) => spot.role === 'unit' && isMeasured(spot, spots));

  test('a unit that is missing, unknown or of another kind is a fault of the unit', () => {
    for (const spot of units) {
      const { unit } = spot.field;
      const own =
        unit === undefined || unit.startsWith('currency')
          ? []
          : unitsOf(unit as 'mass').map((each) => each.toLowerCase());
      const others: Cell[] = ['lb', 'in', 'US gal', 'hp', 'kt', '°F', 'psi', 'A', '%'];
      const wrong = [
        ...others,
        'furlong',
        'lbx',
        12,
        true,
        new Date(0),
        '#REF!',
        'toString',
        '__proto__',
        'US$',
        '€',
      ];
      const faulty = wrong.filter((cell) => !own.includes(String(cell).toLowerCase()));
      for (const cell of random.some(faulty, times(2)))
        expectFault(read(workbook, withSpot(grids, spot, cell)), spot, cell, 'unit');
      if (unit === undefined || unit === 'number') continue;
      const [empty] = random.some([...nothing, '-', 'unit'], 1);
      expectFault(read(workbook, withSpot(grids, spot, empty)), spot, empty, 'no unit');
    }
  });

  test('a unit spelt otherwise is the same', () => {
    for (const spot of units) {
      if (spot.field.unit === undefined) continue;
      const unit = String(spot.cell);
      const forms = [unit.toUpperCase(), unit.toLowerCase(), ` ${unit}\u00a0`, `${unit}\u200b`];
      if (!spot.field.unit.startsWith('currency'))
        forms.push(`(${unit})`, `${unit}.`, unit.replace(/ /g, ''), unit.replace('°', 'º'));
      for (const cell of random.some(forms, times(1)))
        expectSame(
          workbook,
          read(workbook, withSpot(grids, spot, cell)),
          sound,
          `${spot.table} ${spot.field.label} in ${quoted(cell)}`,
        );
    }
  });

  const labels = spots.filter((spot) => spot.role === 'label');

  test('a label in other case and with other spaces is the same; misspelt it is a fault', () => {
    for (const spot of some(labels, 1)) {
      const label = String(spot.cell);
      const forms = [
        label.toUpperCase(),
        ` ${label}`,
        `${label}\u00a0`,
        label.replace(/ /g, '\u00a0'),
        label.replace(/ /g, '\n'),
      ];
      for (const cell of random.some(forms, times(1)))
        expectSame(
          workbook,
          read(workbook, withSpot(grids, spot, cell)),
          sound,
          `${spot.table} ${quoted(cell)}`,
        );
      if (!isMeasured(spot, spots) || label.length < 5) continue;
      const letter = 1 + random.below(label.length - 2);
      const swapped = `${label.slice(0, letter)}${label[letter + 1]}${label[letter]}${label.slice(letter + 2)}`;
      const slips = [
        `${label.slice(0, letter)}${label.slice(letter + 1)}`,
        `${label.slice(0, letter)}q${label.slice(letter)}`,
        swapped,
      ];
      for (const cell of random.some(slips, times(1))) {
        if (
          nameKey(cell) === nameKey(label) ||
          spots.some(
            (each) =>
              each.role === 'label' &&
              each.table === spot.table &&
              nameKey(String(each.cell)) === nameKey(cell),
          )
        )
          continue;
        expectFault(read(workbook, withSpot(grids, spot, cell)), spot, cell, 'misspelt');
      }
    }
  });

  test('a label left empty above or beside values, as merged cells do, is a fault', () => {
    for (const spot of labels) {
      if (!isMeasured(spot, spots)) continue;
      const reading = read(workbook, withSpot(grids, spot, null));
      const where = spot.shape === 'rows' ? `column ${spot.column + 1}` : 'attribute';
      expect(
        reading.faults.some(
          ({ table, row, column, got }) =>
            table === spot.table && row === spot.at.row && column === where && got === 'an empty cell',
        ),
        `${spot.table} ${spot.field.label}: ${text(reading)}`,
      ).toBe(true);
    }
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

  test.each(tables)('%s: a column more that is nobody’s is not read', (table) => {
    if (shapeOf(table) === 'across') return; // a column there is a package
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
    const heads = labels.filter((spot) => spot.shape === 'rows' && isMeasured(spot, spots));
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

  test('faults in many tables are all named at once', () => {
    for (let run = 0; run < times(12); run++) {
      const chosen = random.some(tables, 1 + random.below(tables.length)).map((table) => {
        const [spot] = random.some(
          values.filter((each) => each.table === table && each.field.key === false),
          1,
        );
        return spot as Spot;
      });
      const planted = chosen.map((spot) => ({
        spot,
        cell: random.some(refusedBy[kindOf(spot.field)], 1)[0],
      }));
      const spoilt = planted.reduce((sum, { spot, cell }) => withSpot(sum, spot, cell), grids);
      const reading = read(workbook, spoilt);
      for (const { spot, cell } of planted) expectFault(reading, spot, cell, `one of ${planted.length}`);
    }
  });
});

test('every column and attribute of every table is among them', () => {
  const held = new Set(
    workbooks.flatMap((workbook) =>
      spotsOf(workbook)
        .filter(({ role, cell }) => role === 'value' && !isBlank(cell))
        .map(({ table, field }) => `${table}: ${field.label}`),
    ),
  );
  expect(declaredFields.filter((field) => !held.has(field))).toEqual([]);
});
