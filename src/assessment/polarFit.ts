import type { Air, AircraftInFlight } from '../engineering/aircraftInFlight.ts';
import { aspectRatio, type DragPolar, withDragArea } from '../engineering/dragPolar.ts';
import {
  type DragPoint,
  dragOfKnownFlight,
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
import { type StreamData, streamsOf } from './coolingStreams.ts';
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
  readonly converged: boolean;
  /** why the other flights were not believed, in words; the default e stands then */
  readonly doubt: string | undefined;
}

const plausibleSpanEfficiency = { low: 0.5, high: 0.9 } as const; // common practice, no source
const tolerance = 1e-6; // of k in the climb, and of the speed [m/s] at which it has that value
const mostRounds = 30;

const isSame = (one: PropellerOnAirframe, other: PropellerOnAirframe) =>
  Math.abs(one.climbSpeed - other.climbSpeed) < tolerance &&
  Math.abs(one.efficiency(one.climbSpeed) - other.efficiency(other.climbSpeed)) < tolerance;

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Polar and propeller efficiency from the known flights: C_D0 from one level flight; e from the others or, without any,
 * from climbs; with both, the climbs fix the climb value of k. The speed at which k has that value depends on the polar,
 * the drag at the other flights on k, the cooling drag on the propeller's thrust: repeated until value and speed stand
 * still, the costly cooling in an outer round.
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
  /** cooling and options of every known flight [m²] */
  const extraDragAreas = () => {
    const packages = new Map<Package, { aircraft: AircraftInFlight; streams: readonly StreamData[] }>();
    return new Map(
      [level, ...otherLevels, ...climbs].map((flown) => {
        const { engine, curves, air, point, trueAirspeed } = flown;
        const aircraft =
          packages.get(engine)?.aircraft ?? aircraftWith(airframe, engine, curves, propeller, total);
        const streams =
          packages.get(engine)?.streams ?? streamsOf(context.cooling.of(engine.name), engine, aircraft);
        packages.set(engine, { aircraft, streams });
        const cooling = coolingDragArea(streams, aircraft, engine, air, trueAirspeed, point.power);
        return [flown, known.optionsDragArea + cooling] as const;
      }),
    );
  };

  const others = otherLevels.length > 0 ? otherLevels : climbs;
  const polarWith = (drag: (flown: Flown) => DragPoint) => {
    const through =
      others.length > 0
        ? attempt(() => polarThroughPoints([level, ...others].map(drag), wingArea, wing))
        : undefined;
    const found = through?.value?.spanEfficiency ?? 0;
    if (through?.value && found >= plausibleSpanEfficiency.low && found <= plausibleSpanEfficiency.high)
      return { dragPolar: through.value, doubt: undefined };
    return {
      dragPolar: polarThroughPoint(drag(level), wingArea, wing, oswaldEfficiency),
      doubt: through && (through.refusal ?? `e would be ${found.toFixed(2)}`),
    };
  };
  const propellerWith = (dragPolar: DragPolar, areas: ReadonlyMap<Flown, number>) => {
    if (otherLevels.length === 0 || climbs.length === 0)
      return propellerAt(climbAnchorSpeed(total, wingArea, maximumTakeoffWeight));
    const efficiencies = climbs.map((climb) =>
      efficiencyFromClimb(dragPolar, wingArea, flight(climb, areas.get(climb) as number)),
    );
    return propellerAt(mean(climbs.map(({ trueAirspeed }) => trueAirspeed)), mean(efficiencies));
  };

  for (let outer = 0; ; outer++) {
    const areas = extraDragAreas();
    const drag = (flown: Flown) =>
      dragOfKnownFlight(flight(flown, areas.get(flown) as number), propeller.efficiency(flown.trueAirspeed));
    const before = propeller;
    for (let round = 0; ; round++) {
      const { dragPolar, doubt } = polarWith(drag);
      total = withDragArea(dragPolar, areas.get(level) as number, wingArea);
      const next = propellerWith(dragPolar, areas);
      const settled = isSame(next, propeller);
      propeller = next;
      if (!settled && round < mostRounds) continue;
      const converged = settled && isSame(propeller, before);
      if (converged || outer >= mostRounds) return { dragPolar, propeller, converged, doubt };
      break;
    }
  }
}
