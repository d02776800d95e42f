import type { PayloadRange } from '../engineering/payloadRange.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import type { Package } from '../tables/packages.ts';
import { type Balance, balanceOf } from './balance.ts';
import { type Configuration, configure } from './configuration.ts';
import { type Context, contextOf } from './context.ts';
import { type Cooling, coolingOf } from './cooling.ts';
import { coolingFindings } from './coolingFindings.ts';
import { type Cost, costOf } from './cost.ts';
import { defaultFindings } from './defaults.ts';
import { type Electrical, electricalOf } from './electrical.ts';
import { type BareAirframe, bareAirframe, type EmptyAircraft, emptyAircraft } from './emptyAircraft.ts';
import { type Engine, engineOf } from './engine.ts';
import type { Finding } from './finding.ts';
import { aheadOfFirewall } from './firewall.ts';
import { type Flight, flightOf } from './flight.ts';
import { type FuelUse, fuelUseOf } from './fuelUse.ts';
import { type Installation, installationOf } from './installation.ts';
import { type FlownAirframe, flownAirframe } from './knownFlights.ts';
import { lazily } from './lazily.ts';
import { type Mission, missionOf } from './mission.ts';
import { type MissionCase, missionCase } from './missionCase.ts';
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

/** Results that come with findings of their own. */
interface Workings extends Assessment {
  readonly flying: ReturnType<typeof flightOf>;
  readonly cooled: ReturnType<typeof coolingOf>;
  readonly cooledEnough: { readonly findings: readonly Finding[] };
  readonly asked: MissionCase;
  readonly answer: ReturnType<typeof missionOf>;
}

/** Assesses one package. With other choices in the tables the basis stays: it is what was measured. */
export function assess(basis: Basis, engine: Package): Assessment {
  const { context, bareAirframe: bare, flown, baselineMoment } = basis;
  return lazily<Workings>({
    package: () => engine,
    configuration: () => configure(context.catalogue, engine),
    powerplant: () => powerplantOf(context, engine),
    empty: (a) => emptyAircraft(context, bare, engine, a.powerplant, a.configuration),
    balance: (a) => balanceOf(context, engine, a.empty, a.configuration),
    payload: (a) => payloadOf(context, engine, a.empty, a.configuration),
    engine: () => engineOf(context, engine),
    fuel: (a) => fuelUseOf(context, engine, a.engine, a.payload),
    flying: (a) => flightOf(context, flown, engine, a.engine, a.configuration),
    flight: (a) => a.flying.flight,
    cooled: (a) => coolingOf(context, engine, a.flight),
    cooling: (a) => a.cooled.cooling,
    cooledEnough: ({ flight, cooling }) => ({
      findings: flight && cooling ? coolingFindings(context, engine, flight, cooling) : [],
    }),
    installation: (a) =>
      installationOf(
        context,
        engine,
        a.engine,
        a.powerplant,
        a.configuration,
        a.empty,
        a.balance,
        baselineMoment,
      ),
    electrical: (a) => electricalOf(context, engine, a.configuration),
    price: (a) => priceOf(context, engine, a.configuration),
    cost: (a) => costOf(context, engine, a.configuration, a.engine, a.price),
    asked: (a) => missionCase(context, a),
    answer: (a) => missionOf(a.asked, a),
    mission: (a) => a.answer.mission,
    range: (a) => rangeOf(context, a.asked),
    findings: (a) =>
      [
        a.configuration,
        a.powerplant,
        a.balance,
        a.payload,
        a.engine,
        a.fuel,
        a.flying,
        a.cooled,
        a.cooledEnough,
        a.installation,
        a.electrical,
        a.price,
        a.cost,
        a.answer,
      ].flatMap((part) => part.findings),
  });
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

function comparisonOf(catalogue: Catalogue): Comparison {
  const basis = basisOf(catalogue);
  const { context, flown } = basis;
  const assessments = catalogue.packages.map((engine) => assess(basis, engine));
  return lazily<Comparison>({
    context: () => context,
    bareAirframe: () => basis.bareAirframe,
    flown: () => flown,
    baselineMoment: () => basis.baselineMoment,
    assessments: () => assessments,
    baseline: () => assessments.find((each) => each.package === context.baseline) as Assessment,
    findings: () =>
      distinct([
        ...assessments.flatMap(({ findings }) => findings),
        ...flown.findings,
        ...defaultFindings(context),
      ]),
  });
}

const comparisons = new WeakMap<Catalogue, Comparison>();

/** Assesses every package of a catalogue, each result once and only where it is asked for, against its baseline. */
export function compare(catalogue: Catalogue): Comparison {
  const known = comparisons.get(catalogue);
  if (known !== undefined) return known;
  const comparison = comparisonOf(catalogue);
  comparisons.set(catalogue, comparison);
  return comparison;
}
