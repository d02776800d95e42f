/**
 * How well a weight is known: nominal, expected, and half-width.
 *
 * Each row of a build-up rests on a basis (estimated, calculated, weighed). An allowance says by how much weights on that
 * basis usually grow, how far they scatter, and how far their errors go together (a brochure that is 5 % light in one line
 * is light in the next).
 * @source the idea of ANSI/AIAA S-120A (predicted = basic + growth allowance; secondary: its text was not at hand);
 * half-width as for equally correlated errors, JCGM 100:2008 5.2 (from memory), with the correlated part summed in
 * magnitude: errors that go together are taken to add up, so a half-width is never understated by items that would
 * cancel, and is on the large side for an item that only moves (one negative and one positive row)
 */
import { requireAbove, requireAtLeast, requireBetween } from './check.ts';
import { centreOfGravity, type MassItem, type MassTotal, total } from './massItem.ts';

export interface Allowance {
  readonly basis: string;
  /** fraction by which weights on this basis grow until they are on a scale */
  readonly growth: number;
  /** half-width of one weight, as a fraction of it */
  readonly scatter: number;
  /** of the errors of two weights on this basis, 0 to 1 */
  readonly correlation: number;
}

/** How far a weight and its arm may be off either way, independently. */
export interface OwnHalfWidths {
  /** undefined: as its basis says, growth and all */
  readonly weight: number | undefined;
  readonly arm: number;
}

export interface MassItemWithBasis extends MassItem {
  readonly basis: string;
  /** of an item whose scales say how well it is known: in place of its basis's growth and scatter */
  readonly known?: OwnHalfWidths | undefined;
}

export interface ExpectedMass {
  readonly nominal: MassTotal;
  readonly expected: MassTotal;
  readonly weightHalfWidth: number;
  /** about the datum */
  readonly momentHalfWidth: number;
}

export interface ExpectedCg {
  readonly cg: number;
  readonly halfWidth: number;
}

type Allowances = ReadonlyMap<string, Allowance>;

function byBasis(allowances: readonly Allowance[]): Allowances {
  const table = new Map<string, Allowance>();
  for (const allowance of allowances) {
    if (table.has(allowance.basis))
      throw new RangeError(`basis must stand once, got ${allowance.basis} twice`);
    requireAbove(`growth of ${allowance.basis}`, allowance.growth, -1, '');
    requireAtLeast(`scatter of ${allowance.basis}`, allowance.scatter, 0, '');
    requireBetween(`correlation of ${allowance.basis}`, allowance.correlation, 0, 1, '');
    table.set(allowance.basis, allowance);
  }
  return table;
}

function allowanceOf(item: MassItemWithBasis, allowances: Allowances): Allowance {
  const allowance = allowances.get(item.basis);
  if (allowance === undefined) throw new RangeError(`basis must have an allowance, got ${item.basis}`);
  return allowance;
}

/** What is taken out does not grow. */
const grown = (items: readonly MassItemWithBasis[], allowances: Allowances): MassItem[] =>
  items.map((item) => {
    const growth = item.known?.weight === undefined ? allowanceOf(item, allowances).growth : 0;
    return { weight: item.weight > 0 ? item.weight * (1 + growth) : item.weight, arm: item.arm };
  });

/**
 * √ Σ over bases [ρ (Σ |w l| u)² + (1 − ρ) Σ (w l u)²] with the lever l of each item: an arm for moment, none for weight. An
 * item with half-widths of its own adds (u_w l)², for the moment (w u_x)² too.
 */
function halfWidth(
  items: readonly MassItemWithBasis[],
  allowances: Allowances,
  lever: ((item: MassItem) => number) | undefined,
): number {
  const sums = new Map<Allowance, { magnitudes: number; squares: number }>();
  let squared = 0;
  for (const item of items) {
    const { weight: own, arm: ownOfArm = 0 } = item.known ?? {};
    if (lever) squared += (item.weight * ownOfArm) ** 2;
    if (own !== undefined) {
      squared += (own * (lever?.(item) ?? 1)) ** 2;
      continue;
    }
    const allowance = allowanceOf(item, allowances);
    const error = Math.abs(item.weight * (lever?.(item) ?? 1)) * allowance.scatter;
    const sum = sums.get(allowance) ?? { magnitudes: 0, squares: 0 };
    sums.set(allowance, { magnitudes: sum.magnitudes + error, squares: sum.squares + error ** 2 });
  }
  for (const [{ correlation }, { magnitudes, squares }] of sums)
    squared += correlation * magnitudes ** 2 + (1 - correlation) * squares;
  return Math.sqrt(squared);
}

/**
 * Nominal and expected weight and moment with their half-widths: expected = Σ w (1 + g), g = 0 for w below 0;
 * half-width² = Σ over bases [ρ (Σ |w| u)² + (1 − ρ) Σ (w u)²], for the moment with w x in place of w. An item with
 * half-widths of its own does not grow, and adds their squares.
 * @param items weight, arm and basis of each row; negative: taken out
 * @param allowances growth g above −1, scatter u at least 0, correlation ρ 0 to 1; each basis once
 * @throws RangeError when an item's basis has no allowance, or an allowance is outside its range
 * @source see the head of this file
 */
export function expectedMass(
  items: readonly MassItemWithBasis[],
  allowances: readonly Allowance[],
): ExpectedMass {
  const table = byBasis(allowances);
  return {
    nominal: total(items),
    expected: total(grown(items, table)),
    weightHalfWidth: halfWidth(items, table, undefined),
    momentHalfWidth: halfWidth(items, table, (item) => item.arm),
  };
}

/**
 * Expected CG of a complete aircraft and its half-width: the half-width of the moment about that CG over the expected
 * weight (∂x/∂w = (arm − x)/W), which unlike the moment about the datum does not depend on where the datum is.
 * @param items every row of the aircraft, the airframe among them
 * @throws RangeError as expectedMass, and when the expected weight is not above 0
 * @source first-order propagation, JCGM 100:2008 5.1 (from memory)
 */
export function expectedCg(
  items: readonly MassItemWithBasis[],
  allowances: readonly Allowance[],
): ExpectedCg {
  const table = byBasis(allowances);
  const expected = total(grown(items, table));
  requireAbove('expected weight', expected.weight, 0, '');
  const cg = centreOfGravity(expected);
  return { cg, halfWidth: halfWidth(items, table, (item) => item.arm - cg) / expected.weight };
}
