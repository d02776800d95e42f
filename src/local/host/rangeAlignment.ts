import type { Style } from './engine.ts';
import { wrapStrategies } from './enumerations.ts';
import type { GoogleRange, GoogleWrapStrategy } from './google.ts';
import type { RangeContext } from './range.ts';

type Horizontal = 'left' | 'center' | 'normal' | 'right' | null;
type Vertical = 'top' | 'middle' | 'bottom' | null;

/** Alignment and wrapping of a range. */
export function rangeAlignment(context: RangeContext): Partial<GoogleRange> {
  const { workbook, sheetId, zone } = context;

  const setStyle = (style: Style): GoogleRange => {
    workbook.dispatch('SET_FORMATTING', { sheetId, target: [zone], style });
    return context.range();
  };
  const wrap = (wrapping: NonNullable<Style['wrapping']>) => setStyle({ wrapping });

  return {
    setHorizontalAlignment: (alignment: Horizontal) =>
      setStyle({ align: (alignment === 'normal' ? null : alignment) as NonNullable<Style['align']> }),
    setVerticalAlignment: (alignment: Vertical) =>
      setStyle({ verticalAlign: alignment as NonNullable<Style['verticalAlign']> }),
    setWrap: (isWrapped: boolean) => wrap(isWrapped ? 'wrap' : 'overflow'),
    setWrapStrategy: (strategy: GoogleWrapStrategy) => wrap(engineWrapping(strategy)),
  };
}

function engineWrapping(strategy: GoogleWrapStrategy): NonNullable<Style['wrapping']> {
  if (strategy === wrapStrategies.WRAP) return 'wrap';
  if (strategy === wrapStrategies.CLIP) return 'clip';
  if (strategy === wrapStrategies.OVERFLOW) return 'overflow';
  throw new Error(`the strategy must be a WrapStrategy, got ${strategy}`);
}
