/**
 * How a package sits on the airframe: the small aircraft of tests/tables/smallWorkbook.ts, worked by hand in lb and in.
 * Firewall at 50. Ash: engine 220 at 35, oil 12 at 42, propeller 30 at 10. Birch: a lump of 260 whose details are 210 at 34
 * and 50 at 28, coolant 9 at 36, propeller 44 at 10. Main wheels at 95, nosewheel at 40.
 */
import { describe, expect, test } from 'vitest';
import { type Assessment, compare } from '../../src/assessment/assess.ts';
import type { Finding } from '../../src/assessment/finding.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells, withRows } from './flightFixture.ts';
import { packageOf } from './sampleCatalogue.ts';

const pound = 0.45359237; // kg, exact
const inch = 0.0254; // m, exact
const horsepower = 745.69987; // W

const small: TableGrids = smallWorkbook();
const airframe = (attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'airframe', attribute, value, unit);
const engine = (name: string, attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'packages', attribute, value, unit, name);

const assessed = (name: string, grids = small): Assessment => packageOf(compare(catalogueOf(grids)), name);
const installed = (name: string, grids = small) => assessed(name, grids).installation;
const told = (name: string, subject: string, grids = small): Finding[] =>
  installed(name, grids).findings.filter((finding) => finding.subject === subject);

describe('ahead of the firewall', () => {
  test('weight, and weight times distance', () => {
    // Ash 262; 220 × 15 + 12 × 8 + 30 × 40 = 4,596. Birch 313; 260 × 50 − 8,540 + 9 × 14 + 44 × 40 = 6,346
    const [ash, birch] = [installed('Ash'), installed('Birch')];
    expect(ash.firewallWeight / pound).toBeCloseTo(262, 9);
    expect(ash.firewallMoment / (pound * inch)).toBeCloseTo(4596, 7);
    expect(birch.firewallWeight / pound).toBeCloseTo(313, 9);
    expect(birch.firewallMoment / (pound * inch)).toBeCloseTo(6346, 7);
  });

  test('an option ahead of it counts, one on it or behind it does not', () => {
    const withBattery = (arm: number) =>
      installed(
        'Ash',
        withRows(small, 'equipment', ['battery', 10, arm, 'weighed', 0, 0, '', '', '', false, true]),
      );
    expect(withBattery(45).firewallWeight / pound).toBeCloseTo(272, 9);
    expect(withBattery(45).firewallMoment / (pound * inch)).toBeCloseTo(4646, 7);
    for (const arm of [50, 55]) {
      expect(withBattery(arm).firewallWeight / pound).toBeCloseTo(262, 9);
      expect(withBattery(arm).firewallMoment / (pound * inch)).toBeCloseTo(4596, 7);
    }
  });

  const subjects = ['weight ahead of firewall', 'moment ahead of firewall'] as const;
  const limited = (weight: number, moment: number) =>
    airframe(
      'maximum weight ahead of firewall',
      weight,
      'lb',
      airframe('maximum moment ahead of firewall', moment, 'lb·in'),
    );
  const over = (grids: TableGrids) => subjects.flatMap((subject) => told('Birch', subject, grids));

  test('beyond what it is approved for: by how much, and what was allowed', () => {
    // 313/300 and 6,346/6,000
    const [weight, moment, ...others] = over(limited(300, 6000));
    expect(others).toEqual([]);
    expect(weight).toMatchObject({ gravity: 'stop', package: 'Birch', shown: 'weight' });
    expect(weight?.text).toMatch(/^4 % beyond what mount and firewall are approved for/);
    expect((weight?.value ?? 0) / pound).toBeCloseTo(313, 9);
    expect((weight?.limit ?? 0) / pound).toBeCloseTo(300, 9);
    expect(moment).toMatchObject({ gravity: 'stop', package: 'Birch', shown: 'moment' });
    expect(moment?.text).toMatch(/^6 % beyond what mount and firewall are approved for/);
    expect((moment?.value ?? 0) / (pound * inch)).toBeCloseTo(6346, 7);
    expect((moment?.limit ?? 0) / (pound * inch)).toBeCloseTo(6000, 7);
  });

  test('one limit broken is one finding; on the limit is not beyond it', () => {
    expect(over(limited(300, 6400)).map(({ subject }) => subject)).toEqual(['weight ahead of firewall']);
    expect(over(limited(320, 6300)).map(({ subject }) => subject)).toEqual(['moment ahead of firewall']);
    expect(over(limited(313, 6346))).toEqual([]);
  });

  test('without a limit the baseline is the measure: a tenth more wants a stress check', () => {
    // Birch with a propeller of w lb: 4,586 + 40 w against 4,596
    const propeller = (weight: number) => withCells(small, 'components', ['Birch', 'propeller'], { weight });
    expect(over(propeller(11))).toEqual([]); // 5,026: 9.4 % more
    const [finding, ...others] = over(propeller(13)); // 5,106
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ gravity: 'check', package: 'Birch', shown: 'moment' });
    expect(finding?.text).toMatch(/^11 % more than the baseline's/);
    expect(finding?.source).toContain('Ash');
    expect((finding?.value ?? 0) / (pound * inch)).toBeCloseTo(5106, 7);
    expect((finding?.limit ?? 0) / (pound * inch)).toBeCloseTo(4596, 7);
    expect(told('Ash', 'moment ahead of firewall')).toEqual([]);
  });
});

describe('loads on the mount', () => {
  const mean = (power: number, rpm: number) => (power * horsepower) / ((2 * Math.PI * rpm) / 60);

  test('torque: four cylinders of a four-stroke, twice the mean (14 CFR 23.361(c) before amendment 64)', () => {
    // Birch turns its propeller 1.7 times slower than its engine; MCP at takeoff rpm where no other is given
    const [takeoff, continuous] = installed('Birch').torque;
    expect(takeoff.limitTorque).toBeCloseTo(2 * mean(115, 3880 / 1.7), 2);
    expect(continuous.limitTorque).toBeCloseTo(2 * mean(110, 3880 / 1.7), 2);
    expect(installed('Ash').torque[0].limitTorque).toBeCloseTo(2 * mean(120, 2700), 2);
  });

  test('torque of two cylinders: four-stroke four times, two-stroke three times the mean (CS-VLA 361(b))', () => {
    const two = engine('Ash', 'cylinders', 2);
    expect(installed('Ash', two).torque[0].limitTorque).toBeCloseTo(4 * mean(120, 2700), 2);
    const twoStroke = engine('Ash', 'cycle', 'two-stroke', '', two);
    expect(installed('Ash', twoStroke).torque[0].limitTorque).toBeCloseTo(3 * mean(120, 2700), 2);
  });

  test('side load: a third of the limit load factor, at least 1.33 (14 CFR 23.363 before amendment 64)', () => {
    expect(installed('Ash').sideLoadFactor).toBeCloseTo(1.33, 9);
    expect(installed('Ash', airframe('limit load factor', 6)).sideLoadFactor).toBeCloseTo(2, 9);
  });

  test('gyroscopic couple in a yaw of 2.5 rad/s: I Ω ω, twice that for two blades or one; not known without I', () => {
    const inertia = 41 * pound * (12 * inch) ** 2;
    const simple = inertia * ((2 * Math.PI * 2700) / 60) * 2.5;
    const blades = (number: number) =>
      installed(
        'Ash',
        engine('Ash', 'propeller blades', number, '', engine('Ash', 'propeller inertia', 41, 'lb·ft²')),
      ).gyroscopicCouple;
    expect(blades(3)).toBeCloseTo(simple, 6);
    expect(blades(2)).toBeCloseTo(2 * simple, 6);
    expect(blades(1)).toBeCloseTo(2 * simple, 6);
    expect(installed('Ash').gyroscopicCouple).toBeUndefined();
  });
});

describe('on its wheels', () => {
  test('empty: 900 at 80, moments about either wheel', () => {
    const { wheels } = installed('Ash');
    expect((wheels?.noseOrTail ?? 0) / pound).toBeCloseTo((900 * 15) / 55, 9);
    expect((wheels?.mains ?? 0) / pound).toBeCloseTo((900 * 40) / 55, 9);
  });

  test('the greatest nosewheel load: both seats and the tank full, nothing behind the main wheels', () => {
    // 250 each at 85, 180 of fuel at 88: (900 × 15 + 500 × 10 + 180 × 7)/55
    const greatest = (installed('Ash').greatestWheelLoad ?? 0) / pound;
    expect(greatest).toBeCloseTo((900 * 15 + 500 * 10 + 180 * 7) / 55, 6);
  });

  test('without the place of a wheel nothing is claimed', () => {
    for (const wheel of ['main wheel arm', 'nose or tail wheel arm']) {
      const stance = installed('Ash', airframe('CG height', 42, 'in', airframe(wheel, '', 'in')));
      expect(stance.wheels).toBeUndefined();
      expect(stance.greatestWheelLoad).toBeUndefined();
      if (wheel === 'main wheel arm') expect(stance.tipAngle).toBeUndefined();
    }
    // Too heavy for any loading: no loading to be the worst
    expect(
      installed('Ash', airframe('maximum zero-fuel weight', 1005, 'lb')).greatestWheelLoad,
    ).toBeUndefined();
    expect(installed('Ash').tipAngle).toBeUndefined();
  });

  test('a limit of the nosewheel: 245.5 empty, 359.3 at the worst', () => {
    const loads = (limit: number) =>
      installed('Ash', airframe('maximum nose or tail wheel load', limit, 'lb'))
        .findings.filter(({ subject }) => subject.startsWith('nosewheel load'))
        .map(({ gravity, subject, value = 0 }) => [gravity, subject, Math.round((value / pound) * 10) / 10]);
    expect(loads(240)).toEqual([
      ['stop', 'nosewheel load, empty', 245.5],
      ['check', 'nosewheel load, worst loading', 359.3],
    ]);
    expect(loads(300)).toEqual([['check', 'nosewheel load, worst loading', 359.3]]);
    expect(loads(360)).toEqual([]);
    // On the limit is not beyond it
    expect(loads((900 * 15) / 55).map(([gravity]) => gravity)).toEqual(['check']);
    expect(loads((900 * 15 + 500 * 10 + 180 * 7) / 55)).toEqual([]);
  });

  test('empty CG behind the main wheels: on its tail; before those of a tailwheel: on its nose', () => {
    const [tail] = told('Ash', 'nosewheel load, empty', airframe('empty CG', 96, 'in'));
    expect(tail).toMatchObject({ gravity: 'stop', limit: 0, text: 'sits on its tail when empty' });
    expect((tail?.value ?? 0) / pound).toBeCloseTo(-900 / 55, 9);
    expect(told('Ash', 'nosewheel load, empty')).toEqual([]);
    const tailwheel = (main: number) =>
      airframe(
        'landing gear',
        'tailwheel',
        '',
        airframe('nose or tail wheel arm', 240, 'in', airframe('main wheel arm', main, 'in')),
      );
    const [nose] = told('Ash', 'tailwheel load, empty', tailwheel(85));
    expect(nose).toMatchObject({ gravity: 'stop', text: 'stands on its nose when empty' });
    expect((nose?.value ?? 0) / pound).toBeCloseTo((-900 * 5) / 155, 9);
    expect(told('Ash', 'tailwheel load, empty', tailwheel(70))).toEqual([]);
  });

  test('tip-back of 15° at least: 15 in ahead of the main wheels is 19.7° at 42 in, 14.0° at 60 in', () => {
    const at = (height: number) => airframe('CG height', height, 'in');
    expect(((installed('Ash', at(42)).tipAngle ?? 0) * 180) / Math.PI).toBeCloseTo(19.65, 2);
    expect(told('Ash', 'tip-back', at(42))).toEqual([]);
    expect(told('Ash', 'tip-back', at(60))).toMatchObject([
      { gravity: 'check', text: 'falls on its tail when tilted by 14°, empty' },
    ]);
    // On its tail already: that is said, and no angle to fall by
    expect(told('Ash', 'tip-back', airframe('empty CG', 96, 'in', at(60)))).toEqual([]);
  });

  test('nose-over of a tailwheel aircraft is no tip-back', () => {
    const grids = airframe(
      'landing gear',
      'tailwheel',
      '',
      airframe(
        'nose or tail wheel arm',
        240,
        'in',
        airframe('main wheel arm', 75, 'in', airframe('CG height', 60, 'in')),
      ),
    );
    expect(installed('Ash', grids).tipAngle).toBeCloseTo(Math.atan(5 / 60), 9);
    expect(told('Ash', 'tip-back', grids)).toEqual([]);
  });
});

describe('propeller', () => {
  const soundSpeed = 340.294; // m/s at 15 °C
  const mach = (rpm: number, knots: number) =>
    Math.hypot(Math.PI * (rpm / 60) * 70 * inch, (knots * 1852) / 3600) / soundSpeed;

  test('helical tip Mach number at VNO and the higher of the two rpm; standing where there is no VNO', () => {
    expect(installed('Ash').tipMach).toBeCloseTo(mach(2700, 120), 5);
    expect(installed('Ash', engine('Ash', 'maximum continuous rpm', 2400, 'rpm')).tipMach).toBeCloseTo(
      mach(2700, 120),
      5,
    );
    expect(installed('Ash', airframe('VNO', '', 'kt')).tipMach).toBeCloseTo(mach(2700, 0), 5);
  });

  test('0.76 is quiet, 0.87 a check, 0.95 a stop', () => {
    const tip = (rpm: number) => told('Ash', 'propeller tip', engine('Ash', 'takeoff rpm', rpm, 'rpm'));
    expect(tip(2700)).toEqual([]);
    expect(tip(3100)).toMatchObject([{ gravity: 'check', limit: 0.85 }]);
    expect(tip(3100)[0]?.value).toBeCloseTo(mach(3100, 120), 5);
    expect(tip(3400)).toMatchObject([{ gravity: 'stop', limit: 0.92 }]);
  });

  const axisAt = (height: number) => engine('Ash', 'propeller axis height', height, 'in');

  test('clearance: 7 in with a nosewheel, 9 in with a tailwheel (14 CFR 23.925(a) before amendment 64)', () => {
    // Half of 70 in below the axis
    expect((installed('Ash', axisAt(45)).clearance ?? 0) / inch).toBeCloseTo(10, 9);
    expect(told('Ash', 'propeller clearance', axisAt(42))).toEqual([]);
    const [low] = told('Ash', 'propeller clearance', axisAt(41));
    expect(low).toMatchObject({ gravity: 'stop', text: 'too near the ground' });
    expect((low?.value ?? 0) / inch).toBeCloseTo(6, 9);
    expect((low?.limit ?? 0) / inch).toBeCloseTo(7, 9);
    const tailwheel = (height: number) =>
      airframe(
        'landing gear',
        'tailwheel',
        '',
        airframe('nose or tail wheel arm', 240, 'in', airframe('main wheel arm', 75, 'in', axisAt(height))),
      );
    expect(told('Ash', 'propeller clearance', tailwheel(44))).toEqual([]);
    expect(told('Ash', 'propeller clearance', tailwheel(43))).toHaveLength(1);
  });

  test('an axis height that is not given leaves the clearance unknown, and says so', () => {
    expect(installed('Ash').clearance).toBeUndefined();
    const [unknown] = told('Ash', 'propeller clearance');
    expect(unknown).toMatchObject({ gravity: 'check', text: expect.stringContaining('not given') });
    expect(unknown?.value).toBeUndefined();
  });

  test('proven on this engine, not proven, not stated', () => {
    const pair = (cell: Cell) =>
      told('Ash', 'engine and propeller', engine('Ash', 'propeller proven on this engine', cell));
    expect(pair(true)).toEqual([]);
    expect(pair(false)).toMatchObject([
      { gravity: 'check', text: expect.stringMatching(/^propeller not proven/) },
    ]);
    expect(pair('')).toMatchObject([{ gravity: 'check', text: expect.stringMatching(/^not stated/) }]);
  });

  test('a restricted range is a note for the package that has one', () => {
    const [range] = told('Ash', 'restricted rpm');
    expect(range).toMatchObject({ gravity: 'note', shown: 'rpm' });
    expect((range?.value ?? 0) * 60).toBeCloseTo(2000, 9);
    expect((range?.limit ?? 0) * 60).toBeCloseTo(2250, 9);
    expect(told('Birch', 'restricted rpm')).toEqual([]);
  });
});
