import { airframeTable } from '../tables/airframe.ts';
import type { Cell } from '../tables/cell.ts';
import { coolingTable } from '../tables/cooling.ts';
import type { Fields } from '../tables/field.ts';
import { fuelPointsTable } from '../tables/fuelPoints.ts';
import { knownPointsTable } from '../tables/knownPoints.ts';
import { packagesTable } from '../tables/packages.ts';
import type { Table } from '../tables/table.ts';
import { tanksTable } from '../tables/tanks.ts';
import { type Written, writeAttributes, writeRows } from '../tables/writeTable.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import { governing, type StreamCooling } from './cooling.ts';
import type { Shown } from './display.ts';
import { gravityLabels } from './finding.ts';
import { constantsOf, type FlightConstants, type Recalibration } from './recalibration.ts';
import { maximumLift } from './stallSpeeds.ts';
import { tableUnits } from './tableUnits.ts';

const to = (digits: number, value: number | undefined): Cell =>
  value === undefined ? null : Number(value.toPrecision(digits));

/** Conductance of a radiator [W/K], K of fins. */
const coolingConstant = ({ stream: { exchanger } }: StreamCooling) =>
  exchanger.kind === 'fins' ? exchanger.coefficient : exchanger.conductance;

/** Constants without a unit, and those of the engine. */
function constantRows(
  { display, catalogue }: Context,
  { adopted, before, after, scatter }: Recalibration,
): Cell[][] {
  const plain = (label: string, was: number | undefined, is: number | undefined, half?: number): Cell[] => [
    label,
    to(3, was),
    to(3, is),
    to(2, half),
    '',
  ];
  const shown = (label: string, kind: Shown, of: (assessment: Assessment) => number | undefined): Cell[] => [
    label,
    display.cell(kind, of(before.assessment)),
    display.cell(kind, of(after.assessment)),
    null,
    display.unit(kind),
  ];
  const lift = {
    before: maximumLift(catalogue.airframe),
    after: maximumLift({ ...catalogue.airframe, ...adopted.airframe }),
  };
  const streams = (after.assessment.cooling?.streams ?? []).map((stream): Cell[] => {
    const kind = stream.data.row.stream;
    const was = before.assessment.cooling?.streams.find(({ data }) => data.row.stream === kind);
    const label = kind === 'fins' ? 'fins, K of the temperature law' : `${kind}, conductance, W/K`;
    return plain(label, was && coolingConstant(was), coolingConstant(stream));
  });
  const [was, is] = [before.flown && constantsOf(before.flown), after.flown && constantsOf(after.flown)];
  const constant = (label: string, key: keyof FlightConstants) =>
    plain(label, was?.[key], is?.[key], scatter && 2 * scatter[key]);
  return [
    constant('zero-lift drag coefficient, without cooling air and options', 'zeroLiftDrag'),
    constant('Oswald efficiency e', 'spanEfficiency'),
    constant('propeller efficiency k in the climb', 'climbEfficiency'),
    plain(
      'ground roll, of the model’s',
      before.assessment.flight?.groundRollFactor,
      after.assessment.flight?.groundRollFactor,
    ),
    ...(['clean', 'takeoff', 'landing'] as const).map((flaps) =>
      plain(`CLmax ${flaps}`, lift.before[flaps], lift.after[flaps]),
    ),
    shown('BSFC at 75 % lean', 'bsfc', ({ engine }) => engine.consumption.lean?.(0.75).bsfc),
    shown('BSFC at 100 % rich', 'bsfc', ({ engine }) => engine.consumption.rich?.(1).bsfc),
    ...streams,
  ];
}

/** What the buyer was told, as predicted and as measured. */
function figureRows({ display, catalogue }: Context, { before, after }: Recalibration): Cell[][] {
  const { cruiseAltitude } = catalogue.mission;
  const line = (label: string, kind: Shown, of: (assessment: Assessment) => number | undefined): Cell[] => [
    label,
    display.cell(kind, of(before.assessment)) ?? 'not known',
    display.cell(kind, of(after.assessment)) ?? 'not known',
    null,
    display.unit(kind),
  ];
  const streams = (after.assessment.cooling?.streams ?? []).map(({ data }) =>
    line(
      `${data.row.stream}, margin in the climb on the hot day`,
      'temperatureMargin',
      ({ cooling, flight }) => {
        const each = cooling?.streams.find((stream) => stream.data.row.stream === data.row.stream);
        return flight && cooling && each && governing(cooling, flight, each)?.result.margin;
      },
    ),
  );
  return [
    line('rate of climb, sea level', 'climb', ({ flight }) => flight?.seaLevel.bestRate.takeoff.rateOfClimb),
    line(`level speed at 75 %, ${display.text('height', cruiseAltitude)}`, 'speed', ({ flight }) => {
      const level = flight?.levelAt(0.75, cruiseAltitude);
      return level?.possible ? level.trueAirspeed : undefined;
    }),
    line('stall, landing, calibrated', 'speed', ({ flight }) => flight?.stall.landing),
    line('ground roll at the mission’s field', 'runway', ({ flight }) =>
      flight?.takeoff.possible ? flight.takeoff.groundRoll : undefined,
    ),
    ...streams,
  ];
}

/** Rows to put into the tables, with the header and the units they are in. */
function adoptedRows(context: Context, { adopted, before }: Recalibration): Cell[][] {
  const { display, catalogue } = context;
  const { name } = before.assessment.package;
  const units = tableUnits(display);
  const rows = <F extends Fields>(
    title: string,
    table: Table<F>,
    records: readonly Written<F>[] | undefined,
  ): Cell[][] => (records ? [[title], ...writeRows(table, records, units)] : []);
  const attributes = <F extends Fields>(
    title: string,
    table: Table<F>,
    values: Written<F>,
    was: Written<F>,
  ): Cell[][] =>
    Object.keys(values).length > 0
      ? [[title], ...writeAttributes(table, values, was, 'the tests', units)]
      : [];
  return [
    ...rows('Known points table, in place of all its rows', knownPointsTable, adopted.knownPoints),
    ...rows(`Fuel points table, in place of the rows of ${name}`, fuelPointsTable, adopted.fuelPoints),
    ...rows(`Cooling table, in place of the rows of ${name}`, coolingTable, adopted.cooling),
    ...rows('Tanks table', tanksTable, adopted.tanks),
    ...attributes('Airframe table', airframeTable, adopted.airframe, catalogue.airframe),
    ...attributes(`Packages table, column ${name}`, packagesTable, adopted.engine, before.assessment.package),
  ];
}

/** Said where the aircraft flew with other equipment than it was weighed with. */
export const weighingFirst = `${gravityLabels.check}: take the weighing in first: known points count as flown with the equipment it was weighed with, and yours differs in drag`;

/** Constants and figures before and after in sentences, for a dialog: those that change. */
export const recalibrationWords = (context: Context, found: Recalibration): string[] =>
  [...constantRows(context, found), ...figureRows(context, found)]
    .filter(([, before, after]) => before !== after)
    .map(([label, before, after, , unit]) =>
      `${label}: ${before ?? 'not known'} → ${after} ${unit}`.trimEnd(),
    );

/** Constants and figures before and after, and the rows that make the comparison use the measurements. */
export function recalibrationRows(context: Context, found: Recalibration): Cell[][] {
  return [
    ['What the measurements change; ± two standard errors, from how the flights agree'],
    ['', 'Before', 'After', '±', 'Unit'],
    ...constantRows(context, found),
    ...figureRows(context, found),
    [
      'The menu item "Take measured results in …" puts them into the tables, in the units that stand there, and keeps what stood there: the comparison uses them from then on. By hand: these rows, with their units',
    ],
    ...(found.otherEquipment ? [[weighingFirst]] : []),
    ...adoptedRows(context, found),
  ];
}
