/** How people and bags of a mission sit: in front where that balances, else as well as it goes. */
import { describe, expect, test } from 'vitest';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import { assessed, show, si, withMission } from './sampleCatalogue.ts';

const two = withMission({ persons: 2, bags: 0, distance: si('distance', 200, 'nmi') });

/** The sample with the same CG limits at every weight. */
const limited = (forward: number, aft: number): Catalogue => ({
  ...two,
  envelope: two.envelope.map((corner) => ({
    ...corner,
    forward: si('length', forward, 'in'),
    aft: si('length', aft, 'in'),
  })),
});

function seated(name: string, catalogue: Catalogue) {
  const { loading } = assessed(name, catalogue).mission!;
  return {
    loads: loading!.seating.loads.map((load) => Math.round(show('mass', load, 'lb'))),
    out: loading!.out!,
    back: loading!.back!,
  };
}

// Stations: pilot, front passenger, rear seats, baggage. Rowan with two in front and fuel: near 101 in
const inFront = [180, 180, 0, 0];
const oneBehind = [180, 0, 180, 0];

describe('two of 180 lb in Rowan', () => {
  test('side by side where that balances, though one behind the other leaves more', () => {
    const { loads, out } = seated('Rowan', limited(95, 130));
    expect(loads).toEqual(inFront);
    expect(out.critical.side).toBe('forward');
  });

  test('one behind the other where only that balances', () => {
    const { loads, out, back } = seated('Rowan', limited(102, 110));
    expect(loads).toEqual(oneBehind);
    expect(Math.min(out.critical.margin, back.critical.margin)).toBeGreaterThan(0);
  });

  test('what lacks least where nothing balances: ahead of all limits, and behind them', () => {
    expect(seated('Rowan', limited(120, 130)).loads).toEqual(oneBehind);
    expect(seated('Rowan', limited(80, 90)).loads).toEqual(inFront);
  });
});

test('the worst state of a leg as a share of the width of the limits: 1,385.9 lb at 97.93 in, two in front', () => {
  const { out } = seated('Rowan', limited(95, 130));
  // Without fuel the tanks at 104 in no longer draw the CG back
  const empty = 1379 * 1.005;
  const weight = empty + 360;
  const cg = (empty * 97.93 + 360 * 106) / weight;
  const known = show('length', assessed('Rowan', two).mission!.asked.cgHalfWidth, 'in') * (empty / weight);
  expect(show('length', out.critical.cg, 'in')).toBeCloseTo(cg, 6);
  expect(show('length', out.critical.margin, 'in')).toBeCloseTo(cg - 95 - known, 6);
  expect(out.share).toBeCloseTo((cg - 95 - known) / 35, 6);
});

describe('what the worst state is known to, and the fuel in it', () => {
  // A tank ahead of everybody draws the CG forward: the worst state is the one with all the fuel of the leg
  const tankAt = (inches: number): Catalogue => {
    const catalogue = limited(95, 130);
    const tanks = catalogue.tanks.map((tank) => ({ ...tank, arm: si('length', inches, 'in') }));
    return { ...catalogue, tanks };
  };

  test('Rowan with its tank at 90 in, at start-up', () => {
    const { mission } = assessed('Rowan', tankAt(90));
    const fuel = show('mass', mission!.legs![0].fuel, 'lb');
    const empty = show('mass', mission!.asked.empty.weight, 'lb');
    const arm = show('length', mission!.asked.empty.moment / mission!.asked.empty.weight, 'in');
    const cg = (empty * arm + 360 * 106 + fuel * 90) / (empty + 360 + fuel);
    const { critical } = mission!.loading!.out!;
    expect(critical.side).toBe('forward');
    expect(show('length', critical.cg, 'in')).toBeCloseTo(cg, 6);
    expect(show('mass', critical.weight, 'lb')).toBeCloseTo(empty + 360 + fuel, 6);
  });

  test('Larch’s empty CG is known to so much of its empty weight', () => {
    const { mission } = assessed('Larch', limited(60, 200));
    const { asked, loading } = mission!;
    expect(asked.cgHalfWidth).toBeGreaterThan(0);
    const { critical, share } = loading!.out!;
    const known = (asked.cgHalfWidth * asked.empty.weight) / critical.weight;
    const inside = critical.side === 'aft' ? critical.limit - critical.cg : critical.cg - critical.limit;
    expect(critical.margin).toBeCloseTo(inside - known, 9);
    expect(share).toBeCloseTo(critical.margin / si('length', 140, 'in'), 9);
  });
});
