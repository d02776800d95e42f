import { argumentOfTable } from '../functions/tableArguments.ts';
import { tableNames } from '../tables/catalogue.ts';
import type { FieldUnit } from '../tables/field.ts';
import { unitsOf } from '../units.ts';
import { type Layout, largestPackageCount, type ResultLayout, type SheetLayout } from './layout.ts';
import { tableLayouts as t } from './tables.ts';

const allTables = tableNames.map(argumentOfTable);
const result = (name: string, title: string, room: { rows: number; columns: number }): ResultLayout => ({
  function: name,
  title,
  arguments: allTables,
  ...room,
});

/** The workbook's sheets in reading order: results first, then what they are computed from. */
const sheets: readonly SheetLayout[] = [
  {
    name: 'Comparison',
    question: 'Which package, at what price and weight?',
    role: 'buyer',
    tables: [],
    results: [
      result('PACKAGE_COMPARISON', 'The packages side by side', {
        rows: 100,
        columns: 2 + largestPackageCount,
      }),
    ],
  },
  {
    name: 'Mission',
    question: 'What is it to do?',
    role: 'buyer',
    tables: [t.mission],
    results: [],
  },
  {
    name: 'Findings',
    question: 'What stands in the way, and what is not known?',
    role: 'buyer',
    tables: [],
    results: [result('INSTALLATION_FINDINGS', 'All findings, the gravest first', { rows: 300, columns: 8 })],
  },
  {
    name: 'Airframe',
    question: 'What is the kit?',
    role: 'data',
    tables: [t.airframe, t.envelope, t['known points']],
    results: [],
  },
  {
    name: 'Seats and tanks',
    question: 'What goes where?',
    role: 'data',
    tables: [t.stations, t.tanks, t.loadings],
    results: [],
  },
  { name: 'Packages', question: 'What is offered?', role: 'data', tables: [t.packages], results: [] },
  {
    name: 'Engine data',
    question: 'What does it burn, and what is left at height?',
    role: 'data',
    tables: [t['fuel points'], t['power points']],
    results: [],
  },
  {
    name: 'Cooling data',
    question: 'What is cooled by what?',
    role: 'data',
    tables: [t.cooling],
    results: [],
  },
  { name: 'Components', question: 'What does it weigh?', role: 'data', tables: [t.components], results: [] },
  { name: 'Equipment', question: 'What else can be had?', role: 'data', tables: [t.equipment], results: [] },
  {
    name: 'Rates',
    question: 'What does it cost to keep?',
    role: 'data',
    tables: [t.rates, t.allowances],
    results: [],
  },
];

function unitsInUse(): Layout['units'] {
  const kinds = new Set(
    Object.values(t).flatMap(({ fields, perRecordOf }) =>
      [...fields, ...perRecordOf.map(({ field }) => field)].flatMap(({ unit }) => (unit ? [unit] : [])),
    ),
  );
  const known = [...kinds].filter((kind) => !kind.startsWith('currency'));
  return Object.fromEntries(known.map((kind: FieldUnit) => [kind, unitsOf(kind as never)]));
}

export const layout: Layout = { version: 1, units: unitsInUse(), sheets };
