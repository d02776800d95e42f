/** An aircraft with constants of its own, and what its test flights would bring home. */
import { packageInFlight } from '../../src/assessment/aircraft.ts';
import { configure } from '../../src/assessment/configuration.ts';
import { type Context, contextOf, packageNamed } from '../../src/assessment/context.ts';
import { coolingConditionOf } from '../../src/assessment/coolingCondition.ts';
import { type Engine, engineOf } from '../../src/assessment/engine.ts';
import { type FlownPolar, flownAirframe } from '../../src/assessment/knownFlights.ts';
import { standardTemperature } from '../../src/engineering/air.ts';
import { type AircraftInFlight, airAt } from '../../src/engineering/aircraftInFlight.ts';
import { rateOfClimb } from '../../src/engineering/climb.ts';
import { coolingResult } from '../../src/engineering/coolingResult.ts';
import { levelFlight } from '../../src/engineering/levelFlight.ts';
import type { Catalogue } from '../../src/tables/catalogue.ts';
import { nameKey } from '../../src/tables/cell.ts';
import type { Package } from '../../src/tables/packages.ts';
import type { TestName, TestResult } from '../../src/tables/testResults.ts';
import { normalNumbers } from '../engineering/randomNumbers.ts';

/** Errors of measurement: one standard deviation, of a normal distribution. */
export interface Noise {
  /** of speed and power, as shares */
  readonly airspeed: number;
  readonly power: number;
  /** of the rate of climb [m/s] */
  readonly climbRate: number;
}

export const noNoise: Noise = { airspeed: 0, power: 0, climbRate: 0 };

export class SimulatedAircraft {
  readonly context: Context;
  readonly engine: Package;
  readonly curves: Engine;
  readonly flown: FlownPolar;
  readonly aircraft: AircraftInFlight;
  private readonly base: ReturnType<typeof packageInFlight>;
  private readonly error: () => number;

  /** The tables describe the true aircraft. */
  constructor(
    readonly truth: Catalogue,
    packageName: string,
    private readonly noise: Noise,
    seed = 1,
  ) {
    this.context = contextOf(truth);
    this.engine = packageNamed(truth, packageName);
    this.curves = engineOf(this.context, this.engine);
    const { equipment } = configure(truth, this.engine);
    const { flown } = flownAirframe(this.context, new Set(equipment.map(({ name }) => nameKey(name))));
    if (flown === undefined) throw new Error('the true aircraft must fly');
    this.flown = flown;
    this.base = packageInFlight(this.context, flown, this.engine, this.curves, equipment);
    this.aircraft = this.base.aircraft;
    this.error = normalNumbers(seed);
  }

  private result(test: TestName, values: Partial<TestResult>): TestResult {
    const blank = { row: 1, defaulted: [] } as unknown as TestResult;
    return { ...blank, test, date: '2026-05-20', ...values };
  }

  private held(power: number): AircraftInFlight {
    return { ...this.aircraft, fullThrottlePower: () => power, shaftSpeedFraction: () => 1 };
  }

  level(power: number, weight: number, altitude: number, deviation: number): TestResult {
    const air = airAt(altitude, deviation);
    const level = levelFlight(this.held(power), 'continuous', air, weight);
    if (!level.possible) throw new Error('must fly level');
    return this.result('level flight', {
      power: power * (1 + this.noise.power * this.error()),
      weight,
      altitude,
      temperature: air.temperature,
      trueAirspeed: level.trueAirspeed * (1 + this.noise.airspeed * this.error()),
    });
  }

  climb(
    power: number,
    weight: number,
    altitude: number,
    deviation: number,
    trueAirspeed: number,
  ): TestResult {
    const air = airAt(altitude, deviation);
    const rate = rateOfClimb(this.held(power), 'continuous', air, weight, trueAirspeed);
    const measured = rate + this.noise.climbRate * this.error();
    return this.result('climb', {
      power: power * (1 + this.noise.power * this.error()),
      weight,
      altitude,
      temperature: air.temperature,
      trueAirspeed: trueAirspeed * (1 + this.noise.airspeed * this.error()),
      // an altimeter shows pressure altitude
      climbRate: (measured * standardTemperature(altitude)) / air.temperature,
    });
  }

  fuelFlow(setting: number, mixture: 'rich' | 'lean'): TestResult {
    const power = setting * this.engine.continuousPower;
    const flow = this.aircraft.fuelFlow(power, mixture) / this.engine.fuelDensity;
    return this.result('fuel flow', { power, mixture, fuelFlow: flow });
  }

  coolingClimb(
    stream: TestResult['stream'],
    power: number,
    altitude: number,
    deviation: number,
    trueAirspeed: number,
  ): TestResult {
    const air = airAt(altitude, deviation);
    const found = this.base.streams.find(({ row }) => row.stream === stream)?.stream;
    if (found === undefined) throw new Error(`no stream ${stream}`);
    const condition = coolingConditionOf(this.aircraft, this.engine.heatingValue, air, trueAirspeed, power);
    return this.result('cooling climb', {
      stream,
      power,
      altitude,
      temperature: air.temperature,
      trueAirspeed,
      measuredTemperature: coolingResult(found, condition).temperature,
    });
  }
}
