import { type Envelope, limitsAt } from '../engineering/envelope.ts';
import { loadingRegion, type RegionPoint } from '../engineering/loadingRegion.ts';
import type { Cell } from '../tables/cell.ts';
import type { Assessment, Comparison } from './assess.ts';
import { chartRows } from './chartRows.ts';
import { heaviestLoading } from './everyLoading.ts';

const curveSteps = 24; // between these points an edge is straight to 0.1 mm

/** The CG limits as a closed outline, from a weight below the first row, whose limits hold there, to the heaviest. */
function envelopeOutline(envelope: Envelope, lightest: number, heaviest: number): RegionPoint[] {
  const between = envelope.points
    .map(({ weight }) => weight)
    .filter((weight) => weight > lightest && weight < heaviest);
  const weights = [lightest, ...between, heaviest];
  const forward = weights.map((weight) => ({ cg: limitsAt(envelope, weight).forward, weight }));
  const aft = weights.map((weight) => ({ cg: limitsAt(envelope, weight).aft, weight })).reverse();
  return [...forward, ...aft, forward[0] as RegionPoint];
}

/**
 * LOADING_REGION, for a chart: CG across; the weight of the CG limits, then of every package, each in its own column and
 * its own rows.
 */
export function loadingRegionBlock(comparison: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { context, baseline } = comparison;
  const { display } = context;
  const { envelope } = baseline.balance;
  const regions = assessments.map(({ package: { name }, balance: { polygon } }) => ({
    name,
    points: polygon ? loadingRegion(polygon, curveSteps) : [],
  }));
  const heaviest = heaviestLoading(context, envelope);
  const weights = regions.flatMap(({ points }) => points.map(({ weight }) => weight));
  const lightest = Math.min(envelope.points[0]?.weight ?? heaviest, ...weights);
  const outlines = [{ name: 'CG limits', points: envelopeOutline(envelope, lightest, heaviest) }, ...regions];
  return [
    [
      `CG, ${display.unit('arm')} (weights in ${display.unit('weight')})`,
      ...outlines.map(({ name }) => name),
    ],
    ...chartRows(
      outlines.map(({ points }) =>
        points.map(({ cg, weight }) => [display.point('arm', cg), display.point('weight', weight)]),
      ),
    ),
  ];
}
