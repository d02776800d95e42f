import { ballastWeight, weightToMove } from '../engineering/ballast.ts';
import type { Side } from '../engineering/envelope.ts';
import { add, type MassTotal } from '../engineering/massItem.ts';
import { findRoot } from '../engineering/solve.ts';
import { type CriticalLoading, type WorstMargins, worstMargins } from '../engineering/worstMargin.ts';
import { nameKey } from '../tables/cell.ts';
import type { Assessment } from './assess.ts';
import { attempt } from './attempt.ts';
import { ballastArm } from './ballastArm.ts';
import type { Context } from './context.ts';
import { everyLoading } from './everyLoading.ts';
import { tankStations } from './loadStations.ts';
import { armOf } from './powerplant.ts';

/** A weight that brings every loading inside one CG limit. */
export interface BalanceCure {
  /** the limit it is for */
  readonly side: Side;
  /** what is moved; undefined for ballast */
  readonly moved: string | undefined;
  readonly weight: number;
  /** false where the search for the least weight ran out of steps: it takes more than this */
  readonly settled: boolean;
  /** where it is taken from; undefined for ballast */
  readonly fromArm: number | undefined;
  readonly toArm: number;
  /** what can no longer be carried */
  readonly payloadLost: number;
  /** with it aboard; the other limit may now be the one that is passed */
  readonly margins: WorstMargins;
}

const holds = -1e-6; // m; a margin this near zero is zero
const mostSteps = 200; // each takes out all of the shortfall but what a sloping limit gives back

const resolution = 1e-6; // kg

/** Between a weight that is too little and one that is more than enough. */
function onTheLimit(
  side: Side,
  marginsWith: (weight: number) => WorstMargins | undefined,
  tooLittle: number,
  enough: number,
): { weight: number; margins: WorstMargins; settled: boolean } | undefined {
  const marginOf = (weight: number) => marginsWith(weight)?.[side].margin ?? Number.NaN;
  const weight = findRoot(marginOf, tooLittle, enough, resolution);
  const margins = marginsWith(weight);
  return margins && { weight, margins, settled: true };
}

/**
 * The least weight with which the worst loading of all is on the limit: what the worst one needs, again and again, for the
 * limit and the worst loading move with it. Undefined where no weight is enough before a maximum weight is passed.
 */
function leastWeight(
  side: Side,
  marginsWith: (weight: number) => WorstMargins | undefined,
  needed: (worst: CriticalLoading) => number,
): { weight: number; margins: WorstMargins; settled: boolean } | undefined {
  let weight = 0;
  let tooLittle = 0;
  for (let step = 0; ; step++) {
    const margins = marginsWith(weight);
    if (margins === undefined) return undefined;
    const { margin } = margins[side];
    const settled = margin >= holds;
    // At a maximum weight it takes the place of a load, and less of it is enough
    if (margin > -holds) return onTheLimit(side, marginsWith, tooLittle, weight);
    if (settled || step >= mostSteps) return { weight, margins, settled };
    tooLittle = weight;
    const { value: more } = attempt(() => needed(margins[side]));
    if (more === undefined) return undefined; // the limit has moved to the other side of it
    weight += more;
  }
}

/** Ballast at the airframe's ballast arm, or at the firewall where only that is on the right side; a battery moved there. */
export function balanceCures(
  context: Context,
  { package: engine, configuration, empty, balance }: Assessment,
): BalanceCure[] {
  const { envelope, margins: found } = balance;
  if (found === undefined) return [];
  const { airframe } = context.catalogue;
  const tanks = tankStations(engine, configuration.tanks);
  const marginsAfter = (change: MassTotal) => {
    const polygon = everyLoading(context, envelope, add(empty.mass.nominal, change), tanks);
    return polygon && worstMargins(polygon, envelope);
  };
  const batteries = context.components
    .of(engine.name)
    .filter(({ system, weight }) => nameKey(system) === 'battery' && weight > 0)
    .map(({ name, weight, ...component }) => ({
      name,
      weight,
      arm: armOf(component, airframe.firewallArm) ?? airframe.firewallArm,
    }));
  return (['forward', 'aft'] as const).flatMap((side): BalanceCure[] => {
    const { margin, limit } = found[side];
    if (margin >= holds) return [];
    const aftwards = side === 'forward' ? 1 : -1;
    const toArm = ballastArm(airframe, limit, aftwards);
    if (toArm === undefined) return [];
    const ballast = leastWeight(
      side,
      (weight) => marginsAfter({ weight, moment: weight * toArm }),
      ({ weight, cg, limit: target }) => ballastWeight(weight, cg, target, toArm),
    );
    const base = { side, toArm } as const;
    const cures: BalanceCure[] = ballast
      ? [{ ...base, ...ballast, moved: undefined, fromArm: undefined, payloadLost: ballast.weight }]
      : [];
    for (const battery of batteries) {
      if (aftwards * (toArm - battery.arm) <= 0) continue;
      const move = leastWeight(
        side,
        (weight) => marginsAfter({ weight: 0, moment: weight * (toArm - battery.arm) }),
        ({ weight, cg, limit: target }) => weightToMove(weight, cg, target, battery.arm, toArm),
      );
      if (move && move.weight <= battery.weight)
        cures.push({ ...base, ...move, moved: battery.name, fromArm: battery.arm, payloadLost: 0 });
    }
    return cures;
  });
}
