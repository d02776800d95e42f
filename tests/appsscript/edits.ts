import fc from 'fast-check';
import { columnLetters } from '../../src/local/host/a1.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';

/** What a person may do to a workbook. `pick` chooses a cell, a table, a sheet among those there are. */
export interface Edit {
  readonly kind:
    | 'type into a table'
    | 'type beside a block'
    | 'type into a block'
    | 'insert a row'
    | 'insert a column'
    | 'add a column to a table'
    | 'add a sheet with formulas';
  readonly pick: number;
  readonly text: string;
}

/** Done last: the table's name, or its sheet's, is what the next run looks for. */
export interface Renaming {
  readonly kind: 'rename a sheet' | 'move a sheet' | 'forget a name';
  readonly pick: number;
}

const texts = fc.constantFrom(
  "'=1+1",
  'moved here',
  '17.25',
  "'12",
  'TRUE',
  "'-5 lb",
  'Zürich',
  "'@x",
  '3',
  'a, b',
);

export const edits: fc.Arbitrary<Edit[]> = fc.array(
  fc.record({
    kind: fc.constantFrom<Edit['kind'][]>(
      'type into a table',
      'type into a table',
      'type into a table',
      'type beside a block',
      'type into a block',
      'insert a row',
      'insert a column',
      'add a column to a table',
      'add a sheet with formulas',
    ),
    pick: fc.nat(1_000_000),
    text: texts,
  }),
  { minLength: 1, maxLength: 10 },
);

export const renamings: fc.Arbitrary<Renaming[]> = fc.array(
  fc.record({
    kind: fc.constantFrom<Renaming['kind'][]>(
      'rename a sheet',
      'move a sheet',
      'forget a name',
      'forget a name',
    ),
    pick: fc.nat(1_000_000),
  }),
  { maxLength: 6 },
);

const among = <T>(list: readonly T[], pick: number): T => list[pick % list.length] as T;

const cellName = (column: number, row: number) => `${columnLetters(column)}${row + 1}`;

function sheets({ workbook }: LocalHost) {
  const { getters } = workbook.model;
  return getters.getSheetIds().map((id) => ({ id, name: getters.getSheetName(id) }));
}

const tables = ({ workbook }: LocalHost) => workbook.model.getters.getNamedRanges();

/** Cells with a call of one of our functions. */
function anchors({ workbook }: LocalHost) {
  const { getters } = workbook.model;
  return getters.getSheetIds().flatMap((id) =>
    getters
      .getCells(id)
      .filter(
        (cell) => cell.isFormula && /^=[A-Z_]+\(airframe/.test(cell.compiledFormula.toFormulaString(getters)),
      )
      .map((cell) => getters.getCellPosition(cell.id)),
  );
}

/** Types into an empty cell, so that the test need not know what was overwritten. @returns the text where it was typed */
function typeIfEmpty(
  host: LocalHost,
  sheetId: string,
  column: number,
  row: number,
  text: string,
): string | undefined {
  const { getters } = host.workbook.model;
  const isInside = row < getters.getNumberRows(sheetId) && column < getters.getNumberCols(sheetId);
  if (!isInside || getters.getEvaluatedCell({ sheetId, col: column, row }).formattedValue !== '')
    return undefined;
  host.type(`${getters.getSheetName(sheetId)}!${cellName(column, row)}`, text);
  return text.replace(/^'/, '');
}

/**
 * Does an edit.
 * @returns texts that were typed outside the tables, which must be found again somewhere
 */
export function apply(host: LocalHost, { kind, pick, text }: Edit): string[] {
  const { model } = host.workbook;
  const { range } = among(tables(host), pick);
  const { left, right, top, bottom } = range.zone;
  const { sheetId } = range;
  const sheetName = model.getters.getSheetName(sheetId);
  const header = top + 2; // title and help stand above it
  const width = right - left + 1;
  const height = bottom - header - 1;
  const unique = `${text}~${pick}`;
  const typed = (value: string | undefined) => (value === undefined ? [] : [value]);
  switch (kind) {
    case 'type into a table':
      typeIfEmpty(host, sheetId, left + (pick % width), header + 2 + ((pick >> 3) % height), text);
      return [];
    case 'insert a row':
      model.dispatch('ADD_COLUMNS_ROWS', {
        sheetId,
        sheetName,
        dimension: 'ROW',
        base: header + 2 + (pick % height),
        quantity: 1 + (pick % 3),
        position: 'before',
      });
      return [];
    case 'insert a column':
    case 'add a column to a table': {
      const base = left + (pick % width);
      model.dispatch('ADD_COLUMNS_ROWS', {
        sheetId,
        sheetName,
        dimension: 'COL',
        base,
        quantity: 1,
        position: 'after',
      });
      if (kind === 'insert a column') return [];
      host.type(`${sheetName}!${cellName(base + 1, header)}`, `'own ${pick}`);
      host.type(`${sheetName}!${cellName(base + 1, header + 2)}`, text);
      return [];
    }
    case 'type beside a block':
    case 'type into a block': {
      const anchor = among(anchors(host), pick);
      const away = kind === 'type beside a block' ? 12 : 2;
      const value = typeIfEmpty(
        host,
        anchor.sheetId,
        anchor.col + away,
        anchor.row + 1 + (pick % 20),
        `'${unique}`,
      );
      return typed(value);
    }
    case 'add a sheet with formulas': {
      const name = `Mine ${pick}`;
      if (sheets(host).some((sheet) => sheet.name === name)) return [];
      model.dispatch('CREATE_SHEET', { sheetId: `mine-${pick}`, name, position: pick % sheets(host).length });
      host.type(`${name}!A1`, `'${unique}`);
      host.type(`${name}!A2`, `=COUNTA('${sheetName}'!${cellName(left, header)}:${cellName(right, header)})`);
      host.type(`${name}!A3`, `='${sheetName}'!${cellName(left, header + 2)}`);
      return typed(unique);
    }
  }
}

/** Changes what a table is found by. */
export function rename(host: LocalHost, { kind, pick }: Renaming): void {
  const { model } = host.workbook;
  const sheet = among(sheets(host), pick);
  if (kind === 'rename a sheet') {
    model.dispatch('RENAME_SHEET', { sheetId: sheet.id, oldName: sheet.name, newName: `Renamed ${pick}` });
  } else if (kind === 'move a sheet') {
    const position = sheets(host).findIndex(({ id }) => id === sheet.id);
    const delta = (pick % sheets(host).length) - position;
    if (delta !== 0) model.dispatch('MOVE_SHEET', { sheetId: sheet.id, delta });
  } else model.dispatch('DELETE_NAMED_RANGE', { name: among(tables(host), pick).name });
}
