import { type Envelope, envelopeFrom, heaviest } from '../engineering/envelope.ts';
import {
  type Loading as LoadedAircraft,
  type Station as LoadStation,
  loadedWith,
} from '../engineering/loading.ts';
import { type LoadingPolygon, loadingPolygon, type StationGroup } from '../engineering/loadingPolygon.ts';
import type { MassTotal } from '../engineering/massItem.ts';
import { type CriticalLoading, type WorstMargins, worstMargins } from '../engineering/worstMargin.ts';
import type { Loading } from '../tables/loadings.ts';
import type { Package } from '../tables/packages.ts';
import type { Station } from '../tables/stations.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { EmptyAircraft } from './emptyAircraft.ts';
import type { Finding } from './finding.ts';

/** A named loading from takeoff to the last drop, against the envelope and the weights. */
export interface LoadingCheck {
  readonly name: string;
  readonly takeoff: LoadedAircraft;
  readonly zeroFuel: LoadedAircraft;
  /** least margin on the way from takeoff to zero fuel; undefined when the loading is beyond the envelope */
  readonly worst: CriticalLoading | undefined;
  /** what the maximum weights leave; negative is too much */
  readonly weightMargin: number;
  /** stations loaded beyond what they hold */
  readonly overloaded: readonly string[];
  readonly passes: boolean;
}

/** Every loading at once, and the named ones. */
export interface Balance {
  readonly envelope: Envelope;
  /** undefined when the least loads alone are beyond a maximum weight */
  readonly polygon: LoadingPolygon | undefined;
  readonly margins: WorstMargins | undefined;
  readonly loadings: readonly LoadingCheck[];
  readonly findings: readonly Finding[];
}

const loadStation = ({ name, arm, minimum, maximum }: Station): LoadStation => ({
  name,
  arm,
  minimum,
  maximum,
});

function stationGroups(stations: readonly Station[]): StationGroup[] {
  const groups = new Map<string, { name: string; stations: string[]; maximum: number }>();
  for (const { name, group, groupMaximum } of stations) {
    if (group === undefined || groupMaximum === undefined) continue;
    const entry = groups.get(group) ?? { name: group, stations: [], maximum: groupMaximum };
    entry.stations.push(name);
    groups.set(group, entry);
  }
  return [...groups.values()];
}

/** The tanks as stations: fuel weight between none and full. */
function tankStations(engine: Package, configuration: Configuration): LoadStation[] {
  return configuration.tanks.map(({ name, arm, usable }) => ({
    name,
    arm,
    minimum: 0,
    maximum: usable * engine.fuelDensity,
  }));
}

/** The states of a flight from empty tanks to takeoff, each tank of the burn order emptied in turn. */
function burnPath(
  empty: MassTotal,
  stations: readonly LoadStation[],
  loads: readonly number[],
  configuration: Configuration,
): LoadedAircraft[] {
  const firstTank = stations.length - configuration.tanks.length;
  const orders = [...new Set(configuration.tanks.map(({ burnOrder }) => burnOrder))].sort((a, b) => a - b);
  const states = [loadedWith(empty, stations, loads)];
  let left = loads;
  for (const order of orders) {
    left = left.map((load, index) =>
      configuration.tanks[index - firstTank]?.burnOrder === order ? 0 : load,
    );
    states.push(loadedWith(empty, stations, left));
  }
  const lightestFirst = states.reverse();
  return lightestFirst.filter(
    (state, index) => index === 0 || state.weight > (lightestFirst[index - 1]?.weight ?? 0),
  );
}

function checkLoading(
  context: Context,
  envelope: Envelope,
  empty: MassTotal,
  stations: readonly LoadStation[],
  loading: Loading,
  engine: Package,
  configuration: Configuration,
): LoadingCheck {
  const { airframe } = context.catalogue;
  const loads = stations.map(({ name }, index) =>
    index < context.catalogue.stations.length
      ? (loading.stations.get(name) ?? 0)
      : (loading.tanks.get(name) ?? 0) * engine.fuelDensity,
  );
  const path = burnPath(empty, stations, loads, configuration);
  const zeroFuel = path[0] as LoadedAircraft;
  const takeoff = path[path.length - 1] as LoadedAircraft;
  const withinEnvelope = takeoff.weight <= heaviest(envelope) * (1 + 1e-9);
  const worst = withinEnvelope
    ? worstMargins({ stations, forward: path, aft: path }, envelope).worst
    : undefined;
  const weightMargin = Math.min(
    airframe.maximumTakeoffWeight - takeoff.weight,
    (airframe.maximumZeroFuelWeight ?? Number.POSITIVE_INFINITY) - zeroFuel.weight,
  );
  const overloaded = stations
    .filter(({ maximum }, index) => (loads[index] as number) > maximum * (1 + 1e-9))
    .map(({ name }) => name);
  const groupsOver = stationGroups(context.catalogue.stations)
    .filter(({ stations: members, maximum }) => {
      const load = members.reduce((sum, name) => sum + (loading.stations.get(name) ?? 0), 0);
      return load > maximum * (1 + 1e-9);
    })
    .map(({ name }) => name);
  return {
    name: loading.name,
    takeoff,
    zeroFuel,
    worst,
    weightMargin,
    overloaded: [...overloaded, ...groupsOver],
    passes:
      worst !== undefined &&
      worst.margin >= -1e-9 &&
      weightMargin >= -1e-6 &&
      overloaded.length + groupsOver.length === 0,
  };
}

function envelopeLimitSource(context: Context): string {
  const bases = [
    ...new Set(context.catalogue.envelope.map(({ basis }) => basis).filter((basis) => basis !== undefined)),
  ];
  return bases.length > 0 ? `envelope: ${bases.join(', ')}` : 'envelope table';
}

function marginFindings(
  context: Context,
  engine: Package,
  empty: EmptyAircraft,
  margins: WorstMargins,
): Finding[] {
  const { display } = context;
  const source = envelopeLimitSource(context);
  return [margins.forward, margins.aft].flatMap((critical): Finding[] => {
    const { side, margin, limit, cg, weight, cause } = critical;
    const base = {
      package: engine.name,
      subject: `CG ${side} limit`,
      shown: 'arm',
      value: cg,
      limit,
      source,
    } as const;
    const because = cause === undefined ? 'with the least loads' : `with ${cause} loaded`;
    const where = `at ${display.text('weight', weight)}, ${because}`;
    if (margin < -1e-9) {
      const text = `some allowed loadings go ${display.text('arm', -margin)} ${side === 'aft' ? 'aft' : 'ahead'} of the limit, ${where}`;
      return [{ ...base, gravity: 'stop', text }];
    }
    if (margin < empty.expectedCg.halfWidth) {
      const text = `least margin ${display.text('arm', margin)} ${where} is less than the empty CG is known to, ±${display.text('arm', empty.expectedCg.halfWidth)}`;
      return [{ ...base, gravity: 'check', text }];
    }
    return [];
  });
}

function loadingFindings(context: Context, engine: Package, checks: readonly LoadingCheck[]): Finding[] {
  const { display } = context;
  return checks
    .filter(({ passes }) => !passes)
    .map((check): Finding => {
      const { name, takeoff, worst, weightMargin, overloaded } = check;
      const base = { gravity: 'stop', package: engine.name, subject: name } as const;
      if (overloaded.length > 0) {
        return { ...base, source: 'stations table', text: `more than ${overloaded.join(' and ')} may hold` };
      }
      if (weightMargin < 0 || worst === undefined) {
        return {
          ...base,
          shown: 'weight',
          value: takeoff.weight,
          limit: context.catalogue.airframe.maximumTakeoffWeight,
          source: 'airframe table',
          text: `${display.text('weight', Math.max(0, -weightMargin))} over the maximum weight`,
        };
      }
      const { side, margin, cg, limit, weight } = worst;
      const state =
        weight < takeoff.weight - 1e-6
          ? `with fuel burnt down to ${display.text('weight', weight)}`
          : 'at takeoff';
      return {
        ...base,
        shown: 'arm',
        value: cg,
        limit,
        source: envelopeLimitSource(context),
        text: `${display.text('arm', -margin)} ${side === 'aft' ? 'aft of the aft' : 'ahead of the forward'} CG limit ${state}`,
      };
    });
}

export function balanceOf(
  context: Context,
  engine: Package,
  empty: EmptyAircraft,
  configuration: Configuration,
): Balance {
  const { airframe, stations, envelope: points, loadings } = context.catalogue;
  const envelope = envelopeFrom(points);
  const { nominal } = empty.mass;
  const seats = stations.map(loadStation);
  const tanks = tankStations(engine, configuration);
  const least = seats.reduce((weight, { minimum }) => weight + minimum, nominal.weight);
  const maximumWeight = Math.min(airframe.maximumTakeoffWeight, heaviest(envelope));
  const possible = least <= Math.min(maximumWeight, airframe.maximumZeroFuelWeight ?? maximumWeight);
  const polygon = possible
    ? loadingPolygon({
        empty: nominal,
        stations: seats,
        tanks,
        maximumWeight,
        maximumZeroFuelWeight: airframe.maximumZeroFuelWeight,
        groups: stationGroups(stations),
      })
    : undefined;
  const margins = polygon && worstMargins(polygon, envelope);
  const checks = loadings.map((loading) =>
    checkLoading(context, envelope, nominal, [...seats, ...tanks], loading, engine, configuration),
  );
  const tooHeavy: Finding[] = possible
    ? []
    : [
        {
          gravity: 'stop',
          package: engine.name,
          subject: 'maximum weight',
          shown: 'weight',
          value: least,
          limit: maximumWeight,
          source: 'airframe and envelope tables',
          text: 'over the maximum weight with the least loads and no fuel',
        },
      ];
  const shortEnvelope: Finding[] =
    heaviest(envelope) < airframe.maximumTakeoffWeight * (1 - 1e-9)
      ? [
          {
            gravity: 'check',
            package: '',
            subject: 'envelope',
            shown: 'weight',
            value: heaviest(envelope),
            limit: airframe.maximumTakeoffWeight,
            source: 'envelope table',
            text: 'the CG limits end below the maximum takeoff weight; loadings are checked up to there',
          },
        ]
      : [];
  return {
    envelope,
    polygon,
    margins,
    loadings: checks,
    findings: [
      ...tooHeavy,
      ...shortEnvelope,
      ...(margins ? marginFindings(context, engine, empty, margins) : []),
      ...loadingFindings(context, engine, checks),
    ],
  };
}
