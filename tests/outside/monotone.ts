/** Which way the result of each custom function goes when one argument grows, over the ranges that light aircraft meet. */
import type fc from 'fast-check';
import { between } from '../engineering/between.ts';

type Direction = 'rises' | 'falls' | 'never falls' | 'never rises';

export interface MonotoneFunction {
  readonly name: string;
  readonly result?: number;
  /** An arbitrary number for each argument, or a fixed cell */
  readonly arguments: readonly (fc.Arbitrary<number> | string | number)[];
  /** Argument by its number → what the result does when it grows */
  readonly claims: Readonly<Record<number, Direction>>;
}

const altitude = between(-1_000, 18_000); // ft
const temperature = between(-40, 50); // °C
const power = between(40, 400); // hp
const speed = between(20, 220); // kt
const ratio = between(0.5, 1.1); // density ratio
const weight = between(1_000, 4_000); // lb

export const monotoneFunctions: readonly MonotoneFunction[] = [
  { name: 'AIR_DENSITY_RATIO', arguments: [altitude], claims: { 0: 'falls' } },
  { name: 'AIR_DENSITY_RATIO', arguments: [altitude, temperature], claims: { 0: 'falls', 1: 'falls' } },
  { name: 'ISA_TEMPERATURE', arguments: [altitude], claims: { 0: 'falls' } },
  { name: 'HOT_DAY_TEMPERATURE', arguments: [altitude], claims: { 0: 'falls' } },
  { name: 'DENSITY_ALTITUDE', arguments: [altitude, temperature], claims: { 0: 'rises', 1: 'rises' } },
  {
    name: 'DENSITY_ALTITUDE',
    arguments: [between(0, 8_000), between(25, 45), between(-20, 24)],
    claims: { 0: 'rises', 1: 'rises', 2: 'rises' },
  },
  {
    name: 'ENGINE_POWER_AT_ALTITUDE',
    arguments: [power, altitude, temperature],
    claims: { 0: 'rises', 1: 'falls', 2: 'falls' },
  },
  {
    name: 'ENGINE_POWER_AT_ALTITUDE',
    arguments: [power, between(0, 25_000), '', between(0, 25_000)],
    claims: { 1: 'never rises', 3: 'never falls' },
  },
  {
    name: 'FUEL_FLOW',
    arguments: [power, between(0.3, 0.8), between(5.5, 7)],
    claims: { 0: 'rises', 1: 'rises', 2: 'falls' },
  },
  {
    name: 'FUEL_FLOW_TO_DEMONSTRATE',
    arguments: [between(1, 60), 'gravity'],
    claims: { 0: 'rises' },
  },
  {
    name: 'MINIMUM_FUEL',
    arguments: [power, between(0.3, 0.8), between(10, 90)],
    claims: { 0: 'rises', 1: 'rises', 2: 'rises' },
  },
  {
    name: 'ENDURANCE',
    arguments: [between(10, 120), between(3, 30), between(0, 60)],
    claims: { 0: 'rises', 1: 'falls', 2: 'falls' },
  },
  {
    name: 'RANGE_BREGUET',
    arguments: [
      between(0.5, 0.9),
      between(5, 20),
      between(0.3, 0.8),
      between(2_500, 4_000),
      between(1_000, 2_400),
    ],
    claims: { 0: 'rises', 1: 'rises', 2: 'falls', 3: 'rises', 4: 'falls' },
  },
  {
    name: 'CG_AFTER_CHANGE',
    arguments: [weight, between(80, 110), between(1, 300), between(-50, 250)],
    claims: { 1: 'rises', 3: 'rises' },
  },
  {
    name: 'CG_AFTER_CHANGE',
    arguments: [weight, between(80, 110), between(-300, -1), between(-50, 250)],
    claims: { 1: 'rises', 3: 'falls' },
  },
  { name: 'CG_PERCENT_MAC', arguments: [between(60, 130), 80, between(40, 80)], claims: { 0: 'rises' } },
  {
    name: 'BALLAST_WEIGHT',
    arguments: [weight, between(80, 90), between(91, 100), between(110, 250)],
    claims: { 0: 'rises', 1: 'falls', 2: 'rises', 3: 'falls' },
  },
  { name: 'USEFUL_LOAD', arguments: [weight, between(500, 2_000)], claims: { 0: 'rises', 1: 'falls' } },
  {
    name: 'PAYLOAD_FULL_FUEL',
    arguments: [weight, between(500, 2_000), between(5, 100), between(5.5, 7)],
    claims: { 0: 'rises', 1: 'falls', 2: 'falls', 3: 'falls' },
  },
  {
    name: 'WHEEL_LOAD',
    arguments: [weight, between(85, 105), between(20, 50), between(110, 120)],
    claims: { 1: 'falls' },
  },
  {
    name: 'WHEEL_LOAD',
    result: 1,
    arguments: [weight, between(85, 105), between(20, 50), between(110, 120)],
    claims: { 0: 'rises', 1: 'rises' },
  },
  {
    name: 'STALL_SPEED',
    arguments: [weight, between(80, 220), between(1, 2.6), ratio],
    claims: { 0: 'rises', 1: 'falls', 2: 'falls', 3: 'falls' },
  },
  {
    name: 'PROPELLER_TIP_MACH',
    arguments: [between(50, 90), between(1_000, 3_000), speed, temperature],
    claims: { 0: 'rises', 1: 'rises', 2: 'rises', 3: 'falls' },
  },
  {
    name: 'PROPELLER_THRUST',
    arguments: [power, speed, between(50, 90), ratio, between(0.4, 1)],
    claims: { 0: 'rises', 1: 'falls', 2: 'rises', 3: 'rises', 4: 'rises' },
  },
  {
    name: 'PROPELLER_CLEARANCE',
    arguments: [between(30, 60), between(50, 90)],
    claims: { 0: 'rises', 1: 'falls' },
  },
  { name: 'CLIMB_RATE', arguments: [between(1, 200), weight], claims: { 0: 'rises', 1: 'falls' } },
  {
    name: 'MOUNT_TORQUE_LIMIT',
    arguments: [power, between(1_500, 3_000), 4, 4],
    claims: { 0: 'rises', 1: 'falls' },
  },
  {
    name: 'BATTERY_MINUTES',
    arguments: [
      between(10, 60),
      between(1, 20),
      between(15, 40),
      between(2, 14),
      between(0, 10),
      between(0.5, 1),
      between(1, 1.3),
    ],
    claims: { 0: 'rises', 2: 'never rises', 3: 'never rises', 5: 'rises' },
  },
  { name: 'COOLING_HEAT', arguments: [power, between(0.05, 1)], claims: { 0: 'rises', 1: 'rises' } },
  {
    name: 'COOLING_AIRFLOW',
    arguments: [between(500, 8_000), between(20, 200)],
    claims: { 0: 'rises', 1: 'falls' },
  },
  {
    name: 'COOLING_PRESSURE_AVAILABLE',
    arguments: [speed, ratio, between(0.3, 1), between(-0.5, 0.2), between(0, 5)],
    claims: { 0: 'rises', 1: 'rises', 2: 'rises', 3: 'falls', 4: 'rises' },
  },
  {
    name: 'COOLING_INLET_AREA',
    arguments: [between(20, 200), speed, ratio, between(0.2, 0.8)],
    claims: { 0: 'rises', 1: 'falls', 2: 'falls', 3: 'falls' },
  },
  {
    name: 'COOLING_EXIT_AREA',
    arguments: [between(20, 200), between(0.5, 10), ratio, between(0, 200), between(0.5, 1)],
    claims: { 0: 'rises', 1: 'falls', 2: 'falls', 3: 'rises', 4: 'falls' },
  },
  {
    name: 'HOT_DAY_CORRECTED',
    arguments: [between(50, 250), between(-20, 30), altitude, between(0.5, 1)],
    claims: { 0: 'rises', 1: 'falls', 2: 'falls' },
  },
  {
    name: 'RADIATOR_EFFECTIVENESS',
    arguments: [between(0.1, 8), between(0.05, 1)],
    claims: { 0: 'rises', 1: 'falls' },
  },
  {
    name: 'CHARGE_TEMPERATURE',
    arguments: [between(-30, 40), between(1.1, 4), between(0.5, 0.9), between(0, 0.9)],
    claims: { 0: 'rises', 1: 'rises', 2: 'falls', 3: 'falls' },
  },
];
