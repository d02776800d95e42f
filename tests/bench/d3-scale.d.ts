/** What the benchmark uses of d3-scale, whose package names no types. */
declare module 'd3-scale' {
  export function scaleLinear(domain: readonly number[], range: readonly number[]): (value: number) => number;
}
