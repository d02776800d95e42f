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

/** PAYLOAD_RANGE, for a chart: range; the payload of every package in rows of its own; then the fuel and the corner. */
export function payloadRangeBlock(comparison: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { display } = comparison.context;
  const ranges = assessments.map(({ range }) => range);
  const curves = ranges.map((range) => range?.curve ?? []);
  const beside = ranges.flatMap((range, index) =>
    (range?.curve ?? []).map((point): Cell[] => [
      display.cell('fuel', point.fuel / (assessments[index] as Assessment).package.fuelDensity),
      pointName(range as PayloadRange, point),
    ]),
  );
  return [
    [
      `range, ${display.unit('distance')} (payload in ${display.unit('payload')})`,
      ...assessments.map(({ package: { name } }) => name),
      `fuel aboard, ${display.unit('fuel')}`,
      'point',
    ],
    ...chartRows(
      curves.map((curve) =>
        curve.map(({ range, payload }) => [
          display.point('distance', range),
          display.point('payload', payload),
        ]),
      ),
    ).map((row, index) => [...row, ...(beside[index] as Cell[])]),
  ];
}
