import { centreOfGravity } from '../engineering/massItem.ts';
import { usefulLoad } from '../engineering/payload.ts';
import type { Build } from '../tables/build.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import { type Cell, nameKey } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import { adoptedRowsBlock, adoptWeighing } from './adoptWeighing.ts';
import { type ChangeEntry, changeRecord } from './changeRecord.ts';
import { type Context, contextOf } from './context.ts';
import { weighingCheck } from './weighingCheck.ts';

const judged = (negligible: boolean | undefined) =>
  negligible === undefined ? 'NOT KNOWN' : negligible ? 'negligible' : 'to be recorded';

function entryRow({ display }: Context, entry: ChangeEntry): Cell[] {
  const { date, item, weight, arm, reason } = entry.change;
  const { cell, point } = display;
  return [
    date,
    item,
    cell('weight', weight) ?? 'not known',
    cell('arm', arm),
    weight === undefined ? null : point('moment', weight * arm),
    cell('weight', entry.running.weight),
    point('arm', entry.cg),
    point('arm', entry.shift),
    judged(entry.negligible),
    judged(entry.negligibleTogether),
    reason ?? null,
  ];
}

/** Options that went in as a change: ticked as well they would be counted twice. */
function countedAlready({ equipment }: Catalogue, entries: readonly ChangeEntry[]): Cell[][] {
  const options = new Set(equipment.filter(({ fitted }) => !fitted).map(({ name }) => nameKey(name)));
  const twice = entries.map(({ change }) => change.item).filter((item) => options.has(nameKey(item)));
  if (twice.length === 0) return [];
  return [[`In the equipment table too, leave unticked there, for this weight has it: ${twice.join(', ')}`]];
}

/** CHANGE_RECORD: basic empty weight and CG from the weighing through every change, and when to weigh again. */
export function changeRecordBlock(catalogue: Catalogue, build: Build, engine: Package): Cell[][] {
  const context = contextOf(catalogue);
  const { aircraft } = weighingCheck(context, engine, build);
  if (aircraft === undefined)
    return [['Changes'], ['No weighing to begin from: enter one in the weighings table.']];
  const { entries, weighedIn, now, weighAgain } = changeRecord(context, aircraft, build);
  const { display } = context;
  const { cell, point, unit } = display;
  const [weight, arm] = [unit('weight'), unit('arm')];
  const date = entries[entries.length - 1]?.change.date ?? aircraft.date;
  const { maximumTakeoffWeight, macLength } = catalogue.airframe;
  return [
    ['Changes since the weighing'],
    [
      'Date',
      'Item',
      'Weight',
      'Arm',
      'Moment',
      'Basic empty weight',
      'CG',
      'CG moved by',
      'This entry',
      'All since the weighing',
      'Reason',
    ],
    ['', '', weight, arm, unit('moment'), weight, arm, arm],
    [aircraft.date, 'weighing', null, null, null, cell('weight', aircraft.weight), point('arm', aircraft.cg)],
    ...entries.map((entry) => entryRow(context, entry)),
    [`Basic empty weight on ${date}`, null, cell('weight', now.weight), weight],
    ['CG', null, point('arm', centreOfGravity(now)), arm],
    ['moment', null, point('moment', now.moment), unit('moment')],
    ['Useful load', null, cell('weight', usefulLoad(maximumTakeoffWeight, now.weight)), weight],
    ['New weighing', null, weighAgain === undefined ? 'not due' : 'DUE', weighAgain ?? null],
    ...(weighedIn.length > 0
      ? [
          [
            `${weighedIn.length} earlier than the weighing, which has them in it: ${weighedIn.map(({ item }) => item).join(', ')}`,
          ],
        ]
      : []),
    [
      macLength === undefined
        ? 'Negligible: 1 lb up to 5,000 lb empty; the CG is not judged, for the airframe table has no MAC (AC 43.13-1B 10-2c).'
        : 'Negligible: 1 lb up to 5,000 lb empty, and the CG moved by less than 0.05 % MAC (AC 43.13-1B 10-2c).',
    ],
    ...countedAlready(catalogue, entries),
    [
      'The menu item "Take weighing in …" makes the tables reckon with this weight, and keeps what stood there. By hand: these rows into the airframe table, with their units',
    ],
    ...adoptedRowsBlock(context, adoptWeighing(context, engine, { ...aircraft, ...now }), date),
  ];
}
