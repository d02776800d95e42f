import { standardTemperature } from '../engineering/air.ts';
import { airAt, type Rating } from '../engineering/aircraftInFlight.ts';
import { coolingInletArea } from '../engineering/coolingAir.ts';
import { highestOutsideAirTemperature } from '../engineering/coolingLimit.ts';
import { type CoolingResult, coolingResult } from '../engineering/coolingResult.ts';
import type { CoolingStream } from '../engineering/coolingStream.ts';
import type { Package } from '../tables/packages.ts';
import { attempt } from './attempt.ts';
import type { Context } from './context.ts';
import {
  type ClimbSpeed,
  type CoolingClimb,
  conditionIn,
  hotDayAir,
  hotDayClimbs,
  missionClimbs,
} from './coolingClimbs.ts';
import { coolingConditionOf } from './coolingCondition.ts';
import type { StreamData } from './coolingStreams.ts';
import type { Finding } from './finding.ts';
import type { Flight } from './flight.ts';

/** A stream in one climb, in steady state. */
export interface StreamInClimb {
  readonly climb: CoolingClimb;
  readonly result: CoolingResult;
}

/** A stream that is known, in every climb it is judged in. */
export interface StreamCooling {
  readonly data: StreamData;
  readonly stream: CoolingStream;
  /** sea level to ceiling */
  readonly hotDay: readonly StreamInClimb[];
  /** the mission's field to its cruise altitude, in air as warm as at the field */
  readonly mission: readonly StreamInClimb[];
  /** steady at ground idle on a hot day at the mission's field: an indication only; undefined without airflow [K] */
  readonly idleTemperature: number | undefined;
}

export interface Cooling {
  readonly streams: readonly StreamCooling[];
  /** the speed stated for a hot climb, or that of the best rate where none is stated */
  readonly recommended: ClimbSpeed;
}

const idlePowerFraction = 0.1; // of maximum continuous power; common practice, no source

/**
 * The heat of a compressor grows with height up to the critical altitude, and the table gives it at one height: no charge
 * air is judged above that [m].
 */
export function heatKnownUpTo({ row }: StreamData, { criticalAltitude = 0 }: Package): number {
  const { stream, knownAltitude = 0 } = row;
  return stream === 'charge air' && knownAltitude < criticalAltitude
    ? knownAltitude
    : Number.POSITIVE_INFINITY;
}

/** The climb that leaves the least of the limit; without airflow nothing is left. */
export function worstOf(
  climbs: readonly StreamInClimb[],
  rating: Rating,
  speed: ClimbSpeed,
  from = Number.NEGATIVE_INFINITY,
): StreamInClimb | undefined {
  const margin = ({ result }: StreamInClimb) => result.margin ?? Number.NEGATIVE_INFINITY;
  return climbs
    .filter(
      ({ climb }) => climb.rating === rating && climb.speed === speed && climb.air.pressureAltitude >= from,
    )
    .reduce<StreamInClimb | undefined>(
      (worst, each) => (worst === undefined || margin(each) < margin(worst) ? each : worst),
      undefined,
    );
}

/** The worst hot-day climb at the recommended speed and maximum continuous power that begins at the mission's field. */
export function governing(
  cooling: Cooling,
  { field }: Flight,
  { hotDay }: StreamCooling,
): StreamInClimb | undefined {
  return worstOf(hotDay, 'continuous', cooling.recommended, field.air.pressureAltitude);
}

/** Inlet area that takes in its air no faster than the aircraft flies. */
export function leastInletArea({ climb, result: { flow } }: StreamInClimb): number {
  return coolingInletArea(flow.airflow, climb.trueAirspeed, flow.density, 1);
}

/** Temperature at the mission's field when it is `temperature` at a height above it, falling as in standard air. */
const atFieldLevel = ({ field }: Flight, altitude: number, temperature: number) =>
  temperature + standardTemperature(field.air.pressureAltitude) - standardTemperature(altitude);

/** A stream in the same climb on a warmer or colder day: temperature at the mission's field [K]. */
export function onAnotherDay(
  engine: Package,
  flight: Flight,
  stream: CoolingStream,
  { climb }: StreamInClimb,
  fieldTemperature: number,
): CoolingResult {
  const { rating, air, trueAirspeed } = climb;
  const deviation = fieldTemperature - standardTemperature(flight.field.air.pressureAltitude);
  const other = airAt(air.pressureAltitude, deviation);
  return coolingResult(stream, conditionIn(engine, flight, rating, other, trueAirspeed));
}

export interface HighestOat {
  /** at the mission's field [K] */
  readonly temperature: number;
  readonly found: 'yes' | 'holdsUpToHottest' | 'exceededAtColdest';
}

/** How warm it may be at the mission's field for the stream to hold its limit in this climb. */
export function highestOat(
  engine: Package,
  flight: Flight,
  stream: CoolingStream,
  { climb }: StreamInClimb,
): HighestOat {
  const { rating, trueAirspeed } = climb;
  const altitude = climb.air.pressureAltitude;
  const highest = highestOutsideAirTemperature(stream, (temperature) => {
    const air = airAt(altitude, temperature - standardTemperature(altitude));
    return conditionIn(engine, flight, rating, air, trueAirspeed);
  });
  return { ...highest, temperature: atFieldLevel(flight, altitude, highest.temperature) };
}

function idleTemperature(engine: Package, flight: Flight, stream: CoolingStream): number | undefined {
  const altitude = flight.field.air.pressureAltitude;
  const power = idlePowerFraction * engine.continuousPower;
  // Propellers turn as the cube root of their power
  const speed = Math.cbrt(idlePowerFraction);
  const air = hotDayAir(altitude);
  return coolingResult(stream, coolingConditionOf(flight.aircraft, engine.heatingValue, air, 0, power, speed))
    .temperature;
}

/** The cooling of every known stream of a package, from its speeds and thrust; findings on what is not known. */
export function coolingOf(
  context: Context,
  engine: Package,
  flight: Flight | undefined,
): { readonly cooling: Cooling | undefined; readonly findings: readonly Finding[] } {
  const rows = context.cooling.of(engine.name);
  const finding = (subject: string, text: string): Finding => ({
    gravity: 'check',
    package: engine.name,
    subject,
    source: 'cooling table',
    text,
  });
  if (rows.length === 0) {
    return { cooling: undefined, findings: [finding('cooling', 'not known: no cooling streams are given')] };
  }
  if (flight === undefined) {
    const text = 'not known: speed and thrust in the climb need the known flown point';
    return { cooling: undefined, findings: [finding('cooling', text)] };
  }
  const heatKnownAt = flight.streams.map((data) => heatKnownUpTo(data, engine)).filter(Number.isFinite);
  const hotDay = hotDayClimbs(context, engine, flight, heatKnownAt);
  const mission = missionClimbs(context, engine, flight, heatKnownAt);
  const recommended: ClimbSpeed = engine.coolingClimbSpeed === undefined ? 'best rate' : 'cooling climb';
  const findings: Finding[] = [];
  const notKnown = ({ row }: StreamData, why: string) =>
    findings.push(finding(`cooling, ${row.stream}`, `not known: ${why}`));
  const streams = flight.streams.flatMap((data): StreamCooling[] => {
    const { stream, missing } = data;
    if (stream === undefined) {
      notKnown(data, missing ?? '');
      return [];
    }
    const heights = heatKnownUpTo(data, engine);
    const judged = ({ air }: CoolingClimb) => air.pressureAltitude <= heights * (1 + 1e-9);
    const inClimb = (climb: CoolingClimb) => ({ climb, result: coolingResult(stream, climb.condition) });
    const { value, refusal } = attempt(() => ({
      data,
      stream,
      hotDay: hotDay.filter(judged).map(inClimb),
      mission: mission.filter(judged).map(inClimb),
      idleTemperature: idleTemperature(engine, flight, stream),
    }));
    if (value !== undefined) return [value];
    notKnown(data, `the values do not go together: ${refusal}`);
    return [];
  });
  return { cooling: { streams, recommended }, findings };
}
