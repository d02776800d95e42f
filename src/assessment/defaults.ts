import { type Airframe, airframeTable } from '../tables/airframe.ts';
import { componentsTable } from '../tables/components.ts';
import { equipmentTable } from '../tables/equipment.ts';
import type { Fields } from '../tables/field.ts';
import { missionTable } from '../tables/mission.ts';
import { packagesTable } from '../tables/packages.ts';
import { practice } from '../tables/practice.ts';
import { ratesTable } from '../tables/rates.ts';
import type { Origin, Table } from '../tables/table.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';

/** What an empty attribute was taken to be, and why. */
function attributeDefaults(table: Table<Fields>, record: Origin, packageName: string): Finding[] {
  return record.defaulted.map((key): Finding => {
    const { label, fallback } = table.fields[key] as Fields[string];
    return {
      gravity: 'note',
      package: packageName,
      subject: label,
      source: fallback?.source ?? '',
      text: `not given in the ${table.name} table: default used`,
    };
  });
}

/** In a table of many rows, which columns were left empty where. */
function columnDefaults(
  table: Table<Fields>,
  records: readonly (Origin & { readonly name: string; readonly package?: string })[],
): Finding[] {
  const keys = [...new Set(records.flatMap(({ defaulted }) => defaulted))];
  return keys.map((key): Finding => {
    const { label, fallback } = table.fields[key] as Fields[string];
    const rows = records.filter(({ defaulted }) => defaulted.includes(key)).map(({ name }) => name);
    const named =
      rows.length > 3 ? `${rows.slice(0, 3).join(', ')} and ${rows.length - 3} more` : rows.join(', ');
    return {
      gravity: 'note',
      package: '',
      subject: `${table.name}: ${label}`,
      source: fallback?.source ?? '',
      text: `not given for ${named}: ${String(fallback?.value)}`,
    };
  });
}

/** Scales that are known, and arms that are taken as exact because nobody says how well they were measured. */
function exactArms({ emptyWeightKnownTo, emptyArmKnownTo }: Airframe): Finding[] {
  if (emptyWeightKnownTo === undefined || emptyArmKnownTo !== undefined) return [];
  return [
    {
      gravity: 'check',
      package: '',
      subject: airframeTable.fields.emptyArmKnownTo.label,
      source: 'airframe table',
      text: 'not given, how far the weight may be off is: the CG is taken as exact but for that',
    },
  ];
}

/** Every value that nobody gave, and every part of a table that was not read: a default is shown as one. */
export function defaultFindings({ catalogue }: Context): Finding[] {
  const allowances: Finding[] = catalogue.allowancesDefaulted
    ? [
        {
          gravity: 'check',
          package: '',
          subject: 'allowances',
          source: practice,
          text: 'no allowances table: customary growth and scatter of weights are used',
        },
      ]
    : [];
  const remarks = catalogue.remarks.map(
    ({ table, text }): Finding => ({
      gravity: 'note',
      package: '',
      subject: table,
      source: `${table} table`,
      text,
    }),
  );
  return [
    ...allowances,
    ...attributeDefaults(airframeTable, catalogue.airframe, ''),
    ...exactArms(catalogue.airframe),
    ...catalogue.packages.flatMap((each) => attributeDefaults(packagesTable, each, each.name)),
    ...columnDefaults(componentsTable, catalogue.components),
    ...columnDefaults(equipmentTable, catalogue.equipment),
    ...attributeDefaults(missionTable, catalogue.mission, ''),
    ...attributeDefaults(ratesTable, catalogue.rates, ''),
    ...remarks,
  ];
}
