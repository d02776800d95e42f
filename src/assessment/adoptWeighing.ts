import { subtract } from '../engineering/massItem.ts';
import { type Airframe, airframeTable } from '../tables/airframe.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import type { Cell } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import { writeAttributes } from '../tables/writeTable.ts';
import { configure } from './configuration.ts';
import { type Context, contextOf } from './context.ts';
import { bareAirframe, emptyAircraft } from './emptyAircraft.ts';
import { powerplantOf } from './powerplant.ts';
import { tableUnits } from './tableUnits.ts';
import type { WeighedAircraft } from './weighingCheck.ts';

/** The airframe table's rows that a weighing replaces. */
export type AdoptedRows = Pick<
  Airframe,
  | 'emptyWeight'
  | 'emptyArm'
  | 'weighedWith'
  | 'weighedItems'
  | 'weighedFluids'
  | 'weighedUnusableFuel'
  | 'emptyBasis'
  | 'emptyWeightKnownTo'
  | 'emptyArmKnownTo'
>;

const weighedBasis = 'weighed';

/** A catalogue with other rows in its airframe table. */
export const withAirframe = (catalogue: Catalogue, rows: Partial<Airframe>): Catalogue => ({
  ...catalogue,
  airframe: { ...catalogue.airframe, ...rows },
});

/**
 * The airframe table's new rows: weighed complete with this package and everything chosen. What the tables add to that by
 * themselves (an optional tank, its unusable fuel) is taken off first, so that the package comes out at what was weighed.
 */
export function adoptWeighing(
  { catalogue }: Context,
  engine: Package,
  weighed: WeighedAircraft,
): AdoptedRows {
  const configuration = configure(catalogue, engine);
  const rowsAt = ({ weight, moment }: { weight: number; moment: number }): AdoptedRows => ({
    emptyWeight: weight,
    emptyArm: moment / weight,
    weighedWith: engine.name,
    weighedItems: configuration.equipment.map(({ name }) => name).join(', ') || undefined,
    weighedFluids: true,
    weighedUnusableFuel: true,
    emptyBasis: catalogue.allowances.some(({ basis }) => basis === weighedBasis)
      ? weighedBasis
      : catalogue.airframe.emptyBasis,
    emptyWeightKnownTo: weighed.weightHalfWidth,
    emptyArmKnownTo: weighed.cgHalfWidth,
  });
  const context = contextOf(withAirframe(catalogue, rowsAt(weighed)));
  const powerplant = powerplantOf(context, engine);
  const { nominal } = emptyAircraft(context, bareAirframe(context), engine, powerplant, configuration).mass;
  return rowsAt(subtract(weighed, subtract(nominal, weighed)));
}

/** The rows as the airframe table has them, what stood there before in the notes. */
export const adoptedRowsBlock = (
  { display, catalogue }: Context,
  rows: AdoptedRows,
  date: string,
): Cell[][] => writeAttributes(airframeTable, rows, catalogue.airframe, date, tableUnits(display));
