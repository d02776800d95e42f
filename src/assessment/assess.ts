import type { PayloadRange } from '../engineering/payloadRange.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import type { Package } from '../tables/packages.ts';
import { type Balance, balanceOf } from './balance.ts';
import { type Configuration, configure } from './configuration.ts';
import { type Context, contextOf } from './context.ts';
import { type Cooling, coolingOf } from './cooling.ts';
import { type Cost, costOf } from './cost.ts';
import { defaultFindings } from './defaults.ts';
import { type Electrical, electricalOf } from './electrical.ts';
import { type BareAirframe, bareAirframe, type EmptyAircraft, emptyAircraft } from './emptyAircraft.ts';
import { type Engine, engineOf } from './engine.ts';
import type { Finding } from './finding.ts';
import { type Flight, flightOf } from './flight.ts';
import { type FuelUse, fuelUseOf } from './fuelUse.ts';
import { aheadOfFirewall, type Installation, installationOf } from './installation.ts';
import { type FlownAirframe, flownAirframe } from './knownFlights.ts';
import { type Mission, missionOf } from './mission.ts';
import { missionCase } from './missionCase.ts';
import { type Payload, payloadOf } from './payload.ts';
import { type Powerplant, powerplantOf } from './powerplant.ts';
import { type Price, priceOf } from './price.ts';
import { rangeOf } from './range.ts';

/** Everything known of the airframe with one package. */
export interface Assessment {
  readonly package: Package;
  readonly configuration: Configuration;
  readonly powerplant: Powerplant;
  readonly empty: EmptyAircraft;
  readonly balance: Balance;
  readonly payload: Payload;
  readonly engine: Engine;
  readonly fuel: FuelUse;
  /** undefined without a known level flight of the airframe */
  readonly flight: Flight | undefined;
  /** undefined without flight or without cooling streams */
  readonly cooling: Cooling | undefined;
  readonly installation: Installation;
  readonly electrical: Electrical;
  readonly price: Price;
  readonly cost: Cost;
  /** undefined where flight or fuel are not known */
  readonly range: PayloadRange | undefined;
  /** undefined where no mission is stated */
  readonly mission: Mission | undefined;
  readonly findings: readonly Finding[];
}

/** What every package of a comparison rests on. */
export interface Basis {
  readonly context: Context;
  readonly bareAirframe: BareAirframe;
  readonly flown: FlownAirframe;
  /** moment ahead of the firewall with the baseline [kg·m] */
  readonly baselineMoment: number;
}

/** All packages on one airframe. */
export interface Comparison extends Basis {
  /** in the order of the packages table */
  readonly assessments: readonly Assessment[];
  readonly baseline: Assessment;
  /** of the tables and of every package */
  readonly findings: readonly Finding[];
}

/** Assesses one package. With other choices in the tables the basis stays: it is what was measured. */
export function assess(basis: Basis, engine: Package): Assessment {
  const { context, bareAirframe: bare, flown, baselineMoment } = basis;
  const configuration = configure(context.catalogue, engine);
  const powerplant = powerplantOf(context, engine);
  const empty = emptyAircraft(context, bare, engine, powerplant, configuration);
  const balance = balanceOf(context, engine, empty, configuration);
  const payload = payloadOf(context, engine, empty, configuration);
  const curves = engineOf(context, engine);
  const fuel = fuelUseOf(context, engine, curves, payload);
  const flying = flightOf(context, flown, engine, curves, configuration);
  const cooled = coolingOf(context, engine, flying.flight);
  const installation = installationOf(
    context,
    engine,
    curves,
    powerplant,
    configuration,
    empty,
    balance,
    baselineMoment,
  );
  const electrical = electricalOf(context, engine, configuration);
  const price = priceOf(context, engine, configuration);
  const cost = costOf(context, engine, configuration, curves, price);
  const assessed = {
    package: engine,
    configuration,
    powerplant,
    empty,
    balance,
    payload,
    engine: curves,
    fuel,
    flight: flying.flight,
    cooling: cooled.cooling,
    installation,
    electrical,
    price,
    cost,
  };
  const asked = missionCase(context, assessed);
  const { mission, findings } = missionOf(asked, assessed);
  const parts = [
    configuration,
    powerplant,
    balance,
    payload,
    curves,
    fuel,
    flying,
    cooled,
    installation,
    electrical,
    price,
    cost,
  ];
  const range = rangeOf(context, asked);
  return { ...assessed, range, mission, findings: [...parts.flatMap((part) => part.findings), ...findings] };
}

/** The same finding about all packages is one finding. */
function distinct(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter((finding) => {
    const key = `${finding.package}|${finding.subject}|${finding.text}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** What was measured of the airframe, and what all its packages share. */
export function basisOf(catalogue: Catalogue): Basis {
  const context = contextOf(catalogue);
  const bare = bareAirframe(context);
  const baselineMoment = aheadOfFirewall(
    context,
    powerplantOf(context, context.baseline),
    configure(catalogue, context.baseline),
  ).moment;
  return { context, bareAirframe: bare, flown: flownAirframe(context, bare.equipment), baselineMoment };
}

/** Assesses every package of a catalogue once, against its baseline. */
export function compare(catalogue: Catalogue): Comparison {
  const basis = basisOf(catalogue);
  const { context, flown } = basis;
  const assessments = catalogue.packages.map((engine) => assess(basis, engine));
  const baseline = assessments.find((each) => each.package === context.baseline) as Assessment;
  return {
    ...basis,
    assessments,
    baseline,
    findings: distinct([
      ...assessments.flatMap(({ findings }) => findings),
      ...flown.findings,
      ...defaultFindings(context),
    ]),
  };
}
