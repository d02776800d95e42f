/** Formats, colours, borders, validation rules and conditional formats. */
import { describe, expect, test } from 'vitest';
import { evaluate, evaluateIn, hostWith } from './support.ts';

describe('number formats', () => {
  test.each([
    ['0.0" lb"', '1234.6 lb'],
    ['#,##0" ft/min"', '1,235 ft/min'],
    ['+0.0;"−"0.0;0.0', '+1234.6'],
    ['0.0%', '123456.7%'],
    ['General', '1234.567'],
  ])('%s', (format, expected) => {
    const shown = evaluate(
      `return sheet.getRange('A1').setValue(1234.567).setNumberFormat('${format}').getDisplayValue();`,
    );
    expect(shown).toBe(expected);
  });

  test.each(['[Red]0.0', '0.0E+00', '# ?/?', 'h:mm', '0.0;[Red]-0.0'])("%s can't be shown", (format) => {
    expect(() => evaluate(`sheet.getRange('A1').setNumberFormat('${format}');`)).toThrow("can't be shown");
  });

  test('are set and read cell by cell', () => {
    expect(
      evaluate(`return sheet.getRange('A1:B1').setNumberFormats([['0.0', 'General']]).getNumberFormats();`),
    ).toEqual([['0.0', 'General']]);
  });
});

describe('looks', () => {
  test('are set and read back', () => {
    const host = hostWith('');
    const read = evaluateIn(
      host,
      `const cell = sheet.getRange('A1').setFontWeight('bold').setFontStyle('italic').setFontSize(12)
          .setBackground('#FFF2CC').setFontColor('#333333').setHorizontalAlignment('right')
          .setVerticalAlignment('middle').setWrap(true).setWrapStrategy(SpreadsheetApp.WrapStrategy.CLIP);
        return [cell.getFontWeight(), cell.getFontStyle(), cell.getFontSize(), cell.getBackground()];`,
    );
    expect(read).toEqual(['bold', 'italic', 12, '#fff2cc']);
    // What the host gives no script back, as its engine holds it
    expect(host.workbook.model.getters.getCell({ sheetId: '0', col: 0, row: 0 })?.style).toMatchObject({
      textColor: '#333333',
      align: 'right',
      verticalAlign: 'middle',
      wrapping: 'clip',
    });
  });

  test('are taken back', () => {
    expect(
      evaluate(`const cell = sheet.getRange('A1').setFontWeight('bold').setBackground('#FFF2CC');
        cell.setFontWeight('normal').setBackground(null).setHorizontalAlignment(null);
        return [cell.getFontWeight(), cell.getBackground(), cell.getFontSize()];`),
    ).toEqual(['normal', '#ffffff', 10]);
  });

  test('of several ranges are set in one call', () => {
    const host = hostWith('');
    const shown = evaluateIn(
      host,
      `const list = sheet.getRangeList(['A1:A2', 'C3']).setBackground('#abcdef').setFontWeight('bold')
          .setFontStyle('italic').setFontSize(8).setFontColor('#123456').setHorizontalAlignment('right')
          .setVerticalAlignment('top').setWrap(true).setNumberFormat('0.0')
          .setBorder(true, true, true, true, true, true, '#000000', SpreadsheetApp.BorderStyle.SOLID);
        return [list.getRanges().map((range) => range.getA1Notation()), ...['A1', 'A2', 'B1', 'C3'].map((cell) =>
          [sheet.getRange(cell).getBackground(), sheet.getRange(cell).getFontWeight()])];`,
    );
    expect(shown).toEqual([
      ['A1:A2', 'C3'],
      ['#abcdef', 'bold'],
      ['#abcdef', 'bold'],
      ['#ffffff', 'normal'],
      ['#abcdef', 'bold'],
    ]);
    expect(host.workbook.calls.names.filter((name) => name.startsWith('RangeList.set'))).toHaveLength(10);
  });

  test('there is no list of no ranges', () => {
    expect(() => evaluate('sheet.getRangeList([])')).toThrow('at least one range');
  });

  test('wrap cell by cell', () => {
    const strategies = 'SpreadsheetApp.WrapStrategy';
    const host = hostWith('');
    evaluateIn(
      host,
      `sheet.getRange('A1:B1').setWrapStrategies([[${strategies}.WRAP, ${strategies}.OVERFLOW]]);`,
    );
    const { getters } = host.workbook.model;
    const wrapping = (col: number) => getters.getCell({ sheetId: '0', col, row: 0 })?.style?.wrapping;
    expect([wrapping(0), wrapping(1) ?? 'overflow']).toEqual(['wrap', 'overflow']);
  });

  test('of several cells are set by rows', () => {
    expect(
      evaluate(`const range = sheet.getRange('A1:B2').setBackgrounds([['#111111', null], [null, '#222222']])
          .setFontWeights([['bold', 'normal'], ['normal', 'bold']]);
        return [range.getBackgrounds(), range.getFontWeights()];`),
    ).toEqual([
      [
        ['#111111', '#ffffff'],
        ['#ffffff', '#222222'],
      ],
      [
        ['bold', 'normal'],
        ['normal', 'bold'],
      ],
    ]);
  });

  test.each([
    ["setBackground('red')", 'a colour must be #rrggbb'],
    ["setFontColor('#abc')", 'a colour must be #rrggbb'],
    ["setBackgrounds([['#111111', '#222222']])", 'The data has 2 but the range has 1'],
    ['setBorder(true, true, true, true, null, null, null, SpreadsheetApp.BorderStyle.DOUBLE)', 'DOUBLE'],
  ])('%s throws', (call, message) => {
    expect(() => evaluate(`sheet.getRange('A1').${call};`)).toThrow(message);
  });
});

test('alignments and wrapping of several cells are set by rows', () => {
  const host = hostWith('');
  evaluateIn(
    host,
    `sheet.getRange('A1:B1').setHorizontalAlignments([['right', 'normal']]).setWraps([[true, false]]);`,
  );
  const { getters } = host.workbook.model;
  const style = (col: number) => getters.getCell({ sheetId: '0', col, row: 0 })?.style;
  expect([style(0)?.align, style(0)?.wrapping]).toEqual(['right', 'wrap']);
  expect([style(1)?.align, style(1)?.wrapping]).toEqual([undefined, undefined]); // as a cell is by itself
});

test('borders: drawn, left alone, taken away', () => {
  const host = hostWith('');
  evaluateIn(
    host,
    `sheet.getRange('B2:C3').setBorder(true, true, true, true, null, true, '#666666', SpreadsheetApp.BorderStyle.DASHED);
     sheet.getRange('B2:C2').setBorder(false, null, null, null, null, null);`,
  );
  const { getters } = host.workbook.model;
  const line = { style: 'dashed', color: '#666666' };
  const at = (col: number, row: number) => getters.getCellBorder({ sheetId: '0', col, row });
  expect(at(1, 1)).toEqual({ left: line, bottom: line });
  expect(at(2, 2)).toEqual({ top: line, right: line, bottom: line });
});

describe('validation rules', () => {
  test('are read back as they were set', () => {
    expect(
      evaluate(`const rule = SpreadsheetApp.newDataValidation().requireValueInList(['mogas', 'avgas'], true)
          .setAllowInvalid(false).setHelpText('fuel').build();
        sheet.getRange('A1:A3').setDataValidation(rule);
        const read = sheet.getRange('A2').getDataValidation();
        return [String(read.getCriteriaType()), read.getCriteriaValues(), read.getAllowInvalid(), read.getHelpText(),
          read.getCriteriaType() === SpreadsheetApp.DataValidationCriteria.VALUE_IN_LIST,
          sheet.getRange('A4').getDataValidation()];`),
    ).toEqual(['VALUE_IN_LIST', [['mogas', 'avgas'], true], false, 'fuel', true, null]);
  });

  const rules = `const rule = (build) => build(SpreadsheetApp.newDataValidation()).setAllowInvalid(false).build();
    const book2 = book.insertSheet('Lists'); book2.getRange('A1:A2').setValues([["'mogas"], ["'Jet A"]]);`;

  test.each([
    ["requireValueInList(['mogas', 'avgas'])", "'avgas'", "'coal'"],
    ["requireValueInRange(book2.getRange('A1:A2'))", "'Jet A'", "'coal'"],
    ['requireNumberBetween(0, 10)', '10', '11'],
    ['requireNumberNotBetween(0, 10)', '11', '10'],
    ['requireNumberGreaterThan(0)', '0.1', '0'],
    ['requireNumberGreaterThanOrEqualTo(0)', '0', '-0.1'],
    ['requireNumberLessThan(0)', '-0.1', '0'],
    ['requireNumberLessThanOrEqualTo(0)', '0', '0.1'],
    ['requireNumberEqualTo(4)', '4', '5'],
    ['requireNumberNotEqualTo(4)', '5', '4'],
    ["requireTextContains('gas')", "'mogas'", "'Jet A'"],
    ["requireTextDoesNotContain('gas')", "'Jet A'", "'mogas'"],
    ["requireTextEqualTo('gas')", "'gas'", "'mogas'"],
    ["requireFormulaSatisfied('=A1>3')", '4', '3'],
    ['requireCheckbox()', 'true', "'maybe'"],
    ['requireDate()', 'new Date(2024, 1, 29)', "'soon'"],
  ])('%s takes %s and rejects %s', (criteria, good, bad) => {
    const write = (value: string) =>
      evaluate(
        `${rules} return sheet.getRange('A1').setDataValidation(rule((b) => b.${criteria})).setValue(${value}).getValue();`,
      );
    expect(write(good)).toEqual(evaluate(`return ${good};`));
    expect(() => write(bad)).toThrow('entered in cell Sheet1!A1 violates the data validation rule');
  });

  test('what a run wrote twice is taken back to what stood there before', () => {
    const host = hostWith('');
    const code = `sheet.getRange('A1').setValue(2);
      sheet.getRange('A1').setDataValidation(rule((b) => b.requireNumberGreaterThan(0)));
      SpreadsheetApp.flush(); sheet.getRange('A1').setValue(-1).setValue(-3);`;
    expect(() => evaluateIn(host, `${rules} ${code}`)).toThrow('violates');
    expect(host.values('Sheet1!A1')).toEqual([[2]]);
  });

  test('a rule that warns lets the value stand', () => {
    expect(
      evaluate(`sheet.getRange('A1').setDataValidation(SpreadsheetApp.newDataValidation().requireNumberGreaterThan(0).build());
        return sheet.getRange('A1').setValue(-1).getValue();`),
    ).toBe(-1);
  });

  test('a person is refused as well, and the cell keeps what it held', () => {
    const host = hostWith('');
    evaluateIn(
      host,
      `${rules} sheet.getRange('A1').setDataValidation(rule((b) => b.requireNumberGreaterThan(0)));`,
    );
    host.type('Sheet1!A1', '2');
    expect(() => host.type('Sheet1!A1', '-1')).toThrow("'-1' entered in cell Sheet1!A1");
    expect(host.values('Sheet1!A1')).toEqual([[2]]);
  });

  test('are taken from some cells and stay on the others', () => {
    expect(
      evaluate(`const rule = SpreadsheetApp.newDataValidation().requireNumberGreaterThan(0).build();
        sheet.getRange('A1:A3').setDataValidation(rule);
        sheet.getRange('A2').setDataValidation(null);
        return sheet.getRange('A1:A3').getDataValidations().map((row) => row[0] !== null);`),
    ).toEqual([true, false, true]);
  });

  test('checkboxes begin unticked and keep what is there', () => {
    expect(
      evaluate(`sheet.getRange('A2').setValue(true);
        const boxes = sheet.getRange('A1:A2').insertCheckboxes();
        const before = [boxes.getValues(), boxes.isChecked()];
        boxes.removeCheckboxes();
        return [...before, boxes.getValues(), boxes.isChecked()];`),
    ).toEqual([[[false], [true]], false, [[''], ['']], null]);
  });
});

describe('conditional formats', () => {
  const styleOf = (code: string, value: string) => {
    const host = hostWith('');
    evaluateIn(
      host,
      `sheet.getRange('B2').setValue(${value});
       const rule = () => SpreadsheetApp.newConditionalFormatRule().setRanges([sheet.getRange('B2:B9')]);
       ${code}`,
    );
    return host.workbook.model.getters.getCellComputedStyle({ sheetId: '0', col: 1, row: 1 });
  };

  test.each([
    ["whenTextEqualTo('Stop')", "'Stop'", "'Note'"],
    ["whenTextContains('to')", "'Stop'", "'Note'.slice(2)"],
    ["whenTextDoesNotContain('to')", "'Check'", "'Stop'"],
    ["whenTextStartsWith('St')", "'Stop'", "'Note'"],
    ["whenTextEndsWith('te')", "'Note'", "'Stop'"],
    ['whenNumberLessThan(0)', '-1', '0'],
    ['whenNumberBetween(1, 2)', '1.5', '3'],
    ['whenCellNotEmpty()', "'x'", "''"],
    ['whenCellEmpty()', "''", "'x'"],
    ["whenFormulaSatisfied('=B2>3')", '4', '3'],
  ])('%s', (condition, hit, miss) => {
    const code = `sheet.setConditionalFormatRules([rule().${condition}.setBackground('#ffcccc').setBold(true).build()]);`;
    expect(styleOf(code, hit)).toMatchObject({ fillColor: '#ffcccc', bold: true });
    expect(styleOf(code, miss)).not.toMatchObject({ fillColor: '#ffcccc' });
  });

  test('the first rule has precedence', () => {
    const code = `sheet.setConditionalFormatRules([rule().whenNumberGreaterThan(0).setBackground('#111111').build(),
      rule().whenNumberGreaterThan(0).setBackground('#222222').build()]);`;
    expect(styleOf(code, '1')).toMatchObject({ fillColor: '#111111' });
  });

  test('are replaced as a whole and read with the ranges they have now', () => {
    expect(
      evaluate(`const rule = (colour) => SpreadsheetApp.newConditionalFormatRule().whenNumberLessThan(0)
          .setRanges([sheet.getRange('B2:B9')]).setFontColor(colour).build();
        sheet.setConditionalFormatRules([rule('#111111'), rule('#222222')]);
        sheet.setConditionalFormatRules([rule('#333333')]);
        sheet.insertRowBefore(1);
        return sheet.getConditionalFormatRules().map((r) => [r.getRanges()[0].getA1Notation(),
          r.getBooleanCondition().getFontColor(), String(r.getBooleanCondition().getCriteriaType())]);`),
    ).toEqual([['B3:B10', '#333333', 'NUMBER_LESS_THAN']]);
  });
});
