/** The workbook laid out by the pushed script in the local spreadsheet, from nothing. */
import { describe, expect, test } from 'vitest';
import { cautions } from '../../src/assessment/cautions.ts';
import { gravityLabels } from '../../src/assessment/finding.ts';
import { softwareVersion } from '../../src/assessment/version.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { localHost, openLocalWorkbook } from '../../src/local/localWorkbook.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { quoteTerms } from '../quoteTerms.ts';
import { sample } from '../sample.ts';
import { workbookState } from './workbookState.ts';

const minimal = sample('minimal');
const godwit = await openLocalWorkbook({ ...sample('godwit'), quote: quoteTerms('Larch') });

const formulas = ({ workbook }: LocalHost) => {
  const { getters } = workbook.model;
  return getters
    .getSheetIds()
    .flatMap((id) => getters.getCells(id))
    .flatMap((cell) => (cell.isFormula ? [cell.compiledFormula.toFormulaString(getters)] : []));
};

describe('a workbook laid out from nothing', () => {
  test('has the sheets in reading order, the first one active', () => {
    expect(godwit.sheetNames()).toEqual(layout.sheets.map(({ name }) => name));
    const { getters } = godwit.host.workbook.model;
    expect(getters.getSheetName(getters.getActiveSheetId())).toBe('Start');
  });

  test('computes every block by one call, twenty at most, and holds no other formula', () => {
    const calls = formulas(godwit.host);
    const expected = layout.sheets.flatMap(({ results }) => results.map((result) => result.function));
    expect(calls.map((call) => /^=([A-Z_]+)\(/.exec(call)?.[1])).toEqual(expected);
    expect(calls.length).toBeLessThanOrEqual(20);
  });

  test('every block gives results', () => {
    for (const { results, role } of layout.sheets) {
      for (const result of results) {
        const block = godwit.block(result.function);
        // nothing is weighed yet: the builder's blocks say so in two lines
        expect(block.length, result.function).toBeGreaterThan(role === 'builder' ? 1 : 4);
        expect(String(block[0]?.[0]), result.function).not.toMatch(/^No result|^#/);
      }
    }
  });

  test('no block outgrows the room that is kept for it', () => {
    for (const { results } of layout.sheets) {
      for (const { function: name, rows, columns } of results) {
        const block = godwit.block(name);
        expect(block.length, name).toBeLessThanOrEqual(rows);
        expect(block[0]?.length ?? 0, name).toBeLessThanOrEqual(columns);
      }
    }
  });

  test('shows every number of its blocks with all its digits', () => {
    const { workbook } = godwit.host;
    const { getters } = workbook.model;
    for (const { name } of layout.sheets.filter(({ results }) => results.length > 0)) {
      const id = workbook.sheetIdNamed(name) as string;
      for (const position of getters.getEvaluatedCellsPositions(id)) {
        const { value, formattedValue } = getters.getEvaluatedCell(position);
        if (typeof value !== 'number') continue;
        const shown = Number(formattedValue.replace(/[,+]/g, '').replace('\u2212', '-'));
        expect(shown, `${name} ${position.row + 1} ${position.col + 1}`).toBeCloseTo(value, 9);
      }
    }
  });

  test('has every table under its name, from the first row of its sheet on', () => {
    const ranges = godwit.host.workbook.model.getters.getNamedRanges();
    expect(ranges.map(({ name }) => name).sort()).toEqual(
      layout.sheets.flatMap(({ tables }) => tables.map(({ range }) => range)).sort(),
    );
    for (const { range } of ranges) expect(range.zone.top).toBe(0);
  });

  test('warns before a data sheet is changed, and locks nobody out', () => {
    const { protections, model } = godwit.host.workbook;
    const names = protections.map(({ sheetId }) => model.getters.getSheetName(sheetId));
    expect(names).toEqual(layout.sheets.filter(({ role }) => role === 'data').map(({ name }) => name));
    expect(protections.every(({ isWarningOnly }) => isWarningOnly)).toBe(true);
  });

  test('draws its pictures, each axis with its unit and room for what comes', () => {
    const { charts } = godwit.host.workbook;
    const expected = layout.sheets.flatMap(({ results }) => results.flatMap((result) => result.charts));
    expect(charts.length).toBe(expected.length);
    for (const { spec } of charts) {
      const { title, hAxis, vAxis } = spec.options as Record<string, { title: string }>;
      const isBars = String(spec.type) === 'BAR';
      for (const axis of isBars ? [hAxis] : [hAxis, vAxis])
        expect(axis?.title, String(title)).toMatch(/, (lb|in|nmi|US gal\/h|ft|ft\/min|kt|°F|°C)$|%/);
      expect(JSON.stringify(spec.options)).not.toContain('"max"');
    }
  });

  test('says on its first sheet what it is, what its marks mean and what to beware of', () => {
    const words = godwit.values('Start').map((line) => line.join(' ').trim());
    for (const mark of ['input', ...Object.values(gravityLabels), 'not known', 'default']) {
      expect(
        words.some((line) => line.startsWith(mark)),
        mark,
      ).toBe(true);
    }
    for (const caution of cautions) expect(words).toContain(caution);
    expect(words.at(-1)).toBe(`Software ${softwareVersion}, layout ${layout.version}`);
  });

  test('says what it is at while it is laid out', () => {
    const { toasts } = godwit.host.workbook.ui;
    expect(toasts.map(({ message }) => message)).toEqual([
      'Sheets',
      'Tables',
      'Results',
      ...layout.sheets.map(({ name }) => name),
    ]);
  });

  test('has no merged cells', () => {
    const { getters } = godwit.host.workbook.model;
    for (const id of getters.getSheetIds()) expect(getters.getMerges(id)).toEqual([]);
  });
});

test('text that looks like something else stays text', async () => {
  const hostile = ['=1+1', '+1', '-x', '@sum', "'quoted", '=HYPERLINK("x")', '#REF!', 'TRUE', '12', '1/2'];
  const airframe = (minimal.airframe ?? []).map((line, index): Cell[] => [
    ...line,
    index === 0 ? 'note' : (hostile[index - 1] ?? ''),
  ]);
  const workbook = await openLocalWorkbook({ ...minimal, airframe });
  const grid = workbook.values('Airframe');
  const column = (grid[2] ?? []).indexOf('note');
  const notes = new Set(grid.slice(3).map((line) => line[column]));
  const given = airframe.slice(1).map((line) => line.at(-1));
  expect(given.filter((note) => note !== '' && !notes.has(note))).toEqual([]);
  expect(formulas(workbook.host).every((formula) => /^=[A-Z_]+\(airframe/.test(formula))).toBe(true);
});

test('a fault in a table stands in words in every block', async () => {
  const stations: Cell[][] = (minimal.stations ?? []).map((line) => [...line]);
  const row = stations[2] as Cell[];
  row[1] = 'aft';
  const workbook = await openLocalWorkbook({ ...minimal, stations });
  for (const name of ['PACKAGE_COMPARISON', 'INSTALLATION_FINDINGS', 'LOADING_CHECK', 'COST_TABLE']) {
    const block = workbook.block(name);
    expect(block[0]?.[0]).toBe('No result: 1 fault in the tables. Correct what is listed here.');
    // title, help, header, units and then the first station: row 5 of the sheet
    const fault = `stations, row 5 (${row[0]}), arm: got "aft", expected a number without unit or separators`;
    // one line of text with nothing beside it: it can be read in a narrow column too
    expect(block).toEqual([[expect.any(String)], [fault]]);
  }
});

test('a blank workbook can be laid out, and says what it wants', async () => {
  const workbook = await openLocalWorkbook({});
  const [head, ...faults] = workbook.block('PACKAGE_COMPARISON').map(([cell]) => String(cell));
  expect(head).toBe(`No result: ${faults.length} faults in the tables. Correct what is listed here.`);
  for (const table of ['airframe', 'envelope', 'stations', 'tanks', 'packages', 'components'])
    expect(faults.filter((fault) => fault.startsWith(`${table}`)).length, table).toBeGreaterThan(0);
  expect(workbook.sheetNames()).toEqual(layout.sheets.map(({ name }) => name));
});

describe('laid out again', () => {
  test('it is the same workbook', async () => {
    const host = await localHost();
    host.run('layOutTables_', minimal);
    const first = workbookState(host);
    expect(host.run('layOutTables_', {})).toEqual([]);
    expect(workbookState(host)).toEqual(first);
  });
});

test('a block or a sheet that there is not is refused by name', () => {
  expect(() => godwit.block('NO_SUCH_BLOCK')).toThrow('no cell holds NO_SUCH_BLOCK');
  expect(() => godwit.values('No such sheet')).toThrow('no sheet "No such sheet"');
});
