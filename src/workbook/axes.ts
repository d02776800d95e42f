import type { Cell } from '../tables/cell.ts';
import type { ChartLayout } from './layout.ts';

type Block = readonly (readonly Cell[])[];

/** What the axes of a chart say, by Google's names for them. */
export type AxisTitles = Readonly<Record<'hAxis', string> & Partial<Record<'vAxis', string>>>;

/** Titles as the block reads now: its values with their unit, and across them the head of the first column. */
export function axisTitles({ part, unit, up, kind }: ChartLayout, block: Block): AxisTitles {
  const { row, column } = part;
  const first = String(block[row]?.[column] ?? '');
  const above = String(block[row - 1]?.[column] ?? '');
  const inUnit = new RegExp(unit.pattern).exec(unit.above ? above : first)?.[1];
  const values = inUnit === undefined ? up : `${up}, ${inUnit}`;
  return kind === 'curves' ? { hAxis: first.replace(/ \(.*/, ''), vAxis: values } : { hAxis: values };
}

/** True where no value of the curves is below zero. */
export function isAboveZero({ part: { row, rows, column } }: ChartLayout, block: Block): boolean {
  const curves = block.slice(row + 1, row + rows).flatMap((line) => line.slice(column + 1));
  return !curves.some((cell) => typeof cell === 'number' && cell < 0);
}
