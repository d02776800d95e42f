/** What alone would explain a weighing, and where it would sit: the weighed Wren of weighedWren.ts, in lb and in. */
import { describe, expect, test } from 'vitest';
import { withAttribute, withCells } from './flightFixture.ts';
import { inch, kitArm, pound, small, weighed } from './weighedWren.ts';

describe('where the unexplained weight would sit', () => {
  // Arms known: propeller 10 to locker and autopilot 120; a quarter of 110 beyond both: −17.5 to 147.5
  const place = (arm: number, weight = 20, grids = small) => weighed(weight, arm, grids).found.place;

  test('aboard as far as a quarter beyond the outermost arms', () => {
    expect(place(-17.4)).toBe('aboard');
    expect(place(147.4)).toBe('aboard');
  });

  test('perhaps as far beyond that as the arm is known to: some 8 in', () => {
    const ahead = weighed(20, -17.6);
    const half = ahead.about(-17.6) / 20;
    expect(half).toBeCloseTo(8.5, 0);
    expect((ahead.found.armHalfWidth ?? 0) / inch).toBeCloseTo(half, 6);
    expect(ahead.found.place).toBe('perhaps aboard');
    expect(place(-17.5 - half + 0.1)).toBe('perhaps aboard');
    expect(place(-17.5 - half - 1)).toBe('outside');
    const aft = weighed(20, 147.6);
    expect(aft.found.place).toBe('perhaps aboard');
    const reach = 147.5 + aft.about(147.5) / 20;
    expect(place(reach - 0.5)).toBe('perhaps aboard');
    expect(place(reach + 1)).toBe('outside');
  });

  test('wheels and the place for ballast count', () => {
    expect(place(200)).toBe('outside');
    expect(place(200, 20, withAttribute(small, 'airframe', 'ballast arm', 170, 'in'))).toBe('aboard');
    expect(place(-70)).toBe('outside');
    expect(place(-70, 20, withAttribute(small, 'airframe', 'nose or tail wheel arm', -50, 'in'))).toBe(
      'aboard',
    );
  });

  test('nowhere, where it is no more than the scales’ √3 lb', () => {
    const { found, row } = weighed(1.7, 60);
    expect(found).toMatchObject({ place: undefined, armHalfWidth: undefined });
    expect(row('the unexplained weight')).toEqual([
      'the unexplained weight would have to sit at',
      null,
      'nowhere: it is no more than the scales may be off',
    ]);
    expect(weighed(1.8, 60).found.place).toBe('aboard');
  });
});

describe('single causes', () => {
  const calculatedArm = (10.4 * kitArm + 0.48 * 42) / 10.88;
  const cause = (name: string, { found }: ReturnType<typeof weighed>) => {
    const each = found.causes.find((other) => other.name === name);
    if (each === undefined) return undefined;
    const { stated, needed, error, halfWidths, misfit, arm } = each;
    const pounds = (value: number | undefined) => value && value / pound;
    return {
      arm: arm / inch,
      stated: pounds(stated),
      needed: pounds(needed),
      error: error / pound,
      halfWidths,
      misfit,
    };
  };

  test('the kit, 6 lb heavier than the 265.2 it is expected to become', () => {
    expect(cause('kit as delivered', weighed(6, kitArm))).toEqual({
      arm: expect.closeTo(kitArm, 9),
      stated: expect.closeTo(260, 9),
      needed: expect.closeTo(271.2, 6),
      error: expect.closeTo(6, 6),
      halfWidths: expect.closeTo(6 / 10.4, 6),
      misfit: expect.closeTo(0, 5),
    });
  });

  test('what was taken off does not grow: 12 lb of oil at 42, 1 lb less of it', () => {
    expect(cause('oil', weighed(1, 42))).toMatchObject({
      stated: expect.closeTo(-12, 9),
      needed: expect.closeTo(-11, 6),
      halfWidths: expect.closeTo(1 / 0.48, 6),
    });
  });

  test('all calculated weights together, √0.2 of 10.88 lb, where their errors sit', () => {
    expect(cause('every calculated weight', weighed(5, calculatedArm))).toEqual({
      arm: expect.closeTo(calculatedArm, 9),
      stated: undefined,
      needed: undefined,
      error: expect.closeTo(5, 6),
      halfWidths: expect.closeTo(5 / (Math.sqrt(0.2) * 10.88), 6),
      misfit: expect.closeTo(0, 5),
    });
  });

  test('one weight of a basis is no group; nor are weights whose errors do not go together', () => {
    const groups = (grids = small) =>
      weighed(5, 60, grids)
        .found.causes.map(({ name }) => name)
        .filter((name) => name.startsWith('every'));
    expect(groups()).toEqual(['every calculated weight']);
    expect(groups(withCells(small, 'equipment', ['fairings'], { fitted: true }))).toEqual([
      'every calculated weight',
      'every estimated weight',
    ]);
    expect(groups(withCells(small, 'allowances', ['calculated'], { correlation: 0 }))).toEqual([]);
  });

  test('an empty weight known to 2 lb: neither its basis’s growth nor its scatter, and in no group', () => {
    const bare = withAttribute(small, 'airframe', 'empty weight basis', 'calculated');
    const known = withAttribute(bare, 'airframe', 'empty weight known to', 2, 'lb');
    const found = weighed(8, 80, known);
    // the fuel taken off and put on is on the airframe’s basis too: a group of 0.48, 10.4, 0.24 and 0.268
    expect(cause('airframe, empty weight', found)).toMatchObject({
      stated: expect.closeTo(900, 6),
      halfWidths: expect.closeTo((cause('airframe, empty weight', found)?.error ?? 0) / 2, 6),
      needed: expect.closeTo(900 + (cause('airframe, empty weight', found)?.error ?? 0), 6),
    });
    expect(cause('every calculated weight', found)?.arm).toBeCloseTo(
      (10.4 * kitArm + 0.48 * 42 + (0.24 + 0.268) * 88) / (10.88 + 0.508),
      6,
    );
  });

  test('the likeliest first, by both measures together', () => {
    const distances = weighed(20, 60).found.causes.map(({ halfWidths, misfit }) =>
      Math.hypot(halfWidths, misfit),
    );
    expect(distances).toHaveLength(13); // nine weights, calculated ones together, three scales
    expect(distances).toEqual([...distances].sort((one, other) => one - other));
  });
});
