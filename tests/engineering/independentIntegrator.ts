/** ODEX of Hairer and Wanner (Gragg–Bulirsch–Stoer extrapolation), by the npm package of that name. */
import { createRequire } from 'node:module';

type Rates = (x: number, y: number[]) => number[];

interface OdexSolver {
  absoluteTolerance: number;
  relativeTolerance: number;
  solve(rates: Rates, from: number, start: number[], to: number): { y: number[]; outcome: number };
}

// An import would make the compiler check the package's own sources, which are not written for these options.
const { Solver, Outcome } = createRequire(import.meta.url)('odex') as {
  Solver: new (unknowns: number) => OdexSolver;
  Outcome: { Converged: number };
};

/** y at the end of the interval. */
export function integrate(rates: Rates, from: number, start: number[], to: number): number[] {
  const solver = new Solver(start.length);
  solver.absoluteTolerance = 1e-9;
  solver.relativeTolerance = 1e-9;
  const { y, outcome } = solver.solve(rates, from, start, to);
  if (outcome !== Outcome.Converged) throw new Error(`the integrator did not converge: outcome ${outcome}`);
  return y;
}
