/** The workbook as data: what the script walks must agree with the tables and the custom functions. */
import { describe, expect, test } from 'vitest';
import { tableFunctions } from '../../src/functions/library.ts';
import { nameKey } from '../../src/tables/cell.ts';
import { type QuantityKind, unitsOf } from '../../src/units.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { headerWords } from '../../src/workbook/tableSource.ts';

const tables = layout.sheets.flatMap((sheet) => sheet.tables);
const results = layout.sheets.flatMap((sheet) => sheet.results);

test('every table function has its one block, twenty at most', () => {
  expect(results.map((result) => result.function).sort()).toEqual(
    tableFunctions.map(({ name }) => name).sort(),
  );
  expect(results.length).toBeLessThanOrEqual(20);
});

test.each(results.map((result) => [result.function, result] as const))(
  '%s gets its arguments in order',
  (name, result) => {
    const declared = tableFunctions.find((each) => each.name === name)?.arguments ?? [];
    const given = result.arguments;
    expect(given).toEqual(declared.slice(0, given.length).map((argument) => argument.name));
    expect(declared.slice(given.length).every(({ optional }) => optional)).toBe(true);
    const ranges = new Set(tables.map(({ range }) => range));
    expect(given.filter((range) => !ranges.has(range))).toEqual([]);
  },
);

test('sheets, tables and ranges are named once', () => {
  for (const names of [layout.sheets.map(({ name }) => name), tables.map(({ range }) => range)]) {
    expect(new Set(names).size).toBe(names.length);
  }
});

test('a range is named by no cell, no truth value and no function', () => {
  for (const { range } of tables) {
    expect(range).toMatch(/^[a-z][a-z_]{3,}$/);
    expect(range).not.toMatch(/^[a-z]{1,3}\d+$|^(true|false)$/);
  }
});

describe.each(tables.map((table) => [table.table, table] as const))('the %s table', (_, table) => {
  test('has help for every field, which nothing takes for its header', () => {
    const words = new Set(headerWords(table).map(nameKey));
    for (const { help } of table.fields) expect(help.length).toBeGreaterThan(1);
    expect(table.fields.filter(({ help }) => words.has(nameKey(help))).length).toBeLessThan(2);
    expect(words.has(nameKey(table.title))).toBe(false);
  });

  test('offers every unit of its kinds', () => {
    const kinds = table.fields.flatMap(({ unit }) =>
      unit === undefined || unit.startsWith('currency') ? [] : [unit],
    );
    for (const kind of kinds) expect(layout.units[kind], kind).toEqual(unitsOf(kind as QuantityKind));
  });

  test('has a tick box only where an empty cell means no', () => {
    for (const { tickBox, help, label } of table.fields) {
      if (tickBox) expect(help, label).toMatch(/where empty, default FALSE/);
    }
  });
});

describe('blocks on one sheet', () => {
  const at = ({ row, column, rows, columns }: (typeof results)[number]) => ({
    top: row - 1, // its title
    bottom: row + rows,
    left: column,
    right: column + columns,
  });

  test.each(
    layout.sheets.filter((sheet) => sheet.results.length > 1).map((sheet) => [sheet.name, sheet] as const),
  )('keep out of each other’s room: %s', (_, sheet) => {
    const rooms = sheet.results.map(at);
    for (const [index, a] of rooms.entries()) {
      for (const b of rooms.slice(index + 1)) {
        const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
        expect(apart).toBe(true);
      }
    }
  });

  test('leave the rows above them to the pictures', () => {
    for (const { charts, row } of results) {
      // a row is 21 pixels high
      for (const chart of charts) expect(chart.row + chart.height / 21).toBeLessThanOrEqual(row);
    }
  });
});

test('no text of a sheet has an exclamation mark; a sheet’s question and how to read it end as sentences do', () => {
  const texts = layout.sheets.flatMap(({ question, reading, lines }) => [
    question,
    reading,
    ...lines.flatMap(({ text, note }) => [text, note ?? '']),
  ]);
  expect(texts.filter((text) => text.includes('!'))).toEqual([]);
  for (const { question, reading } of layout.sheets) {
    expect(question).toMatch(/\?$/);
    expect(reading).toMatch(/^$|\.$/);
  }
});
