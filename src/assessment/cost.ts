import { powerAvailable } from '../engineering/enginePower.ts';
import { nameKey } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import type { Rates } from '../tables/rates.ts';
import { toSi } from '../units.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { Engine } from './engine.ts';
import type { Finding } from './finding.ts';
import { fuelVolumeFlow } from './fuelUse.ts';
import type { Price } from './price.ts';
import { type ScopeItem, scopeOf } from './scope.ts';

/** An amount of money; where a part of it is not known it is the least it can be. */
export interface Amount {
  readonly value: number;
  readonly complete: boolean;
}

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

/** Cruise above this pressure altitude for more than half an hour needs oxygen. @source 14 CFR 91.211(a)(1), read */
export const oxygenAltitude = toSi('height', 12_500, 'ft');

/** Part of the package, or an option aboard that is named so. */
export const hasOxygen = (engine: Package, { equipment }: Configuration): boolean =>
  engine.oxygen || equipment.some(({ name }) => nameKey(name).includes('oxygen'));

const hour = 3600; // s

function amount(parts: readonly (number | undefined)[], complete = true): Amount {
  return {
    value: parts.reduce<number>((sum, part) => sum + (part ?? 0), 0),
    complete: complete && parts.every((part) => part !== undefined),
  };
}

/** Price of the fuel a package burns, and whether the home field sells it. */
function fuelAtHome(rates: Rates, fuel: string): { price: number | undefined; sold: boolean | undefined } {
  const known: Readonly<Record<string, { price: number | undefined; sold: boolean | undefined }>> = {
    avgas: { price: rates.avgas, sold: rates.avgasAtHome },
    mogas: { price: rates.mogas, sold: rates.mogasAtHome },
    'jet a': { price: rates.jet, sold: rates.jetAtHome },
  };
  return known[nameKey(fuel)] ?? { price: undefined, sold: undefined };
}

/** An overhaul spread over its interval: 0 where neither is given, undefined where one of the two is missing. */
function overhaul(interval: number | undefined, price: number | undefined): number | undefined {
  if (interval === undefined && price === undefined) return 0;
  return interval === undefined || price === undefined ? undefined : (price * hour) / interval;
}

/** Fuel flow in the mission's cruise: its setting, or what full throttle gives at its altitude if that is less. */
function cruiseFuelFlow(context: Context, engine: Package, curves: Engine): number | undefined {
  const { cruiseSetting, cruiseAltitude } = context.catalogue.mission;
  const { continuous } = curves.rated;
  const most = powerAvailable(curves.law.continuous, continuous, cruiseAltitude).power / continuous;
  const found = fuelVolumeFlow(engine, curves, Math.min(cruiseSetting, most), 'lean');
  return found?.extrapolated ? undefined : found?.flow;
}

function costFindings(
  context: Context,
  engine: Package,
  configuration: Configuration,
  perHour: HourlyCost,
  needsOxygen: boolean,
): Finding[] {
  const { rates } = context.catalogue;
  const { sold } = fuelAtHome(rates, engine.fuel);
  const finding = (
    gravity: Finding['gravity'],
    of: string,
    subject: string,
    text: string,
    source = 'rates table',
  ): Finding => ({ gravity, package: of, subject, text, source });
  const findings: Finding[] = [];
  if (sold === false) {
    const text = `${engine.fuel} is not sold at the home field: it must be brought, or fetched elsewhere`;
    findings.push(finding('check', engine.name, 'fuel at home', text));
  } else if (sold === undefined) {
    const text = `not stated whether ${engine.fuel} is sold at the home field`;
    findings.push(finding('note', engine.name, 'fuel at home', text));
  }
  const missing = (causes: readonly (keyof HourlyCost)[]) =>
    causes.filter((cause) => perHour[cause] === undefined).map((cause) => hourlyCauses[cause]);
  const own = missing(['fuel', 'service', 'engine', 'gearbox', 'turbocharger', 'propeller', 'oxygen']);
  if (own.length > 0) {
    const text = `the cost of an hour is without ${own.join(', ')}: a price, an interval or a fuel point is missing`;
    findings.push(finding('check', engine.name, 'cost of an hour', text, 'rates and packages tables'));
  }
  const general = [
    ...missing(['unscheduled', 'insurance', 'hangar']),
    ...(rates.labour === undefined ? ['labour'] : []),
    ...(rates.tax === undefined ? ['sales tax'] : []),
  ];
  if (general.length > 0) {
    findings.push(finding('check', '', 'cost', `without ${general.join(', ')}: no price given`));
  }
  const apart = [
    ...(engine.gearRatio > 1 && perHour.gearbox === 0 ? ['gearbox'] : []),
    ...(engine.criticalAltitude !== undefined && perHour.turbocharger === 0 ? ['turbocharger'] : []),
    ...(engine.propeller === 'constant speed' && perHour.propeller === 0 ? ['propeller'] : []),
  ];
  if (apart.length > 0) {
    const text = `no overhaul of ${apart.join(', ')} given: taken as part of the engine’s`;
    findings.push(finding('note', engine.name, 'overhaul', text, 'packages table'));
  }
  if (needsOxygen && !hasOxygen(engine, configuration)) {
    findings.push({
      ...finding('check', engine.name, 'oxygen', 'the cruise altitude needs oxygen, and none is fitted'),
      shown: 'height',
      value: context.catalogue.mission.cruiseAltitude,
      limit: oxygenAltitude,
      source: '14 CFR 91.211(a), more than half an hour',
    });
  }
  return findings;
}

export function costOf(
  context: Context,
  engine: Package,
  configuration: Configuration,
  curves: Engine,
  price: Price,
): Cost {
  const { rates, mission } = context.catalogue;
  const flow = cruiseFuelFlow(context, engine, curves);
  const { price: fuelPrice } = fuelAtHome(rates, engine.fuel);
  const needsOxygen = mission.cruiseAltitude > oxygenAltitude;
  const hours = rates.hoursPerYear / hour;
  const perHour: HourlyCost = {
    fuel: flow === undefined || fuelPrice === undefined ? undefined : flow * hour * fuelPrice,
    service: engine.servicePrice,
    engine:
      engine.engineOverhaulHours === undefined
        ? undefined
        : overhaul(engine.engineOverhaulHours, engine.engineOverhaulPrice),
    gearbox: overhaul(engine.gearboxOverhaulHours, engine.gearboxOverhaulPrice),
    turbocharger: overhaul(engine.turboOverhaulHours, engine.turboOverhaulPrice),
    propeller: overhaul(engine.propellerOverhaulHours, engine.propellerOverhaulPrice),
    oxygen: needsOxygen ? rates.oxygen : 0,
    unscheduled: rates.unscheduled,
    insurance: rates.insurance === undefined ? undefined : rates.insurance / hours,
    hangar: rates.hangar === undefined ? undefined : rates.hangar / hours,
  };
  const { insurance, hangar, ...flown } = perHour;
  const hourFlown = amount(Object.values(flown));
  const whole = amount([hourFlown.value, insurance, hangar], hourFlown.complete);
  const labour =
    rates.labour === undefined || price.buildTime === undefined
      ? undefined
      : (rates.labour * price.buildTime) / hour;
  const readyToFly = amount(
    [price.total + price.tax, price.builder * (1 + (rates.tax ?? 0)), labour],
    price.complete && rates.tax !== undefined,
  );
  return {
    scope: scopeOf(context, engine, configuration),
    readyToFly,
    labour,
    cruiseFuelFlow: flow,
    fuelPrice,
    perHour,
    hour: whole,
    hourFlown,
    lifetime: amount(
      [readyToFly.value, whole.value * hours * rates.years],
      readyToFly.complete && whole.complete,
    ),
    findings: costFindings(context, engine, configuration, perHour, needsOxygen),
  };
}
