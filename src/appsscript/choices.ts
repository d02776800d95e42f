import type { Cell } from '../tables/cell.ts';
import type { FieldLayout, Layout } from '../workbook/layout.ts';
import { rectangles } from '../workbook/rectangles.ts';
import { part, type Range, rangeOf } from './places.ts';
import type { TableParts } from './tableParts.ts';

type Rule = GoogleAppsScript.Spreadsheet.DataValidation;

const flags = ['TRUE', 'FALSE'];

/** Rules that offer and warn, and let the input stand: the tables say what is wrong with a value, and where. */
class Rules {
  readonly #made = new Map<string, Rule>();
  readonly #names: (table: string) => Range | undefined;

  constructor(names: (table: string) => Range | undefined) {
    this.#names = names;
  }

  #once(key: string, make: () => Rule): Rule {
    const rule = this.#made.get(key) ?? make();
    this.#made.set(key, rule);
    return rule;
  }

  list(words: readonly string[]): Rule {
    const build = () => SpreadsheetApp.newDataValidation().requireValueInList([...words], true);
    return this.#once(words.join('|'), () => build().setAllowInvalid(true).build());
  }

  tick(): Rule {
    return this.#once('tick', () => SpreadsheetApp.newDataValidation().requireCheckbox().build());
  }

  namesOf(table: string): Rule | undefined {
    const range = this.#names(table);
    if (range === undefined) return undefined;
    const build = () => SpreadsheetApp.newDataValidation().requireValueInRange(range, true);
    return this.#once(`names ${table}`, () => build().setAllowInvalid(true).build());
  }

  /**
   * For a field's value: its choices, a tick box where it holds TRUE or FALSE, or the names of another table. A tick box
   * over anything else would make FALSE of it.
   */
  of(field: FieldLayout | undefined, cell: Cell): Rule | undefined {
    if (field?.tickBox) return typeof cell === 'boolean' ? this.tick() : this.list(flags);
    if (field?.choices) return this.list(field.choices);
    return field?.namesFrom ? this.namesOf(field.namesFrom) : undefined;
  }
}

/** The cells that hold a table's record names. */
function nameCells({ table, place, header, isValue }: TableParts): Range {
  const first = isValue.indexOf(true);
  const rows = Math.max(1, place.rows - header - 2);
  return rangeOf(
    table.shape === 'across'
      ? part(place, header, first, 1, isValue.lastIndexOf(true) - first + 1)
      : part(place, header + 2, 0, rows, 1),
  );
}

/** The rule of one cell of a table. */
function ruleAt(
  parts: TableParts,
  units: Layout['units'],
  rules: Rules,
  row: number,
  column: number,
): Rule | undefined {
  const { table, grid, header, fields, unitColumn, isValue } = parts;
  const isRows = table.shape === 'rows';
  const field = fields[isRows ? column : row];
  if (field === undefined || row <= header) return undefined;
  const isUnit = isRows ? row === header + 1 : column === unitColumn;
  if (isUnit) {
    const list = field.unit && units[field.unit];
    return list ? rules.list(list) : undefined;
  }
  return isValue[column] ? rules.of(field, grid[row]?.[column] ?? null) : undefined;
}

/** What every cell of the tables offers to choose from: choices, names, tick boxes, the units of its kind. */
export function offerChoices(
  tables: readonly TableParts[],
  all: readonly TableParts[],
  units: Layout['units'],
): void {
  const rules = new Rules((name) => {
    const parts = all.find(({ table }) => table.table === name);
    return parts && nameCells(parts);
  });
  for (const parts of tables) {
    const matrix = parts.grid.map((line, row) =>
      line.map((_, column) => ruleAt(parts, units, rules, row, column)),
    );
    for (const { value, row, rows, column, columns } of rectangles(matrix)) {
      rangeOf(part(parts.place, row, column, rows, columns)).setDataValidation(value);
    }
  }
}
