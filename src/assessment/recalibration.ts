import { nameKey } from '../tables/cell.ts';
import type { TestResult } from '../tables/testResults.ts';
import { type AdoptedResults, adoptResults, withResults } from './adoptResults.ts';
import { equipmentDragArea } from './aircraft.ts';
import { type Assessment, assess, type Basis, basisOf } from './assess.ts';
import { type Context, contextOf, packageNamed } from './context.ts';
import { type FlownPolar, flownAirframe } from './knownFlights.ts';

/** What flights fix of an airframe and its propeller. */
export interface FlightConstants {
  readonly zeroLiftDrag: number;
  readonly spanEfficiency: number;
  /** k at the speed of climb */
  readonly climbEfficiency: number;
}

export const constantsOf = ({ dragPolar, propeller }: FlownPolar): FlightConstants => ({
  zeroLiftDrag: dragPolar.zeroLiftDragCoefficient,
  spanEfficiency: dragPolar.spanEfficiency,
  climbEfficiency: propeller.efficiency(propeller.climbSpeed),
});

const fewestFlights = 5; // two more than the constants

/**
 * How far the constants may be off: one standard error, from how they change when one flight is left out,
 * s² = (n − 1)/n Σ (θ_i − θ̄)². It takes in what a formula for the polar alone would miss: the propeller's efficiency in
 * the climb rests on the polar, and the drag of slow flights on that efficiency.
 * @source jackknife: Tukey (1958), from memory
 * @returns undefined with too few flights, or where one of them cannot be spared
 */
export function flightScatter(context: Context, equipment: ReadonlySet<string>): FlightConstants | undefined {
  const { catalogue } = context;
  const flights = catalogue.knownPoints.filter(({ condition }) => condition !== 'takeoff roll');
  if (flights.length < fewestFlights) return undefined;
  const without = flights.map((flight) => {
    const knownPoints = flights.filter((other) => other !== flight);
    const { flown } = flownAirframe(contextOf({ ...catalogue, knownPoints }), equipment);
    return flown && constantsOf(flown);
  });
  if (without.some((constants) => constants === undefined)) return undefined;
  const error = (constant: keyof FlightConstants) => {
    const values = (without as FlightConstants[]).map((constants) => constants[constant]);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    return Math.sqrt(((values.length - 1) / values.length) * squares);
  };
  return {
    zeroLiftDrag: error('zeroLiftDrag'),
    spanEfficiency: error('spanEfficiency'),
    climbEfficiency: error('climbEfficiency'),
  };
}

/** The aircraft as predicted and as measured. */
export interface Recalibration {
  readonly adopted: AdoptedResults;
  readonly before: { readonly assessment: Assessment; readonly flown: FlownPolar | undefined };
  readonly after: { readonly assessment: Assessment; readonly flown: FlownPolar | undefined };
  /** one standard error of the constants after; undefined where flights are too few to tell */
  readonly scatter: FlightConstants | undefined;
  /** the equipment flown is not that of the airframe's weighing, and differs in drag: adopt the weighing first */
  readonly otherEquipment: boolean;
}

/** Puts the measurements in place of what they measured, and assesses the aircraft again. */
export function recalibrate(basis: Basis, before: Assessment, results: readonly TestResult[]): Recalibration {
  const adopted = adoptResults(basis.context, before, results);
  const { package: engine, configuration } = before;
  const next = basisOf(withResults(basis.context.catalogue, engine, adopted));
  const { catalogue } = next.context;
  const names = new Set(configuration.equipment.map(({ name }) => nameKey(name)));
  const flown = adopted.knownPoints ? flownAirframe(next.context, names) : basis.flown;
  const weighed = catalogue.equipment.filter(({ name }) => next.bareAirframe.equipment.has(nameKey(name)));
  return {
    adopted,
    before: { assessment: before, flown: basis.flown.flown },
    after: {
      assessment: assess({ ...next, flown }, packageNamed(catalogue, engine.name)),
      flown: flown.flown,
    },
    scatter: adopted.knownPoints && flightScatter(next.context, names),
    otherEquipment:
      adopted.knownPoints !== undefined &&
      equipmentDragArea(weighed) !== equipmentDragArea(configuration.equipment),
  };
}
