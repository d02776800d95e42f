/**
 * Simpson's rule: ∫ f dx = h/3 (f₀ + 4 f₁ + 2 f₂ + … + 4 f_(n−1) + f_n), n even.
 * @param values f at even steps from one end to the other, an odd number of them, at least 3
 * @param step h, from one to the next
 * @returns the integral, exact to the third degree
 * @throws RangeError when there are not so many values
 * @source numerical analysis textbooks (from memory)
 */
export function simpson(values: readonly number[], step: number): number {
  const last = values.length - 1;
  if (last < 2 || last % 2 === 1)
    throw new RangeError(`values must be an odd number, at least 3, got ${values.length}`);
  const weight = (index: number) => (index === 0 || index === last ? 1 : index % 2 === 1 ? 4 : 2);
  return (values.reduce((sum, value, index) => sum + weight(index) * value, 0) * step) / 3;
}
