import type { Cell } from '../tables/cell.ts';
import type { Assessment } from './assess.ts';
import { conditionName } from './condition.ts';
import type { Context } from './context.ts';
import type { Shown } from './display.ts';
import type { Reconciliation } from './reconciliation.ts';

/** Payload, balance and mission with the prediction and with the weighing. */
export function effectRows({ display }: Context, { before, after }: Reconciliation): Cell[][] {
  const number = (
    label: string,
    shown: Shown,
    value: (assessment: Assessment) => number | undefined,
  ): Cell[] => {
    const [predicted, weighed] = [value(before), value(after)];
    const change = predicted === undefined || weighed === undefined ? undefined : weighed - predicted;
    return [
      label,
      display.cell(shown, predicted) ?? 'not known',
      display.cell(shown, weighed) ?? 'not known',
      display.cell(shown, change),
      display.unit(shown),
    ];
  };
  const mission = (value: (assessment: Assessment) => string | undefined): [Cell, Cell] => [
    value(before) ?? 'not asked',
    value(after) ?? 'not asked',
  ];
  const scarcest = ({ mission: asked }: Assessment) =>
    asked && `${conditionName(asked.scarcest)}: ${asked.scarcest.text}`;
  return [
    ['What the weighing changes'],
    ['', 'Predicted', 'As weighed', 'Difference', 'Unit'],
    number('useful load, as stated', 'payload', ({ payload }) => payload.usefulLoad.nominal),
    number('payload with full tanks, as stated', 'payload', ({ payload }) => payload.fullFuel.nominal),
    number(
      'payload with full tanks, to be counted on',
      'payload',
      ({ payload }) => payload.fullFuel.countedOn,
    ),
    number(
      'least forward CG margin of all loadings',
      'arm',
      ({ balance }) => balance.margins?.forward.margin,
    ),
    number('least aft CG margin of all loadings', 'arm', ({ balance }) => balance.margins?.aft.margin),
    ['mission', ...mission(({ mission: asked }) => asked?.verdict)],
    ['  scarcest', ...mission(scarcest)],
  ];
}

/** The same in sentences, for a dialog. */
export const effectWords = (context: Context, found: Reconciliation): string[] =>
  effectRows(context, found)
    .slice(2)
    .map(([label, before, after, ...rest]) => {
      const unit = rest.length > 1 ? ` ${rest[rest.length - 1]}` : '';
      return `${String(label).trim()}: ${before} → ${after}${unit}`;
    });
