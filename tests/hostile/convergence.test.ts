/** Random aircraft about the samples: every search converges or says so, every number is finite, nothing takes long. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compare } from '../../src/assessment/assess.ts';
import { readCatalogue, type TableGrids } from '../../src/tables/catalogue.ts';
import { everyFigure, numberSpots, sampleGrids } from './samples.ts';
import { say, seed, times } from './seed.ts';
import { withSpot } from './workbooks.ts';

const longest = 1; // s of one core

/** Where a result says that a search did not converge. */
function unsettled(value: unknown, path = ''): string[] {
  if (typeof value !== 'object' || value === null || value instanceof Map) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    if (['context', 'asked', 'findings', 'configuration', 'package'].includes(key)) return [];
    return key === 'converged' && inner === false ? [`${path}.${key}`] : unsettled(inner, `${path}.${key}`);
  });
}

test.each([
  ['godwit', 60],
  ['sanderling', 120],
  ['minimal', 200],
] as const)('about %s', { timeout: 300_000 }, (name, runs) => {
  const grids = sampleGrids(name);
  const spots = numberSpots(grids);
  let [read, refused, flown, slowest, doubtful] = [0, 0, 0, 0, 0];
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat(spots.length - 1), fc.double({ min: -0.5, max: 0.5, noNaN: true })), {
        minLength: 1,
        maxLength: 12,
      }),
      (changes) => {
        const changed = changes.reduce((sum, [at, by]) => {
          const spot = spots[at] as (typeof spots)[number];
          const value = Number(spot.cell) * Math.exp(by);
          return withSpot(
            sum,
            spot,
            Number.isInteger(spot.cell) && Math.abs(Number(spot.cell)) < 10 ? Math.round(value) : value,
          );
        }, grids);
        const { catalogue } = readCatalogue(changed as TableGrids);
        if (catalogue === undefined) {
          refused++;
          return;
        }
        read++;
        const started = process.cpuUsage();
        const comparison = compare(catalogue);
        for (const assessment of comparison.assessments) {
          const wrong = [...everyFigure(assessment)].filter(([, value]) => !Number.isFinite(value));
          expect(wrong.filter(([path]) => !mayBeInfinite.test(path))).toEqual([]);
          if (assessment.flight) flown++;
          const open = unsettled(assessment);
          if (open.length > 0) doubtful++;
          if (open.length > 0 && !assessment.findings.some(({ text }) => /settle|doubtful/.test(text)))
            expect(open).toEqual([]);
        }
        expect(comparison.findings.filter(({ text }) => /NaN|undefined|Infinity/.test(text))).toEqual([]);
        const { user, system } = process.cpuUsage(started);
        slowest = Math.max(slowest, (user + system) / 1e6);
      },
    ),
    { numRuns: times(runs), seed },
  );
  say(
    `${name}: ${read} aircraft, ${refused} refused by the readers, ${flown} packages flown, ${doubtful} unsettled, slowest ${slowest.toFixed(2)} s`,
  );
  expect(read).toBeGreaterThan(0.3 * times(runs));
  expect(slowest).toBeLessThan(longest);
});

/** Infinite by their meaning: no limit is known. */
const mayBeInfinite = /\.(powerKnownUpTo|takeoffPowerTime)$/;
