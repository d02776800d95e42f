/**
 * Engine, fuel and electrics of the small aircraft of tests/tables/smallWorkbook.ts, by hand: Ash 120 hp at 2,700 rpm,
 * avgas of 6 lb/gal, rich points of 0.5 lb/hp·h at 75 % and 0.51 at 100 %. Birch 115 hp, 110 continuous, at 3,880 rpm geared
 * 1.7, Jet A of 6.7 lb/gal, one lean point of 4.5 gal/h at 75 %. One tank of 30 gal; half an hour of reserve.
 */
import { describe, expect, test } from 'vitest';
import { type Assessment, compare } from '../../src/assessment/assess.ts';
import { powerAvailable } from '../../src/engineering/enginePower.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { fromSi, toSi } from '../../src/units.ts';
import { catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { withAttribute, withCells, withRows } from './flightFixture.ts';
import { packageOf } from './sampleCatalogue.ts';

const small: TableGrids = smallWorkbook();
const airframe = (attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'airframe', attribute, value, unit);
const ash = (attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'packages', attribute, value, unit, 'Ash');
const birch = (attribute: string, value: Cell, unit = '', grids = small) =>
  withAttribute(grids, 'packages', attribute, value, unit, 'Birch');
const assessed = (name: string, grids = small): Assessment => packageOf(compare(catalogueOf(grids)), name);

const gallonsAnHour = (flow: number | undefined) => fromSi('fuelFlow', flow ?? Number.NaN, 'US gal/h');
const gallons = (volume: number | undefined) => fromSi('volume', volume ?? Number.NaN, 'US gal');
const pounds = (mass: number | undefined) => fromSi('mass', mass ?? Number.NaN, 'lb');

describe('fuel flow', () => {
  test('at every setting: 120 × 0.51/6 is 10.2, 90 × 0.5/6 is 7.5; nothing below the points', () => {
    const { settings } = assessed('Ash').fuel;
    expect(settings.map(({ setting, mixture }) => `${setting} ${mixture}`)).toEqual([
      '1 rich',
      '0.75 rich',
      '0.75 lean',
      '0.65 lean',
      '0.55 lean',
    ]);
    const [full, rich, lean, ...below] = settings;
    expect(gallonsAnHour(full?.flow)).toBeCloseTo(10.2, 6);
    expect(gallonsAnHour(rich?.flow)).toBeCloseTo(7.5, 6);
    expect(gallonsAnHour(lean?.flow)).toBeCloseTo(7.5, 6);
    expect(below.map(({ flow, endurance }) => [flow, endurance])).toEqual([
      [undefined, undefined],
      [undefined, undefined],
    ]);
    expect(fromSi('power', full?.power ?? 0, 'hp')).toBeCloseTo(120, 9);
    expect(fromSi('power', below[0]?.power ?? 0, 'hp')).toBeCloseTo(0.65 * 120, 9);
    // 30 gal at 7.5 an hour, half an hour kept
    expect((rich?.endurance ?? 0) / 3600).toBeCloseTo(3.5, 6);
  });

  test('rich and lean each by their own points', () => {
    const lean = withRows(small, 'fuel points', ['Ash', 'lean', 75, 0.42, ''], ['Ash', 'lean', 60, 0.42, '']);
    const flows = assessed('Ash', lean).fuel.settings.map(({ flow }) => gallonsAnHour(flow));
    expect(flows.slice(1, 4)).toEqual([
      expect.closeTo(7.5, 6),
      expect.closeTo((90 * 0.42) / 6, 6),
      expect.closeTo((78 * 0.42) / 6, 6),
    ]);
  });

  test('takeoff; what must be shown on the ground: 125 % with a pump, 150 % by gravity (14 CFR 23.955)', () => {
    const { takeoffFlow, flowToDemonstrate } = assessed('Ash').fuel;
    expect(gallonsAnHour(takeoffFlow)).toBeCloseTo(10.2, 6);
    expect(gallonsAnHour(flowToDemonstrate)).toBeCloseTo(12.75, 6);
    expect(gallonsAnHour(assessed('Ash', ash('fuel feed', 'gravity')).fuel.flowToDemonstrate)).toBeCloseTo(
      15.3,
      6,
    );
  });

  test('minimum fuel: half an hour at MCP, 120 × 0.51 × 0.5/6 gal', () => {
    expect(gallons(assessed('Ash').fuel.minimumFuel)).toBeCloseTo(5.1, 6);
  });

  test('one point of fuel flow stands for its BSFC at every power: 4.5 gal/h at 82.5 hp, 115 hp at takeoff', () => {
    expect(gallonsAnHour(assessed('Birch').fuel.takeoffFlow)).toBeCloseTo((4.5 * 115) / 82.5, 6);
  });
});

describe('findings of fuel', () => {
  const told = (name: string, grids = small) =>
    [...assessed(name, grids).engine.findings, ...assessed(name, grids).fuel.findings]
      .filter(({ subject }) => /^fuel/.test(subject))
      .map(({ gravity, subject, text }) => `${gravity} ${subject}: ${text}`);

  test('a mixture that was not measured, settings outside the points', () => {
    expect(told('Ash')).toEqual([
      'check fuel consumption: no lean fuel points: the rich ones are used for both',
      'note fuel consumption: no figure at 65 % lean, 55 % lean: outside the fuel points',
    ]);
  });

  test('compression ignition knows no mixtures; takeoff power is held beyond the points', () => {
    expect(told('Birch')).toEqual([
      'note fuel flow, takeoff: takeoff power is beyond the rich fuel points: the BSFC of the nearest is used',
      'note fuel consumption: no figure at 100 % rich, 65 % lean, 55 % lean: outside the fuel points',
    ]);
    const [held] = assessed('Birch').fuel.findings;
    expect(gallonsAnHour(held?.value)).toBeCloseTo((4.5 * 115) / 82.5, 6);
  });

  test('the other way round it is the rich ones that are missing; with both nothing is', () => {
    const lean = withCells(small, 'fuel points', ['Ash'], { mixture: 'lean' });
    expect(told('Ash', lean)[0]).toContain('no rich fuel points: the lean ones are used for both');
    const both = withCells(small, 'fuel points', ['Ash', 'rich', 100], { mixture: 'lean' });
    expect(told('Ash', both).join()).not.toContain('used for both');
  });

  test('without fuel points nothing is known, and nothing doubted', () => {
    const none = { ...small, 'fuel points': small['fuel points']!.filter(([name]) => name !== 'Ash') };
    const { fuel, engine } = assessed('Ash', ash('fuel delivery', 1, 'US gal/h', none));
    expect(engine.consumption).toEqual({});
    expect(fuel.settings.every(({ flow, endurance }) => flow === undefined && endurance === undefined)).toBe(
      true,
    );
    expect([fuel.takeoffFlow, fuel.flowToDemonstrate, fuel.minimumFuel]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(told('Ash', none)).toEqual([
      'check fuel consumption: no fuel points: fuel flow, endurance and range are not known',
    ]);
    expect(fuel.findings).toEqual([]);
  });

  test('a point that turns 11 % or 54 % of the heat into work cannot be right', () => {
    // 2,544.43 Btu/hp·h over 43.5 MJ/kg = 18,702 Btu/lb
    for (const [bsfc, share] of [
      [1.2, 0.113],
      [0.25, 0.544],
    ] as const) {
      const grids = withCells(small, 'fuel points', ['Ash', 'rich', 75], { BSFC: bsfc });
      const [, finding, ...others] = assessed('Ash', grids).engine.findings.filter(({ subject }) =>
        subject.startsWith('fuel'),
      );
      expect(others).toEqual([]);
      expect(finding).toMatchObject({ gravity: 'check', package: 'Ash', shown: 'percent' });
      expect(finding?.text).toBe('the fuel point at 75 % rich cannot be right (thermal efficiency)');
      expect(finding?.value).toBeCloseTo(share, 3);
    }
  });

  test('a delivery below what must be shown', () => {
    const delivery = (flow: number, grids = small) =>
      assessed('Ash', ash('fuel delivery', flow, 'US gal/h', grids)).fuel.findings.filter(
        ({ subject }) => subject === 'fuel delivery',
      );
    expect(delivery(12.8)).toEqual([]);
    const [finding] = delivery(12.7);
    expect(finding).toMatchObject({ gravity: 'stop', package: 'Ash', shown: 'fuelFlow' });
    expect(gallonsAnHour(finding?.value)).toBeCloseTo(12.7, 9);
    expect(gallonsAnHour(finding?.limit)).toBeCloseTo(12.75, 6);
    expect(finding?.text).toContain('with a pump feed');
    expect(delivery(15, ash('fuel feed', 'gravity'))[0]?.text).toContain('with a gravity feed');
  });

  test('fuel that comes back', () => {
    const back = (cell: Cell) =>
      assessed('Ash', ash('fuel return', cell)).fuel.findings.filter(
        ({ subject }) => subject === 'fuel return',
      );
    expect(back(true)).toMatchObject([{ gravity: 'note', package: 'Ash' }]);
    expect(back(false)).toEqual([]);
  });
});

describe('power', () => {
  const told = (name: string, subject: string, grids = small) =>
    assessed(name, grids).engine.findings.filter((finding) => finding.subject === subject);

  test('more continuous than takeoff power is doubted, as much is not', () => {
    expect(told('Ash', 'maximum continuous power')).toEqual([]);
    const [finding] = told('Ash', 'maximum continuous power', ash('maximum continuous power', 125, 'hp'));
    expect(finding).toMatchObject({ gravity: 'check', shown: 'power' });
    expect(fromSi('power', finding?.value ?? 0, 'hp')).toBeCloseTo(125, 9);
    expect(fromSi('power', finding?.limit ?? 0, 'hp')).toBeCloseTo(120, 9);
  });

  test('more than the designer allows', () => {
    const approved = (power: number) => airframe('approved power', power, 'hp');
    expect(told('Ash', 'takeoff power', approved(120))).toEqual([]);
    expect(told('Birch', 'takeoff power', approved(117))).toEqual([]);
    const [finding] = told('Ash', 'takeoff power', approved(117));
    expect(finding).toMatchObject({ gravity: 'stop', package: 'Ash', shown: 'power' });
    expect(fromSi('power', finding?.value ?? 0, 'hp')).toBeCloseTo(120, 9);
    expect(fromSi('power', finding?.limit ?? 0, 'hp')).toBeCloseTo(117, 9);
    expect(told('Ash', 'approved power', approved(117))).toEqual([]);
    expect(told('Ash', 'approved power')).toMatchObject([{ gravity: 'check', package: '' }]);
  });

  const left = (name: string, rating: 'takeoff' | 'continuous', feet: number, grids = small) => {
    const { law, rated } = assessed(name, grids).engine;
    const { power } = powerAvailable(law[rating], rated[rating], toSi('height', feet, 'ft'));
    return fromSi('power', power, 'hp');
  };

  test('at 8,000 ft: σ 0.7860, less 0.2140/7.55, where nothing else is said (Gagg and Farrar)', () => {
    const share = 0.786 - 0.214 / 7.55;
    expect(left('Ash', 'takeoff', 8000)).toBeCloseTo(120 * share, 1);
    // Birch has points for takeoff alone
    expect(left('Birch', 'continuous', 8000)).toBeCloseTo(110 * share, 1);
  });

  test('by the maker’s points of that rating, or whole up to the critical altitude', () => {
    expect(left('Birch', 'takeoff', 4000)).toBeCloseTo(115, 6);
    const continuous = withCells(small, 'power points', ['Birch', 'takeoff', 8000], { power: 95 });
    expect(left('Birch', 'takeoff', 4000, continuous)).toBeCloseTo(105, 6);
    expect(left('Birch', 'continuous', 8000, birch('critical altitude', 9000, 'ft'))).toBeCloseTo(110, 6);
  });

  test('the propeller turns slower than the engine by the gear ratio, at each rating', () => {
    const { shaftSpeed } = assessed('Birch', birch('maximum continuous rpm', 3600, 'rpm')).engine;
    expect(shaftSpeed.takeoff * 60).toBeCloseTo(3880 / 1.7, 9);
    expect(shaftSpeed.continuous * 60).toBeCloseTo(3600 / 1.7, 9);
    expect(assessed('Birch').engine.shaftSpeed.continuous * 60).toBeCloseTo(3880 / 1.7, 9);
  });
});

describe('payload and range', () => {
  // Counted on: 900 and 5.4 of the weighing's scatter. Taxi: five minutes at takeoff flow, 5.1 lb
  const range = (grids = small) => assessed('Ash', grids).range;
  const lifted = airframe('maximum zero-fuel weight', '', 'lb');

  test('the cabin holds 250 and 250, and 80 of the 100 that two places share', () => {
    expect(pounds(range(lifted)?.mostPayload.payload)).toBeCloseTo(580, 6);
    const wide = withCells(
      withCells(lifted, 'stations', ['shelf'], { 'group maximum': 150 }),
      'stations',
      ['locker'],
      { 'group maximum': 150 },
    );
    expect(pounds(range(wide)?.mostPayload.payload)).toBeCloseTo(600, 6);
  });

  test('no more than the zero-fuel weight leaves; below the empty weight there is no range', () => {
    expect(pounds(range(airframe('maximum zero-fuel weight', 1400, 'lb'))?.mostPayload.payload)).toBeCloseTo(
      1400 - 905.4,
      6,
    );
    // Less than the pilot of 170 lb: then that
    expect(pounds(range(airframe('maximum zero-fuel weight', 1000, 'lb'))?.pilotAlone.payload)).toBeCloseTo(
      94.6,
      6,
    );
    expect(pounds(range()?.pilotAlone.payload)).toBeCloseTo(170, 6);
    expect(range(airframe('maximum zero-fuel weight', 905, 'lb'))).toBeUndefined();
  });

  test('a cruise below the field is one at its height', () => {
    const from = (elevation: number, cruise: number) =>
      withAttribute(
        withAttribute(small, 'mission', 'field elevation', elevation, 'ft'),
        'mission',
        'cruise altitude',
        cruise,
        'ft',
      );
    const [below, level] = [range(from(5000, 3000)), range(from(5000, 5000))];
    expect(below?.fullTanks?.range).toBeGreaterThan(0);
    expect(below?.fullTanks?.range).toBeCloseTo(level?.fullTanks?.range ?? 0, 6);
  });

  test('full tanks: taxi fuel is burnt before takeoff, up to the ramp weight', () => {
    expect(pounds(range()?.fullTanks?.payload)).toBeCloseTo(1600 + 5.1 - 905.4 - 180, 6);
    expect(pounds(range(airframe('maximum ramp weight', 1602, 'lb'))?.fullTanks?.payload)).toBeCloseTo(
      1602 - 905.4 - 180,
      6,
    );
    expect(pounds(range(airframe('maximum ramp weight', '', 'lb'))?.fullTanks?.payload)).toBeCloseTo(
      1600 - 905.4 - 180,
      6,
    );
  });
});

describe('electrics: Ash 6 A, 3 of them essential; radio 2 A and lights 5 A; 20 A in cruise, 10 at idle; 16 Ah', () => {
  const wired = (changes: Readonly<Record<string, readonly [Cell, string?]>> = {}) =>
    Object.entries({
      'engine electrical load': [6, 'A'],
      'essential load': [3, 'A'],
      'alternator output cruise': [20, 'A'],
      'alternator output idle': [10, 'A'],
      'battery capacity': [16, 'Ah'],
      ...changes,
    } as Record<string, readonly [Cell, string?]>).reduce<TableGrids>(
      (grids, [attribute, [value, unit = '']]) => ash(attribute, value, unit, grids),
      small,
    );
  const electrical = (changes?: Parameters<typeof wired>[0]) => assessed('Ash', wired(changes)).electrical;
  const told = (changes: Parameters<typeof wired>[0], subject: string) =>
    electrical(changes).findings.filter((finding) => finding.subject === subject);

  test('loads and what is left', () => {
    const { load, surplusCruise, surplusIdle, surplusOneOut } = electrical();
    expect(load).toBeCloseTo(13, 9);
    expect(surplusCruise).toBeCloseTo(7, 9);
    expect(surplusIdle).toBeCloseTo(-3, 9);
    expect(surplusOneOut).toBeUndefined();
    expect(told({}, 'alternator, idle')).toMatchObject([{ gravity: 'note', value: -3, limit: 0 }]);
    expect(told({ 'alternator output idle': [13, 'A'] }, 'alternator, idle')).toEqual([]);
    expect(told({}, 'alternator, cruise')).toEqual([]);
    expect(told({ 'alternator output cruise': [13, 'A'] }, 'alternator, cruise')).toEqual([]);
    expect(told({ 'alternator output cruise': [10, 'A'] }, 'alternator, cruise')).toMatchObject([
      { gravity: 'stop', value: -3, limit: 0 },
    ]);
  });

  test('on the battery by Peukert: five minutes of 13 A, then 3 A, of four fifths of 16 Ah', () => {
    // Peukert's law on the charge left when the load is shed, H being 1 h
    const hours = (exponent: number) => 1 / 12 + ((0.8 * 16 - 13 / 12) / 3) ** exponent;
    expect((electrical().batteryTime ?? 0) / 3600).toBeCloseTo(hours(1.15), 6);
    expect((electrical({ 'battery kind': ['lithium'] }).batteryTime ?? 0) / 3600).toBeCloseTo(hours(1.05), 6);
    for (const missing of [
      { 'battery capacity': ['', 'Ah'] },
      { 'essential load': ['', 'A'] },
      { 'essential load': [0, 'A'] },
      { 'engine electrical load': ['', 'A'] },
    ] as const)
      expect(electrical(missing).batteryTime).toBeUndefined();
  });

  const needy = { 'stops without electricity': [true] } as const;

  test('less than half an hour (14 CFR 23.1353(h)): a stop where the engine stops, else a check', () => {
    const battery = (changes: Parameters<typeof wired>[0]) =>
      told(changes, 'battery').map(({ gravity, text }) => `${gravity} ${text.slice(0, 22)}`);
    const weak = { 'battery capacity': [2, 'Ah'] } as const;
    expect(battery({})).toEqual([]);
    expect(battery(weak)).toEqual(['check the essential load las']);
    expect(battery({ ...weak, ...needy, alternators: [2] })).toEqual(['stop the engine runs no lon']);
    expect(told(weak, 'battery')[0]).toMatchObject({ shown: 'minutes', limit: 1800 });
  });

  test('an engine that stops without: one alternator is a note, an unknown battery a check', () => {
    const battery = (changes: Parameters<typeof wired>[0]) =>
      told({ ...needy, ...changes }, 'battery').map(({ gravity, text }) => `${gravity} ${text.slice(0, 15)}`);
    expect(battery({})).toEqual(['note one alternator ']);
    expect(battery({ alternators: [1] })).toEqual(['note one alternator ']);
    expect(battery({ alternators: [2] })).toEqual([]);
    expect(battery({ 'battery capacity': ['', 'Ah'] })).toEqual(['check this engine sto']);
    expect(told({ 'battery capacity': ['', 'Ah'] }, 'battery')).toEqual([]);
  });

  test('one of two out: 4 A of 8 carry the essential 3, 2 of 4 do not', () => {
    const two = (output: number, changes = {}) => ({
      alternators: [2] as const,
      'alternator output cruise': [output, 'A'] as const,
      ...changes,
    });
    expect(electrical(two(8)).surplusOneOut).toBeCloseTo(1, 9);
    expect(told(two(8), 'one alternator out')).toEqual([]);
    expect(told(two(6), 'one alternator out')).toEqual([]);
    expect(told(two(4), 'one alternator out')).toMatchObject([{ gravity: 'note', value: -1, limit: 0 }]);
    expect(told(two(4, needy), 'one alternator out')).toMatchObject([{ gravity: 'check' }]);
    expect(electrical({ alternators: [3], 'alternator output cruise': [6, 'A'] }).surplusOneOut).toBeCloseTo(
      1,
      9,
    );
  });

  test('enough of everything: nothing to say', () => {
    expect(electrical({ 'alternator output idle': [14, 'A'] }).findings).toEqual([]);
  });

  test('what stands alone in an engine that stops without electricity', () => {
    const single = (alternators: Cell) => {
      const { singleFailures, findings } = electrical({ ...needy, alternators: [alternators] });
      const told = findings.filter(({ subject }) => subject === 'single failures');
      return [singleFailures, told.map(({ gravity, text }) => `${gravity} ${text.slice(0, 13)}`)];
    };
    const shown = 'note show on the g';
    expect(single('')).toEqual([['not known'], ['check the number of', shown]]);
    expect(single(0)).toEqual([['battery'], ['stop no alternator', shown]]);
    expect(single(1)).toEqual([['alternator'], [shown]]);
    expect(single(2)).toEqual([[], [shown]]);
  });

  test('one of two out is not known without output or essential load', () => {
    const two = { alternators: [2] } as const;
    expect(electrical({ ...two, 'alternator output cruise': ['', 'A'] }).surplusOneOut).toBeUndefined();
    expect(electrical({ ...two, 'essential load': ['', 'A'] }).surplusOneOut).toBeUndefined();
  });

  test('what is not given is not known, and said once', () => {
    for (const changes of [
      { 'alternator output cruise': ['', 'A'] },
      { 'engine electrical load': ['', 'A'] },
    ] as const)
      expect(told(changes, 'alternator, cruise')).toMatchObject([
        { gravity: 'check', text: expect.stringContaining('not known') },
      ]);
    expect(electrical({ 'alternator output idle': ['', 'A'] }).surplusIdle).toBeUndefined();
  });
});
