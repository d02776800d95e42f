/** Custom functions: what they are called with, and what becomes of what they return. */
import { describe, expect, test } from 'vitest';
import { describeFunction, hostWith } from './support.ts';

const showFunction = describeFunction('SHOW', '[first]', '[second]', '[third]');
const show = `function SHOW() {
  const kind = (x) => Object.prototype.toString.call(x) === '[object Date]' ? 'date ' + x.getFullYear() : x === undefined ? 'none' : x;
  return JSON.stringify(Array.from(arguments, (x) => Array.isArray(x) ? x.map((row) => row.map(kind)) : kind(x)));
}`;

function shown(formula: string): unknown {
  const host = hostWith(show, [showFunction]);
  const cells: Record<string, string> = {
    B1: '1',
    C1: "'one",
    B2: 'TRUE',
    B3: '50%',
    C3: '2024-02-29',
    B4: '=1/0',
    D1: '=NO_SUCH()',
  };
  for (const [cell, text] of Object.entries(cells)) host.type(`Sheet1!${cell}`, text);
  host.type('Sheet1!A9', formula);
  return JSON.parse(String(host.cell('Sheet1!A9').value));
}

describe('arguments', () => {
  test.each([
    [
      '=SHOW(B1:C3)',
      [
        [
          [1, 'one'],
          [true, ''],
          [0.5, 'date 2024'],
        ],
      ],
    ],
    ['=SHOW(B1)', [1]],
    ['=SHOW(B1:B1)', [1]],
    ['=SHOW(Z99)', ['']],
    ['=SHOW(C3)', ['date 2024']],
    ['=SHOW(B4)', ['#DIV/0!']],
    ['=SHOW(B4:D4)', [[['#DIV/0!', '', '']]]],
    ['=SHOW(D1)', ['#NAME?']],
    ['=SHOW(1/0)', ['#DIV/0!']],
    ['=SHOW(1,,3)', [1, 'none', 3]],
    ['=SHOW("a",TRUE,50%)', ['a', true, 0.5]],
    ['=SHOW()', []],
    ['=SHOW(B1+1)', [2]],
  ])('%s', (formula, expected) => {
    expect(shown(formula)).toEqual(expected);
  });
});

describe('results', () => {
  const results = (body: string, reference: string) => {
    const host = hostWith(`function RESULT() { ${body} }`, [describeFunction('RESULT')]);
    host.type('Sheet1!A1', '=RESULT()');
    return { values: host.values(`Sheet1!${reference}`), cell: host.cell('Sheet1!A1') };
  };

  test('rows spill, null is blank and not zero', () => {
    const { values } = results("return [['name', 'lb'], ['mount', 12.5], [null, null], [true, 0]];", 'A1:C4');
    expect(values).toEqual([
      ['name', 'lb', ''],
      ['mount', 12.5, ''],
      ['', '', ''],
      [true, 0, ''],
    ]);
  });

  test('a date is a date', () => {
    expect(results('return new Date(2024, 1, 29);', 'A1').values).toEqual([[new Date(2024, 1, 29)]]);
  });

  test.each([
    ['return null;', ''],
    ['return 3;', 3],
    ["return '=1+1';", '=1+1'],
    ['return [[7]];', 7],
  ])('%s', (body, expected) => {
    expect(results(body, 'A1').values).toEqual([[expected]]);
  });

  test.each([
    ['return NaN;', 'the result must be a finite number, text, true, false, a date or null, got NaN'],
    ['return [[1], [Infinity]];', 'row 2, column 1 of the result must be a finite number'],
    ['return undefined;', 'got undefined'],
    ['return [[1, 2], [undefined, 3]];', 'row 2, column 1 of the result'],
    ['return [[, 1]];', 'row 1, column 1 of the result'],
    ['return [[1, 2], [3]];', 'rows of equal length'],
    ['return [];', 'rows of equal length'],
    ['return [[]];', 'rows of equal length'],
    ['return [1, 2];', 'rows of equal length'],
    ['return [[{}]];', 'got an object'],
    [
      "throw new RangeError('RESULT: arm must be above 0 in, got -3');",
      'RESULT: arm must be above 0 in, got -3',
    ],
    ["throw 'plain text';", 'plain text'],
  ])('%s shows #ERROR! with the reason', (body, message) => {
    const { values, cell } = results(body, 'A1');
    expect(values).toEqual([['#ERROR!']]);
    expect('message' in cell && String(cell.message)).toContain(message);
  });

  test('a function that the script lacks says so', () => {
    const host = hostWith('', [describeFunction('ABSENT')]);
    host.type('Sheet1!A1', '=ABSENT()');
    expect(host.cell('Sheet1!A1')).toMatchObject({
      value: '#ERROR',
      message: 'ABSENT is not defined by the script',
    });
  });

  test('two workbooks of one engine each call their own script', () => {
    const functions = [describeFunction('WHICH')];
    const first = hostWith('function WHICH() { return 1; }', functions);
    const second = hostWith('function WHICH() { return 2; }', functions);
    for (const host of [first, second]) host.type('Sheet1!A1', '=WHICH()');
    expect([first, second].map((host) => host.cell('Sheet1!A1').value)).toEqual([1, 2]);
  });

  test("the spreadsheet's own functions can't be replaced", () => {
    expect(() => hostWith('', [describeFunction('SUM')])).toThrow(
      'SUM is a function of the spreadsheet itself',
    );
  });
});
