import type { Air } from '../engineering/aircraftInFlight.ts';
import { aspectRatio, type DragPolar, withDragArea } from '../engineering/dragPolar.ts';
import { dragOfKnownFlight, polarThroughPoint, polarThroughPoints } from '../engineering/knownFlight.ts';
import {
  climbAnchorSpeed,
  efficiencyFromClimb,
  propellerEfficiency,
} from '../engineering/propellerEfficiency.ts';
import type { KnownPoint } from '../tables/knownPoints.ts';
import type { Package } from '../tables/packages.ts';
import { aircraftWith, coolingDragArea, type PropellerOnAirframe } from './aircraft.ts';
import { attempt } from './attempt.ts';
import type { Context } from './context.ts';
import { streamsOf } from './coolingStreams.ts';
import type { Engine } from './engine.ts';

/** A measured level flight or climb, in the air it was flown in, with the package that flew. */
export interface Flown {
  readonly point: KnownPoint;
  readonly trueAirspeed: number;
  /** 0 in level flight */
  readonly rateOfClimb: number;
  readonly air: Air;
  readonly engine: Package;
  readonly curves: Engine;
}

/** The measured flights the drag is taken from. */
export interface KnownFlights {
  readonly level: Flown;
  readonly secondLevel: Flown | undefined;
  readonly climb: Flown | undefined;
  /** D/q of the options aboard in all of them [m²] */
  readonly optionsDragArea: number;
}

export interface PolarFit {
  /** without cooling air and options */
  readonly dragPolar: DragPolar;
  readonly propeller: PropellerOnAirframe;
  readonly converged: boolean;
  /** why the second flight was not believed, in words; the default e stands then */
  readonly doubt: string | undefined;
}

const plausibleSpanEfficiency = { low: 0.5, high: 0.9 } as const; // common practice, no source
const speedTolerance = 1e-6; // m/s, of the climb speed at which k has its climb value
const mostRounds = 30;

/**
 * Polar and propeller efficiency from the known flights: C_D0 from the first level one; e from a second or, without one,
 * from a climb; with both, the climb fixes the climb value of k. The speed at which k has that value depends on the polar,
 * the drag at the other flights on k: repeated until the speed stands still.
 */
export function fitPolar(context: Context, known: KnownFlights): PolarFit {
  const { airframe } = context.catalogue;
  const { wingArea, maximumTakeoffWeight, oswaldEfficiency } = airframe;
  const { level, secondLevel, climb } = known;
  const wing = aspectRatio(airframe.wingSpan, wingArea);
  const points = {
    static: airframe.propellerStatic,
    climb: airframe.propellerClimb,
    cruise: airframe.propellerCruise,
  };
  const propellerAt = (climbSpeed: number, climbEfficiency = points.climb): PropellerOnAirframe => {
    const curve = propellerEfficiency({ ...points, climb: climbEfficiency }, climbSpeed, level.trueAirspeed);
    return { efficiency: (trueAirspeed) => curve(trueAirspeed).value, climbSpeed };
  };
  const flight = ({ point, trueAirspeed, rateOfClimb, air, engine }: Flown, dragArea: number) => ({
    shaftPower: point.power,
    trueAirspeed,
    density: air.density,
    mass: point.weight,
    propellerDiameter: engine.propellerDiameter,
    rateOfClimb,
    dragArea,
  });

  const asFlown = dragOfKnownFlight(flight(level, 0), points.cruise);
  let total = polarThroughPoint(asFlown, wingArea, wing, oswaldEfficiency);
  let propeller = propellerAt(climbAnchorSpeed(total, wingArea, maximumTakeoffWeight));
  /** cooling and options of a known flight [m²] */
  const extras = ({ engine, curves, air, point, trueAirspeed }: Flown) => {
    const aircraft = aircraftWith(airframe, engine, curves, propeller, total);
    const streams = streamsOf(context.cooling.of(engine.name), engine, aircraft);
    const cooling = coolingDragArea(streams, aircraft, engine, air, trueAirspeed, point.power);
    return known.optionsDragArea + cooling;
  };
  const drag = (flown: Flown, dragArea: number) =>
    dragOfKnownFlight(flight(flown, dragArea), propeller.efficiency(flown.trueAirspeed));

  const second = secondLevel ?? climb;
  for (let round = 0; ; round++) {
    const levelExtras = extras(level);
    const levelDrag = drag(level, levelExtras);
    const through =
      second && attempt(() => polarThroughPoints(levelDrag, drag(second, extras(second)), wingArea, wing));
    const found = through?.value?.spanEfficiency ?? 0;
    const believed = found >= plausibleSpanEfficiency.low && found <= plausibleSpanEfficiency.high;
    const dragPolar =
      believed && through?.value
        ? through.value
        : polarThroughPoint(levelDrag, wingArea, wing, oswaldEfficiency);
    total = withDragArea(dragPolar, levelExtras, wingArea);
    const next =
      secondLevel && climb
        ? propellerAt(
            climb.trueAirspeed,
            efficiencyFromClimb(dragPolar, wingArea, flight(climb, extras(climb))),
          )
        : propellerAt(climbAnchorSpeed(total, wingArea, maximumTakeoffWeight));
    const converged = round > 0 && Math.abs(next.climbSpeed - propeller.climbSpeed) < speedTolerance;
    propeller = next;
    if (converged || round >= mostRounds) {
      const doubt = !second || believed ? undefined : (through?.refusal ?? `e would be ${found.toFixed(2)}`);
      return { dragPolar, propeller, converged, doubt };
    }
  }
}
