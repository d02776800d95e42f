/**
 * Refusing arguments: `NAME must be above LIMIT UNIT, got VALUE`. NaN and infinities are refused by every check.
 * The unit is empty for a pure number.
 */

const quantity = (value: number, unit: string) => (unit === '' ? `${value}` : `${value} ${unit}`);

/** @throws RangeError when value is NaN or infinite */
export function requireFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`);
}

/** @throws RangeError when value is not above limit */
export function requireAbove(name: string, value: number, limit: number, unit: string): void {
  requireFinite(name, value);
  if (!(value > limit)) throw new RangeError(`${name} must be above ${quantity(limit, unit)}, got ${value}`);
}

/** @throws RangeError when value is below limit */
export function requireAtLeast(name: string, value: number, limit: number, unit: string): void {
  requireFinite(name, value);
  if (!(value >= limit))
    throw new RangeError(`${name} must be at least ${quantity(limit, unit)}, got ${value}`);
}

/** Both limits are accepted. @throws RangeError when value is below low or above high */
export function requireBetween(name: string, value: number, low: number, high: number, unit: string): void {
  requireFinite(name, value);
  if (!(value >= low && value <= high))
    throw new RangeError(`${name} must be between ${low} and ${quantity(high, unit)}, got ${value}`);
}
