/** What scripts write into cells and read from them. Google's side of the rules is from memory unless noted. */
import { describe, expect, test } from 'vitest';
import { evaluate } from './support.ts';

/** Value of A1 after a script wrote an expression into it. */
const written = (expression: string) =>
  evaluate(`return sheet.getRange('A1').setValue(${expression}).getValue();`);

describe('a value written and read back', () => {
  test.each([
    ['12.5', 12.5],
    ['0', 0],
    ['-0', 0],
    ['1e-7', 1e-7],
    ['0.1 + 0.2', 0.1 + 0.2],
    ['true', true],
    ["''", ''],
    ['null', ''],
    ["'engine mount'", 'engine mount'],
    ["'12.5'", 12.5],
    ["'TRUE'", true],
    ["'25%'", 0.25],
    ["'=2*3'", 6],
    ["'=SUM(2;3)'", 5],
    ['\'=COUNTA("a;b";{1;2})\'', 3],
    ['"\'=2*3"', '=2*3'],
    ['"\'12.5"', '12.5'],
    ['"\'+5"', '+5'],
    ['"\'TRUE"', 'TRUE'],
    ['"\'"', ''],
  ])('%s', (expression, expected) => {
    expect(written(expression)).toBe(expected);
  });

  test('a date keeps its day and time and gets a date format', () => {
    const date = evaluate(`const cell = sheet.getRange('A1').setValue(new Date(2024, 1, 29, 14, 30, 15));
       return [cell.getValue(), cell.getNumberFormat(), cell.getDisplayValue()];`);
    expect(date).toEqual([new Date(2024, 1, 29, 14, 30, 15), 'm/d/yyyy hh:mm:ss', '2/29/2024 14:30:15']);
  });

  test('a date keeps the format that the cell has', () => {
    const shown = evaluate(
      `return sheet.getRange('A1').setNumberFormat('yyyy-mm-dd').setValue(new Date(2024, 1, 29)).getDisplayValue();`,
    );
    expect(shown).toBe('2024-02-29');
  });

  test('a typed date is read as a Date', () => {
    expect(written("'2024-02-29'")).toEqual(new Date(2024, 1, 29));
  });
});

describe('a value that a cell cannot hold', () => {
  test.each([
    ['[[undefined]]', "Sheet1!A1: a cell can't hold undefined"],
    ['[[NaN]]', "Sheet1!A1: a cell can't hold NaN"],
    ['[[Infinity]]', "Sheet1!A1: a cell can't hold Infinity"],
    ['[[{}]]', "Sheet1!A1: a cell can't hold an object"],
    ['[[[1]]]', "Sheet1!A1: a cell can't hold an array"],
    ["[['+5']]", 'begin it with an apostrophe'],
    ["[['- none']]", 'begin it with an apostrophe'],
    ["[['Mar 3']]", 'begin it with an apostrophe'],
    ["[['3-Mar']]", 'begin it with an apostrophe'],
    ['[[1, 2]]', 'The data has 2 but the range has 1'],
    ['[[1], [2]]', 'The data has 2 but the range has 1'],
    ['[1]', 'the values must be rows of cells'],
  ])('setValues(%s) throws', (expression, message) => {
    expect(() => evaluate(`sheet.getRange('A1').setValues(${expression});`)).toThrow(message);
  });

  test.each([
    ['-5', -5],
    ['-5%', -0.05],
    ['Marker 3', 'Marker 3'],
    ['Maybe 3 seats', 'Maybe 3 seats'],
    ['5 seats', '5 seats'],
  ])("'%s' needs no apostrophe and is %j", (text, value) => {
    expect(evaluate(`return sheet.getRange('A1').setValue('${text}').getValue();`)).toBe(value);
  });
});

describe('formulas', () => {
  test('are read back with commas, and are empty for values', () => {
    const formulas = evaluate(`return sheet.getRange('A1:B1').setValues([['=SUM(2;3)', 7]]).getFormulas();`);
    expect(formulas).toEqual([['=SUM(2,3)', '']]);
  });

  test('must begin with an equals sign', () => {
    expect(() => evaluate(`sheet.getRange('A1').setFormula('SUM(1)');`)).toThrow("'='");
  });

  test.each([
    ['=1/0', '#DIV/0!'],
    ['=NO_SUCH_FUNCTION(1)', '#NAME?'],
    ['=A1', '#REF!'], // a loop
    ['=1+', '#ERROR!'],
  ])('%s is read as the text %s', (formula, expected) => {
    const code = `const cell = sheet.getRange('A1').setFormula('${formula}'); return [cell.getValue(), cell.getDisplayValue()];`;
    expect(evaluate(code)).toEqual([expected, expected]);
  });
});

describe('clearing', () => {
  const start = `const cell = sheet.getRange('A1').setValue(5).setFontWeight('bold').setNumberFormat('0.0" lb"');
    const state = () => [cell.getDisplayValue(), cell.getFontWeight(), cell.getNumberFormat()];`;

  test.each([
    ['clearContent()', ['', 'bold', '0.0" lb"']],
    ['clearFormat()', ['5.0 lb', 'normal', '0.0" lb"']],
    ['clear()', ['', 'normal', '0.0" lb"']],
    ['clear({ formatOnly: true })', ['5.0 lb', 'normal', '0.0" lb"']],
  ])('%s', (call, expected) => {
    expect(evaluate(`${start} cell.${call}; return state();`)).toEqual(expected);
  });
});
