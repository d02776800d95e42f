import type { ConditionalRule, DataValidation } from 'hucre/xlsx';
import { zoneToA1 } from './host/a1.ts';
import type { GoogleRange } from './host/google.ts';
import { placeOf } from './host/rangePlace.ts';
import { currentRule } from './host/rangeValidation.ts';
import type { Workbook } from './host/workbook.ts';
import { absoluteReference, cellStyle } from './workbookFileStyle.ts';

const operators: Readonly<Record<string, NonNullable<DataValidation['operator']>>> = {
  NUMBER_BETWEEN: 'between',
  NUMBER_NOT_BETWEEN: 'notBetween',
  NUMBER_EQUAL_TO: 'equal',
  NUMBER_NOT_EQUAL_TO: 'notEqual',
  NUMBER_GREATER_THAN: 'greaterThan',
  NUMBER_GREATER_THAN_OR_EQUAL_TO: 'greaterThanOrEqual',
  NUMBER_LESS_THAN: 'lessThan',
  NUMBER_LESS_THAN_OR_EQUAL_TO: 'lessThanOrEqual',
};

/** A list of values in the file itself: 255 characters, and commas part them. */
const listLimit = 255;

/** Validation rules of a sheet. What the format can't hold (a list with commas, rules about text) is left out. */
export function fileValidations(workbook: Workbook, sheetId: string): DataValidation[] {
  return workbook.model.getters.getDataValidationRules(sheetId).flatMap((engineRule) => {
    const rule = currentRule(workbook, sheetId, engineRule);
    const kind = rule && validationKind(workbook, String(rule.criteria), rule.values);
    if (!rule || !kind) return [];
    return [
      {
        ...kind,
        range: engineRule.ranges.map(({ zone }) => zoneToA1(zone)).join(' '),
        allowBlank: true,
        showErrorMessage: true,
        errorStyle: rule.allowInvalid ? 'warning' : 'stop',
        ...(rule.helpText ? { showInputMessage: true, inputMessage: rule.helpText } : {}),
      } satisfies DataValidation,
    ];
  });
}

function validationKind(
  workbook: Workbook,
  criteria: string,
  values: readonly unknown[],
): Pick<DataValidation, 'type' | 'operator' | 'formula1' | 'formula2' | 'values'> | undefined {
  const [first, second] = values;
  const operator = operators[criteria];
  if (operator) {
    const upper = second === undefined ? {} : { formula2: String(second) };
    return { type: 'decimal', operator, formula1: String(first), ...upper };
  }
  switch (criteria) {
    case 'CHECKBOX':
      return { type: 'list', values: ['TRUE', 'FALSE'] };
    case 'VALUE_IN_LIST': {
      const list = (first as unknown[]).map(String);
      const isHeld = list.join().length <= listLimit && !list.some((value) => /[",]/.test(value));
      return isHeld ? { type: 'list', values: list } : undefined;
    }
    case 'VALUE_IN_RANGE':
      return { type: 'list', formula1: absoluteReference(workbook, placeOf(first as GoogleRange)) };
    case 'CUSTOM_FORMULA':
      return { type: 'custom', formula1: String(first).replace(/^=/, '') };
    default:
      return undefined;
  }
}

/** Conditional formats of a sheet, each as a formula about the first cell of its range. */
export function fileFormatRules(workbook: Workbook, sheetId: string): ConditionalRule[] {
  const { getters } = workbook.model;
  return getters.getConditionalFormats(sheetId).flatMap(({ id, ranges }, index) => {
    const rule = workbook.formatRules.get(id);
    if (!rule) return [];
    return ranges.map((range) => {
      const { zone } = getters.getRangeFromSheetXC(sheetId, range);
      const cell = zoneToA1({ ...zone, right: zone.left, bottom: zone.top });
      return {
        type: 'expression' as const,
        priority: index + 1,
        range: zoneToA1(zone),
        formula: conditionFormula(cell, String(rule.criteria), rule.values),
        style: cellStyle(rule.style),
      };
    });
  });
}

function conditionFormula(cell: string, criteria: string, [first, second]: readonly unknown[]): string {
  const text = `"${String(first).replace(/"/g, '""')}"`;
  const number = (condition: string) => `AND(ISNUMBER(${cell}),${condition})`;
  switch (criteria) {
    case 'CUSTOM_FORMULA':
      return String(first).replace(/^=/, '');
    case 'CELL_EMPTY':
      return `LEN(${cell})=0`;
    case 'CELL_NOT_EMPTY':
      return `LEN(${cell})>0`;
    case 'TEXT_EQUAL_TO':
      return `${cell}=${text}`;
    case 'TEXT_CONTAINS':
      return `ISNUMBER(SEARCH(${text},${cell}))`;
    case 'TEXT_DOES_NOT_CONTAIN':
      return `NOT(ISNUMBER(SEARCH(${text},${cell})))`;
    case 'TEXT_STARTS_WITH':
      return `LEFT(${cell},${String(first).length})=${text}`;
    case 'TEXT_ENDS_WITH':
      return `RIGHT(${cell},${String(first).length})=${text}`;
    case 'NUMBER_BETWEEN':
      return number(`${cell}>=${first},${cell}<=${second}`);
    case 'NUMBER_NOT_BETWEEN':
      return number(`OR(${cell}<${first},${cell}>${second})`);
    default:
      return number(`${cell}${comparisons[criteria]}${first}`);
  }
}

const comparisons: Readonly<Record<string, string>> = {
  NUMBER_EQUAL_TO: '=',
  NUMBER_NOT_EQUAL_TO: '<>',
  NUMBER_GREATER_THAN: '>',
  NUMBER_GREATER_THAN_OR_EQUAL_TO: '>=',
  NUMBER_LESS_THAN: '<',
  NUMBER_LESS_THAN_OR_EQUAL_TO: '<=',
};
