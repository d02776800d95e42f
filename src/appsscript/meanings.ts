import { type Cell, isBlank, nameKey } from '../tables/cell.ts';
import type { TableLayout } from '../workbook/layout.ts';
import { isFree, own } from '../workbook/own.ts';
import { headerRow } from '../workbook/tableSource.ts';
import { refreshOwn } from './cells.ts';
import { gridOf, type Place, part } from './places.ts';

/** Beside a table of attributes: what each means. The column is no part of the table's range. */
export function writeMeanings(table: TableLayout, place: Place): void {
  if (table.shape === 'rows') return;
  const grid = gridOf(place);
  const header = headerRow(table, grid);
  const labelAt = (grid[header] ?? []).findIndex((cell) => nameKey(String(cell)) === 'attribute');
  const words = grid.slice(header).map((line, index): Cell[] => {
    if (index === 0) return [own('what it means')];
    const cell = line[labelAt];
    const field = table.fields.find(
      ({ label }) => !isBlank(cell) && nameKey(label) === nameKey(String(cell)),
    );
    return [field === undefined ? null : own(field.help)];
  });
  const beside = part(place, header, place.columns, words.length, 1);
  if (isFree(gridOf(beside)[0]?.[0])) refreshOwn(place.view, beside.row, beside.column, words);
}
