import { batteryTime } from '../engineering/electrical.ts';
import { firewallMoment, meanTorque, torqueFactor } from '../engineering/mount.ts';
import { standardGravity } from '../units.ts';
import { defaulted, given, measure } from './argument.ts';
import { type Formula, formula } from './formula.ts';
import { hours, minutes, poundForceFeet, rpm } from './measures.ts';
import { mustBe } from './messages.ts';
import { rows } from './rowsArgument.ts';
import { shaftPower } from './sharedArguments.ts';

const ampereHours = measure('charge', 'Ah');

export const systemFormulas: readonly Formula[] = [
  formula({
    name: 'FIREWALL_MOMENT',
    help: 'Weight times distance ahead of the firewall, times the load factor. Screening only.',
    source: 'statics; what lies behind the firewall does not count',
    arguments: [
      rows('components', [{ name: 'weight' }, { name: 'arm' }], {
        help: 'rows of weight, arm aft of the datum; negative weight = removed',
      }),
      given('firewall_arm', { help: 'firewall, aft of the datum' }),
      defaulted('load_factor', 1, { help: 'load factor; 1 in level flight', atLeast: 0 }),
    ],
    results: [{ label: 'moment' }],
    compute: (components, firewallArm, loadFactor) =>
      firewallMoment(
        components.map(([mass, arm]) => ({ mass, arm })),
        firewallArm,
        loadFactor,
      ) / standardGravity,
  }),
  formula({
    name: 'MOUNT_TORQUE_LIMIT',
    help: 'Limit torque on the engine mount at the propeller shaft, lbf·ft. Screening only.',
    source: '14 CFR 23.361 before amendment 64; CS-VLA 361 for one cylinder and two strokes',
    arguments: [
      shaftPower,
      given('propeller_rpm', { help: 'of the propeller, behind any gearbox, rpm', above: 0, measure: rpm }),
      given('cylinders', { help: 'number of cylinders', atLeast: 1, atMost: 24 }),
      defaulted('strokes', 4, { help: '4 or 2', atLeast: 2, atMost: 4 }),
    ],
    results: [{ label: 'limit torque', measure: poundForceFeet }],
    compute: (power, shaftSpeed, cylinders, strokes) => {
      if (strokes !== 2 && strokes !== 4) throw mustBe('strokes', '2 or 4', strokes);
      return torqueFactor(cylinders, strokes) * meanTorque({ power, shaftSpeed });
    },
  }),
  formula({
    name: 'BATTERY_MINUTES',
    help: 'Time a battery keeps the essential load going after the alternator stops, min.',
    source: 'Peukert 1897; at least 30 min: 14 CFR 23.1353(h) before amendment 64',
    arguments: [
      given('capacity_ah', { help: 'rated capacity, A·h', above: 0, measure: ampereHours }),
      given('rated_hours', { help: 'discharge time the capacity is rated for, h', above: 0, measure: hours }),
      given('load_before_shedding_a', { help: 'load until it is noticed, A', above: 0 }),
      given('essential_load_a', { help: 'load that must go on, A', above: 0 }),
      defaulted('minutes_to_notice', 5, {
        help: 'until the load is shed, min',
        atLeast: 0,
        measure: minutes,
      }),
      defaulted('derating', 0.8, { help: 'capacity left by age and cold', above: 0, atMost: 1 }),
      defaulted('peukert', 1.15, {
        help: 'discharge exponent: 1.15 lead-acid, 1.05 lithium',
        atLeast: 1,
        atMost: 2,
      }),
    ],
    results: [{ label: 'time', measure: minutes }],
    compute: (
      capacity,
      ratedTime,
      loadBeforeShedding,
      essentialLoad,
      timeToNotice,
      derating,
      peukertExponent,
    ) =>
      batteryTime({
        capacity,
        ratedTime,
        loadBeforeShedding,
        essentialLoad,
        timeToNotice,
        derating,
        peukertExponent,
      }).time,
  }),
];
