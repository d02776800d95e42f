/** What is held against other people's programs, and where. */
export interface SecondOpinion {
  readonly what: string;
  /** npm package, or the program's command */
  readonly program: string;
  readonly file: string;
}

export const secondOpinions: readonly SecondOpinion[] = [
  { what: 'every unit it knows, temperatures', program: 'unitmath', file: 'tests/outside/unitmath.test.ts' },
  {
    what: 'every unit, where the program is installed',
    program: 'units',
    file: 'tests/outside/gnuUnits.test.ts',
  },
  {
    what: 'extreme loadings of random aircraft, as a linear programme',
    program: 'javascript-lp-solver',
    file: 'tests/engineering/loadingLp.ts',
  },
  {
    what: 'the same linear programme, by the GNU kit',
    program: 'glpk.js',
    file: 'tests/engineering/loadingLp.ts',
  },
  {
    what: 'straight lines between points',
    program: 'd3-scale',
    file: 'tests/outside/numericLibraries.test.ts',
  },
  {
    what: 'slopes of the monotone curve',
    program: '@yr/monotone-cubic-spline',
    file: 'tests/outside/numericLibraries.test.ts',
  },
  {
    what: 'roots: NTU of an effectiveness, thrust of a power',
    program: 'simple-statistics',
    file: 'tests/outside/numericLibraries.test.ts',
  },
  {
    what: 'cross-flow effectiveness by Poisson probabilities',
    program: 'jstat',
    file: 'tests/outside/numericLibraries.test.ts',
  },
  {
    what: 'integrals: atmosphere, range, cross-flow, takeoff, climb, cruise',
    program: 'odex',
    file: 'tests/engineering/independentIntegrator.ts',
  },
];
