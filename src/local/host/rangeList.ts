import type { GoogleRange, GoogleRangeList } from './google.ts';
import { placeOf } from './range.ts';
import { rangeAlignment } from './rangeAlignment.ts';
import { rangeFormats } from './rangeFormats.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

/** Members that a list has in common with its ranges: it does to each of them what the range's own does. */
const shared = [
  'setBackground',
  'setBorder',
  'setFontColor',
  'setFontSize',
  'setFontStyle',
  'setFontWeight',
  'setHorizontalAlignment',
  'setNumberFormat',
  'setVerticalAlignment',
  'setWrap',
] as const;

/** Ranges of one sheet that are changed by one call. */
export function createRangeList(workbook: Workbook, ranges: readonly GoogleRange[]): GoogleRangeList {
  const members = ranges.map((range): Partial<GoogleRange> => {
    const context = { ...placeOf(range), range: () => range };
    return { ...rangeFormats(context), ...rangeAlignment(context) };
  });
  const forAll =
    (name: (typeof shared)[number]) =>
    (...values: unknown[]): GoogleRangeList => {
      for (const each of members) (each[name] as (...values: unknown[]) => unknown)(...values);
      return list;
    };
  const list: GoogleRangeList = strict<GoogleRangeList>(workbook.calls, 'RangeList', {
    getRanges: () => [...ranges],
    ...Object.fromEntries(shared.map((name) => [name, forAll(name)])),
  });
  return list;
}
