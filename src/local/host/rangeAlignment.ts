import { setStyles } from './cellStyles.ts';
import type { Style } from './engine.ts';
import { wrapStrategies } from './enumerations.ts';
import type { GoogleRange, GoogleWrapStrategy } from './google.ts';
import type { RangeContext } from './rangePlace.ts';

export type Horizontal = 'left' | 'center' | 'normal' | 'right' | null;
export type Vertical = 'top' | 'middle' | 'bottom' | null;

/** Alignment and wrapping of a range. */
export function rangeAlignment(context: RangeContext): Partial<GoogleRange> {
  const { workbook, sheetId, zone } = context;

  const setStyle = (style: Style): GoogleRange => {
    workbook.dispatch('SET_FORMATTING', { sheetId, target: [zone], style });
    return context.range();
  };
  const wrap = (wrapping: NonNullable<Style['wrapping']>) => setStyle({ wrapping });

  return {
    setHorizontalAlignment: (alignment: Horizontal) => setStyle(horizontal(alignment)),
    setHorizontalAlignments: (alignments: Horizontal[][]) => setStyles(context, alignments, horizontal),
    setVerticalAlignment: (alignment: Vertical) => setStyle(vertical(alignment)),
    setWrap: (isWrapped: boolean) => setStyle(wrapped(isWrapped)),
    setWraps: (areWrapped: boolean[][]) => setStyles(context, areWrapped, wrapped),
    setWrapStrategy: (strategy: GoogleWrapStrategy) => wrap(engineWrapping(strategy)),
    setWrapStrategies: (strategies: GoogleWrapStrategy[][]) =>
      setStyles(context, strategies, (strategy) => ({ wrapping: engineWrapping(strategy) })),
  };
}

export const wrapped = (isWrapped: boolean): Style => ({ wrapping: isWrapped ? 'wrap' : 'overflow' });
export const horizontal = (alignment: Horizontal): Style => ({
  align: (alignment === 'normal' ? null : alignment) as NonNullable<Style['align']>,
});

export const vertical = (alignment: Vertical): Style => ({
  verticalAlign: alignment as NonNullable<Style['verticalAlign']>,
});

function engineWrapping(strategy: GoogleWrapStrategy): NonNullable<Style['wrapping']> {
  if (strategy === wrapStrategies.WRAP) return 'wrap';
  if (strategy === wrapStrategies.CLIP) return 'clip';
  if (strategy === wrapStrategies.OVERFLOW) return 'overflow';
  throw new Error(`the strategy must be a WrapStrategy, got ${strategy}`);
}
