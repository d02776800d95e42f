import { afterChange } from '../engineering/weightChange.ts';
import { nameKey } from '../tables/cell.ts';
import type { Equipment } from '../tables/equipment.ts';
import type { Assessment } from './assess.ts';
import { fitsTo } from './configuration.ts';

/**
 * How far an option moves the empty CG, aft above 0: of the aircraft without it, whether it is aboard or not.
 * Undefined where it cannot be had with the package.
 */
export function cgShiftOf(
  option: Equipment,
  { package: engine, configuration, empty }: Assessment,
): number | undefined {
  if (!fitsTo(option.fits, engine)) return undefined;
  const { weight, arm, name } = option;
  const own = { weight, moment: weight * arm };
  const aboard = configuration.equipment.some((item) => nameKey(item.name) === nameKey(name));
  if (!aboard) return afterChange(empty.mass.nominal, own).shift;
  return -afterChange(empty.mass.nominal, { weight: -own.weight, moment: -own.moment }).shift;
}
