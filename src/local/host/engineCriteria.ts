/** The engine's criteria that take the same values as Google's of the given name, in rules of both kinds. */
export const engineCriteria = {
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
  CUSTOM_FORMULA: 'customFormula',
} as const;
