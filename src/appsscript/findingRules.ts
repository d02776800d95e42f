import { colours, type PackageStyle, packageStyles } from '../workbook/palette.ts';
import type { Range, Sheet } from './places.ts';
import type { Packages } from './resultLooks.ts';

type Rule = GoogleAppsScript.Spreadsheet.ConditionalFormatRule;
type Builder = GoogleAppsScript.Spreadsheet.ConditionalFormatRuleBuilder;

const begins = (text: string) => SpreadsheetApp.newConditionalFormatRule().whenTextStartsWith(text);
const equals = (text: string) => SpreadsheetApp.newConditionalFormatRule().whenTextEqualTo(text);

/** Words that a block says with a look of their own: the word and its mark stand there too, colour is the third sign. */
const looks: readonly (() => Builder)[] = [
  () => begins('\u25a0').setBackground(colours.stopFill).setBold(true),
  () => begins('FAIL').setBackground(colours.stopFill).setBold(true),
  () => begins('TOO HOT').setBackground(colours.stopFill).setBold(true),
  () => equals('NO').setBackground(colours.stopFill).setBold(true),
  () => begins('\u25b2').setBackground(colours.checkFill),
  () => begins('No result:').setBackground(colours.checkFill).setBold(true),
  () => begins('\u00b7 Note').setFontColor(colours.noteInk),
  () => equals('pass').setFontColor(colours.passInk),
  () => begins('pass ').setFontColor(colours.passInk),
  () => begins('not known').setFontColor(colours.unknownInk).setItalic(true),
  () =>
    SpreadsheetApp.newConditionalFormatRule()
      .whenTextContains('default')
      .setFontColor(colours.unknownInk)
      .setItalic(true),
];

const signature = (rule: Rule) => {
  const condition = rule.getBooleanCondition();
  return condition ? `${condition.getCriteriaType()} ${condition.getCriteriaValues().join()}` : '';
};

/** The colour that a rule gives to cells of one text, as ours do to a package's name, which may have been another's. */
function textColour(rule: Rule): string {
  const condition = rule.getBooleanCondition();
  if (String(condition?.getCriteriaType()) !== 'TEXT_EQUAL_TO') return '';
  return condition?.getBackground()?.toLowerCase() ?? '';
}

/**
 * Sets the looks of findings over a sheet's blocks, and the packages' colours over their heads; rules that a person added
 * stay, behind these.
 */
export function setBlockRules(sheet: Sheet, blocks: Range[], heads: Range[], packages: Packages): void {
  const styles = packageStyles(packages.names.length, packages.baseline);
  const ofPackages = packages.names.map((name, index) => {
    const { colour, ink } = styles[index] as PackageStyle;
    return SpreadsheetApp.newConditionalFormatRule()
      .whenTextEqualTo(name)
      .setBackground(colour)
      .setFontColor(ink)
      .setRanges(heads);
  });
  const ofFindings = looks.map((look) => look().setRanges(blocks));
  const rules = [...ofFindings, ...(heads.length > 0 ? ofPackages : [])].map((builder) => builder.build());
  const signatures = new Set(rules.map(signature));
  const ownColours = new Set(packageStyles(packages.names.length + 8, 0).map(({ colour }) => colour));
  const others = sheet
    .getConditionalFormatRules()
    .filter((rule) => !signatures.has(signature(rule)) && !ownColours.has(textColour(rule)));
  sheet.setConditionalFormatRules([...rules, ...others]);
}
