import { nameKey } from '../tables/cell.ts';
import type { TestResult } from '../tables/testResults.ts';
import { type AdoptedResults, adoptResults, withResults } from './adoptResults.ts';
import { equipmentDragArea } from './aircraft.ts';
import { type Assessment, assess, type Basis, basisOf } from './assess.ts';
import { packageNamed } from './context.ts';
import { type FlownPolar, flownAirframe } from './knownFlights.ts';

/** The aircraft as predicted and as measured. */
export interface Recalibration {
  readonly adopted: AdoptedResults;
  readonly before: { readonly assessment: Assessment; readonly flown: FlownPolar | undefined };
  readonly after: { readonly assessment: Assessment; readonly flown: FlownPolar | undefined };
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
    otherEquipment:
      adopted.knownPoints !== undefined &&
      equipmentDragArea(weighed) !== equipmentDragArea(configuration.equipment),
  };
}
