import type { ValidationRule } from './dataValidation.ts';
import type { DataValidationCriterion } from './engine.ts';
import { engineCriteria } from './engineCriteria.ts';
import type { GoogleRange } from './google.ts';
import { placeOf } from './rangePlace.ts';
import type { Workbook } from './workbook.ts';

const sameValues: Readonly<Record<string, DataValidationCriterion['type']>> = {
  ...engineCriteria,
  DATE_IS_VALID_DATE: 'dateIsValid',
  TEXT_EQUAL_TO: 'isEqualText',
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
