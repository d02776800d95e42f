import type { Cell } from '../tables/cell.ts';
import type { FieldLayout, Layout } from '../workbook/layout.ts';
import { part, type Range, rangeOf } from './places.ts';
import type { TableParts } from './tableParts.ts';

type Rule = GoogleAppsScript.Spreadsheet.DataValidation;

const flags = ['TRUE', 'FALSE'];

/** What the cells of the tables offer to choose from. Rules that offer and warn, and let the input stand: the tables say what is wrong with a value, and where. */
export class Choices {
  readonly #made = new Map<string, Rule>();
  readonly #tables: readonly TableParts[];
  readonly units: Layout['units'];

  constructor(tables: readonly TableParts[], units: Layout['units']) {
    this.#tables = tables;
    this.units = units;
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

  namesOf(name: string): Rule | undefined {
    const parts = this.#tables.find(({ table }) => table.table === name);
    if (parts === undefined) return undefined;
    const build = () => SpreadsheetApp.newDataValidation().requireValueInRange(nameCells(parts), true);
    return this.#once(`names ${name}`, () => build().setAllowInvalid(true).build());
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
function ruleAt(parts: TableParts, choices: Choices, row: number, column: number): Rule | undefined {
  const { table, grid, header, fields, unitColumn, isValue } = parts;
  const isRows = table.shape === 'rows';
  const field = fields[isRows ? column : row];
  if (field === undefined || row <= header) return undefined;
  const isUnit = isRows ? row === header + 1 : column === unitColumn;
  if (isUnit) {
    const list = field.unit && choices.units[field.unit];
    return list ? choices.list(list) : undefined;
  }
  return isValue[column] ? choices.of(field, grid[row]?.[column] ?? null) : undefined;
}

/** The workbook's own rules offer and let the input stand: one that refuses, or is no list, is a person's. */
function isPersons(rule: Rule): boolean {
  const type = String(rule.getCriteriaType());
  const isList = type === 'VALUE_IN_LIST' || type === 'VALUE_IN_RANGE';
  return type !== 'CHECKBOX' && !(isList && rule.getAllowInvalid());
}

/** Gives every cell of a table its rule; a person's own stays. */
export function offerChoices(parts: TableParts, choices: Choices): void {
  const range = rangeOf(parts.place);
  const present = range.getDataValidations();
  const rules = parts.grid.map((line, row) =>
    line.map((_, column) => {
      const own = ruleAt(parts, choices, row, column);
      const there = present[row]?.[column] ?? null;
      return there !== null && (own === undefined || isPersons(there)) ? there : (own ?? null);
    }),
  );
  range.setDataValidations(rules);
}
