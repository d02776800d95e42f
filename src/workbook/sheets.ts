import { softwareVersion } from '../assessment/version.ts';
import type { FieldUnit } from '../tables/field.ts';
import { unitsOf } from '../units.ts';
import type { Layout, Role, SheetLayout } from './layout.ts';
import { results as r } from './results.ts';
import { startLines } from './start.ts';
import { tableLayouts as t } from './tables.ts';

const version = 1;

const page = (
  role: Role,
  name: string,
  question: string,
  given: Partial<SheetLayout> & { reading?: string },
): SheetLayout => ({
  name,
  question,
  reading: '',
  role,
  lines: [],
  tables: [],
  results: [],
  widths: [],
  frozenRows: 0,
  frozenColumns: 0,
  ...given,
});

/** What a buyer asks, in the order in which it is asked. */
const answers: readonly SheetLayout[] = [
  page('buyer', 'Comparison', 'Which package, at what price, weight and payload?', {
    reading: 'One column a package. Differences are from the baseline, always black.',
    results: [r.comparison, r.buildUp],
    widths: [330, 76, 100], // the two frozen columns as wide as the question above them
    frozenRows: 5,
    frozenColumns: 2,
  }),
  page('buyer', 'Mission', 'Which package flies the mission, and why does another not?', {
    reading: 'Change the mission on the left; the answers follow.',
    tables: [t.mission],
    results: [r.mission],
    widths: [230, 100, 92],
  }),
  page('buyer', 'Loading', 'Does it stay inside its CG limits, however it is loaded?', {
    reading:
      'Inside the dark outline is allowed. Each outline holds everything the seats and tanks allow with that package.',
    results: [r.loadingCheck, r.loadingRegion],
    widths: [184, 244, 170, 100, 92],
  }),
  page('buyer', 'Range and fuel', 'How far with how much, and what does it burn?', {
    reading: 'Payload is what is left for people and bags with the fuel for that range and the reserve.',
    results: [r.fuel, r.payloadRange],
    widths: [150, 92],
  }),
  page('buyer', 'Climb and cruise', 'How does it climb, how fast is it, what field does it need?', {
    reading: 'At maximum takeoff weight in standard air where nothing else is said.',
    results: [r.flight],
    widths: [250, 76, 100], // label, unit, a package each
  }),
  page('buyer', 'Cooling', 'Does it stay cool on the hottest day?', {
    reading: 'Above zero it stays within its limit. The weakest of its streams counts.',
    results: [r.cooling],
    widths: [164, 100, 110, 150, 92],
  }),
  page('buyer', 'Cost', 'What does it cost to buy, to fly and to keep?', {
    reading: 'Fuel, overhauls and what is fixed by the year, shared over the hours flown.',
    results: [r.cost],
    widths: [230, 210, 130, 92],
    frozenRows: 5,
    frozenColumns: 2,
  }),
  page('buyer', 'Findings', 'What stands in the way, and what is not known?', {
    reading: 'Stop: outside a limit. Check: doubtful or missing. Note: worth knowing.',
    results: [r.findings],
    widths: [80, 100, 220, 80, 80, 80, 640, 280],
    frozenRows: 5,
  }),
];

/** What the seller and the builder do. */
const work: readonly SheetLayout[] = [
  page('seller', 'Quote', 'What is offered to whom, on which terms?', {
    reading:
      'Fill in the terms on the left. "Issue quote" in the menu freezes the quote and gives it its number.',
    tables: [t.quote],
    results: [r.quote],
    widths: [390, 130, 110, 110, 110, 110, 110, 300],
  }),
  page('builder', 'Weighing', 'What did it weigh, and where is the difference?', {
    reading: 'The scales and what was aboard stand in Weighing data.',
    results: [r.weighing],
    widths: [300, 160, 110],
  }),
  page('builder', 'Changes', 'What does it weigh now?', {
    reading: 'What went in and out since stands in Weighing data.',
    results: [r.changes],
    widths: [300, 160, 110],
  }),
  page('builder', 'Flight tests', 'What is to be flown, and what is to be expected?', {
    reading: 'What was measured stands in Test results.',
    results: [r.flightTests],
    widths: [250, 430, 90, 90, 90, 90, 104, 90],
  }),
];

/** What the answers are computed from. */
const data: readonly SheetLayout[] = [
  page('data', 'Airframe', 'What is the kit?', {
    tables: [t.airframe, t.envelope, t['known points']],
    frozenRows: 3,
  }),
  page('data', 'Seats and tanks', 'What goes where?', {
    tables: [t.stations, t.tanks, t.loadings],
    frozenRows: 4,
  }),
  page('data', 'Packages', 'What is offered?', { tables: [t.packages], frozenRows: 3, frozenColumns: 2 }),
  page('data', 'Engine data', 'What does it burn, and what is left at height?', {
    tables: [t['fuel points'], t['power points']],
    frozenRows: 4,
  }),
  page('data', 'Cooling data', 'What is cooled by what?', {
    tables: [t.cooling],
    frozenRows: 4,
    frozenColumns: 2,
  }),
  page('data', 'Components', 'What does it weigh, part by part?', {
    tables: [t.components],
    frozenRows: 4,
    frozenColumns: 2,
  }),
  page('data', 'Equipment', 'What else can be had?', {
    tables: [t.equipment],
    frozenRows: 4,
    frozenColumns: 1,
  }),
  page('data', 'Rates', 'What do fuel, work and money cost?', {
    tables: [t.rates, t.allowances],
    frozenRows: 3,
  }),
  page('builder', 'Weighing data', 'What stood on the scales?', {
    tables: [t.weighings, t['weighing items'], t.changes, t['as quoted']],
    frozenRows: 4,
  }),
  page('builder', 'Test results', 'What was measured in flight?', {
    tables: [t['test results']],
    frozenRows: 4,
  }),
];

const first = page('everybody', 'Start', 'Which engine package for this airframe?', {
  reading: 'A workbook for buyers, sellers and builders.',
  lines: startLines([...answers, ...work, ...data], `Software ${softwareVersion}, layout ${version}`),
  widths: [170, 760],
});

function unitsInUse(): Layout['units'] {
  const kinds = new Set(
    Object.values(t).flatMap(({ fields, perRecordOf }) =>
      [...fields, ...perRecordOf.map(({ field }) => field)].flatMap(({ unit }) => (unit ? [unit] : [])),
    ),
  );
  const known = [...kinds].filter((kind) => !kind.startsWith('currency'));
  return Object.fromEntries(known.map((kind: FieldUnit) => [kind, unitsOf(kind as never)]));
}

export const layout: Layout = {
  version,
  units: unitsInUse(),
  sheets: [first, ...answers, ...work, ...data],
};
