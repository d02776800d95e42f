import type { TestResult } from '../tables/testResults.ts';
import type { Assessment } from './assess.ts';
import { attempt } from './attempt.ts';
import type { Context } from './context.ts';
import type { Shown } from './display.ts';
import { bandOf } from './testCard.ts';
import { type CompleteResult, outcomeOf, type TestOutcome } from './testOutcome.ts';

/** A measurement beside what was predicted for its own conditions. */
export interface Measured {
  readonly result: TestResult;
  readonly what: string;
  readonly shown: Shown;
  /** undefined where its conditions cannot be true */
  readonly measured: number | undefined;
  /** undefined where the tables do not tell */
  readonly predicted: number | undefined;
  /** undefined without a prediction */
  readonly inside: boolean | undefined;
  /** told for standard air, maximum weight or the hot day, as `reducedTo` says */
  readonly reduced: number | undefined;
  readonly reducedTo: string;
}

/** Fuel delivered and minutes on the battery may be more than predicted; unusable fuel may be less. */
const oneSided: Partial<Record<TestResult['test'], 1 | -1>> = {
  'fuel flow on the ground': 1,
  battery: 1,
  'unusable fuel': -1,
};

function isInside({ measured, predicted, band }: TestOutcome, test: TestResult['test']): boolean | undefined {
  if (predicted === undefined) return undefined;
  const { low, high } = bandOf(predicted, band);
  const side = oneSided[test];
  return (side === 1 || measured <= high) && (side === -1 || measured >= low);
}

/** Every result with its prediction; where its conditions cannot be true, why, and no number. */
export function compareResults(
  context: Context,
  assessment: Assessment,
  results: readonly TestResult[],
): Measured[] {
  return results.map((result): Measured => {
    const { value, refusal } = attempt(() => outcomeOf(context, assessment, result as CompleteResult));
    const {
      what,
      shown,
      measured,
      predicted,
      reduced,
      reducedTo = '',
    } = value ?? {
      what: `cannot be compared: ${refusal}`,
      shown: 'count',
      measured: undefined,
    };
    const inside = value && isInside(value, result.test);
    return { result, what, shown, measured, predicted, inside, reduced, reducedTo };
  });
}
