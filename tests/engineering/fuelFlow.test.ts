import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bsfcCurve,
  bsfcFromMassFlow,
  fuelMassFlow,
  lowerHeatingValue,
  thermalEfficiency,
} from '../../src/engineering/fuelFlow.ts';
import { horsepower, pound, poundPerHorsepowerHour } from './tradeUnits.ts';

const curve = (...points: [number, number][]) =>
  bsfcCurve(
    points.map(([powerFraction, pounds]) => ({ powerFraction, bsfc: pounds * poundPerHorsepowerHour })),
  );

describe('BSFC through three points or more', () => {
  const lean = (setting: number) => curve([0.55, 0.46], [0.75, 0.43], [1, 0.5])(setting);

  test('passes through its points', () => {
    expect(lean(0.75).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.43, 12);
    expect(lean(0.75)).toMatchObject({ extrapolated: false, basis: 'curve' });
  });

  // Hermite by hand between 55 and 65 %: secants −0.15 and 0.28 give slope 0 at 75 % and the end secant −0.15 at 55 %;
  // at the middle (0.46 + 0.43)/2 + 0.2 (−0.15 − 0)/8 = 0.44125
  test('is the monotone cubic between them, by hand', () => {
    expect(lean(0.65).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.44125, 10);
  });

  test('is held and flagged outside them', () => {
    expect(lean(0.4).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.46, 12);
    expect(lean(0.4).extrapolated).toBe(true);
    expect(lean(1.05).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.5, 12);
    expect(lean(1.05).extrapolated).toBe(true);
    expect(lean(0).extrapolated).toBe(true);
  });

  test('is never below the least point', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1.2, noNaN: true }), (setting) => {
        expect(lean(setting).bsfc).toBeGreaterThanOrEqual(0.43 * poundPerHorsepowerHour * (1 - 1e-12));
      }),
    );
  });
});

describe('BSFC through two points', () => {
  const line = (setting: number) => curve([1, 0.45], [0.5, 0.5])(setting);

  // Willans by hand: flows 0.45 and 0.25 of MCP, so 0.05 + 0.4 f; at 0.75 that is 0.35, BSFC 0.466667
  test('is the Willans line', () => {
    expect(line(0.75).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.35 / 0.75, 12);
    expect(line(0.75)).toMatchObject({ extrapolated: false, basis: 'willansLine' });
    expect(line(0.5).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.5, 12);
  });

  test('gives a fuel flow affine in power', () => {
    const flow = (setting: number) => fuelMassFlow(setting, line(setting).bsfc);
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        (a, b) => {
          expect(flow((a + b) / 2) / ((flow(a) + flow(b)) / 2)).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  test('is held and flagged outside them', () => {
    expect(line(0.2).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.5, 12);
    expect(line(0.2).extrapolated).toBe(true);
    expect(line(1.1).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.45, 12);
    expect(line(1.1).extrapolated).toBe(true);
  });
});

test('one point is held everywhere and says so', () => {
  const held = curve([0.75, 0.42]);
  expect(held(0.75)).toMatchObject({ extrapolated: false, basis: 'singlePoint' });
  expect(held(0.6)).toMatchObject({ extrapolated: true, basis: 'singlePoint' });
  expect(held(0.6).bsfc / poundPerHorsepowerHour).toBeCloseTo(0.42, 12);
});

test('points that are missing, nonsense or doubled are refused', () => {
  expect(() => bsfcCurve([])).toThrow('points must be at least one, got none');
  expect(() => curve([0, 0.5])).toThrow('powerFraction must be above 0, got 0');
  expect(() => bsfcCurve([{ powerFraction: 1, bsfc: 0 }])).toThrow('bsfc must be above 0 kg/J, got 0');
  expect(() => curve([0.5, 0.5], [0.5, 0.4])).toThrow(/must differ/);
  for (const points of [
    [[0.5, 0.5]],
    [
      [0.5, 0.5],
      [1, 0.4],
    ],
    [
      [0.5, 0.5],
      [0.7, 0.4],
      [1, 0.5],
    ],
  ] as [number, number][][])
    expect(() => curve(...points)(-0.1)).toThrow('powerFraction must be at least 0, got -0.1');
});

describe('fuel flow', () => {
  // By hand: 75 % of 160 hp at 0.43 lb/hp·h is 51.6 lb/h, 8.6 US gal/h at 6 lb/US gal
  test('by hand', () => {
    const flow = fuelMassFlow(0.75 * 160 * horsepower, 0.43 * poundPerHorsepowerHour);
    expect((flow * 3600) / pound).toBeCloseTo(51.6, 10);
  });

  test('gives BSFC back', () => {
    expect(bsfcFromMassFlow(51.6 * (pound / 3600), 120 * horsepower) / poundPerHorsepowerHour).toBeCloseTo(
      0.43,
      12,
    );
  });
});

describe('brake thermal efficiency', () => {
  // Typical BSFC (read secondary for 0.42-0.50 lb/hp·h, the others from memory) must pass as plausible
  test.each([
    [0.42, lowerHeatingValue.avgas],
    [0.5, lowerHeatingValue.mogas],
    [0.36, lowerHeatingValue.jetA],
    [0.36, lowerHeatingValue.diesel],
    [0.7, lowerHeatingValue.mogas],
    [0.8, lowerHeatingValue.avgas],
  ])('%d lb/hp·h is plausible', (pounds, heatingValue) => {
    expect(thermalEfficiency(pounds * poundPerHorsepowerHour, heatingValue).plausible).toBe(true);
  });

  test.each([0.2, 0.28, 1])('%d lb/hp·h is not', (pounds) => {
    expect(thermalEfficiency(pounds * poundPerHorsepowerHour, lowerHeatingValue.avgas).plausible).toBe(false);
  });

  test('by hand, and the ends of what is plausible', () => {
    // 1/(8e-8 kg/J · 40e6 J/kg) = 1/3.2; 15 and 45 % are common practice
    expect(thermalEfficiency(8e-8, 40e6).efficiency).toBeCloseTo(0.3125, 12);
    const plausibleAt = (efficiency: number) => thermalEfficiency(1 / (efficiency * 40e6), 40e6).plausible;
    expect([0.1499, 0.1501, 0.4499, 0.4501].map(plausibleAt)).toEqual([false, true, true, false]);
  });
});
