import type { PayloadRange, PayloadRangePoint } from '../engineering/payloadRange.ts';
import type { Cell } from '../tables/cell.ts';
import type { Assessment, Comparison } from './assess.ts';
import { chartRows } from './chartRows.ts';

/** Which corner of the diagram a point is, or why there is no range. */
function pointName({ mostPayload, fullTanks, pilotAlone }: PayloadRange, point: PayloadRangePoint): Cell {
  if (point.stops !== undefined) return point.stops;
  const names: Cell[] = [
    ...(point === mostPayload ? ['most payload'] : []),
    ...(point === fullTanks ? ['full tanks'] : []),
    ...(point === pilotAlone ? ['pilot alone'] : []),
  ];
  return names.length > 0 ? names.join(', ') : null;
}

/**
 * PAYLOAD_RANGE: the corner and the fuel aboard, then for a chart the range and the payload of every package in rows of its
 * own: right of the packages nothing stands that could move among them.
 */
export function payloadRangeBlock(comparison: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { display } = comparison.context;
  const curves = assessments.map(({ range }) => range?.curve ?? []);
  const beside = assessments.flatMap(({ range, package: { fuelDensity } }) =>
    (range?.curve ?? []).map((point): Cell[] => [
      pointName(range as PayloadRange, point),
      display.cell('fuel', point.fuel / fuelDensity),
    ]),
  );
  return [
    [
      'point',
      `fuel aboard, ${display.unit('fuel')}`,
      `range, ${display.unit('distance')} (payload in ${display.unit('payload')})`,
      ...assessments.map(({ package: { name } }) => name),
    ],
    ...chartRows(
      curves.map((curve) =>
        curve.map(({ range, payload }) => [
          display.point('distance', range),
          display.point('payload', payload),
        ]),
      ),
    ).map((row, index) => [...(beside[index] as Cell[]), ...row]),
  ];
}
