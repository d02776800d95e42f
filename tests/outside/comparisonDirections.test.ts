/** Which way the assessment goes when a cell of the Godwit sample is changed at random. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { between } from '../engineering/between.ts';
import { pound } from '../engineering/tradeUnits.ts';
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
      { numRuns: 40 },
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
      { numRuns: 15 },
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
      { numRuns: 40 },
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
      { numRuns: 40 },
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
          if (engine.name === name) expect(change).toBeCloseTo(-more * pound, 9);
          else expect(change).toBeCloseTo(0, 9);
        }
      }),
      { numRuns: 40 },
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
          ground.bareAirframe.mass.nominal.weight - more * pound,
          9,
        );
      }),
      { numRuns: 20 },
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
      { numRuns: 15 },
    );
  });

  test('fuel flow rises with power at every shown setting', () => {
    for (const { fuel } of ground.assessments) {
      const lean = fuel.settings.filter(({ mixture, flow }) => mixture === 'lean' && flow !== undefined);
      expect(lean.length).toBeGreaterThan(1);
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
      { numRuns: 15 },
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
