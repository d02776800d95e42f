import { describe, expect, test } from 'vitest';
import type { Cell } from '../../src/tables/cell.ts';
import { faultsOf, put, withCell } from './smallWorkbook.ts';

describe('lumps and details', () => {
  test('a lump that is not there', () => {
    expect(faultsOf(withCell('components', 7, 'included in', 'kit as delivred'))).toEqual([
      'components, row 7 (Birch, engine block), included in: got "kit as delivred", expected a component of Birch',
    ]);
  });

  test('a lump of another package', () => {
    expect(faultsOf(withCell('components', 4, 'included in', 'kit as delivered'))).toEqual([
      'components, row 4 (Ash, oil), included in: got "kit as delivered", expected a component of Ash',
    ]);
  });

  test('a lump in a lump, and in itself', () => {
    const fault = 'expected a lump that is not part of another';
    expect(faultsOf(withCell('components', 8, 'included in', 'engine block'))).toEqual([
      `components, row 8 (Birch, gearbox), included in: got "engine block", ${fault}`,
    ]);
    expect(faultsOf(withCell('components', 3, 'included in', 'engine'))).toEqual([
      `components, row 3 (Ash, engine), included in: got "engine", ${fault}`,
    ]);
  });

  test('a lump whose name stands twice', () => {
    const grids = withCell('components', 10, 'component', 'Kit as delivered');
    expect(faultsOf(grids)).toEqual(
      ['7 (Birch, engine block)', '8 (Birch, gearbox)'].map(
        (row) =>
          `components, row ${row}, included in: got "kit as delivered", expected the name of one component; Birch has several of this name`,
      ),
    );
  });

  test('a name that stands twice without details is no fault: two batteries, one out, one in', () => {
    expect(faultsOf(withCell('components', 5, 'component', 'engine'))).toEqual([]);
  });

  const noArm = 'got an empty cell, expected an arm, or details with arms that are included in this lump';

  test('a weight without arm', () => {
    expect(faultsOf(withCell('components', 3, 'arm', ''))).toEqual([
      `components, row 3 (Ash, engine), arm: ${noArm}`,
    ]);
  });

  test('a weight of zero needs none', () => {
    const grids = withCell('components', 3, 'arm', '');
    put(grids.components, 3, 'weight', 0);
    expect(faultsOf(grids)).toEqual([]);
  });

  test('a detail needs one where its lump has none', () => {
    expect(faultsOf(withCell('components', 7, 'arm', ''))).toEqual([
      `components, row 7 (Birch, engine block), arm: ${noArm}`,
    ]);
  });

  test('a detail of a lump with an arm needs none, unless it is a fluid', () => {
    const grids = withCell('components', 6, 'arm', 33);
    put(grids.components, 7, 'arm', '');
    expect(faultsOf(grids)).toEqual([]);
    put(grids.components, 7, 'fluid', true);
    expect(faultsOf(grids)).toEqual([`components, row 7 (Birch, engine block), arm: ${noArm}`]);
  });

  test('details that weigh nothing place no lump', () => {
    const grids = withCell('components', 7, 'weight', 0);
    put(grids.components, 8, 'weight', 0);
    expect(faultsOf(grids)).toEqual([
      'components, row 6 (Birch, kit as delivered), arm: got an empty cell, expected an arm: the details included in this lump weigh nothing',
    ]);
  });

  test('a missing column of arms is missed once', () => {
    expect(faultsOf(withCell('components', 1, 'arm', 'station'))).toEqual([
      'components, row 1, arm: got nothing, expected an arm, or details with arms that are included in this lump',
    ]);
  });

  test('an arm that cannot be read is not missed as well', () => {
    expect(faultsOf(withCell('components', 3, 'arm', '35,1'))).toEqual([
      'components, row 3 (Ash, engine), arm: got "35,1", expected a number with a decimal point and no comma',
    ]);
    expect(faultsOf(withCell('components', 2, 'arm', 'lb'))).toEqual([
      'components, row 2, unit of arm: got "lb", expected a unit: in, mm, cm, m, ft',
    ]);
  });
});

describe('CG limits', () => {
  test('forward of aft', () => {
    expect(faultsOf(withCell('envelope', 4, 'forward limit', 90))).toEqual([
      'envelope, row 4, forward limit: got 90, expected a forward limit ahead of the aft limit',
    ]);
  });

  test('weights increase', () => {
    expect(faultsOf(withCell('envelope', 4, 'weight', 900))).toEqual([
      'envelope, row 4, weight: got 900, expected weights that increase from row to row',
    ]);
  });

  test('one weight twice', () => {
    expect(faultsOf(withCell('envelope', 4, 'weight', 1000))).toEqual([
      'envelope, row 4, weight: got "1000", expected a name that row 3 does not have already',
    ]);
  });
});

describe('stations', () => {
  test('least, usual and most', () => {
    expect(faultsOf(withCell('stations', 3, 'minimum', 300))).toEqual([
      'stations, row 3 (pilot), minimum: got 300, expected no more than the maximum',
    ]);
    expect(faultsOf(withCell('stations', 3, 'usual', 300))).toEqual([
      'stations, row 3 (pilot), usual: got 300, expected no more than the maximum',
    ]);
  });

  test('a group has one limit, whatever the case of its name', () => {
    expect(faultsOf(withCell('stations', 6, 'group maximum', 90))).toEqual([
      'stations, row 6 (locker), group maximum: got 90, expected the same as in row 5',
    ]);
    expect(faultsOf(withCell('stations', 6, 'group maximum', ''))).toEqual([
      'stations, row 6 (locker), group maximum: got an empty cell, expected the limit of the group',
    ]);
    expect(faultsOf(withCell('stations', 6, 'group maximum', '80 lb'))).toEqual([
      'stations, row 6 (locker), group maximum: got "80 lb", expected a number without unit or separators',
    ]);
  });

  test('a limit without group is nobody’s', () => {
    expect(faultsOf(withCell('stations', 6, 'limit group', ''))).toEqual([
      'stations, row 6 (locker), limit group: got an empty cell, expected the name of the group that shares this maximum',
    ]);
  });

  test('the least loads of a group fit its limit', () => {
    const grids = withCell('stations', 5, 'minimum', 40);
    put(grids.stations, 6, 'minimum', 41);
    expect(faultsOf(grids)).toEqual([
      'stations, row 5 (shelf), group maximum: got 80, expected no less than the minima of the group together',
    ]);
  });

  test('a tank is no station', () => {
    const grids = withCell('tanks', 3, 'tank', 'Locker');
    put(grids.loadings, 1, 'main tank', 'shelf tank');
    expect(faultsOf(grids)).toContain(
      'tanks, row 3 (Locker), tank: got "Locker", expected a name that no station has',
    );
  });
});

describe('airframe', () => {
  test.each<[number, string, Cell, string]>([
    [11, 'maximum ramp weight', 1590, 'no less than the maximum takeoff weight'],
    [12, 'maximum landing weight', 1601, 'no more than the maximum takeoff weight'],
    [13, 'maximum zero-fuel weight', 1700, 'no more than the maximum takeoff weight'],
    [17, 'VNO', 160, 'no more than VNE'],
    [21, 'nose or tail wheel arm', 95, 'a nosewheel ahead of the main wheels'],
  ])('row %d, %s', (row, attribute, cell, expected) => {
    expect(faultsOf(withCell('airframe', row, 'value', cell))).toEqual([
      `airframe, row ${row} (${attribute}), value: got ${cell}, expected ${expected}`,
    ]);
  });

  test('a tailwheel is aft', () => {
    const grids = withCell('airframe', 19, 'value', 'tailwheel');
    expect(faultsOf(grids)).toEqual([
      'airframe, row 21 (nose or tail wheel arm), value: got 40, expected a tailwheel aft of the main wheels',
    ]);
    put(grids.airframe, 21, 'value', 240);
    expect(faultsOf(grids)).toEqual([]);
  });

  test('equal limits are no conflict, whatever the rounding of their units', () => {
    const grids = withCell('airframe', 12, 'value', 725.747792); // 1,600 lb
    put(grids.airframe, 12, 'unit', 'kg');
    expect(faultsOf(grids)).toEqual([]);
  });
});

test('a restricted range of rpm has two ends', () => {
  expect(faultsOf(withCell('packages', 13, 'Ash', ''))).toEqual([
    'packages, row 13 (restricted rpm to), Ash: got an empty cell, expected where the restriction ends',
  ]);
  expect(faultsOf(withCell('packages', 13, 'Birch', 2000))).toEqual([
    'packages, row 12 (restricted rpm from), Birch: got an empty cell, expected where the restriction begins',
  ]);
  expect(faultsOf(withCell('packages', 12, 'Ash', 2250))).toEqual([
    'packages, row 13 (restricted rpm to), Ash: got 2250, expected more than where the restriction begins',
  ]);
});

test('a fuel point has a BSFC or a fuel flow', () => {
  expect(faultsOf(withCell('fuel points', 3, 'fuel flow', 9))).toEqual([
    'fuel points, row 3 (Ash), BSFC: got 0.5, expected either BSFC or fuel flow',
  ]);
  expect(faultsOf(withCell('fuel points', 3, 'BSFC', ''))).toEqual([
    'fuel points, row 3 (Ash), BSFC: got an empty cell, expected either BSFC or fuel flow',
  ]);
  expect(faultsOf(withCell('fuel points', 3, 'BSFC', '0,5'))).toEqual([
    'fuel points, row 3 (Ash, rich, 75), BSFC: got "0,5", expected a number with a decimal point and no comma',
  ]);
});
