import { type Envelope, envelopeFrom, heaviest } from '../engineering/envelope.ts';
import {
  type Loading as LoadedAircraft,
  type Station as LoadStation,
  loadedWith,
} from '../engineering/loading.ts';
import type { MassTotal } from '../engineering/massItem.ts';
import { type CriticalLoading, worstMargins } from '../engineering/worstMargin.ts';
import type { Airframe } from '../tables/airframe.ts';
import type { Loading } from '../tables/loadings.ts';
import type { Package } from '../tables/packages.ts';
import type { Tank } from '../tables/tanks.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';
import { seatStations, stationGroups, tankStations } from './loadStations.ts';

/** A weight limit and what a loading leaves of it; negative is too much. */
export interface WeightMargin {
  readonly name: 'takeoff weight' | 'zero-fuel weight' | 'landing weight';
  readonly limit: number;
  readonly margin: number;
}

/** Over the limit by more than rounding takes. */
export const isExceeded = ({ margin }: WeightMargin) => margin < -1e-6;

/** A named loading from takeoff to the last drop, against the envelope and the weights. */
export interface LoadingCheck {
  readonly name: string;
  readonly takeoff: LoadedAircraft;
  readonly zeroFuel: LoadedAircraft;
  /** least margin on the way from takeoff to zero fuel; undefined when the loading is beyond the envelope */
  readonly worst: CriticalLoading | undefined;
  /** of the weight limit that leaves least */
  readonly weight: WeightMargin;
  /** fuel to be burnt before it may land, where there is a landing weight */
  readonly burnBeforeLanding: number;
  /** stations, and groups of stations, loaded beyond what they hold */
  readonly overloaded: readonly string[];
  readonly passes: boolean;
}

/** What the airframe's weight limits leave, the scarcest first; at landing the tanks may be as good as empty. */
function weightMargins(airframe: Airframe, takeoff: number, zeroFuel: number): WeightMargin[] {
  const { maximumTakeoffWeight, maximumZeroFuelWeight, maximumLandingWeight } = airframe;
  const margins: WeightMargin[] = [
    { name: 'takeoff weight', limit: maximumTakeoffWeight, margin: maximumTakeoffWeight - takeoff },
  ];
  if (maximumZeroFuelWeight !== undefined) {
    const margin = maximumZeroFuelWeight - zeroFuel;
    margins.push({ name: 'zero-fuel weight', limit: maximumZeroFuelWeight, margin });
  }
  if (maximumLandingWeight !== undefined) {
    const margin = maximumLandingWeight - zeroFuel;
    margins.push({ name: 'landing weight', limit: maximumLandingWeight, margin });
  }
  return margins.sort((one, other) => one.margin - other.margin);
}

/**
 * The states of a flight from empty tanks to takeoff, lightest first, each tank of the burn order emptied in turn.
 * @param stations seats and baggage, then the tanks
 * @param loads one for each station
 */
export function burnPath(
  empty: MassTotal,
  stations: readonly LoadStation[],
  loads: readonly number[],
  tanks: readonly Tank[],
): LoadedAircraft[] {
  const firstTank = stations.length - tanks.length;
  const orders = [...new Set(tanks.map(({ burnOrder }) => burnOrder))].sort((a, b) => a - b);
  const states = [loadedWith(empty, stations, loads)];
  let left = loads;
  for (const order of orders) {
    left = left.map((load, index) => (tanks[index - firstTank]?.burnOrder === order ? 0 : load));
    states.push(loadedWith(empty, stations, left));
  }
  const lightestFirst = states.reverse();
  return lightestFirst.filter((state, index) => state.weight > (lightestFirst[index - 1]?.weight ?? 0));
}

/**
 * The least CG margin on the way; undefined where it begins beyond the envelope.
 * @param momentHalfWidth how well the moment is known
 */
export function worstOnTheWay(
  path: readonly LoadedAircraft[],
  stations: readonly LoadStation[],
  envelope: Envelope,
  momentHalfWidth = 0,
): CriticalLoading | undefined {
  const heaviestState = path[path.length - 1] as LoadedAircraft;
  return heaviestState.weight > heaviest(envelope) * (1 + 1e-9)
    ? undefined
    : worstMargins({ stations, forward: path, aft: path }, envelope, momentHalfWidth).worst;
}

export function checkLoading(
  context: Context,
  envelope: Envelope,
  empty: MassTotal,
  engine: Package,
  tanks: readonly Tank[],
  loading: Loading,
): LoadingCheck {
  const { airframe } = context.catalogue;
  const seats = seatStations(context.catalogue.stations);
  const stations = [...seats, ...tankStations(engine, tanks)];
  const loads = stations.map(({ name }, index) =>
    index < seats.length
      ? (loading.stations.get(name) ?? 0)
      : (loading.tanks.get(name) ?? 0) * engine.fuelDensity,
  );
  const path = burnPath(empty, stations, loads, tanks);
  const zeroFuel = path[0] as LoadedAircraft;
  const takeoff = path[path.length - 1] as LoadedAircraft;
  const worst = worstOnTheWay(path, stations, envelope);
  const [weight] = weightMargins(airframe, takeoff.weight, zeroFuel.weight) as [WeightMargin];
  const beyond = (load: number, maximum: number) => load > maximum * (1 + 1e-9);
  const overloaded = [
    ...stations.filter(({ maximum }, index) => beyond(loads[index] as number, maximum)),
    ...stationGroups(context.catalogue.stations).filter((group) =>
      beyond(
        group.stations.reduce((sum, name) => sum + (loading.stations.get(name) ?? 0), 0),
        group.maximum,
      ),
    ),
  ].map(({ name }) => name);
  return {
    name: loading.name,
    takeoff,
    zeroFuel,
    worst,
    weight,
    burnBeforeLanding: Math.max(
      0,
      takeoff.weight - (airframe.maximumLandingWeight ?? Number.POSITIVE_INFINITY),
    ),
    overloaded,
    passes: worst !== undefined && worst.margin >= -1e-9 && !isExceeded(weight) && overloaded.length === 0,
  };
}

/** The basis of the CG limits, for findings. */
export function envelopeSource({ catalogue }: Context): string {
  const bases = [...new Set(catalogue.envelope.map(({ basis }) => basis))].filter(Boolean);
  return bases.length > 0 ? `envelope: ${bases.join(', ')}` : 'envelope table';
}

/** What every named loading that does not pass is stopped by. */
export function loadingFindings(
  context: Context,
  engine: Package,
  checks: readonly LoadingCheck[],
): Finding[] {
  const { display } = context;
  return checks
    .filter(({ passes }) => !passes)
    .map((check): Finding => {
      const { name, takeoff, worst, weight, overloaded } = check;
      const base = { gravity: 'stop', package: engine.name, subject: name } as const;
      if (overloaded.length > 0) {
        return { ...base, source: 'stations table', text: `more than ${overloaded.join(' and ')} may hold` };
      }
      if (isExceeded(weight)) {
        return {
          ...base,
          shown: 'weight',
          value: weight.limit - weight.margin,
          limit: weight.limit,
          source: 'airframe table',
          text: `${display.text('weight', -weight.margin)} over the maximum ${weight.name}`,
        };
      }
      if (worst === undefined) {
        return {
          ...base,
          shown: 'weight',
          value: takeoff.weight,
          limit: heaviest(envelopeFrom(context.catalogue.envelope)),
          source: envelopeSource(context),
          text: 'heavier than the CG limits go',
        };
      }
      const { side, margin, cg, limit } = worst;
      const state =
        worst.weight < takeoff.weight - 1e-6
          ? `with fuel burnt down to ${display.text('weight', worst.weight)}`
          : 'at takeoff';
      return {
        ...base,
        shown: 'arm',
        value: cg,
        limit,
        source: envelopeSource(context),
        text: `CG ${display.text('arm', -margin)} ${side === 'aft' ? 'aft of the aft' : 'ahead of the forward'} limit ${state}`,
      };
    });
}
