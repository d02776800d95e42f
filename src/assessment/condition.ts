import type { Shown } from './display.ts';

/** One thing a mission needs. */
export interface Condition {
  /** in a word */
  readonly name: string;
  readonly leg: 'out' | 'back' | undefined;
  /** `open`: there are no data to tell, and the answer stands without; `not known`: there is no answer without */
  readonly state: 'met' | 'missed' | 'not known' | 'open' | 'not asked';
  readonly shown: Shown | undefined;
  /** what is left; negative is what is missing */
  readonly margin: number | undefined;
  /** the margin as a share of what there is or what is needed, whichever is more: −1 to 1; the least is the scarcest */
  readonly share: number;
  /** how it stands, in words */
  readonly text: string;
}

type Named = Pick<Condition, 'name' | 'leg'>;

/** What is there against what is needed. */
export const shareLeft = (there: number, needed: number) => (there - needed) / Math.max(there, needed);

/** A condition with a number: met where nothing is missing, but for rounding. */
export const measured = (
  { name, leg }: Named,
  shown: Shown,
  margin: number,
  share: number,
  text: string,
): Condition => ({
  name,
  leg,
  shown,
  margin,
  share: Math.max(-1, Math.min(1, share)),
  text,
  state: share >= -1e-9 ? 'met' : 'missed',
});

/** A condition without a number. */
export const stated = ({ name, leg }: Named, state: Condition['state'], text: string): Condition => ({
  name,
  leg,
  state,
  shown: undefined,
  margin: undefined,
  share: state === 'missed' ? -1 : 1,
  text,
});

/** The condition in words: `takeoff out`. */
export const conditionName = ({ name, leg }: Condition) => (leg === undefined ? name : `${name} ${leg}`);
