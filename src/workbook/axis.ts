/** A fixed range of an axis, its ends on round numbers. */
export interface AxisRange {
  readonly min: number;
  readonly max: number;
}

const roundSteps = [1, 2, 2.5, 5, 10];

/**
 * The range that holds all values with a little room, ending on multiples of a round step.
 * @param fromZero the axis begins at zero where no value is below
 * @returns undefined for no values
 */
export function axisRange(values: readonly number[], fromZero: boolean): AxisRange | undefined {
  if (values.length === 0) return undefined;
  const lowest = Math.min(...values);
  const highest = Math.max(...values);
  const low = fromZero ? Math.min(0, lowest) : lowest;
  const span = highest - low || Math.abs(highest) || 1;
  const rough = span / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = (roundSteps.find((each) => each * power >= rough) ?? 10) * power;
  const room = span * 0.03;
  const below = Math.floor((low - room) / step) * step;
  const min = lowest >= 0 ? Math.max(0, fromZero ? 0 : below) : below;
  const max = Math.ceil((highest + room) / step) * step;
  return { min: Number(min.toPrecision(12)), max: Number(max.toPrecision(12)) };
}
