import { toSi } from '../units.ts';
import type { Cost } from './cost.ts';

/** When a package has cost as much as the baseline. */
export type BreakEven =
  | { readonly cheaper: 'never' | 'from the first hour' }
  /** after, or up to, so much flying [s] */
  | { readonly cheaper: 'after' | 'up to'; readonly time: number };

/**
 * What it costs more to buy, over what an hour of it costs less. What has to be paid whether it flies or not is the same
 * for both.
 * @returns nothing where a price is missing
 * @source definition
 */
export function breakEven(own: Cost, baseline: Cost): BreakEven | undefined {
  const amounts = [own.readyToFly, own.hourFlown, baseline.readyToFly, baseline.hourFlown];
  if (amounts.some(({ complete }) => !complete)) return undefined;
  const dearer = own.readyToFly.value - baseline.readyToFly.value;
  const saving = baseline.hourFlown.value - own.hourFlown.value;
  if (dearer <= 0 && saving >= 0) return { cheaper: 'from the first hour' };
  if (dearer >= 0 && saving <= 0) return { cheaper: 'never' };
  return { cheaper: dearer > 0 ? 'after' : 'up to', time: toSi('time', dearer / saving, 'h') };
}
