import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AircraftInFlight, airAt, thrust } from '../../src/engineering/aircraftInFlight.ts';
import { drag } from '../../src/engineering/dragPolar.ts';
import {
  groundRollFactor,
  obstacleHeight,
  rollingFriction,
  type TakeoffConditions,
  takeoff,
} from '../../src/engineering/takeoff.ts';
import { fourSeater, fourSeaterMass } from './exampleAircraft.ts';
import { integrate } from './independentIntegrator.ts';

const conditions: TakeoffConditions = {
  air: airAt(0),
  mass: fourSeaterMass,
  maximumLiftCoefficient: 1.7,
  dragArea: 0.1,
  rollingFriction: rollingFriction.pavement,
  slope: 0,
  headwind: 0,
  groundRollFactor: 1,
};

function flown(change: Partial<TakeoffConditions> = {}, aircraft: AircraftInFlight = fourSeater) {
  const run = takeoff(aircraft, { ...conditions, ...change });
  if (!run.possible) throw new Error(`takeoff expected, but: ${run.stops}`);
  return run;
}

describe('ground roll', () => {
  test.each([
    ['standard sea level', {}],
    ['hot and high, uphill on grass', { air: airAt(1500, 25), slope: 0.01, rollingFriction: 0.08 }],
    ['headwind', { headwind: 6 }],
    ['tailwind', { headwind: -5 }],
  ] as const)('%s: an independent integrator over time reaches lift-off at the same place', (_, change) => {
    const { air, mass, dragArea, slope, headwind, ...rest } = { ...conditions, ...change };
    const run = flown(change);
    const available = thrust(fourSeater, 'takeoff', air);
    const rates = (__: number, [speed]: number[]) => {
      const airspeed = Math.max(speed! + headwind, 0);
      const pressure = (air.density * airspeed ** 2) / 2;
      const coefficient = 0.027 + 0.3 ** 2 / (Math.PI * 0.65 * 7.2); // of the four-seater at C_L 0.3
      const resistance = pressure * (14 * coefficient + dragArea);
      const friction = rest.rollingFriction * (mass * 9.80665 - pressure * 14 * 0.3);
      return [(available(airspeed) - resistance - friction) / mass - 9.80665 * slope, speed!];
    };
    const [speed, distance] = integrate(rates, 0, [0, 0], run.time);
    expect((speed! + headwind) / run.liftOffSpeed).toBeCloseTo(1, 3);
    expect(distance! / run.groundRoll).toBeCloseTo(1, 3);
  });

  // By hand: V_S = √(2 · 1100 · 9.80665/(1.225 · 14 · 1.7)) = 27.203 m/s, lift-off at 29.923
  test('lift-off at 1.1 of the stall speed', () => {
    expect(flown().liftOffSpeed).toBeCloseTo(29.92, 2);
  });
});

/** From lift-off to 50 ft: the speeds at both ends and their mean by energy, and the excess thrust there. */
function airborne(start: number) {
  const end = (start / 1.1) * 1.15;
  const mean = Math.sqrt((start ** 2 + end ** 2) / 2);
  const excess =
    thrust(fourSeater, 'takeoff', conditions.air)(mean) -
    drag(fourSeater.dragPolar, 14, fourSeaterMass, mean, conditions.air.density);
  return { start, end, mean, excess };
}

test('energy from lift-off to 50 ft, by its own sum', () => {
  const run = flown({ dragArea: 0 });
  const { start, end, excess } = airborne(run.liftOffSpeed);
  // work of the excess thrust = potential and kinetic energy gained
  const gained = fourSeaterMass * (9.80665 * 15.24 + (end ** 2 - start ** 2) / 2);
  expect((run.distanceTo50Feet - run.groundRoll) * excess).toBeCloseTo(gained, 3);
  expect(obstacleHeight).toBeCloseTo(15.24, 12);
});

test('uphill into the wind: the air carries it back while the ground rises under it', () => {
  // Mean speed V, time t in the air: excess · V t = m g (50 ft + slope · ground covered) + kinetic energy, ground (V − V_w) t
  const [slope, headwind] = [0.02, 8];
  const run = flown({ dragArea: 0, slope, headwind });
  const { start, end, mean, excess } = airborne(run.liftOffSpeed);
  const ground = run.distanceTo50Feet - run.groundRoll;
  const time = ground / (mean - headwind);
  const gained = fourSeaterMass * (9.80665 * (15.24 + slope * ground) + (end ** 2 - start ** 2) / 2);
  expect((excess * mean * time) / gained).toBeCloseTo(1, 9);
});

test('whatever makes it harder makes it longer', () => {
  const worse = (change: Partial<TakeoffConditions>) => fc.constant(change);
  fc.assert(
    fc.property(
      fc.double({ min: 800, max: 1150, noNaN: true }),
      fc.oneof(
        worse({ air: airAt(0, 15) }),
        worse({ air: airAt(600) }),
        worse({ slope: 0.01 }),
        worse({ rollingFriction: 0.06 }),
        worse({ headwind: -3 }),
        worse({ dragArea: 0.3 }),
        worse({ maximumLiftCoefficient: 1.5 }),
      ),
      (mass, change) => {
        const easy = flown({ mass });
        for (const hard of [flown({ mass, ...change }), flown({ mass: mass + 30 })]) {
          expect(hard.groundRoll).toBeGreaterThan(easy.groundRoll);
          expect(hard.distanceTo50Feet).toBeGreaterThan(easy.distanceTo50Feet);
        }
      },
    ),
  );
});

test('a headwind shortens both parts; at lift-off speed there is no roll left', () => {
  const calm = flown();
  const windy = flown({ headwind: 8 });
  expect(windy.groundRoll).toBeLessThan(calm.groundRoll);
  expect(windy.distanceTo50Feet - windy.groundRoll).toBeLessThan(calm.distanceTo50Feet - calm.groundRoll);
  expect(flown({ headwind: 35 })).toMatchObject({ groundRoll: 0, time: 0, distanceTo50Feet: 0 });
});

describe('what stops it', () => {
  test('soft ground, or no thrust', () => {
    expect(takeoff(fourSeater, { ...conditions, rollingFriction: 0.5 })).toEqual({
      possible: false,
      stops: 'ground roll',
    });
  });

  test('it rolls, but does not climb over the obstacle', () => {
    expect(takeoff(fourSeater, { ...conditions, air: airAt(7500) })).toEqual({
      possible: false,
      stops: 'climb to 50 ft',
    });
  });
});

describe('calibration to a measured roll', () => {
  test('the measured roll comes back, the distance in the air does not change', () => {
    const plain = flown();
    const factor = groundRollFactor(fourSeater, { ...conditions, groundRollFactor: 3 }, 300);
    const calibrated = flown({ groundRollFactor: factor });
    expect(calibrated.groundRoll).toBeCloseTo(300, 9);
    // The same speeds are passed further on, and so later
    expect(calibrated.time / plain.time).toBeCloseTo(300 / plain.groundRoll, 9);
    expect(calibrated.distanceTo50Feet - 300).toBeCloseTo(plain.distanceTo50Feet - plain.groundRoll, 9);
  });

  test('refusals', () => {
    expect(() => groundRollFactor(fourSeater, conditions, 0)).toThrow(
      'measuredRoll must be above 0 m, got 0',
    );
    expect(() => groundRollFactor(fourSeater, { ...conditions, rollingFriction: 0.6 }, 300)).toThrow(
      'conditions must be such that the aircraft rolls and takes off',
    );
    expect(() => groundRollFactor(fourSeater, { ...conditions, headwind: 35 }, 300)).toThrow(
      'conditions must be such that the aircraft rolls and takes off',
    );
  });
});
