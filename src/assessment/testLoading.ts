import { cgMargins, limitsAt, type Side } from '../engineering/envelope.ts';
import { type Station as LoadStation, loadedWith } from '../engineering/loading.ts';
import { findRoot } from '../engineering/solve.ts';
import { worstMargins } from '../engineering/worstMargin.ts';
import type { Station } from '../tables/stations.ts';
import { toSi } from '../units.ts';
import type { Assessment } from './assess.ts';
import { ballastArm } from './ballastArm.ts';
import type { Context } from './context.ts';
import { everyLoading, heaviestLoading } from './everyLoading.ts';
import { burnPath } from './loadingCheck.ts';
import { fuelInTanks, tankStations } from './loadStations.ts';

/** The loading of a test flight that puts the CG on a limit and never beyond. */
export interface TestLoading {
  readonly side: Side;
  /** seats and baggage, then tanks */
  readonly stations: readonly LoadStation[];
  readonly loads: readonly number[];
  readonly ballast: { readonly weight: number; readonly arm: number } | undefined;
  /** at takeoff, as are CG, limit and margin */
  readonly weight: number;
  readonly cg: number;
  readonly limit: number;
  readonly margin: number;
  /** least from takeoff to empty tanks: 0 where the limit is reached, more where it cannot be, less where even the least loading is beyond it */
  readonly leastMargin: number;
}

const standardPilot = toSi('mass', 170, 'lb'); // 14 CFR 23.25 before amendment 64
const reached = 1e-4; // m; a tenth of a millimetre is on the limit

/** The pilot flies alone: only whom the flight needs may be aboard in phase one. What else it takes is ballast. */
export function soloStations(stations: readonly Station[]): Station[] {
  const seat = Math.max(
    0,
    stations.findIndex(({ persons }) => persons > 0),
  );
  return stations.map((station, index) => {
    const { minimum, maximum, usual = standardPilot } = station;
    const pilot = Math.min(maximum, Math.max(minimum, usual));
    return index === seat ? { ...station, minimum: pilot, maximum: pilot } : { ...station, minimum: 0 };
  });
}

/** Fuel for an hour at maximum continuous power stays in the tanks; without fuel points half of what they hold. */
function testTanks({ package: engine, configuration, fuel, payload }: Assessment): LoadStation[] {
  const hour = fuel.minimumFuel === undefined ? payload.fuelVolume / 2 : 2 * fuel.minimumFuel;
  const least = fuelInTanks(configuration.tanks, Math.min(hour, payload.fuelVolume));
  return tankStations(engine, configuration.tanks).map((tank, index) => ({
    ...tank,
    minimum: Math.min(tank.maximum, (least[index] ?? 0) * engine.fuelDensity),
  }));
}

/**
 * The loading that reaches a CG limit with the pilot alone, at takeoff or on the way to empty tanks: the worst of all
 * loadings where that goes beyond the limit, taken back towards the least loads until it is on it; else with as much
 * ballast as puts it there and the weights allow.
 * @returns undefined where the least loads are beyond a maximum weight
 */
export function testLoading(context: Context, assessment: Assessment, side: Side): TestLoading | undefined {
  const { catalogue } = context;
  const { balance, empty, configuration } = assessment;
  const { envelope } = balance;
  const mass = empty.mass.nominal;
  const alone = { ...context, catalogue: { ...catalogue, stations: soloStations(catalogue.stations) } };
  const polygon = everyLoading(alone, envelope, mass, testTanks(assessment));
  if (polygon === undefined) return undefined;
  const { stations } = polygon;
  const found = worstMargins(polygon, envelope)[side];
  const least = stations.map(({ minimum }) => minimum);
  const flown = (loads: readonly number[], ballast?: { weight: number; arm: number }): TestLoading => {
    const { weight: extra = 0, arm = 0 } = ballast ?? {};
    const emptyWithBallast = { weight: mass.weight + extra, moment: mass.moment + extra * arm };
    const { weight, cg } = loadedWith(emptyWithBallast, stations, loads);
    const path = burnPath(emptyWithBallast, stations, loads, configuration.tanks);
    return {
      side,
      stations,
      loads,
      ballast,
      weight,
      cg,
      limit: limitsAt(envelope, weight)[side],
      margin: cgMargins(envelope, weight, cg)[side],
      leastMargin: worstMargins({ stations, forward: path, aft: path }, envelope)[side].margin,
    };
  };
  /** From a loading inside to one beyond: the one between that is on the limit. */
  const onLimit = (loading: (share: number) => TestLoading) =>
    loading(findRoot((share) => loading(share).leastMargin - reached / 2, 0, 1, 1e-9));

  const outermost = flown(found.loads);
  if (outermost.leastMargin <= reached) {
    if (outermost.leastMargin >= 0) return outermost;
    const outset = flown(least);
    if (outset.leastMargin <= reached / 2) return outset;
    return onLimit((share) =>
      flown(least.map((load, index) => load + share * ((found.loads[index] as number) - load))),
    );
  }
  const arm = ballastArm(catalogue.airframe, found.limit, side === 'aft' ? 1 : -1);
  const room = heaviestLoading(context, envelope) - outermost.weight;
  if (arm === undefined || room <= 0) return outermost;
  const most = flown(found.loads, { weight: room, arm });
  return most.leastMargin > 0 ? most : onLimit((share) => flown(found.loads, { weight: share * room, arm }));
}
