/** No search ends without an answer and says nothing: all are listed, and those that need not settle are made not to. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { balanceCures } from '../../src/assessment/balanceCures.ts';
import { loadingBlock } from '../../src/assessment/loadingBlock.ts';
import { answerMission } from '../../src/assessment/mission.ts';
import { unsettledFuel } from '../../src/assessment/missionLegs.ts';
import { missionRemedies } from '../../src/assessment/missionRemedies.ts';
import { testLoading } from '../../src/assessment/testLoading.ts';
import type { AircraftInFlight } from '../../src/engineering/aircraftInFlight.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import { godwit, packageOf, sampleCatalogue, withMission } from '../assessment/sampleCatalogue.ts';
import { searches } from './searches.ts';

/** Cooling drag as it is, or another one every time it is asked for. */
const drag = vi.hoisted(() => ({ restless: false, calls: 0 }));

vi.mock('../../src/engineering/coolingDrag.ts', async (original) => {
  const real = await original<typeof import('../../src/engineering/coolingDrag.ts')>();
  return {
    coolingDrag: (...given: Parameters<typeof real.coolingDrag>) =>
      drag.restless ? { momentum: ++drag.calls % 7, leakage: 0 } : real.coolingDrag(...given),
  };
});

/** Calls of a search, and loops whose end depends on what they find. */
const searching = [
  /(?<!function )\b(?:findRoot|maximise)\(/g,
  /\bwhile \(/g,
  /\bfor \(let \w+ = [^;]*; *;/g,
  /\bfor \(let \w+ = [^;]*; (?:\w+ < (?:most\w*|halvings)|right - left > [^;]*);/g,
];

test('every search of the source is in the list', () => {
  const folders = ['src/engineering', 'src/assessment'];
  const root = new URL('../../', import.meta.url);
  const found = folders.flatMap((folder) =>
    readdirSync(new URL(folder, root))
      .map((name) => `${folder}/${name}`)
      .flatMap((file) => {
        const text = readFileSync(new URL(file, root), 'utf8').replace(/^\s*(?:\/\*)?\*.*$/gm, '');
        return searching.flatMap((pattern) => [...text.matchAll(pattern)].map(() => file));
      }),
  );
  expect(found.sort()).toEqual(searches.map(({ file }) => file).sort());
});

test('cooling drag that never agrees with the speed: found in every package, in the known flight and in the roll', () => {
  const flown = { defaulted: [], package: 'Rowan', weight: 1050, temperature: 288.15, altitude: 0 };
  const points = [
    { ...flown, row: 8, condition: 'climb', power: 138e3, airspeed: 45, climbRate: 5 },
    { ...flown, row: 9, condition: 'takeoff roll', power: 130e3, roll: 300 },
  ];
  const catalogue = {
    ...godwit,
    knownPoints: [...godwit.knownPoints, ...points] as unknown as Catalogue['knownPoints'],
  };
  drag.restless = true;
  const { findings } = compare(catalogue);
  drag.restless = false;
  const told = findings.filter(({ text }) => text.includes('do not settle'));
  expect(told.map(({ package: name, subject, gravity }) => [gravity, name, subject])).toEqual([
    ...godwit.packages.map(({ name }) => ['check', name, 'cooling drag']),
    ['check', '', 'known flown points'],
    ['check', '', 'takeoff roll'],
  ]);
  for (const { text } of told) expect(text).toMatch(/: (speeds, climb, range|takeoff distances).* doubtful$/);
  expect(compare({ ...catalogue }).findings.filter(({ text }) => text.includes('settle'))).toEqual([]);
});

test('fuel that needs another fuel every time: the mission is not known, and says why', () => {
  const { asked } = packageOf(compare(withMission({ cruiseSetting: 1 })), 'Rowan').mission as NonNullable<
    ReturnType<typeof packageOf>['mission']
  >;
  const { aircraft } = asked;
  if (aircraft === undefined) throw new Error('no aircraft');
  // The heavier the slower, the slower the less power; what it burns is another amount at every power
  const restless: AircraftInFlight = {
    ...aircraft,
    shaftSpeedFraction: (speed) => 0.8 + speed / 600,
    fuelFlow: (power) => 0.01 + 0.005 * Math.sin(1e9 * power),
  };
  const answer = answerMission({ ...asked, aircraft: restless }, 500e3);
  expect(answer.verdict).toBe('not known');
  expect(answer.scarcest.text).toContain(unsettledFuel);
});

/** The minimal sample with an aft limit that recedes with weight nearly as fast as ballast at the firewall brings it. */
function recedingLimit(beyond: number): Catalogue {
  const catalogue = sampleCatalogue('minimal');
  const receding = (aft: number, at: number, by: number): Catalogue => ({
    ...catalogue,
    airframe: { ...catalogue.airframe, maximumTakeoffWeight: 2000 },
    envelope: [380, 2000].map((weight, row) => ({
      ...(catalogue.envelope[row] as Catalogue['envelope'][number]),
      weight,
      forward: -9,
      aft: aft - (weight - at) * by,
    })),
  });
  // with everything aboard, where such a limit leaves least
  const worst = packageOf(compare(receding(3, 700, 1.5e-3)), 'Ash').balance.margins?.aft;
  if (worst === undefined) throw new Error('no loading');
  const { cg, weight } = worst;
  return receding(cg - beyond, weight, (0.99 * (cg - catalogue.airframe.firewallArm)) / weight);
}

test('ballast whose weight does not settle is no cure, and says so', () => {
  const comparison = compare(recedingLimit(1e-4));
  const ash = packageOf(comparison, 'Ash');
  const [cure] = balanceCures(comparison.context, ash);
  expect(cure?.settled).toBe(false);
  expect(cure?.margins.aft.margin).toBeLessThan(-1e-6);
  const row = loadingBlock(comparison, [ash]).find((cells) => cells[2] === 'ballast');
  expect(row?.at(-1)).toBe('no: it takes more; how much does not settle');
});

test('a test loading within a tenth of a millimetre of the limit is on it', () => {
  const catalogue = sampleCatalogue('minimal');
  const withLimit = (aft: number) => ({
    ...catalogue,
    envelope: catalogue.envelope.map((point) => ({ ...point, forward: 1.3, aft })),
  });
  const loadingAt = (aft: number) => {
    const { context, assessments } = compare(withLimit(aft));
    const found = testLoading(context, assessments[0] as (typeof assessments)[number], 'aft');
    if (found === undefined) throw new Error('no loading');
    return found;
  };
  const spare = loadingAt(3).leastMargin;
  for (const left of [2e-4, 9e-5, 7e-5, 3e-5, 0])
    expect(loadingAt(3 - spare + left).leastMargin).toBeCloseTo(left, 9);
  for (const beyond of [3e-5, 9e-5, 2e-4, 2e-3]) {
    const { leastMargin } = loadingAt(3 - spare - beyond);
    expect(leastMargin).toBeGreaterThanOrEqual(0);
    expect(leastMargin).toBeLessThanOrEqual(1e-4);
  }
});

test('ballast for a mission that does not settle is told as not known, and as no remedy', () => {
  const receding = (aft: number, at: number, by: number): Catalogue => ({
    ...godwit,
    envelope: [500, 2000].map((weight, row) => ({
      ...(godwit.envelope[row] as Catalogue['envelope'][number]),
      weight,
      forward: -9,
      aft: aft - (weight - at) * by,
    })),
  });
  const worstWith = (catalogue: Catalogue) => {
    const { out, back } = packageOf(compare(catalogue), 'Hazel').mission?.loading ?? {};
    if (out === undefined || back === undefined) throw new Error('no loading');
    return out.critical.margin < back.critical.margin ? out.critical : back.critical;
  };
  const slope = ({ cg, weight }: { readonly cg: number; readonly weight: number }) =>
    (0.99 * (cg - godwit.airframe.firewallArm)) / weight;
  const critical = worstWith(receding(3, 1100, slope({ cg: 2.6, weight: 1100 })));
  const by = slope(critical);
  const { margin } = worstWith(receding(critical.cg, critical.weight, by));
  const comparison = compare(receding(critical.cg - margin - 5e-4, critical.weight, by));
  const hazel = packageOf(comparison, 'Hazel');
  expect(hazel.mission?.conditions.some(({ name, state }) => name === 'CG' && state === 'missed')).toBe(true);
  const told = missionRemedies(comparison, hazel).filter((text) => text.includes('ballast'));
  expect(told).toEqual([
    expect.stringMatching(/^not known: ballast at 60.0 in: more than \d.*does not settle$/),
  ]);
});
