import { validationCriteria } from './enumerations.ts';
import type {
  GoogleDataValidation,
  GoogleDataValidationBuilder,
  GoogleDataValidationCriteria,
  GoogleRange,
} from './google.ts';
import { ObjectRecords } from './objectRecords.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

export interface ValidationRule {
  readonly criteria: GoogleDataValidationCriteria;
  /** As Google's `getCriteriaValues` gives them. */
  readonly values: readonly unknown[];
  readonly allowInvalid: boolean;
  readonly helpText: string | null;
}

const specs = new ObjectRecords<ValidationRule>('a DataValidation');

export const ruleOf = (rule: GoogleDataValidation): ValidationRule => specs.of(rule);

export function createValidation(workbook: Workbook, spec: ValidationRule): GoogleDataValidation {
  const rule = strict<GoogleDataValidation>(workbook.calls, 'DataValidation', {
    copy: () => createValidationBuilder(workbook, spec),
    getAllowInvalid: () => spec.allowInvalid,
    getCriteriaType: () => spec.criteria,
    getCriteriaValues: () => [...spec.values],
    getHelpText: () => spec.helpText ?? '',
  });
  specs.set(rule, spec);
  return rule;
}

/** A builder, of a copy or of a new rule; new rules warn and let the input stand until told otherwise. */
export function createValidationBuilder(
  workbook: Workbook,
  start?: ValidationRule,
): GoogleDataValidationBuilder {
  let criteria = start?.criteria;
  let values = start?.values ?? [];
  let allowInvalid = start?.allowInvalid ?? true;
  let helpText = start?.helpText ?? null;

  const require = (kind: GoogleDataValidationCriteria, ...arguments_: readonly unknown[]) => {
    criteria = kind;
    values = arguments_;
    return builder;
  };
  const chosen = () => {
    if (criteria === undefined) throw new Error('the rule has no criteria yet');
    return criteria;
  };

  const builder: GoogleDataValidationBuilder = strict<GoogleDataValidationBuilder>(
    workbook.calls,
    'DataValidationBuilder',
    {
      build: () => createValidation(workbook, { criteria: chosen(), values, allowInvalid, helpText }),
      copy: () => createValidationBuilder(workbook, { criteria: chosen(), values, allowInvalid, helpText }),
      getAllowInvalid: () => allowInvalid,
      getCriteriaType: chosen,
      getCriteriaValues: () => [...values],
      getHelpText: () => helpText,
      requireCheckbox(...custom: unknown[]) {
        if (custom.length > 0)
          throw new Error('a checkbox with values of its own is not implemented by the local host');
        return require(validationCriteria.CHECKBOX);
      },
      requireDate: () => require(validationCriteria.DATE_IS_VALID_DATE),
      requireFormulaSatisfied: (formula: string) => require(validationCriteria.CUSTOM_FORMULA, formula),
      requireNumberBetween: (start: number, end: number) =>
        require(validationCriteria.NUMBER_BETWEEN, start, end),
      requireNumberNotBetween: (start: number, end: number) =>
        require(validationCriteria.NUMBER_NOT_BETWEEN, start, end),
      requireNumberEqualTo: (number: number) => require(validationCriteria.NUMBER_EQUAL_TO, number),
      requireNumberNotEqualTo: (number: number) => require(validationCriteria.NUMBER_NOT_EQUAL_TO, number),
      requireNumberGreaterThan: (number: number) => require(validationCriteria.NUMBER_GREATER_THAN, number),
      requireNumberGreaterThanOrEqualTo: (number: number) =>
        require(validationCriteria.NUMBER_GREATER_THAN_OR_EQUAL_TO, number),
      requireNumberLessThan: (number: number) => require(validationCriteria.NUMBER_LESS_THAN, number),
      requireNumberLessThanOrEqualTo: (number: number) =>
        require(validationCriteria.NUMBER_LESS_THAN_OR_EQUAL_TO, number),
      requireTextContains: (text: string) => require(validationCriteria.TEXT_CONTAINS, text),
      requireTextDoesNotContain: (text: string) => require(validationCriteria.TEXT_DOES_NOT_CONTAIN, text),
      requireTextEqualTo: (text: string) => require(validationCriteria.TEXT_EQUAL_TO, text),
      requireValueInList: (list: string[], showDropdown = true) =>
        require(validationCriteria.VALUE_IN_LIST, [...list], showDropdown),
      requireValueInRange: (range: GoogleRange, showDropdown = true) =>
        require(validationCriteria.VALUE_IN_RANGE, range, showDropdown),
      setAllowInvalid(isAllowed: boolean) {
        allowInvalid = isAllowed;
        return builder;
      },
      setHelpText(text: string) {
        helpText = text;
        return builder;
      },
    },
  );
  return builder;
}
