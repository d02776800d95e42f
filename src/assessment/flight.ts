import {
  type Air,
  type AircraftInFlight,
  airAt,
  type PowerSetting,
  type Rating,
} from '../engineering/aircraftInFlight.ts';
import {
  type BestClimb,
  bestAngleOfClimb,
  bestRateOfClimb,
  type Ceiling,
  type ClimbToHeight,
  ceiling,
  climbToHeight,
} from '../engineering/climb.ts';
import { type LevelFlight, levelFlight } from '../engineering/levelFlight.ts';
import { type Takeoff, takeoff } from '../engineering/takeoff.ts';
import type { Package } from '../tables/packages.ts';
import { type PackageInFlight, packageInFlight } from './aircraft.ts';
import { attempt } from './attempt.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { Engine } from './engine.ts';
import { type FieldAir, homeField, homeRunway, takeoffFrom } from './field.ts';
import type { Finding } from './finding.ts';
import type { FlownAirframe } from './knownFlights.ts';
import { speedFindings } from './speedLimits.ts';
import { type FlapSetting, stallAt } from './stallSpeeds.ts';

/** Climb at one place: at takeoff power while its minutes last, at maximum continuous power after. */
export interface Climb {
  readonly air: Air;
  readonly bestRate: Readonly<Record<Rating, BestClimb>>;
  /** at takeoff power */
  readonly bestAngle: BestClimb;
}

/** How one package flies the airframe. Every figure is for the maximum takeoff weight. */
export interface Flight extends PackageInFlight {
  readonly mass: number;
  readonly field: FieldAir;
  readonly seaLevel: Climb;
  readonly atField: Climb;
  /** the last of the maker's power points, above which power is not known; infinite where the altitude law serves [m] */
  readonly powerKnownUpTo: number;
  /** service ceiling at maximum continuous power, standard air; beyond what is known of the power no height is claimed */
  readonly ceiling: Ceiling;
  /** from the mission's field to its cruise altitude, in air as warm as at the field; undefined where that lies lower */
  readonly toCruise: ClimbToHeight | undefined;
  /** from the mission's field */
  readonly takeoff: Takeoff;
  /** measured over predicted ground roll of this airframe; 1 where none was measured */
  readonly groundRollFactor: number;
  /** calibrated */
  readonly stall: Readonly<Record<FlapSetting, number>>;
  /** in standard air at a pressure altitude */
  readonly levelAt: (setting: PowerSetting, altitude: number) => LevelFlight;
}

function climbIn(aircraft: AircraftInFlight, air: Air, mass: number): Climb {
  return {
    air,
    bestRate: {
      takeoff: bestRateOfClimb(aircraft, 'takeoff', air, mass),
      continuous: bestRateOfClimb(aircraft, 'continuous', air, mass),
    },
    bestAngle: bestAngleOfClimb(aircraft, 'takeoff', air, mass),
  };
}

/** Without fuel points the climb is the same, and its fuel not known. */
function climbToCruise(
  context: Context,
  curves: Engine,
  aircraft: AircraftInFlight,
  field: FieldAir,
): ClimbToHeight {
  const { mission, airframe } = context.catalogue;
  const fuelled = curves.consumption.rich === undefined ? { ...aircraft, fuelFlow: () => 0 } : aircraft;
  return climbToHeight(
    fuelled,
    mission.elevation,
    mission.cruiseAltitude,
    airframe.maximumTakeoffWeight,
    field.temperatureDeviation,
  );
}

function flightFindings(engine: Package, { ceiling, powerKnownUpTo, takeoff: run }: Flight): Finding[] {
  const finding = (gravity: Finding['gravity'], subject: string, text: string): Finding => ({
    gravity,
    package: engine.name,
    subject,
    source: 'from the known flown point, at maximum takeoff weight',
    text,
  });
  const findings: Finding[] = [];
  if (ceiling.found === 'beyond' && ceiling.pressureAltitude === powerKnownUpTo) {
    const text = 'the power points end below it: it lies higher than they do';
    findings.push(finding('note', 'service ceiling', text));
  }
  if (ceiling.found === 'none')
    findings.push(finding('stop', 'climb', 'less than 100 ft/min at sea level on a standard day'));
  if (!run.possible) {
    const text = `not from the mission’s field at this weight: thrust does not suffice for the ${run.stops}`;
    findings.push(finding('check', 'takeoff', text));
  }
  return findings;
}

function flightWith(
  context: Context,
  engine: Package,
  curves: Engine,
  base: PackageInFlight,
  factor: number,
): Flight {
  const { airframe, mission } = context.catalogue;
  const { aircraft } = base;
  const mass = airframe.maximumTakeoffWeight;
  const field = homeField(mission);
  const powerHeights = context.powerPoints
    .of(engine.name)
    .filter(({ rating }) => rating === 'continuous')
    .map(({ altitude }) => altitude);
  const powerKnownUpTo = powerHeights.length > 0 ? Math.max(...powerHeights) : Number.POSITIVE_INFINITY;
  const found = ceiling(aircraft, 'continuous', mass);
  const stall = (flaps: FlapSetting) => stallAt(airframe, mass, flaps);
  const flight: Flight = {
    ...base,
    mass,
    field,
    seaLevel: climbIn(aircraft, airAt(0), mass),
    atField: climbIn(aircraft, field.air, mass),
    powerKnownUpTo,
    ceiling:
      found.pressureAltitude > powerKnownUpTo ? { pressureAltitude: powerKnownUpTo, found: 'beyond' } : found,
    toCruise:
      mission.cruiseAltitude > mission.elevation
        ? climbToCruise(context, curves, aircraft, field)
        : undefined,
    takeoff: takeoff(aircraft, takeoffFrom(airframe, field.air, homeRunway(mission), mass, factor)),
    groundRollFactor: factor,
    stall: { clean: stall('clean'), takeoff: stall('takeoff'), landing: stall('landing') },
    levelAt: (setting, altitude) => levelFlight(aircraft, setting, airAt(altitude), mass),
  };
  const findings = [
    ...base.findings,
    ...flightFindings(engine, flight),
    ...speedFindings(context, engine, flight),
  ];
  return { ...flight, findings };
}

/** The flight figures of a package, or why there are none. */
export function flightOf(
  context: Context,
  { flown, groundRollFactor }: FlownAirframe,
  engine: Package,
  curves: Engine,
  configuration: Configuration,
): { readonly flight: Flight | undefined; readonly findings: readonly Finding[] } {
  if (flown === undefined) return { flight: undefined, findings: [] };
  const { value: flight, refusal } = attempt(() => {
    const base = packageInFlight(context, flown, engine, curves, configuration.equipment);
    return flightWith(context, engine, curves, base, groundRollFactor);
  });
  if (flight !== undefined) return { flight, findings: flight.findings };
  const finding: Finding = {
    gravity: 'check',
    package: engine.name,
    subject: 'speed and climb',
    source: 'known points, packages and cooling tables',
    text: `not known: the values given cannot be true together: ${refusal}`,
  };
  return { flight, findings: [finding] };
}
