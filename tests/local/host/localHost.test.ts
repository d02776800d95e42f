/** A script laid out in a workbook: named tables, one function over all of them, edits, failures. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { describeFunction, evaluate, evaluateIn, hostWith } from './support.ts';

const tables = Array.from({ length: 13 }, (_, index) => `table_${index + 1}`);
const functions = [describeFunction('TOTALS', ...tables)];
const script = `
  function TOTALS() {
    return Array.from(arguments, (rows, index) => {
      const weights = rows.slice(1).map((row) => row[1]);
      const bad = weights.findIndex((weight) => typeof weight !== 'number');
      if (bad >= 0) throw new RangeError('TOTALS: weight must be a number, got ' + weights[bad] + ' (row ' + (bad + 2) + ')');
      return ['table ' + (index + 1), weights.reduce((sum, weight) => sum + weight, 0)];
    });
  }
  function layOut() {
    const book = SpreadsheetApp.getActiveSpreadsheet();
    const names = [];
    for (let table = 1; table <= 13; table++) {
      const sheet = book.insertSheet('Table ' + table, table);
      const range = sheet.getRange(1, 1, 3, 2);
      range.setValues([["'item", "'weight"], ["'engine", 100], ["'mount", table]]);
      book.setNamedRange('TABLE_' + table, range);
      names.push('TABLE_' + table);
    }
    const out = book.getSheets()[0].setName('Totals');
    out.getRange('A1').setFormula('=TOTALS(' + names.join(';') + ')');
    return out.getRange('A1:B13').getValues();
  }
  function insertRow() {
    const sheet = SpreadsheetApp.getActiveSpreadsheet().getSheetByName('Table 2');
    sheet.insertRowAfter(2).getRange('A3:B3').setValues([["'propeller", 7]]);
  }
  function hidden_() {}
  function greet(name) { return { greeting: 'Hello ' + name.first, none: undefined }; }
  function today() { return new Date(); }`;
const laidOut = () => {
  const host = hostWith(script, functions);
  host.run('layOut');
  return host;
};
/** By hand: each table holds 100 and its own number. */
const expected = Array.from({ length: 13 }, (_, index) => [`table ${index + 1}`, 101 + index]);

describe('one function over thirteen tables', () => {
  test('a script reads what it laid out in the same run', () => {
    expect(hostWith(script, functions).run('layOut')).toEqual(expected);
  });

  test('an edit of a table recalculates the block', () => {
    const host = laidOut();
    host.type('Table 4!B3', '50');
    expect(host.values('Totals!A4:B5')).toEqual([
      ['table 4', 150],
      ['table 5', 105],
    ]);
  });

  test('a row inserted into a named table counts', () => {
    const host = laidOut();
    host.run('insertRow');
    expect(host.values('Totals!B2')).toEqual([[109]]); // 100 + 2 and the new 7
  });

  test('a thrown message is in the cell, and the block comes back with the input', () => {
    const host = laidOut();
    host.type('Table 4!B3', 'heavy');
    expect(host.values('Totals!A1:B2')).toEqual([
      ['#ERROR!', ''],
      ['', ''],
    ]);
    expect(host.cell('Totals!A1')).toMatchObject({
      message: 'TOTALS: weight must be a number, got heavy (row 3)',
    });
    host.type('Table 4!B3', '4');
    expect(host.values('Totals!A1:B13')).toEqual(expected);
  });

  test('text in the way of the block is an error, as in Google Sheets', () => {
    const host = laidOut();
    host.type('Totals!B5', 'in the way');
    expect(host.values('Totals!A1')).toEqual([['#REF!']]);
  });
});

describe('counted calls', () => {
  const total = (() => {
    const host = laidOut();
    return host.workbook.calls.count;
  })();

  test('are named and counted', () => {
    const host = hostWith('');
    evaluateIn(host, "sheet.getRange('A1').setValue(1);");
    expect(host.workbook.calls.names).toEqual([
      'SpreadsheetApp.getActiveSpreadsheet',
      'Spreadsheet.getSheets',
      'Sheet.getRange',
      'Range.setValue',
    ]);
  });

  test.each([1, 7, total])('call %i of the layout fails, and nothing after it is done', (call) => {
    const host = hostWith(script, functions);
    host.workbook.calls.failAt(call, 'no service');
    expect(() => host.run('layOut')).toThrow('no service');
    expect(host.workbook.calls.count).toBe(call);
  });

  test('a layout that failed half way keeps what it wrote', () => {
    const host = hostWith(script, functions);
    host.workbook.calls.failAt(7);
    expect(() => host.run('layOut')).toThrow('Service failed at call 7');
    expect(host.values('Table 1!A1:B2')).toEqual([
      ['item', 'weight'],
      ['engine', 100],
    ]);
  });

  test('something happens right after a call', () => {
    const host = hostWith(script, functions);
    const seen: unknown[] = [];
    host.workbook.calls.afterCall(4, () => seen.push(host.workbook.calls.names.at(-1)));
    host.run('layOut');
    expect(seen).toEqual(['Range.setValues']);
  });
});

describe('a run', () => {
  test("of a function that isn't there", () => {
    expect(() => laidOut().run('absent')).toThrow('Script function not found: absent');
  });

  test('from the panel carries JSON both ways', () => {
    expect(laidOut().runFromPanel('greet', { first: 'Ada', last: undefined })).toEqual({
      greeting: 'Hello Ada',
    });
  });

  test.each([
    ['hidden_', [], 'Script function not found: hidden_'],
    ['today', [], 'neither functions nor dates'],
    ['greet', [{ first: () => 'Ada' }], 'neither functions nor dates'],
    ['greet', [{ born: new Date() }], 'neither functions nor dates'],
  ])('from the panel refuses %s %o', (name, values, message) => {
    expect(() => laidOut().runFromPanel(name, ...values)).toThrow(message);
  });

  test('has the language and the given services, and nothing else', () => {
    const names =
      'console WebAssembly SharedArrayBuffer setTimeout fetch URL performance process require globalThis.gc';
    const found = evaluate(
      `return '${names}'.split(' ').filter((name) => { try { return eval(name) !== undefined } catch { return false } });`,
    );
    expect(found).toEqual([]);
  });
});

test('the host itself needs no Node: it runs in a page as well', () => {
  const folder = join(dirname(fileURLToPath(import.meta.url)), '../../../src/local/host');
  const imports = readdirSync(folder)
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => [
      ...readFileSync(join(folder, file), 'utf8').matchAll(/^(?:import|export) (.*?)from '(.+?)';/gms),
    ])
    .filter(([, names = '']) => !names.startsWith('type '))
    .map(([, , module = '']) => module);
  expect(imports.length).toBeGreaterThan(50);
  expect(imports.filter((module) => !/^\.\/[\w]+\.ts$/.test(module))).toEqual([]);
});

test('what a script writes is computed when it is asked for and at the end, not at every write', () => {
  const code = `
    let calls = 0;
    function COUNTED(cells) { calls++; return cells.length; }
    function layOut(look) {
      const book = SpreadsheetApp.getActiveSpreadsheet();
      const first = book.getSheets()[0];
      first.getRange('A1').setFormula('=COUNTED(B1:B20)');
      for (let number = 1; number <= 20; number++) {
        const sheet = book.insertSheet('Sheet of ' + number, number);
        sheet.getRange('A1:B1').setValues([["'item", number]]).setFontWeight('bold');
        book.setNamedRange('TABLE_' + number, sheet.getRange('A1:B1'));
        first.getRange(number, 2).setValue(number);
        if (look) first.getRange('A1').getValue();
      }
      return calls;
    }
    function counted() { return calls; }`;
  const callsOf = (look: boolean) => {
    const host = hostWith(code, [describeFunction('COUNTED', 'cells')]);
    return [host.run('layOut', look), host.run('counted')];
  };
  expect(callsOf(false)).toEqual([0, 1]);
  expect(callsOf(true)).toEqual([20, 20]);
});
