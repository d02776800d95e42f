import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DragPolar, drag, withDragArea } from '../../src/engineering/dragPolar.ts';
import {
  dragOfKnownFlight,
  type KnownFlight,
  polarThroughPoint,
  polarThroughPoints,
} from '../../src/engineering/knownFlight.ts';
import { inducedVelocity } from '../../src/engineering/propeller.ts';

const wingArea = 14;
const level: KnownFlight = {
  shaftPower: 100e3,
  trueAirspeed: 70,
  density: 0.96,
  mass: 1100,
  propellerDiameter: 1.9,
  rateOfClimb: 0,
  dragArea: 0,
};

describe('drag of a known flight', () => {
  // By hand: disc of 2 m² (D = √(8/π)), ρ 1, V 15, P 10 kW, k 0.8: T 400 N, w 5 (whole-number example of the disc)
  const disc = {
    ...level,
    shaftPower: 10_000,
    trueAirspeed: 15,
    density: 1,
    propellerDiameter: Math.sqrt(8 / Math.PI),
  };

  test('level: it is the thrust', () => {
    expect(dragOfKnownFlight(disc, 0.8).drag).toBeCloseTo(400, 9);
  });

  test('climbing 1.5 m/s at 15 m/s takes a tenth of the weight; a drag area takes q times itself', () => {
    const climbing = dragOfKnownFlight({ ...disc, mass: 100, rateOfClimb: 1.5 }, 0.8);
    expect(climbing.drag).toBeCloseTo(400 - 98.0665, 9);
    const cooled = dragOfKnownFlight({ ...disc, dragArea: 0.4 }, 0.8);
    expect(cooled.drag).toBeCloseTo(400 - (0.4 * 225) / 2, 9);
    expect(cooled).toMatchObject({ mass: 1100, trueAirspeed: 15, density: 1 });
  });
});

/** The flight that an aircraft with this polar makes: power from drag, by the disc backwards. */
function flightOf(
  polar: DragPolar,
  trueAirspeed: number,
  rateOfClimb: number,
  dragArea: number,
): KnownFlight {
  const { density, mass, propellerDiameter } = level;
  const flown = withDragArea(polar, dragArea, wingArea);
  const thrust =
    drag(flown, wingArea, mass, trueAirspeed, density) + (mass * 9.80665 * rateOfClimb) / trueAirspeed;
  const induced = inducedVelocity(thrust, trueAirspeed, propellerDiameter, density);
  return {
    ...level,
    trueAirspeed,
    rateOfClimb,
    dragArea,
    shaftPower: (thrust * (trueAirspeed + induced)) / 0.8,
  };
}

const polars = fc.record({
  zeroLiftDragCoefficient: fc.double({ min: 0.015, max: 0.06, noNaN: true }),
  aspectRatio: fc.double({ min: 5, max: 12, noNaN: true }),
  spanEfficiency: fc.double({ min: 0.5, max: 0.9, noNaN: true }),
});

test('a polar flown at one speed comes back, without the cooling drag of the flight', () => {
  fc.assert(
    fc.property(polars, (polar) => {
      const point = dragOfKnownFlight(flightOf(polar, 65, 0, 0.02), 0.8);
      const found = polarThroughPoint(point, wingArea, polar.aspectRatio, polar.spanEfficiency);
      expect(found.zeroLiftDragCoefficient / polar.zeroLiftDragCoefficient).toBeCloseTo(1, 9);
    }),
  );
});

test('a polar flown level and in a climb comes back with both constants', () => {
  fc.assert(
    fc.property(polars, fc.double({ min: 0.5, max: 8, noNaN: true }), (polar, rateOfClimb) => {
      const fast = dragOfKnownFlight(flightOf(polar, 70, 0, 0.01), 0.8);
      const slow = dragOfKnownFlight(flightOf(polar, 40, rateOfClimb, 0.03), 0.8);
      const found = polarThroughPoints([fast, slow], wingArea, polar.aspectRatio);
      expect(found.zeroLiftDragCoefficient / polar.zeroLiftDragCoefficient).toBeCloseTo(1, 8);
      expect(found.spanEfficiency / polar.spanEfficiency).toBeCloseTo(1, 8);
    }),
  );
});

test('a point that claims more speed than its power can give is refused', () => {
  const weak = dragOfKnownFlight({ ...level, shaftPower: 10e3 }, 0.82);
  expect(() => polarThroughPoint(weak, wingArea, 7)).toThrow(
    /^zero-lift drag coefficient from the known point must be above 0, got -/,
  );
});

test('points that do not belong together are refused', () => {
  const fast = dragOfKnownFlight(level, 0.82);
  expect(() => polarThroughPoints([fast, fast], wingArea, 7)).toThrow(
    /^the points must differ in lift coefficient/,
  );
  const slowWithLittleDrag = { ...fast, trueAirspeed: 35, drag: fast.drag / 5 };
  expect(() => polarThroughPoints([fast, slowWithLittleDrag], wingArea, 7)).toThrow(
    /^induced drag factor from the points must be above 0/,
  );
  // C_D 0.1 at C_L 1 and 0.02 at 0.5: K = 0.08/0.75, which leaves 0.02 − 0.25 K = −0.0067
  const pointAt = (lift: number, dragCoefficient: number) => ({
    drag: (9806.65 * dragCoefficient) / lift,
    mass: 1000,
    trueAirspeed: Math.sqrt((2 * 9806.65) / (1.2 * wingArea * lift)),
    density: 1.2,
  });
  expect(() => polarThroughPoints([pointAt(1, 0.1), pointAt(0.5, 0.02)], wingArea, 7)).toThrow(
    /^zero-lift drag coefficient from the points must be above 0, got -0.0066/,
  );
  expect(() => dragOfKnownFlight({ ...level, trueAirspeed: 0 }, 0.8)).toThrow(
    'trueAirspeed must be above 0 m/s',
  );
});

describe('more points than constants', () => {
  const speeds = [36, 42, 48, 55, 63, 70];
  const truth = { zeroLiftDragCoefficient: 0.024, aspectRatio: 7.5, spanEfficiency: 0.74 };
  const mass = 1050;
  const density = 1.0;
  const pointAt = (trueAirspeed: number, error = 0) => ({
    drag: drag(truth, wingArea, mass, trueAirspeed, density) * (1 + error),
    mass,
    trueAirspeed,
    density,
  });

  test('exact points give the polar', () => {
    const found = polarThroughPoints(
      speeds.map((speed) => pointAt(speed)),
      wingArea,
      truth.aspectRatio,
    );
    expect(found.zeroLiftDragCoefficient).toBeCloseTo(0.024, 12);
    expect(found.spanEfficiency).toBeCloseTo(0.74, 10);
  });

  test('with errors, no polar nearby leaves less of the relative residuals', () => {
    const errors = [0.02, -0.01, 0.015, -0.02, 0.01, -0.005];
    const points = speeds.map((speed, index) => pointAt(speed, errors[index]));
    const found = polarThroughPoints(points, wingArea, truth.aspectRatio);
    const left = (zeroLift: number, span: number) =>
      points.reduce((sum, point) => {
        const polar = { ...truth, zeroLiftDragCoefficient: zeroLift, spanEfficiency: span };
        return sum + (1 - drag(polar, wingArea, mass, point.trueAirspeed, density) / point.drag) ** 2;
      }, 0);
    const least = left(found.zeroLiftDragCoefficient, found.spanEfficiency);
    for (const step of [-1e-4, 1e-4]) {
      expect(left(found.zeroLiftDragCoefficient + step, found.spanEfficiency)).toBeGreaterThan(least);
      expect(left(found.zeroLiftDragCoefficient, found.spanEfficiency + 100 * step)).toBeGreaterThan(least);
    }
  });
});
