/**
 * An object whose properties are computed when they are first read, and once: a block that shows only weights does not wait
 * for the flight and the cooling of every package. To copy it with `...` is to compute all of it.
 * @param parts for each property, how it follows from the others
 */
export function lazily<T extends object>(parts: { readonly [K in keyof T]: (whole: T) => T[K] }): T {
  const whole = {} as T;
  for (const key of Object.keys(parts) as (keyof T)[]) {
    const get = () => {
      const value = parts[key](whole);
      Object.defineProperty(whole, key, { value, enumerable: true });
      return value;
    };
    Object.defineProperty(whole, key, { get, enumerable: true, configurable: true });
  }
  return whole;
}
