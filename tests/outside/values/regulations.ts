/** Factors, minima and times that rules state. Part 23 as it stood before amendment 64. */
import { hotDayTemperature } from '../../../src/engineering/air.ts';
import { serviceCeilingRate } from '../../../src/engineering/climb.ts';
import { requiredBatteryTime } from '../../../src/engineering/electrical.ts';
import { visualReserveTime } from '../../../src/engineering/endurance.ts';
import { minimumFuel } from '../../../src/engineering/fuelSystem.ts';
import { ambientFactor } from '../../../src/engineering/hotDay.ts';
import {
  gyroscopicCouple,
  gyroscopicRates,
  sideLoadFactor,
  torqueCases,
} from '../../../src/engineering/mount.ts';
import { requiredGroundClearance } from '../../../src/engineering/propeller.ts';
import { obstacleHeight } from '../../../src/engineering/takeoff.ts';
import { isNegligibleChange } from '../../../src/engineering/weightChange.ts';
import { foot, inch } from '../../engineering/tradeUnits.ts';
import { fromFunction, type PublishedValue, type Status, type Topic } from '../publishedValue.ts';

const fahrenheit = (celsius: number) => celsius * 1.8 + 32;

const rule = (
  what: string,
  source: string,
  status: Status,
  expected: number,
  compute: () => number,
  tolerance: PublishedValue['tolerance'] = 1e-9,
): PublishedValue => ({ what, source, status, expected, tolerance, compute });

/** 100 hp at 5,252.113 rpm (33,000/2π) is a mean torque of 100 lbf·ft, so the limit torque is the factor in per cent. */
const torqueFactor = (cylinders: number, strokes: number) =>
  fromFunction('MOUNT_TORQUE_LIMIT', [100, 33_000 / (2 * Math.PI), cylinders, strokes]) / 100;
const torque = (cylinders: number, strokes: number, expected: number, source: string, status: Status) =>
  rule(`limit over mean torque, ${cylinders} cylinders, ${strokes} strokes`, source, status, expected, () =>
    torqueFactor(cylinders, strokes),
  );

/** Greatest CG shift that is still negligible, in per cent MAC, by halving. */
function negligibleShift(): number {
  let [inside, outside] = [0, 1];
  for (let step = 0; step < 50; step++) {
    const middle = (inside + outside) / 2;
    if (isNegligibleChange(500, 0, middle, 100)) inside = middle;
    else outside = middle;
  }
  return inside;
}

const cases = () => torqueCases({ power: 1, shaftSpeed: 1 }, { power: 1, shaftSpeed: 1 }, 2);

export const regulations: Topic = {
  topic: 'regulations',
  values: [
    torque(2, 4, 4, '14 CFR 23.361(c)', 'read'),
    torque(3, 4, 3, '14 CFR 23.361(c)', 'read'),
    torque(4, 4, 2, '14 CFR 23.361(c)', 'read'),
    torque(5, 4, 1.33, '14 CFR 23.361(c)', 'read'),
    torque(8, 4, 1.33, 'CS 22.361, five cylinders or more', 'read'),
    torque(1, 4, 8, 'CS-VLA 361(b)', 'secondary'),
    torque(1, 2, 6, 'CS-VLA 361(b)', 'secondary'),
    torque(2, 2, 3, 'CS-VLA 361(b)', 'secondary'),
    torque(3, 2, 2, 'CS-VLA 361(b), three cylinders or more', 'secondary'),
    rule(
      'share of limit loads with takeoff torque, %',
      '14 CFR 23.361(a)(1)',
      'read',
      75,
      () => 100 * cases()[0].limitLoadFraction,
    ),
    rule(
      'share of limit loads with torque at maximum continuous power, %',
      '14 CFR 23.361(a)(2)',
      'read',
      100,
      () => 100 * cases()[1].limitLoadFraction,
    ),
    rule('side load factor, n = 3.8', '14 CFR 23.363(a)(1)', 'read', 1.33, () => sideLoadFactor(3.8)),
    rule('side load factor, n = 6: one third of it', '14 CFR 23.363(a)(2)', 'read', 2, () =>
      sideLoadFactor(6),
    ),
    rule(
      'side load factor, n = 4.4',
      '14 CFR 23.363(a)(2)',
      'derived',
      1.467,
      () => sideLoadFactor(4.4),
      0.0005,
    ),
    rule(
      'rate of yaw for the gyroscopic load, rad/s',
      '14 CFR 23.371(a)(2)',
      'read',
      2.5,
      () => gyroscopicRates.yaw,
    ),
    rule(
      'rate of pitch for the gyroscopic load, rad/s',
      '14 CFR 23.371(a)(2)',
      'read',
      1,
      () => gyroscopicRates.pitch,
    ),
    rule('gyroscopic couple of two blades over I Ω ω', 'AMC 23.371(a)', 'secondary', 2, () =>
      gyroscopicCouple(1, 1, 1, 2),
    ),
    rule('gyroscopic couple of three blades over I Ω ω', 'AMC 23.371(a)', 'secondary', 1, () =>
      gyroscopicCouple(1, 1, 1, 3),
    ),
    rule('fuel flow to demonstrate with a pump, % of takeoff', '14 CFR 23.955(c)', 'read', 125, () =>
      fromFunction('FUEL_FLOW_TO_DEMONSTRATE', [100, 'pump']),
    ),
    rule('fuel flow to demonstrate by gravity, % of takeoff', '14 CFR 23.955(b)', 'read', 150, () =>
      fromFunction('FUEL_FLOW_TO_DEMONSTRATE', [100, 'gravity']),
    ),
    rule('hot day at sea level, °F', '14 CFR 23.1043(b)', 'read', 100, () =>
      fahrenheit(fromFunction('HOT_DAY_TEMPERATURE', [0])),
    ),
    rule('fall of the hot day in 1,000 ft, °F', '14 CFR 23.1043(b)', 'read', 3.6, () => {
      const at = (feet: number) => fahrenheit(fromFunction('HOT_DAY_TEMPERATURE', [feet]));
      return at(0) - at(1_000);
    }),
    rule('hot day at 8,000 ft, °F', '14 CFR 23.1043(b)', 'derived', 71.2, () =>
      fahrenheit(fromFunction('HOT_DAY_TEMPERATURE', [8_000])),
    ),
    rule('coldest that the hot day gets, °F', '14 CFR 23.1043(b)', 'read', -69.7, () =>
      fahrenheit(fromFunction('HOT_DAY_TEMPERATURE', [60_000])),
    ),
    rule(
      'hot day at sea level, °C',
      'CS 22.1047',
      'read',
      38,
      () => fromFunction('HOT_DAY_TEMPERATURE', [0]),
      0.5,
    ),
    rule(
      'fall of the hot day in 1,000 m, K',
      'CS 22.1047',
      'read',
      6.5,
      () => hotDayTemperature(0) - hotDayTemperature(1_000),
      0.07,
    ),
    rule(
      'a head of 200 °C in 20 °C at sea level, on the hot day, °C',
      '14 CFR 23.1043(c)',
      'derived',
      217.78,
      () => fromFunction('HOT_DAY_CORRECTED', [200, 20, 0]),
      0.005,
    ),
    rule(
      'how a barrel follows the outside air',
      '14 CFR 25.1043(d)',
      'read',
      0.7,
      () => ambientFactor.cylinderBarrel,
    ),
    rule(
      'ground clearance with a nosewheel, in',
      '14 CFR 23.925(a)',
      'read',
      7,
      () => requiredGroundClearance.nosewheel / inch,
    ),
    rule(
      'ground clearance with a tailwheel, in',
      '14 CFR 23.925(a)',
      'read',
      9,
      () => requiredGroundClearance.tailwheel / inch,
    ),
    rule(
      'ground clearance with a nosewheel, mm',
      'CS-VLA 925',
      'from memory',
      180,
      () => requiredGroundClearance.nosewheel * 1000,
      3,
    ),
    rule('clearance of a 74 in propeller with its axis 44 in up, in', 'geometry', 'derived', 7, () =>
      fromFunction('PROPELLER_CLEARANCE', [44, 74]),
    ),
    rule('fuel for least weight, minutes at maximum continuous power', '14 CFR 23.25(b)', 'read', 30, () =>
      fromFunction('MINIMUM_FUEL', [60, 1]),
    ),
    rule(
      'the same where the engineering is given no time, min',
      '14 CFR 23.25(b)',
      'read',
      30,
      () => minimumFuel(1, 1) / 60,
    ),
    rule(
      'reserve by day under VFR, min',
      '14 CFR 91.151(a)(1)',
      'secondary',
      30,
      () => visualReserveTime.day / 60,
    ),
    rule(
      'reserve by night under VFR, min',
      '14 CFR 91.151(a)(2)',
      'secondary',
      45,
      () => visualReserveTime.night / 60,
    ),
    rule(
      'reserve that ENDURANCE keeps when none is given, min',
      '14 CFR 91.151(a)(1)',
      'secondary',
      30,
      () => 60 * (10 - fromFunction('ENDURANCE', [10, 1])),
    ),
    rule(
      'battery time after loss of generation, min',
      '14 CFR 23.1353(h)',
      'from memory',
      30,
      () => requiredBatteryTime / 60,
    ),
    rule(
      'negligible shift of the CG, % MAC',
      'FAA AC 43.13-1B, 10-2c (change 1)',
      'read',
      0.05,
      negligibleShift,
    ),
    rule(
      'rate of climb at the service ceiling, ft/min',
      'definition, aircraft performance textbooks',
      'from memory',
      100,
      () => (serviceCeilingRate * 60) / foot,
    ),
    rule(
      'height of the obstacle at takeoff, ft',
      '14 CFR 23.53',
      'from memory',
      50,
      () => obstacleHeight / foot,
    ),
  ],
};
