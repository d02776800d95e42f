/** Names that must stand in another table. */
import { describe, expect, test } from 'vitest';
import type { TableName } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultsOf, put, smallWorkbook, withCell } from './smallWorkbook.ts';

describe('names that stand in another table', () => {
  test.each<[TableName, number, string, Cell, string]>([
    [
      'airframe',
      3,
      'value',
      'Bitch',
      'airframe, row 3 (baseline package), value: got "Bitch", expected "Birch" or another name from the packages table',
    ],
    [
      'airframe',
      7,
      'value',
      'Oak',
      'airframe, row 7 (weighed with package), value: got "Oak", expected a name from the packages table (Ash, Birch)',
    ],
    [
      'airframe',
      8,
      'value',
      'radio, heater',
      'airframe, row 8 (weighed with equipment), value: got "heater", expected a name from the equipment table (radio, lights, autopilot, fairings, large tyres)',
    ],
    [
      'airframe',
      9,
      'value',
      'guessed',
      'airframe, row 9 (empty weight basis), value: got "guessed", expected a name from the allowances (estimated, calculated, weighed)',
    ],
    [
      'components',
      5,
      'package',
      'Elder',
      'components, row 5 (Elder, propeller), package: got "Elder", expected a name from the packages table (Ash, Birch)',
    ],
    [
      'components',
      3,
      'basis',
      'Weighted',
      'components, row 3 (Ash, engine), basis: got "weighted", expected "weighed" or another name from the allowances',
    ],
    [
      'equipment',
      5,
      'fits',
      'Birch, Oak',
      'equipment, row 5 (autopilot), fits: got "Oak", expected a name from the packages table (Ash, Birch)',
    ],
    [
      'equipment',
      5,
      'needs',
      'radar',
      'equipment, row 5 (autopilot), needs: got "radar", expected "radio" or another name from the equipment table',
    ],
    [
      'equipment',
      6,
      'excludes',
      'skis',
      'equipment, row 6 (fairings), excludes: got "skis", expected a name from the equipment table (radio, lights, autopilot, fairings, large tyres)',
    ],
    [
      'equipment',
      3,
      'basis',
      'hoped',
      'equipment, row 3 (radio), basis: got "hoped", expected a name from the allowances (estimated, calculated, weighed)',
    ],
    [
      'tanks',
      3,
      'fits',
      'Oak',
      'tanks, row 3, fits: got "Oak", expected a name from the packages table (Ash, Birch)',
    ],
    [
      'fuel points',
      5,
      'package',
      'Oak',
      'fuel points, row 5, package: got "Oak", expected a name from the packages table (Ash, Birch)',
    ],
    [
      'power points',
      3,
      'package',
      'Oak',
      'power points, row 3, package: got "Oak", expected a name from the packages table (Ash, Birch)',
    ],
    [
      'cooling',
      3,
      'package',
      'Oak',
      'cooling, row 3, package: got "Oak", expected a name from the packages table (Ash, Birch)',
    ],
    [
      'known points',
      3,
      'package',
      'Oak',
      'known points, row 3, package: got "Oak", expected a name from the packages table (Ash, Birch)',
    ],
  ])('%s, row %d, %s: %s', (table, row, header, cell, fault) => {
    expect(faultsOf(withCell(table, row, header, cell))).toEqual([fault]);
  });

  test('are the same in any case, with any spaces', () => {
    const grids = withCell('components', 3, 'package', ' ASH\u00a0');
    put(grids.components, 3, 'basis', 'WEIGHED');
    put(grids.equipment, 5, 'needs', 'Radio');
    expect(faultsOf(grids)).toEqual([]);
  });

  test('are not missed again where the table they stand in is at fault', () => {
    const grids = withCell('packages', 1, 'attribute', 'what');
    expect(faultsOf(grids)).toEqual(['packages, row 1: got nothing, expected a column headed "attribute"']);
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
