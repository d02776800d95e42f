import { limitsAt } from '../engineering/envelope.ts';
import type { CriticalLoading } from '../engineering/worstMargin.ts';
import { burnPath, worstOnTheWay } from './loadingCheck.ts';
import { fuelInTanks, seatStations, tankStations } from './loadStations.ts';
import type { MissionCase } from './missionCase.ts';
import type { Leg } from './missionLegs.ts';
import type { Seating } from './seating.ts';

/** CG from start-up to the last drop of one leg. */
export interface LegBalance {
  /** its margin has how well the empty CG is known taken off */
  readonly critical: CriticalLoading;
  /** of the width of the limits at that weight */
  readonly share: number;
}

/** Undefined where the leg begins beyond the envelope. */
function legBalance(asked: MissionCase, { loads }: Seating, leg: Leg): LegBalance | undefined {
  const { context, engine, tanks, empty, envelope, cgHalfWidth } = asked;
  const stations = [...seatStations(context.catalogue.stations), ...tankStations(engine, tanks)];
  const fuel = fuelInTanks(tanks, leg.fuel / engine.fuelDensity).map((volume) => volume * engine.fuelDensity);
  const path = burnPath(empty, stations, [...loads, ...fuel], tanks);
  const critical = worstOnTheWay(path, stations, envelope, cgHalfWidth * empty.weight);
  if (critical === undefined) return undefined;
  const { forward, aft } = limitsAt(envelope, critical.weight);
  return { critical, share: critical.margin / (aft - forward) };
}

/** How people and bags sit, and the CG that gives on both legs. */
export interface MissionLoading {
  readonly seating: Seating;
  readonly out: LegBalance | undefined;
  readonly back: LegBalance | undefined;
}

/** Front seats first where that balances; else the seating with the greatest margin. */
export function bestSeating(
  asked: MissionCase,
  seatings: readonly Seating[],
  out: Leg,
  back: Leg,
): MissionLoading | undefined {
  let best: MissionLoading | undefined;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const seating of seatings) {
    const loading = { seating, out: legBalance(asked, seating, out), back: legBalance(asked, seating, back) };
    const margin = Math.min(
      loading.out?.critical.margin ?? Number.NEGATIVE_INFINITY,
      loading.back?.critical.margin ?? Number.NEGATIVE_INFINITY,
    );
    if (margin >= 0) return loading;
    if (best === undefined || margin > greatest) {
      best = loading;
      greatest = margin;
    }
  }
  return best;
}
