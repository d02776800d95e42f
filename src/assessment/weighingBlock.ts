import { centreOfGravity, type MassTotal } from '../engineering/massItem.ts';
import type { Airframe } from '../tables/airframe.ts';
import type { Build } from '../tables/build.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import type { Cell } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import { adoptedRowsBlock } from './adoptWeighing.ts';
import { basisOf } from './assess.ts';
import { cgOnMac } from './cgOnMac.ts';
import { changeRecord } from './changeRecord.ts';
import type { Context } from './context.ts';
import { findingsBlock } from './finding.ts';
import { reconcile } from './reconciliation.ts';
import { reconciliationRows } from './reconciliationRows.ts';
import { type NamedItem, type OneWeighing, type WeighedAircraft, weighingCheck } from './weighingCheck.ts';
import { weighedEquipmentFindings } from './weighingEquipment.ts';

const attitude = (level: boolean | undefined) =>
  level === undefined ? 'attitude not said' : level ? 'level' : 'NOT LEVEL';

/** One weighing as it is written on paper. */
function weighingRows({ display }: Context, weighing: OneWeighing): Cell[][] {
  const { cell, point, unit } = display;
  const [weight, arm, moment] = [unit('weight'), unit('arm'), unit('moment')];
  const item =
    (sign: 1 | -1) =>
    (each: NamedItem): Cell[] => [
      `${sign < 0 ? 'less' : 'plus'} ${each.name}`,
      null,
      null,
      cell('weight', sign * each.weight),
      cell('arm', each.arm),
      point('moment', sign * each.weight * each.arm),
    ];
  const sum = (label: string, mass: MassTotal, ...more: Cell[]): Cell[] => [
    label,
    null,
    null,
    cell('weight', mass.weight),
    point('arm', centreOfGravity(mass)),
    point('moment', mass.moment),
    ...more,
  ];
  return [
    [`Weighing ${weighing.name}, ${weighing.date}, ${attitude(weighing.level)}`],
    ['Point', 'Reading', 'Tare', 'Net', 'Arm', 'Moment', '± weight', '± arm'],
    ['', weight, weight, weight, arm, moment, weight, arm],
    ...weighing.points.map(({ name, reading, tare, arm: at, accuracy, armAccuracy = 0 }): Cell[] => [
      name,
      cell('weight', reading),
      cell('weight', tare),
      cell('weight', reading - tare),
      cell('arm', at),
      point('moment', (reading - tare) * at),
      cell('weight', accuracy),
      point('arm', armAccuracy),
    ]),
    sum('as weighed', weighing.asWeighed),
    ...weighing.removed.map(item(-1)),
    ...weighing.added.map(item(1)),
    sum(
      'basic empty',
      weighing.basicEmpty,
      cell('weight', weighing.weightHalfWidth),
      point('arm', weighing.cgHalfWidth),
    ),
  ];
}

/** All weighings side by side, and their mean. */
function togetherRows(
  { display, catalogue }: Context,
  weighings: readonly OneWeighing[],
  aircraft: WeighedAircraft,
): Cell[][] {
  const { cell, point, unit } = display;
  const ofMac = (cg: number): Cell => {
    const fraction = cgOnMac(catalogue.airframe, cg);
    return fraction === undefined ? null : point('percent', fraction);
  };
  const line = (
    label: string,
    mass: MassTotal,
    weightHalfWidth: number,
    cgHalfWidth: number,
    remark: Cell,
  ): Cell[] => [
    label,
    cell('weight', mass.weight),
    cell('weight', weightHalfWidth),
    point('arm', centreOfGravity(mass)),
    point('arm', cgHalfWidth),
    ofMac(centreOfGravity(mass)),
    remark,
  ];
  const { spread } = aircraft;
  return [
    [`Basic empty weight on ${aircraft.date}: unusable fuel, full oil and coolant, fixed ballast aboard`],
    ['', 'Weight', '±', 'CG', '±', '% MAC', ''],
    ['', unit('weight'), unit('weight'), unit('arm'), unit('arm'), '%'],
    ...weighings.map((each) =>
      line(
        `weighing ${each.name}, ${each.date}`,
        each.broughtForward,
        each.weightHalfWidth,
        each.cgHalfWidth,
        each.leftOut ?? null,
      ),
    ),
    line('mean', aircraft, aircraft.weightHalfWidth, aircraft.cgHalfWidth, null),
    ...(spread
      ? [['largest less smallest', cell('weight', spread.weight), null, point('arm', spread.cg)] as Cell[]]
      : []),
  ];
}

const writtenTo = 1e-5; // relative; a table holds six digits

/** Whether the airframe's empty weight is the weighed one with its changes. */
const isTakenIn = ({ emptyWeight, emptyArm }: Airframe, now: MassTotal) =>
  Math.abs(emptyWeight - now.weight) <= writtenTo * now.weight &&
  Math.abs(emptyWeight * emptyArm - now.moment) <= 2 * writtenTo * Math.abs(now.moment);

/** WEIGHING_CHECK: what was weighed, corrected; against the prediction and the quote; what it changes; rows to adopt it. */
export function weighingBlock(catalogue: Catalogue, build: Build, engine: Package): Cell[][] {
  const basis = basisOf(catalogue);
  const { context } = basis;
  const { display } = context;
  const check = weighingCheck(context, engine, build);
  const { weighings, aircraft, findings } = check;
  if (weighings.length === 0)
    return [['Weighing'], ['None yet: enter scales, tares and arms in the weighings table.']];
  const paper = weighings.flatMap((weighing) => weighingRows(context, weighing));
  if (aircraft === undefined) return [...paper, ...findingsBlock(findings, display)];
  const found = reconcile(basis, engine, aircraft);
  const { now } = changeRecord(context, aircraft, build);
  const told = [...findings, ...weighedEquipmentFindings(context, engine, build)];
  return [
    ...paper,
    ...togetherRows(context, weighings, aircraft),
    ...(isTakenIn(catalogue.airframe, now)
      ? [
          [
            'The airframe table holds this weighing, with the changes since: the prediction below is the weighing itself',
          ],
        ]
      : []),
    ...reconciliationRows(context, aircraft, found, build.asQuoted),
    [
      'The menu item "Take weighing in …" makes this weighing, with the changes since, the baseline: it writes the airframe table in the units that stand there, and keeps what stood there. By hand: these rows, with their units',
    ],
    ...adoptedRowsBlock(context, found.adopted, aircraft.date),
    ...(told.length > 0 ? findingsBlock(told, display) : []),
  ];
}
