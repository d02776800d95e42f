import type { Cell } from '../tables/cell.ts';
import type { Assessment, Comparison } from './assess.ts';
import { comparisonLines } from './comparisonLines.ts';
import { costDetail, costTitle } from './costRows.ts';

/** COST_TABLE: what is still to be bought, then what it costs to have and to fly, by cause. */
export function costBlock(comparison: Comparison, assessments: readonly Assessment[]): Cell[][] {
  const { display } = comparison.context;
  const scope = assessments.flatMap(({ package: { name }, cost }) =>
    cost.scope.map((item): Cell[] => [
      name,
      item.name,
      item.system,
      display.cell('weight', item.weight) ?? 'not known',
      display.cell('money', item.price) ?? 'not known',
    ]),
  );
  return [
    [costTitle(comparison), 'unit', ...assessments.map((each) => each.package.name)],
    ...comparisonLines(costDetail, comparison, assessments),
    ['Still to buy by the builder, in the amounts above'],
    ['Package', 'Item', 'System', 'Weight', 'Price'],
    ['', '', '', display.unit('weight'), display.unit('money')],
    ...(scope.length > 0 ? scope : [['nothing']]),
  ];
}
