/** CG limits against weight, and how far inside them a loading is. */
import { requireAbove, requireFinite } from './check.ts';

export type Side = 'forward' | 'aft';

/** A corner of the CG limits: the forward and the aft limit at a weight, as arms from the datum. */
export interface EnvelopePoint {
  readonly weight: number;
  readonly forward: number;
  readonly aft: number;
}

/** CG limits: straight lines between the points, heaviest last; below the first point its limits hold. */
export interface Envelope {
  readonly points: readonly EnvelopePoint[];
}

/** A weight that differs from the last by less is that weight: unit conversion and sums do not return it exactly. */
export const weightTolerance = 1e-9; // relative

/**
 * CG limits from their points, in any order.
 * @throws RangeError when there is no point, a weight is not above 0 or stands twice, or a forward limit is not ahead of
 * its aft limit
 */
export function envelopeFrom(points: readonly EnvelopePoint[]): Envelope {
  if (points.length === 0) throw new RangeError('envelope must have at least 1 row, got 0');
  const sorted = [...points].sort((one, other) => one.weight - other.weight);
  sorted.forEach((point, index) => {
    requireAbove('weight in the envelope', point.weight, 0, '');
    requireFinite('forward limit', point.forward);
    requireAbove(`aft limit at ${point.weight}`, point.aft, point.forward, '(the forward limit)');
    if (point.weight === sorted[index - 1]?.weight)
      throw new RangeError(`weight in the envelope must stand once, got ${point.weight} twice`);
  });
  return { points: sorted };
}

/** The greatest weight for which the limits are given. */
export function heaviest(envelope: Envelope): number {
  return envelope.points[envelope.points.length - 1]!.weight;
}

/**
 * Forward and aft limit at a weight: linear between points, those of the first point below it.
 * @param weight above 0, up to the heaviest point
 * @returns arms from the datum
 * @throws RangeError when weight is not above 0 or is beyond the last point: limits are not extrapolated
 */
export function limitsAt(envelope: Envelope, weight: number): { forward: number; aft: number } {
  requireAbove('weight', weight, 0, '');
  const { points } = envelope;
  const upper = points.findIndex((point) => point.weight >= weight);
  if (upper === -1) {
    if (weight > heaviest(envelope) * (1 + weightTolerance))
      throw new RangeError(
        `weight must be at most ${heaviest(envelope)} (end of the envelope), got ${weight}`,
      );
    return points[points.length - 1]!;
  }
  const above = points[upper]!;
  const below = points[upper - 1];
  if (below === undefined) return above;
  const fraction = (weight - below.weight) / (above.weight - below.weight);
  return {
    forward: below.forward + fraction * (above.forward - below.forward),
    aft: below.aft + fraction * (above.aft - below.aft),
  };
}

export interface CgMargins {
  /** CG aft of the forward limit by */
  readonly forward: number;
  /** CG ahead of the aft limit by */
  readonly aft: number;
  /** the smaller of the two */
  readonly nearest: number;
  /** whose limit is the nearer */
  readonly side: Side;
}

/**
 * Margins of a loading, positive inside: x − x_forward(W) and x_aft(W) − x.
 * @throws RangeError when weight is not above 0 or is beyond the envelope
 */
export function cgMargins(envelope: Envelope, weight: number, cg: number): CgMargins {
  requireFinite('cg', cg);
  const limits = limitsAt(envelope, weight);
  const forward = cg - limits.forward;
  const aft = limits.aft - cg;
  return { forward, aft, nearest: Math.min(forward, aft), side: aft < forward ? 'aft' : 'forward' };
}
