import type { Package } from '../tables/packages.ts';
import { hour } from '../units.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import { costFindings } from './costFindings.ts';
import type { Engine } from './engine.ts';
import type { Finding } from './finding.ts';
import { cruiseFuelFlow, fuelAtHome, type HourlyCost, hourlyCostOf } from './hourlyCost.ts';
import type { Price } from './price.ts';
import { type ScopeItem, scopeOf } from './scope.ts';

/** An amount of money; where a part of it is not known it is the least it can be. */
export interface Amount {
  readonly value: number;
  readonly complete: boolean;
}

export interface Cost {
  readonly scope: readonly ScopeItem[];
  /** bought, taxed and built: kit, package, options, what the builder buys, labour */
  readonly readyToFly: Amount;
  readonly labour: number | undefined;
  /** at the mission's cruise power and altitude [m³/s] */
  readonly cruiseFuelFlow: number | undefined;
  /** currency per m³ of the fuel it burns, at home */
  readonly fuelPrice: number | undefined;
  readonly perHour: HourlyCost;
  readonly hour: Amount;
  /** of an hour, without what has to be paid whether it flies or not */
  readonly hourFlown: Amount;
  /** ready to fly and all hours of all years */
  readonly lifetime: Amount;
  readonly findings: readonly Finding[];
}

function amount(parts: readonly (number | undefined)[], complete = true): Amount {
  return {
    value: parts.reduce<number>((sum, part) => sum + (part ?? 0), 0),
    complete: complete && parts.every((part) => part !== undefined),
  };
}

export function costOf(
  context: Context,
  engine: Package,
  configuration: Configuration,
  curves: Engine,
  price: Price,
): Cost {
  const { rates } = context.catalogue;
  const perHour = hourlyCostOf(context, engine, curves);
  const { insurance, hangar, ...flown } = perHour;
  const hourFlown = amount(Object.values(flown));
  const whole = amount([hourFlown.value, insurance, hangar], hourFlown.complete);
  const buildHours = [context.catalogue.airframe.buildHours, engine.buildHours];
  const labour =
    rates.labour === undefined || price.buildTime === undefined
      ? undefined
      : (rates.labour * price.buildTime) / hour;
  const readyToFly = amount(
    [price.total + price.tax, price.builder * (1 + (rates.tax ?? 0)), labour],
    price.complete && rates.tax !== undefined && buildHours.every((time) => time !== undefined),
  );
  const hours = (rates.hoursPerYear / hour) * rates.years;
  return {
    scope: scopeOf(context, engine, configuration),
    readyToFly,
    labour,
    cruiseFuelFlow: cruiseFuelFlow(context, engine, curves),
    fuelPrice: fuelAtHome(rates, engine.fuel)?.price,
    perHour,
    hour: whole,
    hourFlown,
    lifetime: amount([readyToFly.value, whole.value * hours], readyToFly.complete && whole.complete),
    findings: costFindings(context, engine, configuration, perHour),
  };
}
