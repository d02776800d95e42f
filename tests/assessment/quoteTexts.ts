/** Quotes of the small aircraft of quoteFixture.ts as texts, and ways to change their inputs. */
import type { Quote } from '../../src/assessment/quote.ts';
import { quoteFrom } from '../../src/assessment/quoteChanges.ts';
import { cellText } from '../../src/assessment/quoteText.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import type { Inputs } from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from './quoteFixture.ts';

export function quoted(inputs: Inputs = smallInputs): Quote {
  const { quote, faults } = quoteFrom(inputs);
  if (quote === undefined) throw new Error(faults.map(faultText).join('\n'));
  return quote;
}
export const sectionOf = (title: string, inputs?: Inputs) => {
  const found = quoted(inputs).sections.find((section) => section.title.startsWith(title));
  if (found === undefined) throw new Error(`no section "${title}"`);
  return found;
};
export const rowsOf = (title: string, inputs?: Inputs) =>
  sectionOf(title, inputs).rows.map(({ cells }) => cells.map(cellText));
export const rowOf = (title: string, label: string, inputs?: Inputs) =>
  rowsOf(title, inputs).find(([name]) => name?.startsWith(label));
export const term = (row: string, value: Cell, unit?: string, inputs = smallInputs) => {
  const put = withCell(inputs, 'quote', row, 'value', value);
  return unit === undefined ? put : withCell(put, 'quote', row, 'unit', unit);
};
/** Cells of components, equipment or another table of rows, where its first cells are so. */
export const inRow = (
  table: keyof Inputs,
  picks: readonly Cell[],
  cells: Readonly<Record<string, Cell>>,
  inputs = smallInputs,
): Inputs => {
  const grid = inputs[table] as Grid;
  const header = grid[0] as readonly Cell[];
  const changed = grid.map((line, index) =>
    index > 1 && picks.every((pick, at) => line[at] === pick)
      ? header.map((name, at) => (String(name) in cells ? cells[String(name)] : line[at]))
      : line,
  );
  return { ...inputs, [table]: changed } as Inputs;
};
