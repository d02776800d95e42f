import type { Air, AircraftInFlight } from '../engineering/aircraftInFlight.ts';
import { coolingDrag } from '../engineering/coolingDrag.ts';
import { coolingFlow } from '../engineering/coolingFlow.ts';
import { type DragPolar, dynamicPressure, withDragArea } from '../engineering/dragPolar.ts';
import { powerAvailable } from '../engineering/enginePower.ts';
import { fixedPitchSpeedFraction } from '../engineering/fixedPitch.ts';
import { fuelMassFlow } from '../engineering/fuelFlow.ts';
import { fullThrottleLevelSpeed, levelFlight } from '../engineering/levelFlight.ts';
import { defaultFixedPitchSpeedFraction } from '../engineering/propellerEfficiency.ts';
import type { Airframe } from '../tables/airframe.ts';
import type { Equipment } from '../tables/equipment.ts';
import type { Package } from '../tables/packages.ts';
import type { Context } from './context.ts';
import { coolingConditionOf } from './coolingCondition.ts';
import { type StreamData, streamsOf } from './coolingStreams.ts';
import type { Engine } from './engine.ts';
import type { Finding } from './finding.ts';
import type { FlownPolar } from './knownFlights.ts';

/** One package on the airframe, ready to fly, with the air that cools it. */
export interface PackageInFlight {
  readonly aircraft: AircraftInFlight;
  readonly streams: readonly StreamData[];
  /** D/q of the cooling air, part of the polar [m²] */
  readonly coolingDragArea: number;
  /** false where speed and cooling drag did not settle */
  readonly settled: boolean;
  readonly findings: readonly Finding[];
}

/** How the propeller of this airframe works at a speed, and where it climbs. */
export interface PropellerOnAirframe {
  readonly efficiency: (trueAirspeed: number) => number;
  readonly climbSpeed: number; // m/s
}

const dragAreaTolerance = 1e-7; // m², 0.001 kt
const mostRounds = 30;

/** Drag area of options. */
export const equipmentDragArea = (equipment: readonly Equipment[]) =>
  equipment.reduce((sum, { dragArea }) => sum + dragArea, 0);

/** The aircraft held at a shaft power, whatever the air and the rpm of its propeller would give. */
export const atPower = (aircraft: AircraftInFlight, power: number): AircraftInFlight => ({
  ...aircraft,
  fullThrottlePower: () => power,
  shaftSpeedFraction: () => 1,
});

/** The aircraft with a given polar, whatever drag that contains. */
export function aircraftWith(
  airframe: Airframe,
  engine: Package,
  curves: Engine,
  propeller: PropellerOnAirframe,
  dragPolar: DragPolar,
): AircraftInFlight {
  const { consumption, law, rated } = curves;
  const constantSpeed: AircraftInFlight = {
    wingArea: airframe.wingArea,
    dragPolar,
    maximumLiftCoefficient: airframe.liftClean,
    propellerDiameter: engine.propellerDiameter,
    propellerEfficiency: propeller.efficiency,
    shaftSpeedFraction: () => 1,
    fullThrottlePower: (rating, altitude, temperature) =>
      powerAvailable(law[rating], rated[rating], altitude, temperature).power,
    maximumContinuousPower: rated.continuous,
    takeoffPowerTime: engine.takeoffMinutes ?? Number.POSITIVE_INFINITY,
    fuelFlow: (power, mixture) => {
      const curve = consumption[mixture];
      if (curve === undefined) throw new RangeError(`fuel points of ${engine.name} must be given, got none`);
      return fuelMassFlow(power, curve(power / rated.continuous).bsfc);
    },
  };
  if (engine.propeller === 'constant speed') return constantSpeed;
  const speeds = {
    staticFraction: engine.staticRpm ?? defaultFixedPitchSpeedFraction.static,
    bestClimbFraction: engine.climbRpm ?? defaultFixedPitchSpeedFraction.climb,
    levelFraction: Math.max(defaultFixedPitchSpeedFraction.levelFlight, engine.climbRpm ?? 0),
    bestClimbSpeed: propeller.climbSpeed,
    levelSpeed: fullThrottleLevelSpeed(constantSpeed, airframe.maximumTakeoffWeight),
  };
  return {
    ...constantSpeed,
    shaftSpeedFraction: (trueAirspeed) => fixedPitchSpeedFraction(speeds, trueAirspeed).value,
  };
}

/**
 * D/q of the cooling air of all streams at a power and a speed: momentum and leaks. Streams that are not known count
 * nothing, as their own findings say.
 */
export function coolingDragArea(
  streams: readonly StreamData[],
  aircraft: AircraftInFlight,
  engine: Package,
  air: Air,
  trueAirspeed: number,
  power: number,
): number {
  const condition = coolingConditionOf(aircraft, engine.heatingValue, air, trueAirspeed, power);
  const drags = streams.map(({ stream }) => {
    if (stream === undefined) return 0;
    const { momentum, leakage } = coolingDrag(stream, condition, coolingFlow(stream, stream.core, condition));
    return momentum + leakage;
  });
  return drags.reduce((sum, drag) => sum + drag, 0) / dynamicPressure(trueAirspeed, air.density);
}

function pitchFindings(engine: Package): Finding[] {
  if (engine.propeller === 'constant speed') return [];
  const note = (subject: string, share: number): Finding => ({
    gravity: 'note',
    package: engine.name,
    subject,
    source: 'chosen with certificated aircraft, as the default propeller efficiencies',
    text: `not given: ${Math.round(share * 100)} % of rated rpm used`,
  });
  return [
    ...(engine.staticRpm === undefined ? [note('static rpm', defaultFixedPitchSpeedFraction.static)] : []),
    ...(engine.climbRpm === undefined ? [note('climb rpm', defaultFixedPitchSpeedFraction.climb)] : []),
  ];
}

/**
 * Puts a package and its options on the flown airframe. Its cooling drag depends on the speed it reaches and the speed on
 * the drag: found at the height, weight and % power of the known level flight, and repeated until they agree. As D/q it
 * then holds in every other flight.
 * @throws RangeError when its data cannot be true together
 */
export function packageInFlight(
  context: Context,
  flown: FlownPolar,
  engine: Package,
  curves: Engine,
  equipment: readonly Equipment[],
): PackageInFlight {
  const { airframe } = context.catalogue;
  const { propeller, level } = flown;
  const options = equipmentDragArea(equipment);
  const withCooling = (cooling: number) => {
    const polar = withDragArea(flown.dragPolar, options + cooling, airframe.wingArea);
    return aircraftWith(airframe, engine, curves, propeller, polar);
  };
  let aircraft = withCooling(0);
  const streams = streamsOf(context.cooling.of(engine.name), engine, aircraft);
  let dragArea = 0;
  for (let round = 0; round < mostRounds; round++) {
    const cruise = levelFlight(aircraft, level.powerFraction, level.air, level.mass);
    if (!cruise.possible)
      throw new RangeError('power must be enough for the height and weight of the known level flight');
    const next = coolingDragArea(
      streams,
      aircraft,
      engine,
      level.air,
      cruise.trueAirspeed,
      cruise.shaftPower,
    );
    const change = Math.abs(next - dragArea);
    dragArea = next;
    aircraft = withCooling(dragArea);
    if (change < dragAreaTolerance)
      return { aircraft, streams, coolingDragArea: dragArea, settled: true, findings: pitchFindings(engine) };
  }
  const doubt: Finding = {
    gravity: 'check',
    package: engine.name,
    subject: 'cooling drag',
    source: 'cooling table',
    text: 'speed and cooling drag do not settle: speeds, climb, range, mission and cooling are doubtful',
  };
  return {
    aircraft,
    streams,
    coolingDragArea: dragArea,
    settled: false,
    findings: [...pitchFindings(engine), doubt],
  };
}
