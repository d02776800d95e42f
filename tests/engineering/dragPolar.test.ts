import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  aspectRatio,
  drag,
  dragCoefficient,
  dynamicPressure,
  liftCoefficient,
  minimumDragSpeed,
  withDragArea,
} from '../../src/engineering/dragPolar.ts';
import { textbookAirplane, textbookMass } from './exampleAircraft.ts';
import { foot, poundForce } from './tradeUnits.ts';

const { dragPolar, wingArea } = textbookAirplane;

describe('CP-1 of Anderson, Introduction to Flight', () => {
  // Example 6.1 at 200 ft/s, sea level: C_L 0.357, C_D 0.0319, L/D 11.2, thrust required 263 lb (from memory; the
  // inputs read in a Scilab companion). Tolerance: the book's third digit.
  test('at 200 ft/s', () => {
    const lift = liftCoefficient(textbookMass, wingArea, 200 * foot, 1.225);
    expect(lift).toBeCloseTo(0.357, 3);
    expect(dragCoefficient(dragPolar, lift)).toBeCloseTo(0.0319, 4);
    const required = drag(dragPolar, wingArea, textbookMass, 200 * foot, 1.225);
    expect(Math.abs(required / poundForce - 263)).toBeLessThan(1); // he divides 2,950 by L/D rounded to 11.2
    expect((textbookMass * 9.80665) / required).toBeCloseTo(11.2, 1);
  });

  // (L/D)max 13.6 and C_L 0.634 there: read in the companion of examples 6.7 and 6.9
  test('greatest lift–drag ratio at the speed of least drag', () => {
    const speed = minimumDragSpeed(dragPolar, wingArea, textbookMass, 1.225);
    const lift = liftCoefficient(textbookMass, wingArea, speed, 1.225);
    expect(0.634 / dragCoefficient(dragPolar, 0.634)).toBeCloseTo(13.6, 1); // where the book reads it off a flat curve
    expect(lift / dragCoefficient(dragPolar, lift)).toBeCloseTo(13.6, 1);
  });
});

test('aspect ratio and dynamic pressure by hand', () => {
  expect(aspectRatio(10, 12.5)).toBe(8);
  expect(dynamicPressure(40, 1)).toBe(800);
});

test('least drag is least', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 400, max: 2000, noNaN: true }),
      fc.double({ min: 0.5, max: 1.3, noNaN: true }),
      fc.double({ min: -0.5, max: 1, noNaN: true }).filter((part) => Math.abs(part) > 1e-3),
      (mass, density, part) => {
        const speed = minimumDragSpeed(dragPolar, wingArea, mass, density);
        const least = drag(dragPolar, wingArea, mass, speed, density);
        expect(drag(dragPolar, wingArea, mass, speed * (1 + part), density)).toBeGreaterThan(least);
        // C_D0 = C_Di there, so that D = 2 q S C_D0
        const parasite = dynamicPressure(speed, density) * wingArea * dragPolar.zeroLiftDragCoefficient;
        expect(least / (2 * parasite)).toBeCloseTo(1, 10);
      },
    ),
  );
});

test('a drag area adds q times itself', () => {
  const more = withDragArea(dragPolar, 0.02, wingArea);
  const added =
    drag(more, wingArea, textbookMass, 50, 1.1) - drag(dragPolar, wingArea, textbookMass, 50, 1.1);
  expect(added).toBeCloseTo(0.02 * dynamicPressure(50, 1.1), 9);
  expect(withDragArea(more, -0.02, wingArea).zeroLiftDragCoefficient).toBeCloseTo(0.025, 12);
});

test('a drag area that leaves no drag is refused', () => {
  expect(() => withDragArea(dragPolar, -1, wingArea)).toThrow(
    /^zero-lift drag coefficient with the drag area must be above 0, got -0\.0/,
  );
});
