/** Inputs swept finely: no number jumps between neighbours, but where it is meant to. */
import { expect, test } from 'vitest';
import { random } from './random.ts';
import { comparisonOf, sampleGrids, steadyFigures, withNumbers } from './samples.ts';
import { say, times } from './seed.ts';

interface Sweep {
  readonly sample: 'godwit' | 'sanderling' | 'minimal';
  readonly table: string;
  readonly label: string;
  /** ends of the sweep, in the table’s own unit */
  readonly from: number;
  readonly to: number;
  /** share of what is there, instead of the number itself */
  readonly relative?: boolean;
}

const of = (
  table: string,
  label: string,
  godwit: readonly [number, number] | undefined,
  sanderling: readonly [number, number] | undefined,
  relative = false,
): Sweep[] => [
  ...(godwit ? [{ sample: 'godwit' as const, table, label, from: godwit[0], to: godwit[1], relative }] : []),
  ...(sanderling
    ? [{ sample: 'sanderling' as const, table, label, from: sanderling[0], to: sanderling[1], relative }]
    : []),
];

const sweeps: readonly Sweep[] = [
  ...of('mission', 'cruise altitude', [4000, 20_000], [400, 4000]),
  ...of('mission', 'field elevation', [100, 7000], [10, 2000]),
  ...of('mission', 'field temperature', [-10, 40], [-10, 40]),
  ...of('mission', 'cruise power', [50, 99], [50, 99]),
  ...of('mission', 'distance', [50, 700], [50, 800]),
  ...of('mission', 'headwind', [-30, 50], [-40, 60]),
  ...of('airframe', 'maximum takeoff weight', [0.8, 1], [0.8, 1], true),
  ...of('tanks', 'usable', [1, 1.5], [1, 1.5], true),
  ...of('loadings', 'pilot', [0.9, 1.1], [0.9, 1.1], true),
  ...of('components', 'weight', [0.8, 1.2], [0.8, 1.2], true),
  { sample: 'minimal', table: 'components', label: 'weight', from: 0.8, to: 1.2, relative: true },
  { sample: 'minimal', table: 'airframe', label: 'maximum takeoff weight', from: 0.8, to: 1, relative: true },
];

/** Jumps that are meant: which input, which number, and why. */
const meant: readonly (readonly [RegExp, RegExp, string])[] = [
  [/cruise altitude/, /\.cost\.(perHour\.oxygen|(hour|hourFlown|lifetime)\.value)/, 'oxygen from 12,500 ft'],
  [/cruise power/, /\.cost\.(perHour\.fuel|(hour|hourFlown|lifetime)\.value)/, 'last fuel point: incomplete'],
  [
    /cruise (altitude|power)|takeoff weight/,
    /range\.\w+\.range/,
    'a cruise that is not reached has no range',
  ],
  [
    /./,
    /mission\.cooling\./,
    'the margin shown is of the stream with the least share; at best-rate speed, which is sought to 0.05 m/s: 0.06 K',
  ],
  [/./, /\.flight\.toCruise\./, 'where a climb gives up is known to its slice of 300 m'],
];

const halvings = 10;
const noise = 4e-3; // of the greatest value: speeds are sought to 0.05 m/s either way, 0.1 of 30 m/s

function jumpsOf({ sample, table, label, from, to, relative = false }: Sweep): string[] {
  const grids = sampleGrids(sample);
  const known = new Map<number, ReadonlyMap<string, number>>();
  const at = (x: number) => {
    const before = known.get(x);
    if (before) return before;
    const changed = withNumbers(grids, (spot) =>
      spot.table === table && spot.field.label === label ? (relative ? Number(spot.cell) * x : x) : undefined,
    );
    const figures = new Map(
      comparisonOf(changed).assessments.flatMap((each) =>
        [...steadyFigures(each)].map(([path, value]) => [`${each.package.name} ${path}`, value] as const),
      ),
    );
    known.set(x, figures);
    return figures;
  };
  const count = times(10);
  const offset = random.next();
  const xs = Array.from({ length: count }, (_, i) => from + ((to - from) * (i + offset)) / count);
  const jumps: string[] = [];
  for (const path of at(xs[0] as number).keys()) {
    const ys = xs.map((x) => at(x).get(path));
    const scale = Math.max(...ys.map((y) => Math.abs(y ?? 0)));
    const steps = ys.slice(1).map((y, i) => Math.abs((y ?? Number.NaN) - (ys[i] ?? Number.NaN)));
    steps.forEach((step, i) => {
      const around = Math.max(steps[i - 1] || 0, steps[i + 1] || 0);
      if (!(step > 3 * around + noise * scale)) return;
      let [low, high] = [xs[i] as number, xs[i + 1] as number];
      for (let halving = 0; halving < halvings; halving++) {
        const middle = (low + high) / 2;
        const [a, m, b] = [low, middle, high].map((x) => at(x).get(path) ?? Number.NaN) as [
          number,
          number,
          number,
        ];
        if (Math.abs(m - a) > Math.abs(b - m)) high = middle;
        else low = middle;
      }
      const left = Math.abs((at(low).get(path) ?? Number.NaN) - (at(high).get(path) ?? Number.NaN));
      if (left > 0.3 * step && left > noise * scale)
        jumps.push(`${path}: ${at(low).get(path)} to ${at(high).get(path)} at ${high.toPrecision(6)}`);
    });
  }
  return jumps;
}

test.each(sweeps)('$sample, $table, $label', { timeout: 120_000 }, (sweep) => {
  const jumps = jumpsOf(sweep);
  const unexpected = jumps.filter(
    (jump) => !meant.some(([input, number]) => input.test(sweep.label) && number.test(jump)),
  );
  say(`${sweep.sample} ${sweep.label}: ${jumps.length} jumps`);
  expect(unexpected).toEqual([]);
});
