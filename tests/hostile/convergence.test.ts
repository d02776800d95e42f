/** Random aircraft, some of them absurd: every search ends or says so, every number is finite, none takes endless work. */
import fc from 'fast-check';
import { beforeEach, expect, test, vi } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { coolingBlock } from '../../src/assessment/coolingBlock.ts';
import { flightBlock } from '../../src/assessment/flightBlock.ts';
import { loadingBlock } from '../../src/assessment/loadingBlock.ts';
import { unsettledFuel } from '../../src/assessment/missionLegs.ts';
import { payloadRangeBlock } from '../../src/assessment/payloadRangeBlock.ts';
import { readCatalogue, type TableGrids } from '../../src/tables/catalogue.ts';
import { plainAircraft } from '../assessment/flightFixture.ts';
import { everyFigure, numberSpots, sampleGrids } from './samples.ts';
import { say, seed, times } from './seed.ts';
import { type Spot, withSpot } from './spots.ts';
import type { Grids } from './workbooks.ts';

const mostWork = 200_000; // values of functions that are searched, for one aircraft with all its packages and blocks

/** Every search for a root or a maximum: how many values it took at most and since the last aircraft, and why it refused. */
const searches = vi.hoisted(() => ({ most: 0, values: 0, refused: [] as string[] }));

vi.mock('../../src/engineering/solve.ts', async (original) => {
  const real = await original<typeof import('../../src/engineering/solve.ts')>();
  type Search<T> = (f: (x: number) => number, low: number, high: number, tolerance: number) => T;
  const watched =
    <T>(search: Search<T>): Search<T> =>
    (f, ...interval) => {
      let values = 0;
      try {
        return search(
          (x) => {
            values++;
            return f(x);
          },
          ...interval,
        );
      } catch (error) {
        if (/^(the function|low|high|tolerance) must/.test((error as Error).message))
          searches.refused.push(`${(error as Error).message} (${interval.join(', ')})`);
        throw error;
      } finally {
        searches.most = Math.max(searches.most, values);
        searches.values += values;
      }
    };
  return { findRoot: watched(real.findRoot), maximise: watched(real.maximise) };
});

beforeEach(() => {
  searches.most = 0;
  searches.refused = [];
});

interface Run {
  read: number;
  refused: number;
  flown: number;
  grounded: number;
  unsettled: number;
  most: number;
}

/** Infinite by their meaning: no limit is known. */
const mayBeInfinite = /\.(powerKnownUpTo|takeoffPowerTime)$/;

const whyNotFlown =
  /speeds, climb and range are not known|not known: the values given cannot be true together/;

/** Tables whose values cannot be true together are refused in these words. */
const impossible = /^the empty weight of the airframe must be more than what leaves/;

/** A table with numbers multiplied, whole numbers kept whole. */
const multiplied = (grids: Grids, spot: Spot, factor: number): Grids => {
  const value = Number(spot.cell) * factor;
  const isCount = Number.isInteger(spot.cell) && Math.abs(Number(spot.cell)) < 10;
  return withSpot(grids, spot, isCount ? Math.round(value) : value);
};

function assessAll(grids: Grids, run: Run): void {
  const { catalogue } = readCatalogue(grids as TableGrids);
  if (catalogue === undefined) {
    run.refused++;
    return;
  }
  run.read++;
  searches.values = 0;
  try {
    const comparison = compare(catalogue);
    for (const assessment of comparison.assessments) {
      const wrong = [...everyFigure(assessment)].filter(([, value]) => !Number.isFinite(value));
      expect(wrong.filter(([path]) => !mayBeInfinite.test(path))).toEqual([]);
      const { findings, flight, mission } = assessment;
      const words = [...findings, ...comparison.findings].map(({ text }) => text);
      if (flight) run.flown++;
      else {
        run.grounded++;
        expect(words.filter((text) => whyNotFlown.test(text))).not.toEqual([]);
      }
      const unsettled = [
        flight?.settled === false && 'speed and cooling drag do not settle',
        mission?.conditions.some(({ text }) => text.includes(unsettledFuel)) && unsettledFuel,
      ].filter((each) => each !== undefined && each !== false);
      run.unsettled += unsettled.length;
      for (const each of unsettled) expect(words.join('\n')).toContain(each);
    }
    const { assessments, context } = comparison;
    for (const block of [
      flightBlock(context, assessments),
      coolingBlock(context, assessments),
      payloadRangeBlock(comparison, assessments),
      loadingBlock(comparison, assessments),
    ])
      expect(block.flat().filter((cell) => typeof cell === 'number' && !Number.isFinite(cell))).toEqual([]);
    expect(comparison.findings.filter(({ text }) => /NaN|undefined|Infinity/.test(text))).toEqual([]);
  } catch (error) {
    if (!(error instanceof RangeError && impossible.test(error.message))) throw error;
    run.refused++;
  }
  run.most = Math.max(run.most, searches.values);
}

function tell(name: string, run: Run): void {
  say(
    `${name}: ${run.read} aircraft, ${run.refused} refused, ${run.flown} packages flown, ${run.grounded} not, ${run.unsettled} unsettled, at most ${searches.most} values a search, ${run.most} an aircraft`,
  );
  expect(searches.refused).toEqual([]);
  expect(searches.most).toBeLessThan(100);
  expect(run.most).toBeLessThan(mostWork);
}

const newRun = (): Run => ({ read: 0, refused: 0, flown: 0, grounded: 0, unsettled: 0, most: 0 });

test.each([
  ['godwit', 60],
  ['sanderling', 120],
  ['minimal', 200],
] as const)('near %s', { timeout: 300_000 }, (name, runs) => {
  const grids = sampleGrids(name);
  const spots = numberSpots(grids);
  const run = newRun();
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat(spots.length - 1), fc.double({ min: -0.5, max: 0.5, noNaN: true })), {
        minLength: 1,
        maxLength: 12,
      }),
      (changes) =>
        assessAll(
          changes.reduce((sum, [at, by]) => multiplied(sum, spots[at] as Spot, Math.exp(by)), grids),
          run,
        ),
    ),
    { numRuns: times(runs), seed },
  );
  tell(name, run);
  expect(run.read).toBeGreaterThan(0.3 * times(runs));
});

/** What makes an aircraft absurd, by label: the greatest factor either way that its column still reads. */
const extremes: Readonly<Record<string, number>> = {
  'maximum takeoff weight': 5,
  'empty weight': 5,
  'wing area': 10,
  'wing span': 5,
  'CLmax clean': 3,
  'Oswald efficiency': 2,
  'takeoff power': 20,
  'maximum continuous power': 20,
  'takeoff power limit': 50,
  'propeller diameter': 5,
  'critical altitude': 10,
  power: 5,
  'true airspeed': 3,
  weight: 5,
  'pressure altitude': 3,
  'field elevation': 4,
  'cruise altitude': 5,
  'cruise power': 3,
  distance: 20,
  headwind: 20,
  reserve: 20,
  BSFC: 5,
  'fuel flow': 5,
  'fuel density': 2,
  'lower heating value': 3,
  usable: 20,
  'exit area': 30,
  'leakage drag area': 100,
  recovery: 3,
  'forward limit': 1.1,
  'aft limit': 1.1,
  maximum: 5,
  bags: 20,
};

test.each([
  ['godwit', sampleGrids('godwit'), 60],
  ['sanderling', sampleGrids('sanderling'), 120],
  ['a plain one', plainAircraft as Grids, 400],
] as const)('far from %s', { timeout: 300_000 }, (name, grids, runs) => {
  const spots = numberSpots(grids).filter(({ field }) => field.label in extremes);
  const run = newRun();
  fc.assert(
    fc.property(
      fc.array(
        fc.tuple(
          fc.nat(spots.length - 1),
          fc.oneof(fc.constantFrom(-1, 1), fc.double({ min: -1, max: 1, noNaN: true })),
        ),
        { minLength: 1, maxLength: 10 },
      ),
      (changes) =>
        assessAll(
          changes.reduce((sum, [at, share]) => {
            const spot = spots[at] as Spot;
            return multiplied(sum, spot, (extremes[spot.field.label] as number) ** share);
          }, grids),
          run,
        ),
    ),
    { numRuns: times(runs), seed },
  );
  tell(name, run);
  expect(run.read).toBeGreaterThan(0.2 * times(runs));
});
