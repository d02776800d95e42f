/** Every member that the host implements exists in Google's classes, by their published types (read). */
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import * as enumerations from '../../../src/local/host/enumerations.ts';
import { evaluate } from './support.ts';

const types = dirname(createRequire(import.meta.url).resolve('@types/google-apps-script/package.json'));
const source = join(dirname(fileURLToPath(import.meta.url)), '../../../src/local/host');

/** Member names by `Namespace.Name`, of interfaces and enumerations. */
function readTypes(): Map<string, Set<string>> {
  const members = new Map<string, Set<string>>();
  const visit = (node: ts.Node, namespace: string): void => {
    if (ts.isModuleDeclaration(node) && node.body) visit(node.body, node.name.text);
    else if (ts.isModuleBlock(node)) for (const statement of node.statements) visit(statement, namespace);
    else if (ts.isInterfaceDeclaration(node) || ts.isEnumDeclaration(node)) {
      const names = members.get(`${namespace}.${node.name.text}`) ?? new Set<string>();
      for (const member of node.members)
        if (member.name && ts.isIdentifier(member.name)) names.add(member.name.text);
      members.set(`${namespace}.${node.name.text}`, names);
    }
  };
  for (const file of readdirSync(types).filter((name) => name.endsWith('.d.ts'))) {
    const text = readFileSync(join(types, file), 'utf8');
    for (const statement of ts.createSourceFile(file, text, ts.ScriptTarget.ES2020).statements)
      visit(statement, '');
  }
  return members;
}

/** The classes that the host's source makes strict objects of: class name → `Namespace.Name`. */
function fakedClasses(): Map<string, string> {
  const aliases = new Map<string, string>();
  const found = new Map<string, string>();
  const files = readdirSync(source).filter((name) => name.endsWith('.ts'));
  const texts = files.map((file) => readFileSync(join(source, file), 'utf8'));
  for (const text of texts) {
    for (const [, alias = '', name = ''] of text.matchAll(/type (\w+) = GoogleAppsScript\.([\w.]+);/g)) {
      aliases.set(alias, name);
    }
  }
  for (const text of texts) {
    for (const [, alias = '', name = ''] of text.matchAll(/strict<(\w+)>\(\s*workbook\.calls,\s*'(\w+)'/g)) {
      found.set(name, aliases.get(alias) ?? `no alias ${alias}`);
    }
  }
  return found;
}

const published = readTypes();
const classes = fakedClasses();

/** One object of every faked class, taken from a script. */
const objects = evaluate(`const range = sheet.getRange(1, 1, 2, 2);
   book.setNamedRange('NAME', range);
   const chart = sheet.newChart().setChartType(Charts.ChartType.BAR).addRange(range).setNumHeaders(0);
   const validation = SpreadsheetApp.newDataValidation().requireDate();
   const format = SpreadsheetApp.newConditionalFormatRule().whenCellEmpty().setRanges([range]);
   const ui = SpreadsheetApp.getUi();
   const header = CardService.newCardHeader();
   const paragraph = CardService.newTextParagraph().setText('');
   const section = CardService.newCardSection().addWidget(paragraph);
   const card = CardService.newCardBuilder().setHeader(header).addSection(section);
   return [SpreadsheetApp, book, sheet, range, sheet.getRangeList(['A1']), book.getNamedRanges()[0], sheet.protect(), chart, chart.build(),
     chart.getContainer(), chart.build().getOptions(), validation, validation.build(), format, format.build(),
     format.getBooleanCondition(), ui, ui.createMenu(''), ui.prompt(''), Charts, HtmlService,
     HtmlService.createHtmlOutput(''), PropertiesService, PropertiesService.getDocumentProperties(), LockService,
     LockService.getDocumentLock(), Utilities, CardService, header, paragraph, section, card, card.build()];`) as object[];

describe('faked members', () => {
  test('the sample has every faked class', () => {
    expect(objects.map(String).sort()).toEqual([...classes.keys()].sort());
  });

  test.each(objects.map((object) => [String(object), object] as const))('%s', (name, object) => {
    const real = published.get(classes.get(name) ?? '') ?? new Set();
    expect(real.size).toBeGreaterThan(0);
    expect(Object.keys(object).filter((member) => !real.has(member))).toEqual([]);
  });
});

test.each([
  ['Spreadsheet.BorderStyle', enumerations.borderStyles],
  ['Spreadsheet.WrapStrategy', enumerations.wrapStrategies],
  ['Spreadsheet.ProtectionType', enumerations.protectionTypes],
  ['Spreadsheet.DataValidationCriteria', enumerations.validationCriteria],
  ['Spreadsheet.BooleanCriteria', enumerations.booleanCriteria],
  ['Charts.ChartType', enumerations.chartTypes],
  ['Charts.ChartMergeStrategy', enumerations.mergeStrategies],
  ['Charts.ChartHiddenDimensionStrategy', enumerations.hiddenDimensionStrategies],
  ['Base.Button', enumerations.buttons],
  ['Base.ButtonSet', enumerations.buttonSets],
  ['Utilities.DigestAlgorithm', enumerations.digestAlgorithms],
  ['Utilities.Charset', enumerations.charsets],
])('%s has the published members', (name, enumeration) => {
  expect(Object.keys(enumeration).sort()).toEqual([...(published.get(name) ?? [])].sort());
});

describe('strictness', () => {
  test.each([
    ["sheet.getRange('A1').setNote('x')", 'Range.setNote is not implemented'],
    ['SpreadsheetApp.openById', 'SpreadsheetApp.openById is not implemented'],
    ['SpreadsheetApp.BorderStyle.WAVY', 'BorderStyle has no member WAVY'],
    ['sheet.getRange(1, undefined)', 'Sheet.getRange: argument 2 must not be undefined'],
    ['sheet.getRange(NaN, 1)', 'Sheet.getRange: argument 1 must not be NaN'],
    ['sheet.title = 1', "Sheet.title can't be set"],
    ["sheet.getRange('A0')", 'outside the dimensions'],
    ["sheet.getRange('1A')", 'Range not found'],
    ['sheet.getRange(1001, 1)', 'outside the dimensions'],
    ['book.deleteSheet(sheet)', 'DELETE_SHEET'],
  ])('%s throws', (code, message) => {
    expect(() => evaluate(code)).toThrow(message);
  });
});
