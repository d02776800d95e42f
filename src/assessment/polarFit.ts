import type { Air } from '../engineering/aircraftInFlight.ts';
import { aspectRatio, type DragPolar, withDragArea } from '../engineering/dragPolar.ts';
import {
  dragOfKnownFlight,
  type PolarScatter,
  polarThroughPoint,
  polarThroughPoints,
} from '../engineering/knownFlight.ts';
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
  /** the one whose speed is the propeller's known cruise speed */
  readonly level: Flown;
  readonly otherLevels: readonly Flown[];
  readonly climbs: readonly Flown[];
  /** D/q of the options aboard in all of them [m²] */
  readonly optionsDragArea: number;
}

export interface PolarFit {
  /** without cooling air and options */
  readonly dragPolar: DragPolar;
  readonly propeller: PropellerOnAirframe;
  /** of a polar from three flights or more */
  readonly scatter: PolarScatter | undefined;
  /** standard error of the propeller's climb value, from three climbs or more */
  readonly climbScatter: number | undefined;
  readonly converged: boolean;
  /** why the other flights were not believed, in words; the default e stands then */
  readonly doubt: string | undefined;
}

const plausibleSpanEfficiency = { low: 0.5, high: 0.9 } as const; // common practice, no source
const tolerance = 1e-6; // of k in the climb, and of the speed [m/s] at which it has that value
const mostRounds = 30;

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Standard error of a mean; two values are too few to tell. */
function standardError(values: readonly number[]): number | undefined {
  if (values.length < 3) return undefined;
  const middle = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1) / values.length);
}

/**
 * Polar and propeller efficiency from the known flights: C_D0 from one level flight; e from the others or, without any,
 * from climbs; with both, the climbs fix the climb value of k. The speed at which k has that value depends on the polar,
 * the drag at the other flights on k: repeated until value and speed stand still.
 */
export function fitPolar(context: Context, known: KnownFlights): PolarFit {
  const { airframe } = context.catalogue;
  const { wingArea, maximumTakeoffWeight, oswaldEfficiency } = airframe;
  const { level, otherLevels, climbs } = known;
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

  const others = otherLevels.length > 0 ? otherLevels : climbs;
  for (let round = 0; ; round++) {
    const levelExtras = extras(level);
    const levelDrag = drag(level, levelExtras);
    const dragOf = (flown: Flown) => drag(flown, extras(flown));
    const through =
      others.length > 0
        ? attempt(() => polarThroughPoints([levelDrag, ...others.map(dragOf)], wingArea, wing))
        : undefined;
    const found = through?.value?.spanEfficiency ?? 0;
    const believed = found >= plausibleSpanEfficiency.low && found <= plausibleSpanEfficiency.high;
    const dragPolar =
      believed && through?.value
        ? through.value
        : polarThroughPoint(levelDrag, wingArea, wing, oswaldEfficiency);
    total = withDragArea(dragPolar, levelExtras, wingArea);
    const efficiencies =
      otherLevels.length > 0
        ? climbs.map((climb) => efficiencyFromClimb(dragPolar, wingArea, flight(climb, extras(climb))))
        : [];
    const next =
      efficiencies.length > 0
        ? propellerAt(mean(climbs.map(({ trueAirspeed }) => trueAirspeed)), mean(efficiencies))
        : propellerAt(climbAnchorSpeed(total, wingArea, maximumTakeoffWeight));
    const change = Math.max(
      Math.abs(next.climbSpeed - propeller.climbSpeed),
      Math.abs(next.efficiency(next.climbSpeed) - propeller.efficiency(propeller.climbSpeed)),
    );
    const converged = round > 0 && change < tolerance;
    propeller = next;
    if (converged || round >= mostRounds) {
      const doubt =
        others.length === 0 || believed ? undefined : (through?.refusal ?? `e would be ${found.toFixed(2)}`);
      return {
        dragPolar,
        propeller,
        scatter: believed ? through?.value?.scatter : undefined,
        climbScatter: standardError(efficiencies),
        converged,
        doubt,
      };
    }
  }
}
