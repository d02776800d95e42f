import { airframeTable } from '../tables/airframe.ts';
import { nameKey } from '../tables/cell.ts';
import { componentsTable } from '../tables/components.ts';
import { coolingTable } from '../tables/cooling.ts';
import { equipmentTable } from '../tables/equipment.ts';
import type { Field, Fields } from '../tables/field.ts';
import { fuelPointsTable } from '../tables/fuelPoints.ts';
import { knownPointsTable } from '../tables/knownPoints.ts';
import { missionTable } from '../tables/mission.ts';
import { packagesTable } from '../tables/packages.ts';
import { powerPointsTable } from '../tables/powerPoints.ts';
import { practice } from '../tables/practice.ts';
import { type QuoteTerms, quoteTable } from '../tables/quote.ts';
import { ratesTable } from '../tables/rates.ts';
import { stationsTable } from '../tables/stations.ts';
import type { Origin, Table } from '../tables/table.ts';
import { tanksTable } from '../tables/tanks.ts';
import { fromSi, type QuantityKind } from '../units.ts';
import type { Assessment, Comparison } from './assess.ts';
import { type QuoteRow, type QuoteSection, row, section } from './quoteSection.ts';

/** A value that nobody gave, in words and with its unit. */
function defaultText({ fallback, unit, customaryUnit }: Field<unknown>): string {
  const value = fallback?.value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'number' || unit === undefined) return String(value);
  const kind = unit as QuantityKind; // no table has a default amount of money that it tells of
  return `${Number(fromSi(kind, value, customaryUnit).toPrecision(4))} ${customaryUnit}`.trim();
}

/** One row for each column or attribute with defaults, naming the records that took them. */
function defaultRows(
  table: Pick<Table<Fields>, 'name' | 'fields'>,
  records: readonly { readonly origin: Origin; readonly name: string }[],
): QuoteRow[] {
  return Object.entries(table.fields).flatMap(([key, field]): QuoteRow[] => {
    const names = records.filter(({ origin }) => origin.defaulted.includes(key)).map(({ name }) => name);
    if (names.length === 0) return [];
    const of = names.filter((name) => name !== '').join(', ');
    const what = of === '' ? field.label : `${field.label} of ${of}`;
    return [row(table.name, what, defaultText(field), field.fallback?.source ?? '')];
  });
}

/** Every default that touches the quoted package, and the customary allowances where there are none of one's own. */
export function assumptionsSection(
  { context }: Comparison,
  { package: engine, configuration }: Assessment,
  terms: QuoteTerms,
): QuoteSection {
  const { catalogue } = context;
  const own = <R extends { readonly package: string }>(rows: readonly R[]) =>
    rows.filter((each) => nameKey(each.package) === nameKey(engine.name));
  const single = (origin: Origin) => [{ origin, name: '' }];
  const named = (rows: readonly (Origin & { readonly name: string })[]) =>
    rows.map((origin) => ({ origin, name: origin.name }));
  const numbered = (rows: readonly Origin[]) => rows.map((origin) => ({ origin, name: `row ${origin.row}` }));
  // The airframe without powerplant is a weighing less the components of the package it was weighed with
  const weighedWith = context.weighedWith === engine ? undefined : context.weighedWith;
  const subtracted = weighedWith === undefined ? [] : context.components.of(weighedWith.name);
  const rows = [
    ...defaultRows(airframeTable, single(catalogue.airframe)),
    ...defaultRows(stationsTable, named(catalogue.stations)),
    ...defaultRows(tanksTable, named(configuration.tanks)),
    ...defaultRows(packagesTable, single(engine)),
    ...defaultRows(fuelPointsTable, numbered(own(catalogue.fuelPoints))),
    ...defaultRows(powerPointsTable, numbered(own(catalogue.powerPoints))),
    ...defaultRows(coolingTable, numbered(own(catalogue.cooling))),
    ...defaultRows(knownPointsTable, numbered(catalogue.knownPoints)),
    ...defaultRows(componentsTable, [
      ...named(context.components.of(engine.name)),
      ...subtracted.map((origin) => ({ origin, name: `${origin.package}’s ${origin.name}` })),
    ]),
    ...defaultRows(equipmentTable, named(configuration.equipment)),
    ...defaultRows(missionTable, single(catalogue.mission)),
    ...defaultRows(ratesTable, single(catalogue.rates)),
    ...defaultRows(quoteTable, single(terms)),
    ...(catalogue.allowancesDefaulted
      ? [row('allowances', 'growth and scatter of weights', 'customary values', practice)]
      : []),
  ];
  return section(
    'Assumptions: values nobody gave',
    ['Table', 'What', 'Taken as', 'Source'],
    rows.length > 0 ? rows : [row('none', '', '', '')],
  );
}
