/**
 * Google's enumerations. A member is an opaque object that prints as its name, as Google's are; a member that does not
 * exist throws.
 */
function enumeration<T>(name: string, members: readonly string[]): T {
  const values = new Map(
    members.map((member) => [member, Object.freeze({ toString: () => member, toJSON: () => member })]),
  );
  return new Proxy(Object.fromEntries(values), {
    get(target, key) {
      if (typeof key === 'symbol' || key in target) return Reflect.get(target, key);
      throw new Error(`${name} has no member ${key}`);
    },
  }) as T;
}

type Sheets = typeof GoogleAppsScript.Spreadsheet;
type Charts = typeof GoogleAppsScript.Charts;

export const borderStyles = enumeration<Sheets['BorderStyle']>('BorderStyle', [
  'DOTTED',
  'DASHED',
  'SOLID',
  'SOLID_MEDIUM',
  'SOLID_THICK',
  'DOUBLE',
]);

export const wrapStrategies = enumeration<Sheets['WrapStrategy']>('WrapStrategy', [
  'WRAP',
  'OVERFLOW',
  'CLIP',
]);

export const protectionTypes = enumeration<Sheets['ProtectionType']>('ProtectionType', ['RANGE', 'SHEET']);

const numberCriteria = [
  'NUMBER_BETWEEN',
  'NUMBER_EQUAL_TO',
  'NUMBER_GREATER_THAN',
  'NUMBER_GREATER_THAN_OR_EQUAL_TO',
  'NUMBER_LESS_THAN',
  'NUMBER_LESS_THAN_OR_EQUAL_TO',
  'NUMBER_NOT_BETWEEN',
  'NUMBER_NOT_EQUAL_TO',
];

export const validationCriteria = enumeration<Sheets['DataValidationCriteria']>('DataValidationCriteria', [
  'DATE_AFTER',
  'DATE_BEFORE',
  'DATE_BETWEEN',
  'DATE_EQUAL_TO',
  'DATE_IS_VALID_DATE',
  'DATE_NOT_BETWEEN',
  'DATE_ON_OR_AFTER',
  'DATE_ON_OR_BEFORE',
  ...numberCriteria,
  'TEXT_CONTAINS',
  'TEXT_DOES_NOT_CONTAIN',
  'TEXT_EQUAL_TO',
  'TEXT_IS_VALID_EMAIL',
  'TEXT_IS_VALID_URL',
  'VALUE_IN_LIST',
  'VALUE_IN_RANGE',
  'CUSTOM_FORMULA',
  'CHECKBOX',
]);

export const booleanCriteria = enumeration<Sheets['BooleanCriteria']>('BooleanCriteria', [
  'CELL_EMPTY',
  'CELL_NOT_EMPTY',
  'DATE_AFTER',
  'DATE_BEFORE',
  'DATE_EQUAL_TO',
  'DATE_AFTER_RELATIVE',
  'DATE_BEFORE_RELATIVE',
  'DATE_EQUAL_TO_RELATIVE',
  ...numberCriteria,
  'TEXT_CONTAINS',
  'TEXT_DOES_NOT_CONTAIN',
  'TEXT_EQUAL_TO',
  'TEXT_STARTS_WITH',
  'TEXT_ENDS_WITH',
  'CUSTOM_FORMULA',
]);

export const chartTypes = enumeration<Charts['ChartType']>('ChartType', [
  'TIMELINE',
  'AREA',
  'BAR',
  'BUBBLE',
  'CANDLESTICK',
  'COLUMN',
  'COMBO',
  'GAUGE',
  'GEO',
  'HISTOGRAM',
  'RADAR',
  'LINE',
  'ORG',
  'PIE',
  'SCATTER',
  'SPARKLINE',
  'STEPPED_AREA',
  'TABLE',
  'TREEMAP',
  'WATERFALL',
]);

export const mergeStrategies = enumeration<Charts['ChartMergeStrategy']>('ChartMergeStrategy', [
  'MERGE_COLUMNS',
  'MERGE_ROWS',
]);

export const hiddenDimensionStrategies = enumeration<Charts['ChartHiddenDimensionStrategy']>(
  'ChartHiddenDimensionStrategy',
  ['IGNORE_BOTH', 'IGNORE_ROWS', 'IGNORE_COLUMNS', 'SHOW_BOTH'],
);

export const buttons = enumeration<(typeof GoogleAppsScript.Base)['Button']>('Button', [
  'CLOSE',
  'OK',
  'CANCEL',
  'YES',
  'NO',
]);

export const buttonSets = enumeration<(typeof GoogleAppsScript.Base)['ButtonSet']>('ButtonSet', [
  'OK',
  'OK_CANCEL',
  'YES_NO',
  'YES_NO_CANCEL',
]);

export const digestAlgorithms = enumeration<(typeof GoogleAppsScript.Utilities)['DigestAlgorithm']>(
  'DigestAlgorithm',
  ['MD2', 'MD5', 'SHA_1', 'SHA_256', 'SHA_384', 'SHA_512'],
);

export const charsets = enumeration<(typeof GoogleAppsScript.Utilities)['Charset']>('Charset', [
  'US_ASCII',
  'UTF_8',
]);
