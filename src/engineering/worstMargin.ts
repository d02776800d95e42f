/**
 * The worst CG margin over every loading, exactly.
 *
 * At a given weight the worst loading lies on the forward or aft boundary of the loading polygon. Along an edge
 * M = M₀ + a (W − W₀), against a limit c + d W, the margin is ±(a + B/W − c − d W) with B = M₀ − a W₀. It is least at a
 * vertex, at a weight where the limit has a corner, or where its derivative is zero: W* = √(−B/d).
 * @source elementary calculus; checked against brute force
 */
import { type Envelope, limitsAt, type Side } from './envelope.ts';
import type { Loading, Station } from './loading.ts';
import type { LoadingPolygon } from './loadingPolygon.ts';

export interface CriticalLoading extends Loading {
  /** whose limit it is */
  readonly side: Side;
  /** positive inside, with the moment's half-width taken off */
  readonly margin: number;
  /** the limit at that weight, from the datum */
  readonly limit: number;
  /** the station whose load moves the CG furthest towards the limit; undefined when none moves it that way */
  readonly cause: string | undefined;
}

export interface WorstMargins {
  readonly forward: CriticalLoading;
  readonly aft: CriticalLoading;
  /** the smaller margin of the two */
  readonly worst: CriticalLoading;
}

const marginAt = (envelope: Envelope, side: Side, weight: number, moment: number): number => {
  const limit = limitsAt(envelope, weight)[side];
  return side === 'forward' ? moment / weight - limit : limit - moment / weight;
};

/**
 * Weights on an edge at which the margin can be least: its ends, corners of the limits between, and each W*.
 * @param intercept B
 */
function candidateWeights(
  from: Loading,
  to: Loading,
  intercept: number,
  envelope: Envelope,
  side: Side,
): number[] {
  const corners = envelope.points
    .map((point) => point.weight)
    .filter((weight) => weight > from.weight && weight < to.weight);
  const ends = [from.weight, ...corners, to.weight];
  const stationary: number[] = [];
  for (let piece = 1; piece < ends.length; piece++) {
    const [low, high] = [ends[piece - 1]!, ends[piece]!];
    const limitSlope = (limitsAt(envelope, high)[side] - limitsAt(envelope, low)[side]) / (high - low);
    const weight = Math.sqrt(-intercept / limitSlope); // NaN or infinite where the margin has no stationary point
    if (weight > low && weight < high) stationary.push(weight);
  }
  return [...ends, ...stationary];
}

/** The CG moves by load × (arm − x)/(W − load) when a station is loaded. */
function causeOf(stations: readonly Station[], loading: Loading, side: Side): string | undefined {
  const aftwards = side === 'aft' ? 1 : -1;
  let cause: string | undefined;
  let furthest = 0;
  stations.forEach((station, index) => {
    const load = loading.loads[index]!;
    const shift = (aftwards * load * (station.arm - loading.cg)) / (loading.weight - load);
    if (shift > furthest) {
      furthest = shift;
      cause = station.name;
    }
  });
  return cause;
}

function between(from: Loading, to: Loading, weight: number): Loading {
  const fraction = (weight - from.weight) / (to.weight - from.weight);
  const moment = from.moment * (1 - fraction) + to.moment * fraction;
  const loads = from.loads.map((load, index) => load * (1 - fraction) + to.loads[index]! * fraction);
  return { weight, moment, cg: moment / weight, loads };
}

function worstOn(
  polygon: LoadingPolygon,
  envelope: Envelope,
  side: Side,
  momentHalfWidth: number,
): CriticalLoading {
  const boundary = polygon[side];
  const shift = side === 'aft' ? momentHalfWidth : -momentHalfWidth;
  let worst = boundary[0]!;
  let margin = marginAt(envelope, side, worst.weight, worst.moment + shift);
  for (let edge = 1; edge < boundary.length; edge++) {
    const [from, to] = [boundary[edge - 1]!, boundary[edge]!];
    const slope = (to.moment - from.moment) / (to.weight - from.weight);
    const intercept = from.moment + shift - slope * from.weight;
    for (const weight of candidateWeights(from, to, intercept, envelope, side)) {
      const candidate = marginAt(envelope, side, weight, intercept + slope * weight);
      if (candidate < margin) {
        margin = candidate;
        worst = between(from, to, weight);
      }
    }
  }
  return {
    ...worst,
    side,
    margin,
    limit: limitsAt(envelope, worst.weight)[side],
    cause: causeOf(polygon.stations, worst, side),
  };
}

/**
 * Worst margin to the forward and to the aft limit over every loading, with the loading that has it.
 * @param momentHalfWidth kg·m by which every moment may be off, either way: it weighs most on the lightest loading
 * @throws RangeError when a loading is heavier than the envelope's last point
 */
export function worstMargins(polygon: LoadingPolygon, envelope: Envelope, momentHalfWidth = 0): WorstMargins {
  const forward = worstOn(polygon, envelope, 'forward', momentHalfWidth);
  const aft = worstOn(polygon, envelope, 'aft', momentHalfWidth);
  return { forward, aft, worst: aft.margin < forward.margin ? aft : forward };
}
