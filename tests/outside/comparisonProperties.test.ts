/** What must hold for the whole assessment, whatever the tables say: the Godwit sample with its cells changed at random. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Assessment, type Comparison, compare } from '../../src/assessment/assess.ts';
import { comparisonBlock } from '../../src/assessment/comparisonBlock.ts';
import { readCatalogue, type TableGrids, type TableName } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { fromSi, type QuantityKind, toSi } from '../../src/units.ts';
import { between } from '../engineering/between.ts';
import { sample } from '../sample.ts';

type Row = readonly Cell[];

const godwit = sample('godwit');
/** Without what flight is computed from: weights, balance, payload, fuel and prices stay. */
const onTheGround: TableGrids = Object.fromEntries(
  Object.entries(godwit).filter(([table]) => !['known points', 'cooling', 'mission'].includes(table)),
);

function assessed(grids: TableGrids): Comparison {
  const { catalogue, faults } = readCatalogue(grids);
  if (catalogue === undefined) throw new Error(faults.map((fault) => JSON.stringify(fault)).join('\n'));
  return compare(catalogue);
}
const named = (comparison: Comparison, name: string) =>
  comparison.assessments.find((each) => each.package.name === name)!;
const ground = assessed(onTheGround);

const headers = (table: TableName) => onTheGround[table]![0] as readonly string[];
const column = (table: TableName, header: string) => headers(table).indexOf(header);
/** The records of a table of rows: below the header and the row of units. */
const records = (table: TableName): Row[] => onTheGround[table]!.slice(2) as Row[];
const withRecords = (table: TableName, rows: readonly Row[], grids = onTheGround): TableGrids => ({
  ...grids,
  [table]: [...onTheGround[table]!.slice(0, 2), ...rows] as Grid,
});
const withCell = (row: Row, at: number, cell: Cell): Row =>
  row.map((old, index) => (index === at ? cell : old));

const shuffled = <T>(list: readonly T[]) => fc.shuffledSubarray([...list], { minLength: list.length });
const runs = (numRuns: number) => ({ numRuns });

const leftOut = new Set(['row', 'findings', 'asked', 'context']); // places in tables, words, and what all packages share

/** Every number of an assessment by its path. */
function numbersOf(value: unknown, path = '', found = new Map<string, number>()): Map<string, number> {
  if (typeof value === 'number') found.set(path, value);
  else if (
    typeof value === 'object' &&
    value !== null &&
    !(value instanceof Map) &&
    !(value instanceof Set)
  ) {
    for (const [key, inner] of Object.entries(value)) {
      if (!leftOut.has(key)) numbersOf(inner, `${path}.${key}`, found);
    }
  }
  return found;
}

/** Both have the same numbers, to so many parts of each. */
function expectSame(one: Assessment, other: Assessment, relative: number): void {
  const [first, second] = [numbersOf(one), numbersOf(other)];
  expect([...second.keys()]).toEqual([...first.keys()]);
  for (const [path, value] of first) {
    const difference = Math.abs(second.get(path)! - value);
    if (Number.isFinite(value))
      expect(difference, `${path}: ${value} and ${second.get(path)}`).toBeLessThanOrEqual(
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
      runs(15),
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
      runs(15),
    );
  });
});

test('a package against its twin differs by nothing', () => {
  const weightRow = (comparison: Comparison, label: string) =>
    comparisonBlock(comparison).find((line) => String(line[0]).trim() === label)!;
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
      // The shown difference from the baseline, beside the twin's figure
      const line = weightRow(comparison, 'empty weight, nominal');
      expect(line.at(-1)).toBe(line[2 + ground.assessments.findIndex((each) => each.package.name === name)]);
    }),
    runs(4),
  );
});

describe('units of input', () => {
  /** Other units of the same kind. Fractions stay: 0.5 in a percentage column is refused, as it may mean 50 %. */
  const otherUnits: Readonly<Record<string, readonly [QuantityKind, string]>> = {
    lb: ['mass', 'kg'],
    in: ['length', 'mm'],
    hp: ['power', 'kW'],
    kt: ['speed', 'km/h'],
    nmi: ['distance', 'km'],
    ft: ['height', 'm'],
    'ft²': ['area', 'm²'],
    'US gal': ['volume', 'L'],
    'US gal/h': ['fuelFlow', 'L/h'],
    'lb/US gal': ['density', 'kg/L'],
    'lb/hp·h': ['bsfc', 'g/kWh'],
    lb·in: ['moment', 'kg·m'],
    'lb·ft²': ['inertia', 'kg·m²'],
    'MJ/kg': ['energyPerMass', 'Btu/lb'],
    'ft/min': ['climb', 'm/s'],
    '°C': ['temperature', '°F'],
    min: ['time', 'h'],
    weeks: ['days', 'days'],
  };
  const converted = (cell: Cell, unit: string): Cell => {
    const [kind, other] = otherUnits[unit]!;
    return typeof cell === 'number' ? fromSi(kind, toSi(kind, cell, unit), other) : cell;
  };
  const known = (unit: Cell): unit is string => typeof unit === 'string' && Object.hasOwn(otherUnits, unit);

  /** Attributes down: the unit stands in a column, its values beside it. */
  function attributesConverted(grid: Grid, unitColumn: number, chosen: readonly boolean[]): Grid {
    return grid.map((row, index) => {
      const unit = row[unitColumn];
      if (!chosen[index] || !known(unit)) return row;
      return row.map((cell, at) => (at === unitColumn ? otherUnits[unit]![1] : converted(cell, unit)));
    });
  }
  /** Records down: the units stand in the second row. */
  function recordsConverted(grid: Grid, chosen: readonly boolean[]): Grid {
    const units = grid[1] ?? [];
    return grid.map((row, index) =>
      row.map((cell, at) => {
        const unit = units[at];
        if (index === 0 || !chosen[at] || !known(unit)) return cell;
        return index === 1 ? otherUnits[unit]![1] : converted(cell, unit);
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
      runs(25),
    );
  });

  test('nor speeds, climb and the mission', () => {
    const shown = (comparison: Comparison) =>
      comparison.assessments.map(({ flight, payload }) => [
        flight?.seaLevel.bestRate.takeoff.rateOfClimb,
        flight?.ceiling.pressureAltitude,
        flight?.stall.landing,
        payload.fullFuel.countedOn,
      ]);
    const before = shown(assessed(godwit)).flat() as number[];
    expect(before.every(Number.isFinite)).toBe(true);
    fc.assert(
      fc.property(choices, (chosen) => {
        const after = shown(assessed(inOtherUnits(godwit, chosen))).flat() as number[];
        after.forEach((value, index) => {
          expect(Math.abs(value / before[index]! - 1)).toBeLessThan(1e-3);
        });
      }),
      runs(3),
    );
  });
});

describe('weights', () => {
  const [weightColumn, basisColumn] = [column('components', 'weight'), column('components', 'basis')];
  const [armColumn, fromColumn] = [column('components', 'arm'), column('components', 'arm from')];
  const included = column('components', 'included in');
  const counted = records('components').flatMap((row, index) =>
    Number(row[weightColumn]) > 0 && (row[included] ?? '') === '' ? [index] : [],
  );
  /** Not of the package with which the airframe was weighed: what that has more, the bare airframe has less. */
  const ofOthers = counted.filter((index) => records('components')[index]![0] !== 'Rowan');
  /** A lump with details may leave its arm to them. */
  const withArm = ofOthers.filter((index) => typeof records('components')[index]![armColumn] === 'number');
  const weighed = counted.filter((index) => records('components')[index]![basisColumn] === 'weighed');
  const changed = (index: number, at: number, cell: (old: number) => Cell): TableGrids =>
    withRecords(
      'components',
      records('components').map((row, other) =>
        other === index ? withCell(row, at, cell(Number(row[at]))) : row,
      ),
    );

  test('more weight of an option never gives payload', () => {
    const fitted = (row: Row) =>
      row[column('equipment', 'fitted')] === true || row[column('equipment', 'standard')] === true;
    const options = records('equipment').flatMap((row, index) => (fitted(row) ? [index] : []));
    const at = column('equipment', 'weight');
    fc.assert(
      fc.property(fc.constantFrom(...options), between(0.1, 150), (index, more) => {
        const rows = records('equipment').map((row, other) =>
          other === index ? withCell(row, at, Number(row[at]) + more) : row,
        );
        const heavier = assessed(withRecords('equipment', rows));
        ground.assessments.forEach(({ payload: before }, which) => {
          const { payload } = heavier.assessments[which]!;
          for (const figure of ['nominal', 'expected', 'countedOn'] as const) {
            expect(payload.fullFuel[figure]).toBeLessThanOrEqual(before.fullFuel[figure] + 1e-9);
            expect(payload.usefulLoad[figure]).toBeLessThanOrEqual(before.usefulLoad[figure] + 1e-9);
          }
        });
      }),
      runs(40),
    );
  });

  test('an option ticked never gives payload unless it takes something out', () => {
    const at = column('equipment', 'fitted');
    const options = records('equipment').flatMap((row, index) =>
      Number(row[column('equipment', 'weight')]) > 0 && row[at] === false ? [index] : [],
    );
    fc.assert(
      fc.property(fc.constantFrom(...options), (index) => {
        const rows = records('equipment').map((row, other) =>
          other === index ? withCell(row, at, true) : row,
        );
        const fitted = assessed(withRecords('equipment', rows));
        ground.assessments.forEach(({ payload: before, empty }, which) => {
          const after = fitted.assessments[which]!;
          expect(after.payload.fullFuel.countedOn).toBeLessThanOrEqual(before.fullFuel.countedOn + 1e-9);
          expect(after.empty.mass.weightHalfWidth).toBeGreaterThanOrEqual(empty.mass.weightHalfWidth - 1e-9);
        });
      }),
      runs(15),
    );
  });

  test('a weight that is only estimated never narrows the band, nor gives payload to be counted on', () => {
    fc.assert(
      fc.property(fc.constantFrom(...weighed), (index) => {
        const unsure = assessed(changed(index, basisColumn, () => 'estimated'));
        ground.assessments.forEach(({ empty, payload }, which) => {
          const after = unsure.assessments[which]!;
          expect(after.empty.mass.weightHalfWidth).toBeGreaterThanOrEqual(empty.mass.weightHalfWidth - 1e-9);
          expect(after.payload.fullFuel.countedOn).toBeLessThanOrEqual(payload.fullFuel.countedOn + 1e-9);
        });
      }),
      runs(40),
    );
  });

  test('a component moved aft never moves the empty CG, nor any extreme loading, forward', () => {
    fc.assert(
      fc.property(fc.constantFrom(...withArm), between(0.1, 60), (index, distance) => {
        const row = records('components')[index]!;
        // From the firewall an arm is positive forward
        const aft = row[fromColumn] === 'firewall' ? -distance : distance;
        const name = String(row[0]);
        const before = named(ground, name);
        const after = named(assessed(changed(index, armColumn, (arm) => arm + aft)), name);
        expect(after.empty.cg).toBeGreaterThan(before.empty.cg);
        expect(after.balance.margins!.forward.margin).toBeGreaterThanOrEqual(
          before.balance.margins!.forward.margin - 1e-9,
        );
        expect(after.balance.margins!.aft.margin).toBeLessThanOrEqual(
          before.balance.margins!.aft.margin + 1e-9,
        );
        expect(after.installation.firewallMoment).toBeLessThanOrEqual(
          before.installation.firewallMoment + 1e-9,
        );
      }),
      runs(40),
    );
  });

  test('a heavier component takes payload of its own package only', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ofOthers), between(0.1, 60), (index, more) => {
        const name = String(records('components')[index]![0]);
        const heavier = assessed(changed(index, weightColumn, (weight) => weight + more));
        for (const { package: engine, payload } of heavier.assessments) {
          const before = named(ground, engine.name).payload.fullFuel.nominal;
          const change = payload.fullFuel.nominal - before;
          if (engine.name === name) expect(change).toBeCloseTo(-more * 0.45359237, 9);
          else expect(change).toBeCloseTo(0, 9);
        }
      }),
      runs(40),
    );
  });

  test('what the package it was weighed with weighs more, the bare airframe weighs less: its own figures stay', () => {
    const own = counted.filter((index) => records('components')[index]![0] === 'Rowan');
    const dry = own.filter((index) => records('components')[index]![column('components', 'fluid')] !== true);
    fc.assert(
      fc.property(fc.constantFrom(...dry), between(0.1, 20), (index, more) => {
        const other = assessed(changed(index, weightColumn, (weight) => weight + more));
        expect(named(other, 'Rowan').empty.mass.nominal.weight).toBeCloseTo(
          named(ground, 'Rowan').empty.mass.nominal.weight,
          9,
        );
        expect(other.bareAirframe.mass.nominal.weight).toBeCloseTo(
          ground.bareAirframe.mass.nominal.weight - more * 0.45359237,
          9,
        );
      }),
      runs(20),
    );
  });
});

describe('packages', () => {
  const changedPackage = (
    attribute: string,
    name: string,
    change: (old: number) => number,
    grids = onTheGround,
  ) => {
    const at = headers('packages').indexOf(name);
    const packages = grids.packages!.map((row) =>
      row[0] === attribute ? withCell(row as Row, at, change(Number(row[at]))) : row,
    );
    return named(assessed({ ...grids, packages: packages as Grid }), name);
  };
  const engine = fc.constantFrom('Rowan', 'Larch', 'Hazel', 'Alder');

  test('denser fuel takes payload, a bigger propeller clearance and tip speed, slower turning more torque', () => {
    fc.assert(
      fc.property(engine, between(0.05, 0.75), (name, more) => {
        const before = named(ground, name);
        const denser = changedPackage('fuel density', name, (density) => density + more);
        expect(denser.payload.fullFuel.nominal).toBeLessThan(before.payload.fullFuel.nominal);
        const bigger = changedPackage('propeller diameter', name, (inches) => inches + more);
        expect(bigger.installation.clearance!).toBeLessThan(before.installation.clearance!);
        expect(bigger.installation.tipMach).toBeGreaterThan(before.installation.tipMach);
        const slower = changedPackage('takeoff rpm', name, (rpm) => rpm - 100 * more);
        expect(slower.installation.torque[0].limitTorque).toBeGreaterThan(
          before.installation.torque[0].limitTorque,
        );
      }),
      runs(15),
    );
  });

  test('fuel flow rises with power at every shown setting', () => {
    for (const { fuel } of ground.assessments) {
      const lean = fuel.settings.filter(({ mixture, flow }) => mixture === 'lean' && flow !== undefined);
      const bySetting = [...lean].sort((one, other) => one.setting - other.setting);
      for (let index = 1; index < bySetting.length; index++)
        expect(bySetting[index]!.flow!).toBeGreaterThan(bySetting[index - 1]!.flow!);
    }
  });

  test('a bigger battery lasts longer, a greater essential load less', () => {
    fc.assert(
      fc.property(fc.constantFrom('Larch', 'Alder'), between(1, 10), (name, more) => {
        const before = named(ground, name).electrical.batteryTime!;
        const bigger = changedPackage('battery capacity', name, (capacity) => capacity + more);
        expect(bigger.electrical.batteryTime!).toBeGreaterThan(before);
        const hungrier = changedPackage('essential load', name, (load) => load + more);
        expect(hungrier.electrical.batteryTime!).toBeLessThan(before);
      }),
      runs(15),
    );
  });

  test('heavier, it climbs worse, stalls faster and reaches less high', () => {
    const whole = assessed(godwit);
    const at = column('equipment', 'weight');
    const rows = records('equipment').map((row, index) => (index === 0 ? withCell(row, at, 90) : row));
    const maximum = godwit.airframe!.map((row) =>
      row[0] === 'maximum takeoff weight' ? withCell(row as Row, 1, 2600) : row,
    );
    const envelope = godwit.envelope!.map((row) => (row[0] === 2520 ? withCell(row as Row, 0, 2600) : row));
    const heavier = assessed(
      withRecords('equipment', rows, { ...godwit, airframe: maximum as Grid, envelope: envelope as Grid }),
    );
    whole.assessments.forEach(({ flight: before }, which) => {
      const { flight } = heavier.assessments[which]!;
      expect(flight!.seaLevel.bestRate.continuous.rateOfClimb).toBeLessThan(
        before!.seaLevel.bestRate.continuous.rateOfClimb,
      );
      expect(flight!.stall.landing).toBeGreaterThan(before!.stall.landing);
      expect(flight!.ceiling.pressureAltitude).toBeLessThan(before!.ceiling.pressureAltitude);
    });
  });
});
