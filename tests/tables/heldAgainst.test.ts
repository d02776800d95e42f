/** Faults that show when values are held against each other: at the limit, with a cell missing, with another fault beside. */
import { describe, expect, test } from 'vitest';
import { readBuild } from '../../src/tables/build.ts';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import { flag, quantity } from '../../src/tables/field.ts';
import { readQuoteTerms } from '../../src/tables/quote.ts';
import { meantLabel } from '../../src/tables/readCell.ts';
import { buildFaults, buildOf, catalogueOf, smallBuild } from './smallBuild.ts';
import { faultsOf, put, smallWorkbook, withCell } from './smallWorkbook.ts';

/** A table without the rows that begin so. */
const withoutRow = (grid: Cell[][], first: string) => grid.filter(([name]) => name !== first);

describe('components', () => {
  test('a package that is missing is one fault, not also a lump of nobody', () => {
    expect(faultsOf(withCell('components', 7, 'package', ''))).toEqual([
      'components, row 7 (engine block), package: got an empty cell, expected a value',
    ]);
  });

  test('a name that is missing does not hide a missing arm', () => {
    const grids = withCell('components', 3, 'component', '');
    put(grids.components, 3, 'arm', '');
    expect(faultsOf(grids)).toEqual([
      'components, row 3 (Ash), component: got an empty cell, expected a value',
      'components, row 3 (Ash), arm: got an empty cell, expected an arm, or details with arms that are included in this lump',
    ]);
  });

  test('a weight that cannot be read wants no arm as well', () => {
    const grids = withCell('components', 3, 'weight', 'heavy');
    put(grids.components, 3, 'arm', '');
    expect(faultsOf(grids)).toEqual([
      'components, row 3 (Ash, engine), weight: got "heavy", expected a number without unit or separators',
    ]);
  });

  test('another fault of the table hides no missing arm; a lump in doubt does', () => {
    const grids = withCell('components', 3, 'weight', 'heavy');
    put(grids.components, 5, 'arm', '');
    expect(faultsOf(grids).map((fault) => fault.replace(/:.*/, ''))).toEqual([
      'components, row 3 (Ash, engine), weight',
      'components, row 5 (Ash, propeller), arm',
    ]);
    const lump = withCell('components', 7, 'included in', 'kit');
    put(lump.components, 8, 'included in', 'kit');
    expect(faultsOf(lump).map((fault) => fault.replace(/:.*/, ''))).toEqual([
      'components, row 7 (Birch, engine block), included in',
      'components, row 8 (Birch, gearbox), included in',
    ]);
  });
});

describe('names of another table in a message', () => {
  const fault = (items: number) => {
    const grids = withCell('equipment', 6, 'excludes', 'skis');
    for (let item = 6; item <= items; item++)
      grids.equipment.push([`item ${item}`, 1, 80, 'weighed', 0, 0, '', '', '', false, false]);
    return faultsOf(grids)[0];
  };

  test('a dozen are listed, more are counted', () => {
    expect(fault(12)).toContain('from the equipment table (radio, lights,');
    expect(fault(12)).toContain('item 12)');
    expect(fault(13)).toContain('from the equipment table (13 names)');
  });

  test('where there is none, that is said', () => {
    const grids = smallWorkbook();
    expect(faultsOf({ ...grids, equipment: grids.equipment.slice(0, 2) })).toContain(
      'airframe, row 8 (weighed with equipment), value: got "radio, lights", expected a name from the equipment table (none is there)',
    );
  });
});

describe('airframe and packages', () => {
  test('a restricted range with one end, whose other attribute is not in the table', () => {
    const grids = smallWorkbook();
    expect(faultsOf({ ...grids, packages: withoutRow(grids.packages, 'restricted rpm to') })).toEqual([
      'packages, restricted rpm to, Ash: got nothing, expected where the restriction ends',
    ]);
    expect(faultsOf({ ...grids, packages: withoutRow(grids.packages, 'restricted rpm from') })).toEqual([
      'packages, restricted rpm from, Ash: got nothing, expected where the restriction begins',
    ]);
  });

  test('an attribute that is misspelt is not missed as well', () => {
    expect(faultsOf(withCell('packages', 13, 'attribute', 'restricted rpm too'))).toEqual([
      'packages, row 13, attribute: got "restricted rpm too", expected "restricted rpm to"',
    ]);
  });

  test('an end that cannot be read is not missed as well', () => {
    expect(faultsOf(withCell('packages', 13, 'Ash', 'high'))).toEqual([
      'packages, row 13 (restricted rpm to), Ash: got "high", expected a number without unit or separators',
    ]);
  });

  test('a tailwheel at the main wheels is not aft of them', () => {
    const grids = withCell('airframe', 19, 'value', 'tailwheel');
    put(grids.airframe, 21, 'value', 95);
    expect(faultsOf(grids)).toEqual([
      'airframe, row 21 (nose or tail wheel arm), value: got 95, expected a tailwheel aft of the main wheels',
    ]);
  });

  test('limits that are not given limit nothing', () => {
    const grids = smallWorkbook();
    for (const row of [11, 12, 13, 17, 18, 20]) put(grids.airframe, row, 'value', '');
    for (const column of ['minimum', 'usual', 'limit group', 'group maximum'])
      for (const row of [5, 6]) put(grids.stations, row, column, '');
    expect(faultsOf(grids)).toEqual([]);
  });
});

describe('stations and tanks', () => {
  const limitOfTheGroup = (row: number, name: string) =>
    `stations, row ${row} (${name}), group maximum: got an empty cell, expected the limit of the group`;

  test('a limit that the first of a group lacks, or both', () => {
    const grids = withCell('stations', 5, 'group maximum', '');
    expect(faultsOf(grids)).toEqual([limitOfTheGroup(5, 'shelf')]);
    put(grids.stations, 6, 'group maximum', '');
    expect(faultsOf(grids)).toEqual([limitOfTheGroup(5, 'shelf'), limitOfTheGroup(6, 'locker')]);
  });

  test('the least loads may fill a group', () => {
    const grids = withCell('stations', 5, 'minimum', 40);
    put(grids.stations, 6, 'minimum', 40);
    expect(faultsOf(grids)).toEqual([]);
  });

  test('a tank without a name is that fault alone', () => {
    const grids = withCell('tanks', 3, 'tank', '');
    grids.loadings = [];
    expect(faultsOf(grids)).toEqual(['tanks, row 3, tank: got an empty cell, expected a value']);
  });

  test('a fuel flow that cannot be read is not missed as well', () => {
    expect(faultsOf(withCell('fuel points', 5, 'fuel flow', '4,5'))).toEqual([
      'fuel points, row 5 (Birch, lean, 75), fuel flow: got "4,5", expected a number with a decimal point and no comma',
    ]);
  });
});

describe('loadings', () => {
  test('the same name twice, no name, an empty tank', () => {
    expect(faultsOf(withCell('loadings', 4, 'loading', 'Alone'))).toEqual([
      'loadings, row 4, loading: got "Alone", expected a name that row 3 does not have already',
    ]);
    expect(faultsOf(withCell('loadings', 4, 'loading', ''))).toEqual([
      'loadings, row 4, loading: got an empty cell, expected a value',
    ]);
    expect(faultsOf(withCell('loadings', 4, 'main tank', ''))).toEqual([
      'loadings, row 4 (two), main tank: got an empty cell, expected a value',
    ]);
    expect(faultsOf(withCell('loadings', 4, 'main tank', 0))).toEqual([]);
  });
});

test('the currency of the workbook is the one its prices name; where none does, USD', () => {
  const inEuro = Object.fromEntries(
    Object.entries(smallWorkbook()).map(([table, grid]) => [
      table,
      grid.map((row) => row.map((cell) => (typeof cell === 'string' ? cell.replace('USD', 'EUR') : cell))),
    ]),
  );
  expect(readCatalogue(inEuro).catalogue?.currency).toBe('EUR');
  const priceless = smallWorkbook();
  for (const table of ['components', 'equipment'] as const) {
    const at = priceless[table][0]!.indexOf('price');
    for (const row of priceless[table].slice(1)) row[at] = '';
  }
  priceless.rates = [['attribute', 'value', 'unit']];
  priceless.airframe = withoutRow(priceless.airframe, 'kit price');
  expect(readCatalogue(priceless).catalogue?.currency).toBe('USD');
});

describe('what is left on the scales', () => {
  // A: 905 lb net of tares of 20. B: 905 lb, no tares; 0.8 gal of oil at 7.5 to come
  const nothingLeft = (row: number, name: string, got: number) =>
    `weighings, row ${row} (${name}, nosewheel), reading: got ${got}, expected more than tares and weighing items, all points together`;

  test('more than what was aboard and is no part of it', () => {
    const aboard = (weight: number) => {
      const grids = smallBuild();
      put(grids['weighing items'], 3, 'weight', weight);
      return buildFaults(grids);
    };
    expect(aboard(904)).toEqual([]);
    expect(aboard(905)).toEqual([nothingLeft(3, 'A', 260)]);
  });

  test('what comes in later leaves more', () => {
    const grids = smallBuild();
    put(grids['weighing items'], 3, 'state', 'part, not aboard');
    put(grids['weighing items'], 3, 'weight', 2000);
    expect(buildFaults(grids)).toEqual([]);
  });

  test('more than the tares', () => {
    const grids = smallBuild();
    for (const [row, tare] of [
      [3, 260],
      [4, 330],
      [5, 335],
    ] as const)
      put(grids.weighings, row, 'tare', tare);
    expect(buildFaults(grids)).toEqual([nothingLeft(3, 'A', 260)]);
  });

  test('fuel of no stated density is reckoned as the densest of the packages: 6.7 lb/gal', () => {
    const drained = (gallons: number) => {
      const grids = smallBuild();
      put(grids['weighing items'], 4, 'state', 'aboard, not part');
      put(grids['weighing items'], 4, 'volume', gallons);
      return buildFaults(grids);
    };
    expect(drained(135)).toEqual([]); // 904.5 of 911
    expect(drained(136)).toEqual([nothingLeft(6, 'B', 250)]); // 911.2; of avgas it would be 816
  });

  test('two points are enough', () => {
    const grids = smallBuild();
    grids.weighings.splice(4, 1);
    expect(buildOf(grids).weighings).toHaveLength(5);
  });
});

test('a tank that ran dry is one of the tanks table, in any case', () => {
  const workbook = smallWorkbook();
  const catalogue = catalogueOf({
    ...workbook,
    tanks: [...workbook.tanks, ['aft tank', 110, 5, 0, 1, '', true, '', 0]],
    loadings: [],
  });
  const dry = (tank: string) => {
    const grids = smallBuild();
    grids['test results'].forEach((row, index) => {
      row.push(...((index === 0 ? ['tank', 'volume'] : ['', index === 1 ? 'US gal' : '']) as Cell[]));
    });
    const last = grids['test results'].push([...grids['test results'][4]!]);
    put(grids['test results'], last, 'test', 'unusable fuel');
    put(grids['test results'], last, 'tank', tank);
    put(grids['test results'], last, 'volume', 1);
    return readBuild(grids, catalogue).faults.map(faultText);
  };
  expect(dry('Main Tank')).toEqual([]);
  expect(dry('aft tank')).toEqual([]);
  expect(dry('tip tank')).toEqual([
    'test results, row 6 (unusable fuel), tank: got "tip tank", expected a tank of the tanks table (main tank, aft tank)',
  ]);
});

describe('terms of a quote', () => {
  const terms = (...rows: Cell[][]) =>
    readQuoteTerms([['attribute', 'value', 'unit'], ['package', ' BIRCH', ''], ...rows], catalogueOf());
  const faults = (...rows: Cell[][]) => terms(...rows).faults.map(faultText);

  test('of a package of the table, whatever its case', () => {
    expect(terms().terms).toMatchObject({ package: 'BIRCH', discount: 0, validity: 30 });
    expect(
      readQuoteTerms(
        [
          ['attribute', 'value', 'unit'],
          ['package', 'Oak', ''],
        ],
        catalogueOf(),
      ).faults.map(faultText),
    ).toEqual(['quote, package, value: got "Oak", expected a name from the packages table (Ash, Birch)']);
  });

  test('a discount takes off, or nothing', () => {
    expect(terms(['discount', 0, 'USD']).terms?.discount).toBe(0);
    expect(faults(['discount', -1, 'USD'])).toEqual([
      'quote, discount, value: got -1, expected an amount of at least 0',
    ]);
    expect(faults(['discount', 1, 'EUR'])).toEqual([
      'quote, row 3 (discount), unit: got "EUR", expected USD, the workbook\'s currency',
    ]);
  });

  test('payments of all of it, and of more', () => {
    const payments = (...shares: number[]) =>
      faults(...shares.map((share, index) => [`payment ${index + 1}`, share, '%']));
    expect(payments(60, 30, 10)).toEqual([]);
    expect(payments(60)).toEqual([]);
    expect(payments(60, 30, 11)).toEqual([
      'quote, payment 1 and later, value: got "101 %", expected payments of 100 % or less together',
    ]);
  });

  test('a cell that cannot be read is the only fault', () => {
    expect(faults(['discount', 'much', 'USD'], ['payment 1', 60, '%'], ['payment 2', 60, '%'])).toEqual([
      'quote, row 3 (discount), value: got "much", expected a number without unit or separators',
    ]);
  });
});

describe('a fault hides what follows from it, and nothing else', () => {
  test('the same column and row of another table', () => {
    const grids = withCell('equipment', 3, 'fits', 'Oak');
    put(grids.tanks, 3, 'fits', 'Oak');
    expect(faultsOf(grids).map((fault) => fault.replace(/:.*/, ''))).toEqual([
      'equipment, row 3 (radio), fits',
      'tanks, row 3, fits',
    ]);
  });

  test('another column of the row', () => {
    const grids = withCell('stations', 3, 'arm', 'abeam');
    put(grids.stations, 3, 'usual', 300);
    expect(faultsOf(grids).map((fault) => fault.replace(/:.*/, ''))).toEqual([
      'stations, row 3 (pilot), arm',
      'stations, row 3 (pilot), usual',
    ]);
  });

  test('the unit of an attribute', () => {
    expect(faultsOf(withCell('packages', 13, 'unit', 'lb'))).toEqual([
      expect.stringMatching(/^packages, row 13 \(restricted rpm to\), unit: got "lb", expected a unit: rpm/),
    ]);
  });
});

test('a price of fuel is a number of at least 0, in a currency a volume', () => {
  expect(faultsOf(withCell('rates', 2, 'value', 'dear'))).toEqual([
    'rates, row 2 (avgas), value: got "dear", expected a number without unit or separators',
  ]);
  expect(faultsOf(withCell('rates', 2, 'value', -1))).toEqual([
    'rates, row 2 (avgas), value: got -1, expected a number of at least 0',
  ]);
  expect(faultsOf(withCell('rates', 2, 'value', 0))).toEqual([]);
  for (const unit of ['AUSD/US gal', 'USD', 'USD/kg', 'US gal'])
    expect(faultsOf(withCell('rates', 2, 'unit', unit))).toEqual([
      `rates, row 2 (avgas), unit: got "${unit}", expected a currency and a volume, such as USD/US gal or EUR/L`,
    ]);
});

test('the label that was probably meant is the nearest, of equals the first', () => {
  expect(meantLabel('maximun', ['maximum', 'maximal'])).toBe('maximum');
  expect(meantLabel('maximun', ['maximal', 'maximum'])).toBe('maximum');
  expect(meantLabel('tank c', ['tank a', 'tank b'])).toBe('tank a');
  expect(meantLabel('colour', ['system', 'weight'])).toBeUndefined();
});

describe('fields', () => {
  const share = quantity('fraction', 'share', { help: '' });

  test('beside "%", 1.5 may be one and a half or a hundred and fifty; 1.6 and 25 may not be a share', () => {
    expect(share.read(1.5, '%')).toEqual({ expected: expect.stringContaining('1.5 % or 150 %') });
    expect(share.read(1.6, '%')).toEqual({ value: expect.closeTo(0.016, 12) });
    expect(share.read(25, '%')).toEqual({ value: expect.closeTo(0.25, 12) });
  });

  test('the unit a new sheet starts with: the one of the limits, else the first of its kind', () => {
    expect(quantity('mass', 'weight', { help: '' }).customaryUnit).toBe('lb');
    expect(quantity('mass', 'weight', { in: 'kg', help: '' }).customaryUnit).toBe('kg');
  });

  test('a tick box is TRUE or FALSE in a drop-down', () => {
    expect(flag('fitted', { help: '' }).choices).toEqual(['TRUE', 'FALSE']);
  });
});
