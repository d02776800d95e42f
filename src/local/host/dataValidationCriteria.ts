import type { ValidationRule } from './dataValidation.ts';
import type { DataValidationCriterion } from './engine.ts';
import type { GoogleRange } from './google.ts';
import { placeOf } from './range.ts';
import type { Workbook } from './workbook.ts';

/** The engine's criteria that take the same values as Google's. */
const sameValues: Readonly<Record<string, DataValidationCriterion['type']>> = {
  DATE_IS_VALID_DATE: 'dateIsValid',
  NUMBER_BETWEEN: 'isBetween',
  NUMBER_NOT_BETWEEN: 'isNotBetween',
  NUMBER_EQUAL_TO: 'isEqual',
  NUMBER_NOT_EQUAL_TO: 'isNotEqual',
  NUMBER_GREATER_THAN: 'isGreaterThan',
  NUMBER_GREATER_THAN_OR_EQUAL_TO: 'isGreaterOrEqualTo',
  NUMBER_LESS_THAN: 'isLessThan',
  NUMBER_LESS_THAN_OR_EQUAL_TO: 'isLessOrEqualTo',
  TEXT_CONTAINS: 'containsText',
  TEXT_DOES_NOT_CONTAIN: 'notContainsText',
  TEXT_EQUAL_TO: 'isEqualText',
  CUSTOM_FORMULA: 'customFormula',
  CHECKBOX: 'isBoolean',
};

export function engineCriterion(
  workbook: Workbook,
  sheetId: string,
  { criteria, values }: ValidationRule,
): DataValidationCriterion {
  const [first, showDropdown] = values;
  const displayStyle = showDropdown ? 'arrow' : 'plainText';
  switch (String(criteria)) {
    case 'VALUE_IN_LIST':
      return { type: 'isValueInList', values: (first as string[]).map(String), displayStyle };
    case 'VALUE_IN_RANGE': {
      const place = placeOf(first as GoogleRange);
      const { getters } = workbook.model;
      const range = getters.getRangeFromZone(place.sheetId, place.zone);
      return { type: 'isValueInRange', values: [getters.getRangeString(range, sheetId)], displayStyle };
    }
    default: {
      const type = sameValues[String(criteria)];
      if (!type) throw new Error(`validation ${criteria} is not implemented by the local host`);
      return { type, values: values.map(String) } as DataValidationCriterion;
    }
  }
}
