import type { Loading } from '../engineering/loading.ts';
import type { LoadingPolygon } from '../engineering/loadingPolygon.ts';
import type { CriticalLoading } from '../engineering/worstMargin.ts';

export const lightestOf = ({ forward }: LoadingPolygon) => (forward[0] as Loading).weight;

/** What makes a loading the worst, by itself and in a sentence. */
export function worstCause(
  { cause, weight }: CriticalLoading,
  lightest: number,
): { readonly name: string; readonly clause: string } {
  if (cause !== undefined) return { name: cause, clause: `with ${cause} loaded` };
  // Where no load moves the CG that way, only a limit that closes in makes a heavier loading worse
  return weight === lightest
    ? { name: 'least loads', clause: 'with the least loads' }
    : { name: 'narrower limit', clause: 'where the limit is narrower' };
}
