import { hexColour } from './colour.ts';
import type { Style } from './engine.ts';
import { booleanCriteria } from './enumerations.ts';
import type {
  GoogleBooleanCondition,
  GoogleBooleanCriteria,
  GoogleConditionalFormatRule,
  GoogleConditionalFormatRuleBuilder,
  GoogleRange,
} from './google.ts';
import { ObjectRecords } from './objectRecords.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

export interface FormatRule {
  readonly criteria: GoogleBooleanCriteria;
  readonly values: readonly unknown[];
  readonly style: Style;
  readonly ranges: readonly GoogleRange[];
}

const specs = new ObjectRecords<FormatRule>('a ConditionalFormatRule');

export const formatRuleOf = (rule: GoogleConditionalFormatRule): FormatRule => specs.of(rule);

export function createFormatRule(workbook: Workbook, spec: FormatRule): GoogleConditionalFormatRule {
  const rule = strict<GoogleConditionalFormatRule>(workbook.calls, 'ConditionalFormatRule', {
    copy: () => createFormatRuleBuilder(workbook, spec),
    getBooleanCondition: () => condition(workbook, spec),
    getGradientCondition: () => null,
    getRanges: () => [...spec.ranges],
  });
  specs.set(rule, spec);
  return rule;
}

function condition(workbook: Workbook, { criteria, values, style }: FormatRule): GoogleBooleanCondition {
  return strict<GoogleBooleanCondition>(workbook.calls, 'BooleanCondition', {
    getBackground: () => style.fillColor ?? null,
    getBold: () => style.bold ?? null,
    getCriteriaType: () => criteria,
    getCriteriaValues: () => [...values],
    getFontColor: () => style.textColor ?? null,
    getItalic: () => style.italic ?? null,
    getStrikethrough: () => style.strikethrough ?? null,
    getUnderline: () => style.underline ?? null,
  });
}

export function createFormatRuleBuilder(
  workbook: Workbook,
  start?: FormatRule,
): GoogleConditionalFormatRuleBuilder {
  let criteria = start?.criteria;
  let values = start?.values ?? [];
  let ranges = start?.ranges ?? [];
  const style: { -readonly [K in keyof Style]: Style[K] | undefined } = { ...start?.style };

  const when = (kind: GoogleBooleanCriteria, ...arguments_: readonly unknown[]) => {
    criteria = kind;
    values = arguments_;
    return builder;
  };
  const look = <K extends keyof Style>(property: K, value: Style[K] | null) => {
    style[property] = value ?? undefined;
    return builder;
  };
  const built = (): FormatRule => {
    if (criteria === undefined) throw new Error('the rule has no condition yet');
    if (ranges.length === 0) throw new Error('the rule has no ranges yet');
    return { criteria, values, style: JSON.parse(JSON.stringify(style)) as Style, ranges };
  };

  const builder: GoogleConditionalFormatRuleBuilder = strict<GoogleConditionalFormatRuleBuilder>(
    workbook.calls,
    'ConditionalFormatRuleBuilder',
    {
      build: () => createFormatRule(workbook, built()),
      copy: () => createFormatRuleBuilder(workbook, built()),
      getBooleanCondition: () => condition(workbook, built()),
      getRanges: () => [...ranges],
      setRanges(given: GoogleRange[]) {
        ranges = [...given];
        return builder;
      },
      setBackground: (colour: string | null) => look('fillColor', hexColour(colour) ?? null),
      setFontColor: (colour: string | null) => look('textColor', hexColour(colour) ?? null),
      setBold: (isBold: boolean | null) => look('bold', isBold),
      setItalic: (isItalic: boolean | null) => look('italic', isItalic),
      setUnderline: (isUnderlined: boolean | null) => look('underline', isUnderlined),
      setStrikethrough: (isStruck: boolean | null) => look('strikethrough', isStruck),
      whenCellEmpty: () => when(booleanCriteria.CELL_EMPTY),
      whenCellNotEmpty: () => when(booleanCriteria.CELL_NOT_EMPTY),
      whenFormulaSatisfied: (formula: string) => when(booleanCriteria.CUSTOM_FORMULA, formula),
      whenNumberBetween: (start: number, end: number) => when(booleanCriteria.NUMBER_BETWEEN, start, end),
      whenNumberNotBetween: (start: number, end: number) =>
        when(booleanCriteria.NUMBER_NOT_BETWEEN, start, end),
      whenNumberEqualTo: (number: number) => when(booleanCriteria.NUMBER_EQUAL_TO, number),
      whenNumberNotEqualTo: (number: number) => when(booleanCriteria.NUMBER_NOT_EQUAL_TO, number),
      whenNumberGreaterThan: (number: number) => when(booleanCriteria.NUMBER_GREATER_THAN, number),
      whenNumberGreaterThanOrEqualTo: (number: number) =>
        when(booleanCriteria.NUMBER_GREATER_THAN_OR_EQUAL_TO, number),
      whenNumberLessThan: (number: number) => when(booleanCriteria.NUMBER_LESS_THAN, number),
      whenNumberLessThanOrEqualTo: (number: number) =>
        when(booleanCriteria.NUMBER_LESS_THAN_OR_EQUAL_TO, number),
      whenTextContains: (text: string) => when(booleanCriteria.TEXT_CONTAINS, text),
      whenTextDoesNotContain: (text: string) => when(booleanCriteria.TEXT_DOES_NOT_CONTAIN, text),
      whenTextEqualTo: (text: string) => when(booleanCriteria.TEXT_EQUAL_TO, text),
      whenTextStartsWith: (text: string) => when(booleanCriteria.TEXT_STARTS_WITH, text),
      whenTextEndsWith: (text: string) => when(booleanCriteria.TEXT_ENDS_WITH, text),
    },
  );
  return builder;
}
