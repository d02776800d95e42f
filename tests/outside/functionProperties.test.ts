/** What must hold for any numbers, asked of the custom functions with cells, as a sheet asks. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulas } from '../../src/functions/library.ts';
import { between } from '../engineering/between.ts';
import { fromFunction } from './publishedValue.ts';

describe('fuel', () => {
  test('fuel flow rises with power where the data are those of a Willans line with a convex bend', () => {
    const setting = between(0.4, 1);
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 40, max: 100 }), { minLength: 2, maxLength: 6 }),
        between(0.02, 0.1),
        between(0.25, 0.45),
        between(0, 0.2),
        setting,
        setting,
        (settings, idle, slope, bend, one, other) => {
          const bsfc = (percent: number) => idle / (percent / 100) + slope + bend * (percent / 100);
          const points = settings.map((percent) => [percent, bsfc(percent)]);
          const [low, high] = [Math.min(...settings), Math.max(...settings)];
          const [less, more] = [one, other]
            .sort((a, b) => a - b)
            .map((part) => low + ((part - 0.4) / 0.6) * (high - low));
          fc.pre(more! - less! > 0.01);
          const flow = (percent: number) =>
            fromFunction('FUEL_FLOW_AT_SETTING', [Math.min(percent, high), 180, points]);
          expect(flow(more!)).toBeGreaterThan(flow(less!));
        },
      ),
    );
  });

  test('no setting burns less than the best point for each horsepower, nor more than the worst', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(fc.integer({ min: 40, max: 100 }), between(0.35, 0.6)), {
          minLength: 3,
          maxLength: 6,
          selector: ([percent]) => percent,
        }),
        between(0, 1),
        (points, part) => {
          const settings = points.map(([percent]) => percent);
          const percent = Math.min(...settings) + part * (Math.max(...settings) - Math.min(...settings));
          const flow = fromFunction('FUEL_FLOW_AT_SETTING', [percent, 100, points, 6]);
          const bsfc = (flow * 6) / percent;
          const given = points.map((point) => point[1]);
          expect(bsfc).toBeGreaterThanOrEqual(Math.min(...given) - 1e-9);
          expect(bsfc).toBeLessThanOrEqual(Math.max(...given) + 1e-9);
        },
      ),
    );
  });
});

describe('limits of nature', () => {
  test('thrust times speed is no more than the power, and a disc never gives more than standing still', () => {
    fc.assert(
      fc.property(between(40, 400), between(1, 220), between(50, 90), (horsepower, knots, inches) => {
        const thrust = fromFunction('PROPELLER_THRUST', [horsepower, knots, inches, 1, 1]);
        const thrustPower = (thrust * knots * (6076.1155 / 3600)) / 550;
        expect(thrustPower).toBeLessThan(horsepower);
        expect(thrust).toBeLessThan(fromFunction('PROPELLER_THRUST', [horsepower, 0, inches, 1, 1]));
      }),
    );
  });

  test('a radiator is never better than counter-flow, an intercooler never colder than its air', () => {
    fc.assert(
      fc.property(between(0.1, 8), between(0.01, 0.99), between(1.2, 4), (ntu, ratio, pressureRatio) => {
        const decay = Math.exp(-ntu * (1 - ratio));
        expect(fromFunction('RADIATOR_EFFECTIVENESS', [ntu, ratio])).toBeLessThan(
          (1 - decay) / (1 - ratio * decay),
        );
        const charge = fromFunction('CHARGE_TEMPERATURE', [30, pressureRatio, 0.7, ratio, 15]);
        expect(charge).toBeGreaterThan(15);
      }),
    );
  });

  test('dry air: density altitude of standard air is its pressure altitude', () => {
    fc.assert(
      fc.property(between(-1000, 20_000), (feet) => {
        const celsius = fromFunction('ISA_TEMPERATURE', [feet]);
        expect(fromFunction('DENSITY_ALTITUDE', [feet, celsius])).toBeCloseTo(feet, 4);
      }),
    );
  });
});

test('a column of cells gives what its cells give one by one', () => {
  fc.assert(
    fc.property(fc.array(between(0, 18_000), { minLength: 2, maxLength: 6 }), (feet) => {
      const column = feet.map((value) => [value]);
      const together = formulas.find(({ name }) => name === 'AIR_DENSITY_RATIO')!.call([column]);
      expect(together).toEqual(feet.map((value) => [fromFunction('AIR_DENSITY_RATIO', [value])]));
    }),
  );
});
