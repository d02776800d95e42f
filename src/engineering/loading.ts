/** Loading an aircraft: what its stations hold, and the loadings whose CG is furthest forward and aft. */
import { requireAbove, requireAtLeast, requireFinite } from './check.ts';
import { type Side, weightTolerance } from './envelope.ts';
import { centreOfGravity, type MassTotal } from './massItem.ts';

/** A seat, a baggage bay or a tank: it holds anything between its minimum and its maximum. */
export interface Station {
  readonly name: string;
  /** from the datum, positive aft */
  readonly arm: number;
  /** always aboard, at least 0 */
  readonly minimum: number;
  readonly maximum: number;
}

/** The aircraft with something in its stations. */
export interface Loading extends MassTotal {
  readonly cg: number;
  /** weight in each station, in the order of the stations */
  readonly loads: readonly number[];
}

/** The check alone: naming every station in a message that is not needed would take longer than the loading. */
const isPossible = ({ arm, minimum, maximum }: Station) =>
  Number.isFinite(arm) && minimum >= 0 && maximum >= minimum && maximum < Number.POSITIVE_INFINITY;

function refuse({ name, arm, minimum, maximum }: Station): void {
  requireFinite(`arm of ${name}`, arm);
  requireAtLeast(`minimum of ${name}`, minimum, 0, '');
  requireAtLeast(`maximum of ${name}`, maximum, minimum, '(its minimum)');
}

/** @throws RangeError when an arm is not finite, a minimum is below 0 or a maximum is below its minimum */
export function requireStations(stations: readonly Station[]): void {
  for (const station of stations) if (!isPossible(station)) refuse(station);
}

/** @throws RangeError when a weight that cannot be left out is beyond a limit, by more than rounding */
export function requireWithin(limitName: string, limit: number, least: number): void {
  requireFinite(limitName, limit);
  if (least > limit * (1 + weightTolerance))
    throw new RangeError(`${limitName} must be at least ${least} (minimum loads aboard), got ${limit}`);
}

/**
 * The aircraft with given loads: W = W_empty + Σ load, M = M_empty + Σ load × arm.
 * @param empty weight above 0
 * @param loads one for each station
 * @throws RangeError when the weight is not above 0
 */
export function loadedWith(
  empty: MassTotal,
  stations: readonly Station[],
  loads: readonly number[],
): Loading {
  requireAbove('empty weight', empty.weight, 0, '');
  let { weight, moment } = empty;
  for (let index = 0; index < stations.length; index++) {
    weight += loads[index]!;
    moment += loads[index]! * stations[index]!.arm;
  }
  return { weight, moment, cg: centreOfGravity({ weight, moment }), loads };
}

/** The station furthest beyond the CG that still has room; undefined when none is beyond it. */
function outermostWithRoom(
  stations: readonly Station[],
  loads: readonly number[],
  cg: number,
  aftwards: 1 | -1,
): number | undefined {
  let outermost: number | undefined;
  let reach = aftwards * cg;
  for (let index = 0; index < stations.length; index++) {
    const { arm, maximum } = stations[index]!;
    if (aftwards * arm <= reach || loads[index]! >= maximum) continue;
    outermost = index;
    reach = aftwards * arm;
  }
  return outermost;
}

/**
 * The loading with the CG furthest forward or aft that stays within the maximum weight. Minimum loads are aboard; the
 * outermost station beyond the CG reached so far is then filled, again and again, until none is beyond it or the maximum
 * weight is reached. Exact: the least of (M + Σ x a)/(W + Σ x) is a fractional knapsack.
 * @param empty weight above 0
 * @throws RangeError when a station is impossible, or the minimum loads exceed maximumWeight
 * @source the most forward and most rearward extreme of AC 43.13-1B 10-16 and 10-17, generalised: those compare a station
 * with the CG limit, this with the CG itself, which also finds the extreme of an aircraft outside its limits
 */
export function extremeLoading(
  empty: MassTotal,
  stations: readonly Station[],
  maximumWeight: number,
  side: Side,
): Loading {
  requireStations(stations);
  const loads = stations.map((station) => station.minimum);
  let { weight, moment } = loadedWith(empty, stations, loads);
  requireWithin('maximumWeight', maximumWeight, weight);

  const aftwards = side === 'aft' ? 1 : -1;
  while (weight < maximumWeight) {
    const outermost = outermostWithRoom(stations, loads, moment / weight, aftwards);
    if (outermost === undefined) break;
    const { arm, maximum } = stations[outermost]!;
    const load = Math.min(maximum - loads[outermost]!, maximumWeight - weight);
    const isFull = load < maximumWeight - weight;
    loads[outermost] = isFull ? maximum : loads[outermost]! + load;
    weight = isFull ? weight + load : maximumWeight;
    moment += load * arm;
  }
  return { weight, moment, cg: moment / weight, loads };
}
