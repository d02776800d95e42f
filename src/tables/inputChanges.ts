import { nameKey } from './cell.ts';
import { cellKey, type InputCell, type InputName, type Inputs, inputCells, inputNames } from './inputs.ts';

/** A cell that is not what it was; an empty text where there is, or was, nothing. */
export interface InputChange {
  readonly table: InputName;
  readonly row: string;
  readonly column: string;
  readonly was: string;
  readonly is: string;
}

const shown = ({ text, unit: of }: InputCell) => (of === '' ? text : `${text} ${of}`);

/** What is not as it was: cell by cell, or a whole row that came or went. */
export function inputChanges(then: Inputs, now: Inputs): InputChange[] {
  const [before, after] = [inputCells(then), inputCells(now)];
  const cellsBefore = new Map(before.map((cell) => [cellKey(cell), cell]));
  const cellsAfter = new Map(after.map((cell) => [cellKey(cell), cell]));
  const rowKey = ({ table, row }: InputCell) => JSON.stringify([table, nameKey(row)]);
  const rowsBefore = new Set(before.map(rowKey));
  const rowsAfter = new Set(after.map(rowKey));
  const wholeRows = new Set<string>();
  const gone = before.flatMap((cell): InputChange[] => {
    const { table, row, column } = cell;
    if (!rowsAfter.has(rowKey(cell))) {
      if (wholeRows.has(rowKey(cell))) return [];
      wholeRows.add(rowKey(cell));
      return [{ table, row, column: 'whole row', was: 'there', is: '' }];
    }
    const next = cellsAfter.get(cellKey(cell));
    const is = next === undefined ? '' : shown(next);
    return next?.text === cell.text ? [] : [{ table, row, column, was: shown(cell), is }];
  });
  const come = after.flatMap((cell): InputChange[] => {
    const { table, row, column } = cell;
    if (!rowsBefore.has(rowKey(cell))) {
      if (wholeRows.has(rowKey(cell))) return [];
      wholeRows.add(rowKey(cell));
      return [{ table, row, column: 'whole row', was: '', is: 'new' }];
    }
    return cellsBefore.has(cellKey(cell)) ? [] : [{ table, row, column, was: '', is: shown(cell) }];
  });
  const order = (change: InputChange) => inputNames.indexOf(change.table);
  return [...gone, ...come].sort((one, other) => order(one) - order(other));
}
