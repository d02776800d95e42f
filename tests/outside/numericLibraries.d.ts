/** What the tests use of libraries whose packages name no types. */
declare module '@yr/monotone-cubic-spline' {
  /** The first point, then rows of control points and ends: [x1, y1, x2, y2, x, y] and later [x2, y2, x, y] */
  export function points(points: readonly (readonly [number, number])[]): number[][];
}

declare module 'jstat' {
  const jstat: {
    poisson: { cdf(n: number, mean: number): number };
  };
  export default jstat;
}
