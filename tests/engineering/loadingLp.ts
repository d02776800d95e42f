/**
 * The extreme CG of a loaded aircraft by linear programming: an independent route to what the code finds without search.
 *
 * (M + Σ a x)/(W + Σ x) is linear-fractional; with t = 1/(W + Σ x) and y = x t it is the linear programme
 * M t + Σ a y → extreme, W t + Σ y = 1, every limit on x times t (Charnes and Cooper, 1962).
 */
import GLPK from 'glpk.js/node';
import solver from 'javascript-lp-solver';
import type { Side } from '../../src/engineering/envelope.ts';
import type { LoadingLimits } from '../../src/engineering/loadingPolygon.ts';

interface LinearProgramme {
  /** upper limits of sums, and the one sum that is given */
  readonly constraints: Readonly<Record<string, { readonly max?: number; readonly equal?: number }>>;
  /** what each variable adds to the CG, and to each constrained sum */
  readonly variables: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

function linearProgramme(limits: LoadingLimits): LinearProgramme {
  const stations = [...limits.stations, ...limits.tanks];
  const zeroFuelWeight = limits.maximumZeroFuelWeight ?? Number.POSITIVE_INFINITY;
  const leastLoad = stations.reduce((sum, { minimum }) => sum + minimum, 0);
  const leastPayload = limits.stations.reduce((sum, { minimum }) => sum + minimum, 0);
  const weight = limits.empty.weight + leastLoad;
  const moment = limits.empty.moment + stations.reduce((sum, { minimum, arm }) => sum + minimum * arm, 0);

  const constraints: Record<string, { max?: number; equal?: number }> = {
    normalised: { equal: 1 },
    takeoff: { max: 0 },
    zeroFuel: { max: 0 },
  };
  const inverse: Record<string, number> = { cg: moment, normalised: weight };
  inverse.takeoff = -(limits.maximumWeight - weight);
  inverse.zeroFuel = Number.isFinite(zeroFuelWeight)
    ? -(zeroFuelWeight - limits.empty.weight - leastPayload)
    : -1e6;
  const variables: Record<string, Record<string, number>> = { inverse };
  stations.forEach(({ arm, minimum, maximum }, index) => {
    const load: Record<string, number> = { cg: arm, normalised: 1, takeoff: 1, [`capacity${index}`]: 1 };
    if (index < limits.stations.length) load.zeroFuel = 1;
    variables[`load${index}`] = load;
    constraints[`capacity${index}`] = { max: 0 };
    inverse[`capacity${index}`] = -(maximum - minimum);
  });
  for (const { name, stations: members, maximum } of limits.groups ?? []) {
    constraints[name] = { max: 0 };
    let least = 0;
    stations.forEach((station, index) => {
      if (!members.includes(station.name)) return;
      least += station.minimum;
      variables[`load${index}`]![name] = 1;
    });
    inverse[name] = -(maximum - least);
  }
  return { constraints, variables };
}

export function extremeCgByLinearProgramme(limits: LoadingLimits, side: Side): number {
  const { constraints, variables } = linearProgramme(limits);
  const solution = solver.Solve({
    optimize: 'cg',
    opType: side === 'aft' ? 'max' : 'min',
    constraints,
    variables,
  }) as { feasible: boolean; result: number };
  if (!solution.feasible) throw new Error('the linear programme found no loading');
  return solution.result;
}

const glpk = await GLPK();

/** The same programme for a second solver, the GNU Linear Programming Kit. */
export function extremeCgByGlpk(limits: LoadingLimits, side: Side): number {
  const { constraints, variables } = linearProgramme(limits);
  const terms = (sum: string) =>
    Object.entries(variables)
      .filter(([, adds]) => adds[sum] !== undefined)
      .map(([name, adds]) => ({ name, coef: adds[sum] as number }));
  const { result } = glpk.solve(
    {
      name: 'extreme CG',
      objective: {
        direction: side === 'aft' ? glpk.GLP_MAX : glpk.GLP_MIN,
        name: 'cg',
        vars: terms('cg'),
      },
      subjectTo: Object.entries(constraints).map(([name, { max = 0, equal }]) => ({
        name,
        vars: terms(name),
        bnds:
          equal === undefined
            ? { type: glpk.GLP_UP, ub: max, lb: 0 }
            : { type: glpk.GLP_FX, ub: equal, lb: equal },
      })),
    },
    glpk.GLP_MSG_OFF,
  );
  if (result.status !== glpk.GLP_OPT) throw new Error('the linear programme found no loading');
  return result.z;
}
