/** Inputs swept finely: no number jumps between neighbours, but where it is meant to. */
import { expect, test } from 'vitest';
import { assess, basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { random } from './random.ts';
import { say, times } from './seed.ts';
import { type Part, parts } from './steady.ts';
import { type Sweep, sweeps } from './sweeps.ts';

/** Jumps that are meant: which input, which number (and how it jumps), and why. */
const meant: readonly (readonly [sweep: RegExp, jump: RegExp, why: string])[] = [
  [/cruiseAltitude/, /cost\.(perHour\.oxygen|(hour|hourFlown|lifetime)\.value)/, 'oxygen from 12,500 ft'],
  [
    /cruise(Altitude|Setting)|fuelPoints setting/,
    /^fuel .*(cruiseFuelFlow|perHour\.fuel|\.flow|endurance|(hour|hourFlown|lifetime)\.value)/,
    'outside the fuel points no flow is given, and a sum is that of what is known',
  ],
  [/./, /^range \.\w+\.range: (0 to|\S+ to 0 )/, 'a trip that is not possible has no range'],
  [
    /./,
    /^range \.full\.\w+: (undefined to|\S+ to undefined)/,
    'with full tanks not even the pilot is carried',
  ],
  [/./, /^mission .*: (undefined to|\S+ to undefined)/, 'what is not flown or not seated has no margin'],
  [/personWeight|stations maximum/, /^mission seats/, 'people are whole'],
  [/cruiseAltitude|elevation/, /^flight \.toCruise.*undefined/, 'no climb to a cruise that lies lower'],
  [/./, /^flight \.levels\..*undefined/, 'a power that does not hold the height gives no speed'],
  [/./, /^flight \.takeoff\..*undefined/, 'thrust that does not suffice gives no takeoff'],
  [/elevation/, /^cooling charge air mission .*undefined/, 'a compressor’s heat is known up to one height'],
  [
    /takeoffPower/,
    /^cooling .* takeoff .*undefined/,
    'takeoff power that is no more than continuous is not judged twice',
  ],
  [/propellerClimb/, /undefined/, 'known flights that cannot be true together give no speeds'],
  [/arm/i, /^weight \.installation\.firewallWeight/, 'an item is ahead of the firewall or it is not'],
  [/./, /^balance .* worst: .*undefined/, 'beyond the last point of the envelope there is no limit'],
];

const points = 30;
const halvings = 24; // of the step between two of them: to 2e-9 of the range
const followed = 2; // of the steps in which a number bends most
const grain = 1e-4; // of the greatest value: speeds are sought to 1 mm/s either way

function figuresOf({ at, package: name, reads }: Sweep, x: number): ReadonlyMap<string, number> {
  const basis = basisOf(at(x));
  const assessment = assess(basis, packageNamed(basis.context.catalogue, name));
  return new Map(
    reads.flatMap((part: Part) =>
      [...parts[part](assessment)].map(([path, value]) => [`${part} ${path}`, value] as const),
    ),
  );
}

function jumpsOf(sweep: Sweep): string[] {
  const { from, to } = sweep;
  const known = new Map<number, ReadonlyMap<string, number>>();
  const at = (x: number) => {
    const figures = known.get(x) ?? figuresOf(sweep, x);
    known.set(x, figures);
    return figures;
  };
  const count = times(points);
  const offset = random.next();
  const xs = Array.from({ length: count }, (_, i) => from + ((to - from) * (i + offset)) / count);
  const paths = new Set(xs.flatMap((x) => [...at(x).keys()]));
  return [...paths].flatMap((path) => {
    const y = (x: number) => at(x).get(path);
    const ys = xs.map(y);
    const scale = Math.max(...ys.map((value) => Math.abs(value ?? 0)));
    /** How far a step is from those beside it; where a number comes or goes, more than any. */
    const bend = (i: number) => {
      const [before, a, b, after] = [ys[i - 1], ys[i], ys[i + 1], ys[i + 2]];
      if (a === undefined || b === undefined) return a === b ? 0 : Number.POSITIVE_INFINITY;
      const beside = [before === undefined ? 0 : a - before, after === undefined ? 0 : after - b];
      return Math.min(...beside.map((step) => Math.abs(b - a - step)));
    };
    return xs
      .slice(1)
      .map((_, i) => i)
      .filter((i) => bend(i) > grain * scale)
      .sort((one, other) => bend(other) - bend(one))
      .slice(0, followed)
      .flatMap((i) => {
        let [low, high] = [xs[i] as number, xs[i + 1] as number];
        const step = (one: number, other: number) => {
          const [a, b] = [y(one), y(other)];
          if (a === undefined || b === undefined) return a === b ? 0 : Number.POSITIVE_INFINITY;
          return Math.abs(a - b);
        };
        for (let halving = 0; halving < halvings; halving++) {
          const middle = (low + high) / 2;
          if (step(low, middle) > step(middle, high)) high = middle;
          else low = middle;
          if (step(low, high) <= grain * scale) return [];
        }
        return [`${path}: ${y(low)} to ${y(high)} at ${high.toPrecision(6)}`];
      });
  });
}

const placeOf = (jump: string) => Number(jump.split(' at ').at(-1));

/** Where a cooling stream comes or goes: with values that cannot be true it is not known, and its drag not counted. */
function streamsGone({ what }: Sweep, jumps: readonly string[]): number[] {
  if (!/cooling (exitArea|recovery)/.test(what)) return [];
  return jumps.filter((jump) => /^cooling .*undefined/.test(jump)).map(placeOf);
}

test.each(sweeps)('$what', { timeout: 120_000 }, (sweep) => {
  const jumps = jumpsOf(sweep);
  const gone = streamsGone(sweep, jumps);
  const unexpected = jumps.filter(
    (jump) =>
      !meant.some(([input, number]) => input.test(sweep.what) && number.test(jump)) &&
      !gone.some((place) => Math.abs(placeOf(jump) - place) < 1e-5 * place),
  );
  say(`${sweep.what}: ${jumps.length} jumps`);
  expect(unexpected).toEqual([]);
});
