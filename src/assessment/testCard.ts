import type { Field } from '../tables/field.ts';
import { fieldOf, recordedIn, type TestName } from '../tables/testResults.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import type { Shown } from './display.ts';

/** One number of a card. */
export interface CardFigure {
  readonly label: string;
  readonly shown: Shown;
  /** undefined where the tables do not tell */
  readonly predicted?: number | undefined;
  /** how far the prediction may be off: a share of it, or an amount where that is what errs */
  readonly band?: Band | undefined;
  readonly limit?: number | undefined;
  /** the limit is the least allowed; else the most */
  readonly least?: true;
  readonly words?: string | undefined;
}

export type Band = { readonly share: number } | { readonly amount: number };

/** What is taken to the aircraft for one test: predicted, limited, recorded, reduced, cautioned. */
export interface TestCard {
  readonly name: TestName | 'first flights' | 'airspeed calibration' | 'stall, forward CG' | 'stall, aft CG';
  readonly setUp: string;
  readonly figures: readonly CardFigure[];
  /** beside what the test results table asks for this test */
  readonly record: string;
  readonly reduce: string;
  readonly caution: string;
}

/**
 * How far predictions may be off. Climb, speeds of climb and ground roll: at least twice the rms error against certificated
 * aircraft (tests/validation); the others common practice, no source.
 */
export const bands = {
  climb: { share: 0.14 },
  climbSpeed: { share: 0.16 },
  roll: { share: 0.2 },
  levelSpeed: { share: 0.03 },
  stall: { share: 0.05 },
  fuelFlow: { share: 0.05 },
  rpm: { share: 0.03 },
  battery: { share: 0.2 },
  temperature: { amount: 10 }, // K
} as const satisfies Record<string, Band>;

/** Where a prediction with its band ends on both sides. */
export function bandOf(predicted: number, band: Band): { readonly low: number; readonly high: number } {
  const half = 'share' in band ? Math.abs(predicted) * band.share : band.amount;
  return { low: predicted - half, high: predicted + half };
}

/**
 * Hours of phase one. @source FAA Order 8130.2H 461c(1), as quoted (secondary): 25 with a type-certificated engine and
 * propeller combination that is not altered, else 40; AC 90-89C: or a task-based programme. The operating limitations
 * issued for the aircraft decide.
 */
const phaseOneHours = { typeCertificatedPair: 25, other: 40 } as const;

const { typeCertificatedPair, other } = phaseOneHours;
export const phaseOneWords = `Phase one: at least ${typeCertificatedPair} h with an unaltered type-certificated engine and propeller combination, else ${other} h (FAA Order 8130.2), or a task-based programme; the operating limitations issued for the aircraft decide.`;

/** The loadings are no better than the empty weight they begin with. */
export function emptyWeightWords(
  { display, weighedWith }: Context,
  { package: engine, empty }: Assessment,
): string {
  const { weight } = empty.mass.nominal;
  const known = `Loadings begin with an empty weight of ${display.text('weight', weight)} at ${display.text('arm', empty.cg)}`;
  return weighedWith === engine
    ? `${known}, as weighed.`
    : `${known}, PREDICTED: weigh the aircraft and take the weighing in before flying any of these.`;
}

/** The columns of the test results table that a card fills. */
export function recordedFields({ name }: TestCard): Field<unknown>[] {
  const test = (name.startsWith('stall') ? 'stall' : name) as TestName;
  const fields = (recordedIn as Partial<typeof recordedIn>)[test] ?? [];
  return fields.map(fieldOf);
}
