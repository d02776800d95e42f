import type { AsQuoted } from '../tables/asQuoted.ts';
import type { Cell } from '../tables/cell.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import { roundedTo } from './display.ts';
import type { Cause, Reconciliation } from './reconciliation.ts';
import type { WeighedAircraft } from './weighingCheck.ts';
import { effectRows } from './weighingEffect.ts';

const shownCauses = 8;
const farFetched = 3; // half-widths: no longer an explanation; common practice, no source
const tenth = (value: number) => roundedTo(value, 0.1);

/** Weight, CG and moment as stated, as expected and as weighed. */
function againstPrediction({ display }: Context, weighed: WeighedAircraft, found: Reconciliation): Cell[][] {
  const { empty } = found.before;
  const { nominal, expected } = empty.mass;
  const { difference, fromStated } = found;
  const judge = (inside: boolean) => (inside ? 'inside the band' : 'OUTSIDE');
  const { cell, point, unit } = display;
  return [
    ['Against the prediction: stated by the tables, expected with the growth such weights show'],
    [
      '',
      'Stated',
      'Expected',
      '±',
      'Weighed',
      '±',
      'Weighed less stated',
      'Weighed less expected',
      '',
      'Unit',
    ],
    [
      'basic empty weight',
      cell('weight', nominal.weight),
      cell('weight', expected.weight),
      cell('weight', empty.mass.weightHalfWidth),
      cell('weight', weighed.weight),
      cell('weight', weighed.weightHalfWidth),
      cell('weight', fromStated.weight),
      cell('weight', difference.weight),
      judge(difference.weightInside),
      unit('weight'),
    ],
    [
      'CG',
      point('arm', empty.cg),
      point('arm', empty.expectedCg.cg),
      point('arm', empty.expectedCg.halfWidth),
      point('arm', weighed.cg),
      point('arm', weighed.cgHalfWidth),
      point('arm', weighed.cg - empty.cg),
      point('arm', difference.cg),
      judge(difference.cgInside),
      unit('arm'),
    ],
    [
      'moment',
      point('moment', nominal.moment),
      point('moment', expected.moment),
      null,
      point('moment', weighed.moment),
      null,
      point('moment', fromStated.moment),
      point('moment', difference.moment),
      null,
      unit('moment'),
    ],
  ];
}

const places = {
  aboard: 'there is something of the aircraft there',
  'perhaps aboard': 'beyond all that is aboard, but not by more than the scales may be off',
  outside: 'nothing of the aircraft is there: a reading, a tare or an arm is wrong',
} as const;

function unexplainedRow({ display }: Context, { difference, armHalfWidth, place }: Reconciliation): Cell[] {
  const label = 'the unexplained weight would have to sit at';
  if (difference.arm === undefined || armHalfWidth === undefined || place === undefined)
    return [label, null, 'nowhere: it is no more than the scales may be off'];
  return [
    label,
    display.cell('arm', difference.arm),
    `± ${display.text('arm', armHalfWidth)}: ${places[place]}`,
  ];
}

/** Promise by promise. */
function againstQuote(
  { display }: Context,
  quoted: AsQuoted,
  weighed: WeighedAircraft,
  after: Assessment,
): Cell[][] {
  const payload = after.payload.fullFuel.nominal;
  const lines = (
    [
      ['empty weight expected', 'weight', quoted.expectedWeight, weighed.weight, 1],
      ['empty weight to be counted on', 'weight', quoted.countedOnWeight, weighed.weight, 1],
      ['payload expected, full tanks', 'payload', quoted.expectedPayload, payload, -1],
      ['payload to be counted on, full tanks', 'payload', quoted.countedOnPayload, payload, -1],
    ] as const
  ).flatMap(([label, shown, promise, actual, worse]): Cell[][] => {
    if (promise === undefined) return [];
    const words = worse * (actual - promise) <= 1e-6 ? 'kept' : 'NOT KEPT';
    const { cell } = display;
    return [
      [
        label,
        cell(shown, promise),
        cell(shown, actual),
        cell(shown, actual - promise),
        words,
        display.unit(shown),
      ],
    ];
  });
  if (lines.length === 0) return [];
  const name = quoted.quote === undefined ? 'the quote' : `quote ${quoted.quote}`;
  return [[`Against ${name}`], ['', 'Quoted', 'As weighed', 'Difference', '', 'Unit'], ...lines];
}

function likeliest({ display }: Context, [first]: readonly Cause[]): string {
  if (first === undefined || first.distance > farFetched)
    return 'no single weight or reading explains it: several are off, or something is aboard that no table knows';
  const off = display.text('weight', Math.abs(first.error));
  const fit = `${tenth(first.halfWidths)} of its own half-widths, weight and moment then fit within ${tenth(first.misfit)} of the scales’`;
  if (first.needed === undefined || first.stated === undefined) {
    const way = first.name.startsWith('reading')
      ? first.error > 0
        ? 'too much'
        : 'too little'
      : first.error > 0
        ? 'more together'
        : 'less together';
    return `likeliest: ${first.name}, ${off} ${way}: ${fit}`;
  }
  return `likeliest: ${first.name}, ${display.text('weight', first.needed)} instead of the ${display.text('weight', first.stated)} stated: ${fit}`;
}

function causeRows(context: Context, { causes, difference }: Reconciliation): Cell[][] {
  const { cell, unit } = context.display;
  const [weight, arm] = [unit('weight'), unit('arm')];
  const inside =
    difference.weightInside && difference.cgInside ? ' It is inside the band: nothing has to be found.' : '';
  return [
    [`What alone would explain the difference from what was expected, the likeliest first.${inside}`],
    [likeliest(context, causes)],
    [
      '',
      'At',
      'Stated',
      'Would have to weigh',
      'Off by',
      'of its half-widths',
      'left over, of the scales’',
      'Both',
    ],
    ['', arm, weight, weight, weight],
    ...causes
      .slice(0, shownCauses)
      .map((cause): Cell[] => [
        cause.name,
        cell('arm', cause.arm),
        cell('weight', cause.stated),
        cell('weight', cause.needed),
        cell('weight', cause.error),
        tenth(cause.halfWidths),
        tenth(cause.misfit),
        tenth(cause.distance),
      ]),
  ];
}

/** Everything between the weighing and the rows that adopt it. */
export function reconciliationRows(
  context: Context,
  weighed: WeighedAircraft,
  found: Reconciliation,
  quoted: AsQuoted,
): Cell[][] {
  return [
    ...againstPrediction(context, weighed, found),
    unexplainedRow(context, found),
    ...againstQuote(context, quoted, weighed, found.after),
    ...causeRows(context, found),
    ...effectRows(context, found),
  ];
}
