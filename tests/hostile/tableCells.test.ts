/** Every table with its cells, units and labels spoilt: named as a fault where it stands, or read as what it says. */
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type Cell, isBlank, nameKey, quoted } from '../../src/tables/cell.ts';
import { unitsOf } from '../../src/units.ts';
import { random } from './random.ts';
import { expectFault, expectSame, nothing, read, sayReadings, some, text, told } from './readings.ts';
import { times } from './seed.ts';
import { kindOf, refusedBy, respelt } from './spellings.ts';
import { declaredFields, isMeasured, type Spot, spotsOf, withSpot } from './spots.ts';
import { type Reading, workbooks } from './workbooks.ts';

vi.setConfig({ testTimeout: 180_000 }); // where other work goes on beside
afterAll(() => sayReadings('cells of tables'));

describe.each(workbooks.map((workbook) => [workbook.name, workbook] as const))('%s', (_, workbook) => {
  const { grids } = workbook;
  const spots = spotsOf(workbook);
  const values = spots.filter(({ role, cell }) => role === 'value' && !isBlank(cell));
  let sound: Reading;
  beforeAll(() => {
    sound = read(workbook, grids);
    expect(sound.faults).toEqual([]);
  });
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

  test('a cell left empty is missed, or is what the field says it is, 0 only where it says 0', () => {
    for (const spot of some(values, 1)) {
      const empty = random.some(nothing, 1)[0];
      const reading = read(workbook, withSpot(grids, spot, empty));
      if (spot.field.required) expectFault(reading, spot, empty, 'required');
      else if (reading.faults.length === 0) {
        const asNull = read(workbook, withSpot(grids, spot, null));
        const place = `${spot.table} ${spot.field.label}`;
        expectSame(workbook, reading, asNull, `${place} empty`);
        if (kindOf(spot.field) !== 'number' || spot.field.fallback?.value === 0) continue;
        const zero = read(workbook, withSpot(grids, spot, 0));
        if (zero.faults.length === 0) expect(told(reading), `${place} is no 0`).not.toBe(told(zero));
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

  test('faults in many tables are all named at once', () => {
    const tables = Object.keys(grids);
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
