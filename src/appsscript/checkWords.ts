import { faultText } from '../tables/faults.ts';
import type { DataCheck } from './dataCheck.ts';

/** What a person is told of the tables. */
export interface CheckWords {
  readonly title: string;
  /** What is wrong, a line each; one line where nothing is. */
  readonly lines: readonly string[];
  /** What is good to know besides. */
  readonly notes: readonly string[];
}

export function checkWords({ faults, unread, remarks }: DataCheck): CheckWords {
  const what = faults.length === 1 ? '1 fault' : faults.length > 0 ? `${faults.length} faults` : 'no faults';
  return {
    title: `Check data: ${what}`,
    lines:
      faults.length > 0
        ? faults.map(faultText)
        : ['The tables can be read; see Findings for what they lead to.'],
    notes: [...unread, ...remarks.map(({ table, text }) => `${table}: ${text}`)],
  };
}
