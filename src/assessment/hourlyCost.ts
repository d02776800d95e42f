import { powerAvailable } from '../engineering/enginePower.ts';
import { nameKey } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import type { Rates } from '../tables/rates.ts';
import { hour, toSi } from '../units.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { Engine } from './engine.ts';
import { fuelVolumeFlow } from './fuelUse.ts';

/** Why an hour of flight costs what it does. */
export const hourlyCauses = {
  fuel: 'fuel in cruise',
  service: 'service',
  engine: 'engine overhaul',
  gearbox: 'gearbox overhaul',
  turbocharger: 'turbocharger overhaul',
  propeller: 'propeller overhaul',
  oxygen: 'oxygen',
  unscheduled: 'unscheduled upkeep',
  insurance: 'insurance',
  hangar: 'hangar',
} as const;

/** By cause; 0 where there is nothing to pay, undefined where the price is not known. */
export type HourlyCost = Readonly<Record<keyof typeof hourlyCauses, number | undefined>>;

/** Cruise above this pressure altitude for more than half an hour needs oxygen. @source 14 CFR 91.211(a)(1), read */
export const oxygenAltitude = toSi('height', 12_500, 'ft');

/** Part of the package, or an option aboard that is named so. */
export const hasOxygen = (engine: Package, { equipment }: Configuration): boolean =>
  engine.oxygen || equipment.some(({ name }) => nameKey(name).includes('oxygen'));

/** Price per m³ of the fuel a package burns, and whether the home field sells it; nothing where the rates do not name it. */
export function fuelAtHome(
  rates: Rates,
  fuel: string,
): { readonly price: number | undefined; readonly sold: boolean | undefined } | undefined {
  const named = nameKey(fuel);
  if (named.startsWith('avgas')) return { price: rates.avgas, sold: rates.avgasAtHome };
  if (named.startsWith('mogas')) return { price: rates.mogas, sold: rates.mogasAtHome };
  return named.startsWith('jet') ? { price: rates.jet, sold: rates.jetAtHome } : undefined;
}

/** An overhaul spread over its interval: 0 where neither is given, undefined where one of the two is missing. */
function overhaul(interval: number | undefined, price: number | undefined): number | undefined {
  if (interval === undefined && price === undefined) return 0;
  return interval === undefined || price === undefined ? undefined : (price * hour) / interval;
}

/** Power in the mission's cruise over MCP: its setting, or what full throttle gives at its altitude if that is less. */
export function cruisePower(context: Context, curves: Engine): number {
  const { cruiseSetting, cruiseAltitude } = context.catalogue.mission;
  const { continuous } = curves.rated;
  return Math.min(
    cruiseSetting,
    powerAvailable(curves.law.continuous, continuous, cruiseAltitude).power / continuous,
  );
}

/** Fuel flow there [m³/s]; undefined outside the fuel points. */
export function cruiseFuelFlow(context: Context, engine: Package, curves: Engine): number | undefined {
  const found = fuelVolumeFlow(engine, curves, cruisePower(context, curves), 'lean');
  return found?.extrapolated ? undefined : found?.flow;
}

/** What an hour of flight costs, in the mission's cruise and at the rates' hours a year. */
export function hourlyCostOf(context: Context, engine: Package, curves: Engine): HourlyCost {
  const { rates, mission } = context.catalogue;
  const flow = cruiseFuelFlow(context, engine, curves);
  const fuelPrice = fuelAtHome(rates, engine.fuel)?.price;
  const perYear = (amount: number | undefined) => amount && (amount * hour) / rates.hoursPerYear;
  return {
    fuel: flow === undefined || fuelPrice === undefined ? undefined : flow * hour * fuelPrice,
    service: engine.servicePrice,
    engine:
      engine.engineOverhaulHours === undefined
        ? undefined
        : overhaul(engine.engineOverhaulHours, engine.engineOverhaulPrice),
    gearbox: overhaul(engine.gearboxOverhaulHours, engine.gearboxOverhaulPrice),
    turbocharger: overhaul(engine.turboOverhaulHours, engine.turboOverhaulPrice),
    propeller: overhaul(engine.propellerOverhaulHours, engine.propellerOverhaulPrice),
    oxygen: mission.cruiseAltitude > oxygenAltitude ? rates.oxygen : 0,
    unscheduled: rates.unscheduled,
    insurance: perYear(rates.insurance),
    hangar: perYear(rates.hangar),
  };
}
