import type { Cell } from '../tables/cell.ts';
import type { Assessment, Comparison } from './assess.ts';
import { type BalanceCure, balanceCures } from './balanceCures.ts';
import type { Context } from './context.ts';
import type { Shown } from './display.ts';
import { isExceeded, type LoadingCheck, loadingFindings } from './loadingCheck.ts';
import { worstCause } from './worstCause.ts';
import { worstLoadings } from './worstLoadings.ts';

const fuelLabels = { any: 'any', minimum: 'half an hour at MCP', none: 'none usable' } as const;

/** What limits a named loading most: what a station may hold or a weight, where exceeded, else a CG limit or where these end. */
function limitOf({ worst, weight, overloaded }: LoadingCheck): string {
  if (overloaded.length > 0) return `maximum of ${overloaded.join(' and ')}`;
  if (isExceeded(weight)) return `maximum ${weight.name}`;
  return worst === undefined ? 'end of the CG limits' : `CG ${worst.side}`;
}

function namedLoading(context: Context, assessment: Assessment, check: LoadingCheck): Cell[] {
  const { cell } = context.display;
  const { takeoff, zeroFuel, worst, weight, passes } = check;
  const [stopped] = loadingFindings(context, assessment.package, [check]);
  return [
    assessment.package.name,
    check.name,
    passes ? 'pass' : 'FAIL',
    limitOf(check),
    cell('arm', worst?.margin),
    cell('weight', worst?.weight),
    cell('weight', takeoff.weight),
    cell('arm', takeoff.cg),
    cell('weight', zeroFuel.weight),
    cell('arm', zeroFuel.cg),
    cell('weight', weight.margin),
    cell('weight', check.burnBeforeLanding),
    stopped?.text ?? null,
  ];
}

function worstRows(context: Context, assessment: Assessment): Cell[][] {
  const { cell } = context.display;
  const stations = [...context.catalogue.stations, ...context.catalogue.tanks];
  return worstLoadings(context, assessment).flatMap(({ fuel, margins, lightest }) =>
    [margins.forward, margins.aft].map((critical): Cell[] => {
      const aboard = assessment.balance.polygon?.stations ?? [];
      const loadOf = new Map(aboard.map(({ name }, index) => [name, critical.loads[index]]));
      return [
        assessment.package.name,
        fuelLabels[fuel],
        critical.margin >= -1e-9 ? 'pass' : 'FAIL',
        `CG ${critical.side}`,
        cell('arm', critical.margin),
        cell('weight', critical.weight),
        cell('arm', critical.cg),
        cell('arm', critical.limit),
        worstCause(critical, lightest).name,
        ...stations.map(({ name }) => cell('weight', loadOf.get(name))),
      ];
    }),
  );
}

function enoughInWords({ settled, margins: { forward, aft } }: BalanceCure): string {
  if (!settled) return 'no: it takes more; how much does not settle';
  if (forward.margin < -1e-5 || aft.margin < -1e-5) return 'no: the other limit is passed with it';
  return 'for every loading; weigh it in, and have its mounting approved';
}

function cureRow(context: Context, assessment: Assessment, cure: BalanceCure): Cell[] {
  const { cell } = context.display;
  const { forward, aft } = cure.margins;
  return [
    assessment.package.name,
    `CG ${cure.side}`,
    cure.moved === undefined ? 'ballast' : `moved from "${cure.moved}"`,
    cell('weight', cure.weight),
    cell('arm', cure.fromArm),
    cell('arm', cure.toArm),
    cell('payload', cure.payloadLost),
    cell('arm', forward.margin),
    cell('arm', aft.margin),
    enoughInWords(cure),
  ];
}

/** LOADING_CHECK: the named loadings, the worst of every loading, and the weight that would cure what fails. */
export function loadingBlock(comparison: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { context } = comparison;
  const { stations, tanks } = context.catalogue;
  const unit = (shown: Shown) => context.display.unit(shown);
  const [weight, arm] = [unit('weight'), unit('arm')];
  const cures = assessments.flatMap((assessment) =>
    balanceCures(context, assessment).map((cure) => cureRow(context, assessment, cure)),
  );
  return [
    ['Named loadings, from takeoff to zero fuel'],
    [
      'Package',
      'Loading',
      'Result',
      'Limit',
      'Least margin',
      'at weight',
      'Takeoff weight',
      'Takeoff CG',
      'Zero-fuel weight',
      'Zero-fuel CG',
      'Weight left',
      'Burn before landing',
      'In words',
    ],
    ['', '', '', '', arm, weight, weight, arm, weight, arm, weight, weight],
    ...assessments.flatMap((assessment) =>
      assessment.balance.loadings.map((check) => namedLoading(context, assessment, check)),
    ),
    ['Every loading the stations and tanks allow: the worst'],
    [
      'Package',
      'Fuel',
      'Result',
      'Limit',
      'Least margin',
      'at weight',
      'CG',
      'Limit there',
      'Caused by',
      ...[...stations, ...tanks].map(({ name }) => name),
    ],
    ['', '', '', '', arm, weight, arm, arm, '', ...[...stations, ...tanks].map(() => weight)],
    ...assessments.flatMap((assessment) => worstRows(context, assessment)),
    ['What would bring every loading inside'],
    [
      'Package',
      'For limit',
      'Cure',
      'Least weight',
      'From arm',
      'To arm',
      'Payload lost',
      'Forward margin then',
      'Aft margin then',
      'Enough',
    ],
    ['', '', '', weight, arm, arm, unit('payload'), arm, arm],
    ...(cures.length > 0 ? cures : [['nothing fails, or no arm on the right side for ballast']]),
  ];
}
