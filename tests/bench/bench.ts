/**
 * How long things take, as ratios within one run where a ratio can be had: machines differ.
 * Not a test: `npm run bench`.
 */
import { Script } from 'node:vm';
import fc from 'fast-check';
import { Bench } from 'tinybench';
import unitmath from 'unitmath';
import { monotoneCubic } from '../../src/engineering/curve.ts';
import { extremeLoading } from '../../src/engineering/loading.ts';
import type { LoadingLimits } from '../../src/engineering/loadingPolygon.ts';
import { dataFiles, scriptText } from '../../src/local/build.ts';
import { loadEngine } from '../../src/local/host/node/loadEngine.ts';
import { openLocalWorkbook } from '../../src/local/localWorkbook.ts';
import { type TableGrids, tableNames } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { toSi } from '../../src/units.ts';
import { extremeCgByGlpk, extremeCgByLinearProgramme } from '../engineering/loadingLp.ts';
import { randomAircraft, withoutOtherLimits } from '../engineering/randomAircraft.ts';
import { bareContext, htmlService } from '../local/bareContext.ts';
import { sample } from '../sample.ts';
import { withPackages } from '../workbook/grownTables.ts';
import { manyRows } from './manyRows.ts';
import { plainFormulas } from './plainFormulas.ts';

type Call = (...tables: readonly (Cell | Grid)[]) => Cell[][];

const grids = sample('godwit');
const code = await scriptText();
const files = await dataFiles();

function freshScript(index = 0): Record<string, Call> {
  const context = bareContext(htmlService(files));
  new Script(`${code}\n//${index}`).runInContext(context);
  return context as Record<string, Call>;
}

let edits = 0;

/** The tables as arguments, one weight edited anew: what was computed before does not help. */
function argumentsOf(tables: TableGrids): (Cell | Grid)[] {
  const [header = [], units = [], first = [], ...rest] = tables.components ?? [];
  const weight = header.indexOf('weight');
  const edited = first.map((cell, column) => (column === weight ? 240 + ++edits / 1e6 : cell));
  const components = [header, units, edited, ...rest];
  return tableNames.map((name) => (name === 'components' ? components : (tables[name] ?? '')));
}

function each<T>(items: readonly T[], job: (item: T) => unknown): void {
  for (const item of items) job(item);
}

/** Median time of a task in milliseconds. */
async function median(task: () => unknown, iterations = 30, warmupIterations = 3): Promise<number> {
  const bench = new Bench({ iterations, time: 0, warmupIterations, warmupTime: 0 });
  bench.add('task', task);
  const [measured] = await bench.run();
  const result = measured?.result;
  if (result === undefined || !('latency' in result)) throw new Error('the benchmark did not run');
  return result.latency.p50;
}

const line = (what: string, figure: string) => console.log(`${what.padEnd(62)} ${figure.padStart(17)}`);
const ms = (time: number) => `${time < 1 ? time.toPrecision(2) : time.toFixed(1)} ms`;
const times = (ratio: number) => `${ratio < 10 ? ratio.toFixed(1) : ratio.toFixed(0)} times`;

async function scriptLoad(): Promise<void> {
  line('Code.js, size', `${(Buffer.byteLength(code) / 1000).toFixed(1)} kB`);
  let index = 0;
  line(
    'load of Code.js in a fresh context, median of 50',
    ms(await median(() => void freshScript(++index), 50)),
  );
}

/** Every table function on the sample, warm. */
async function tableFunctionTimes(): Promise<void> {
  const script = freshScript();
  const five = withPackages(grids, 5);
  const names = Object.keys(script).filter((name) => code.includes(`function ${name}(airframe, `));
  for (const name of names) {
    const task = () => void script[name]?.(...argumentsOf(five));
    line(`${name}, 5 packages`, ms(await median(task)));
  }
}

/** Cost of the comparison as a table grows. */
async function growth(what: string, grown: (count: number) => TableGrids): Promise<void> {
  const { PACKAGE_COMPARISON: compare } = freshScript();
  if (compare === undefined) throw new Error('the script has no PACKAGE_COMPARISON');
  let first = 0;
  for (const count of [10, 100, 1000]) {
    const tables = grown(count);
    const time = await median(() => void compare(...argumentsOf(tables)), count > 100 ? 3 : 10);
    first ||= time;
    line(`PACKAGE_COMPARISON, ${count} ${what}`, ms(time));
    if (count > 10) line('  as long as with 10', times(time / first));
  }
}

/** The whole workbook from nothing: laid out by the script, and every block computed. */
async function layout(): Promise<void> {
  line(
    'workbook laid out and computed, script and engine loaded',
    ms(await median(() => openLocalWorkbook(grids), 5)),
  );
}

/** An aircraft with more stations than most: each station of the sample split into many. */
function finelyDivided(aircraft: LoadingLimits, parts: number): LoadingLimits {
  const split = (of: LoadingLimits['stations']) =>
    of.flatMap((station) =>
      Array.from({ length: parts }, (_, index) => ({
        name: `${station.name}.${index}`,
        arm: station.arm + index,
        minimum: station.minimum / parts,
        maximum: station.maximum / parts,
      })),
    );
  return { ...aircraft, stations: split(aircraft.stations), tanks: split(aircraft.tanks) };
}

type Solver = readonly [name: string, extremeCg: typeof extremeCgByLinearProgramme];
const pureScript: Solver = ['javascript-lp-solver', extremeCgByLinearProgramme];
const gnuKit: Solver = ['GLPK', extremeCgByGlpk]; // does not come to an end on some aircraft of 50 stations

/** Extreme loadings against linear-programming solvers on the same aircraft, all of them warm. */
async function againstSolvers(parts: number, ...solvers: readonly Solver[]): Promise<void> {
  const random = fc.sample(randomAircraft, { numRuns: 100, seed: 1 }).map(withoutOtherLimits);
  const aircraft = random.map((one) => finelyDivided(one, parts));
  const stations =
    aircraft.reduce((sum, one) => sum + one.stations.length + one.tanks.length, 0) / aircraft.length;
  const ours = ({ empty, stations, tanks, maximumWeight }: (typeof aircraft)[number]) =>
    extremeLoading(empty, [...stations, ...tanks], maximumWeight, 'aft').cg;
  const own = await median(() => each(aircraft, ours), 100, 3000);
  line(`extreme loading, 100 aircraft of ${stations.toFixed(0)} stations`, ms(own));
  for (const [name, extremeCg] of solvers) {
    const theirs = await median(() => each(aircraft, (one) => extremeCg(one, 'aft')), 20, 20);
    const furthest = Math.max(...aircraft.map((one) => Math.abs(ours(one) - extremeCg(one, 'aft'))));
    line(`  ${name} takes`, times(theirs / own));
    line('    greatest difference in CG', furthest.toExponential(1));
  }
}

async function againstLibraries(): Promise<void> {
  const points = [0.4, 0.55, 0.65, 0.75, 1].map((x) => ({ x, y: 0.5 - 0.1 * x + 0.06 * x * x }));
  const settings = Array.from({ length: 1000 }, (_, index) => 0.4 + (0.6 * index) / 999);
  const curve = monotoneCubic(points);
  const { scaleLinear } = await import('d3-scale');
  const piecewise = scaleLinear(
    points.map(({ x }) => x),
    points.map(({ y }) => y),
  );
  const cubic = await median(() => each(settings, (x) => curve(x)));
  const linear = await median(() => each(settings, (x) => piecewise(x)));
  line('monotone cubic, 1,000 values', ms(cubic));
  line('  a general library’s piecewise linear scale takes', times(linear / cubic));
  const own = await median(() => each(settings, (x) => toSi('mass', x, 'lb')));
  const library = await median(() => each(settings, (x) => unitmath(x, 'lb').to('kg')));
  line('conversion, 1,000 values', ms(own));
  line('  the general units library takes', times(library / own));
}

/** One edit of a weight: our workbook against a few plain formulas in the same spreadsheet engine. */
async function againstPlainFormulas(): Promise<void> {
  const workbook = await openLocalWorkbook(grids);
  let weight = 240;
  const ours = await median(() => workbook.setCell('Components', 'D5', ++weight), 10);
  const { Model } = await loadEngine();
  const names = workbook.block('PACKAGE_COMPARISON')[0]?.slice(2).map(String) ?? [];
  const { sheet, results } = plainFormulas(grids, names);
  const model = new Model({
    sheets: [{ id: 'plain', name: 'Plain', colNumber: 40, rowNumber: 120, cells: sheet }],
  });
  const plain = await median(() => {
    model.dispatch('UPDATE_CELL', { sheetId: 'plain', col: 1, row: 0, content: String(++weight) });
  }, 10);
  line('edit of one weight, every block of the workbook recalculated', ms(ours));
  line(`edit of one weight, ${results} plain formulas in the same engine`, ms(plain));
}

await scriptLoad();
await tableFunctionTimes();
await growth('packages', (count) => withPackages(grids, count));
await growth('rows of components', (count) => manyRows(grids, 'components', 'component', count));
await growth('rows of equipment', (count) => manyRows(grids, 'equipment', 'item', count));
await layout();
await againstSolvers(1, pureScript, gnuKit);
await againstSolvers(10, pureScript);
await againstLibraries();
await againstPlainFormulas();
