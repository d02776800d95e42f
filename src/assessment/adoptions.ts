import { airframeTable } from '../tables/airframe.ts';
import { asQuotedTable } from '../tables/asQuoted.ts';
import { type Build, type BuildGrids, readBuild } from '../tables/build.ts';
import { type Catalogue, readCatalogue, type TableGrids } from '../tables/catalogue.ts';
import { nameKey } from '../tables/cell.ts';
import { coolingTable } from '../tables/cooling.ts';
import { type Fault, faultText } from '../tables/faults.ts';
import type { Fields } from '../tables/field.ts';
import { fuelPointsTable } from '../tables/fuelPoints.ts';
import { knownPointsTable } from '../tables/knownPoints.ts';
import { packagesTable } from '../tables/packages.ts';
import type { Table } from '../tables/table.ts';
import { tanksTable } from '../tables/tanks.ts';
import { toSi } from '../units.ts';
import {
  attributeEdits,
  type CellEdit,
  type RowEdit,
  replacingRows,
  rowAfter,
  rowEdits,
} from './adoptEdits.ts';
import { assess, basisOf } from './assess.ts';
import { builtPackage } from './builtPackage.ts';
import { changeRecord } from './changeRecord.ts';
import { gravityLabels } from './finding.ts';
import { type IssuedQuote, keyText } from './issuedQuote.ts';
import type { Quote } from './quote.ts';
import { recalibrate } from './recalibration.ts';
import { recalibrationWords, weighingFirst } from './recalibrationRows.ts';
import { reconcile } from './reconciliation.ts';
import { tableUnits } from './tableUnits.ts';
import { weighingCheck } from './weighingCheck.ts';
import { effectWords } from './weighingEffect.ts';
import { weighedEquipmentFindings } from './weighingEquipment.ts';

/** What is to be written into the tables, and what a person is told before it is. */
export interface Adoption {
  readonly what: string;
  /** what it rests on, what it changes, what to mind */
  readonly words: readonly string[];
  /** nothing where the tables hold it already */
  readonly edits: readonly CellEdit[];
}

/** All tables of a workbook by their names. */
export type AllGrids = TableGrids & BuildGrids;

const mostFaultsTold = 5;

function refuse(faults: readonly Fault[]): never {
  const told = faults.slice(0, mostFaultsTold).map(faultText);
  const more = faults.length > told.length ? [`and ${faults.length - told.length} more`] : [];
  throw new Error(['Correct the tables first:', ...told, ...more].join('\n'));
}

/** Catalogue and build of a workbook. @throws Error with the faults of its tables */
export function readAll(grids: AllGrids): { catalogue: Catalogue; build: Build } {
  const { catalogue, faults } = readCatalogue(grids);
  if (catalogue === undefined) return refuse(faults);
  const reading = readBuild(grids, catalogue);
  return reading.build === undefined ? refuse(reading.faults) : { catalogue, build: reading.build };
}

/**
 * The weighing, with every change since, as the airframe's empty weight.
 * @throws Error with the faults of the tables, or where no weighing counts
 */
export function weighingAdoption(grids: AllGrids): Adoption {
  const { catalogue, build } = readAll(grids);
  const engine = builtPackage(catalogue);
  const basis = basisOf(catalogue);
  const { context } = basis;
  const { display } = context;
  const { aircraft } = weighingCheck(context, engine, build);
  if (aircraft === undefined)
    throw new Error('There is no weighing that counts: fill the weighings table first.');
  const { entries, now, weighAgain } = changeRecord(context, aircraft, build);
  const cg = now.moment / now.weight;
  const found = reconcile(basis, engine, { ...aircraft, ...now, cg });
  const date = entries[entries.length - 1]?.change.date ?? aircraft.date;
  const at = (weight: number, arm: number) =>
    `${display.text('weight', weight)} at ${display.text('arm', arm)}`;
  const changes = entries.length === 1 ? '1 change' : `${entries.length} changes`;
  return {
    what: `Weighing of ${aircraft.date}${entries.length > 0 ? ` with ${changes} since` : ''}, ${engine.name}`,
    words: [
      `Weighed: ${at(aircraft.weight, aircraft.cg)}, known to ${display.text('weight', aircraft.weightHalfWidth)}.`,
      ...(entries.length > 0 ? [`With ${changes} since: ${at(now.weight, cg)}.`] : []),
      ...effectWords(context, found),
      ...(weighAgain === undefined ? [] : [`${gravityLabels.check}: a new weighing is due: ${weighAgain}`]),
      ...weighedEquipmentFindings(context, engine, build).map(
        ({ gravity, subject, text }) => `${gravityLabels[gravity]}: ${subject}: ${text}`,
      ),
    ],
    edits: attributeEdits(airframeTable, grids.airframe, 'value', found.adopted, date, tableUnits(display)),
  };
}

/** Only what differs of rows that stay where they are. */
function changedRows<R extends { readonly row: number }>(
  records: readonly R[] | undefined,
  before: readonly R[],
): RowEdit[] {
  return (records ?? []).map((record) => {
    const was = before.find(({ row }) => row === record.row);
    const entries = Object.entries(record).filter(([key, value]) => value !== was?.[key as keyof R]);
    return { row: record.row, values: Object.fromEntries(entries), replaces: false };
  });
}

/**
 * What the flight tests measured, in the tables it belongs to.
 * @throws Error with the faults of the tables, or where nothing was measured
 */
export function resultsAdoption(grids: AllGrids): Adoption {
  const { catalogue, build } = readAll(grids);
  const { testResults } = build;
  if (testResults.length === 0)
    throw new Error('Nothing was measured yet: fill the test results table first.');
  const engine = builtPackage(catalogue);
  const basis = basisOf(catalogue);
  const { context } = basis;
  const found = recalibrate(basis, assess(basis, engine), testResults);
  const { knownPoints, fuelPoints, cooling, tanks, airframe, engine: ofEngine } = found.adopted;
  const units = tableUnits(context.display);
  const rows = (table: Table<Fields>, edits: readonly RowEdit[]): CellEdit[] =>
    edits.length === 0 ? [] : rowEdits(table, grids[table.name as keyof AllGrids], edits, units);
  const ownFuel = context.fuelPoints.of(engine.name);
  const below = rowAfter(fuelPointsTable, grids['fuel points']);
  const days = testResults.map(({ date }) => date).sort();
  const when = days[days.length - 1] as string;
  return {
    what: `Measured results to ${when}, ${engine.name}`,
    words: [
      ...recalibrationWords(context, found),
      ...(found.otherEquipment ? [weighingFirst] : []),
      ...(tanks && catalogue.airframe.weighedUnusableFuel
        ? [
            `${gravityLabels.check}: the empty weight has the unusable fuel in it that was known when it was weighed: where that changes, correct it in the weighing items and take the weighing in again`,
          ]
        : []),
    ],
    edits: [
      ...(knownPoints
        ? rows(knownPointsTable, replacingRows(knownPointsTable, grids['known points'], knownPoints))
        : []),
      ...rows(
        fuelPointsTable,
        ownFuel.length > 0
          ? changedRows(fuelPoints, ownFuel)
          : (fuelPoints ?? []).map((point, index) => ({
              row: below + index,
              values: { ...point },
              replaces: false,
            })),
      ),
      ...rows(coolingTable, changedRows(cooling, context.cooling.of(engine.name))),
      ...rows(tanksTable, changedRows(tanks, catalogue.tanks)),
      ...attributeEdits(airframeTable, grids.airframe, 'value', airframe, when, units),
      ...attributeEdits(packagesTable, grids.packages, engine.name, ofEngine, when, units),
    ],
  };
}

/** A number of an issued quote's table of weights, with its unit. */
function promised({ sections }: Quote, line: string, column: string): number | undefined {
  const section = sections.find(({ columns }) => columns.includes(column) && columns.includes('Unit'));
  const cells = section?.rows.find(({ cells: [label] }) => String(label).startsWith(line))?.cells ?? [];
  const value = cells[section?.columns.indexOf(column) ?? -1];
  const unit = cells[section?.columns.indexOf('Unit') ?? -1];
  return typeof value === 'object' && typeof unit === 'string' ? toSi('mass', value.number, unit) : undefined;
}

/**
 * What an issued quote promised, from its own figures, to hold the weighing against.
 * @throws Error with the faults of the tables, or where the quote has no such figures
 */
export function quoteAdoption(grids: AllGrids, issued: IssuedQuote): Adoption {
  const { quote } = issued;
  const built = builtPackage(readAll(grids).catalogue).name;
  const [expected, countedOn] = ['Expected', 'To be counted on'];
  const values = {
    quote: keyText(issued),
    expectedWeight: promised(quote, 'Empty weight', expected),
    countedOnWeight: promised(quote, 'Empty weight', countedOn),
    expectedPayload: promised(quote, 'Payload with full tanks', expected),
    countedOnPayload: promised(quote, 'Payload with full tanks', countedOn),
  };
  if (values.expectedWeight === undefined || values.countedOnPayload === undefined)
    throw new Error(`${keyText(issued)} does not say what weight and payload it promised.`);
  return {
    what: `What quote ${keyText(issued)} promised`,
    words: [
      `${quote.airframe} with ${quote.packageName}, issued ${issued.date}, for ${quote.customer[0] ?? 'no customer'}.`,
      ...(nameKey(quote.packageName) === nameKey(built)
        ? []
        : [`${gravityLabels.check}: ${built} is built, ${quote.packageName} was quoted`]),
    ],
    edits: attributeEdits(
      asQuotedTable,
      grids['as quoted'],
      'value',
      values,
      issued.date,
      ({ customaryUnit }) => customaryUnit,
    ),
  };
}
