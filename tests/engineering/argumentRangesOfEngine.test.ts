/** Ranges of the arguments: engine power, fuel flow, mount, electrical system. */
import { alternatorSurplus, batteryTime } from '../../src/engineering/electrical.ts';
import {
  makersTable,
  naturallyAspirated,
  powerAvailable,
  turbocharged,
} from '../../src/engineering/enginePower.ts';
import { fixedPitchSpeedFraction } from '../../src/engineering/fixedPitch.ts';
import {
  bsfcCurve,
  bsfcFromMassFlow,
  fuelMassFlow,
  thermalEfficiency,
} from '../../src/engineering/fuelFlow.ts';
import { fuelFlowToDemonstrate, minimumFuel } from '../../src/engineering/fuelSystem.ts';
import {
  firewallMoment,
  gyroscopicCouple,
  meanTorque,
  sideLoadFactor,
  torqueCases,
  torqueFactor,
} from '../../src/engineering/mount.ts';
import { above, atLeast, between, finite, testRanges } from './argumentRange.ts';

testRanges('naturallyAspirated', naturallyAspirated, {
  pressureAltitude: between(-5_000, 20_000, 'm', 1000),
});
testRanges('turbocharged', turbocharged, { criticalAltitude: between(0, 20_000, 'm', 4000) });
testRanges('makersTable', (power, rating) => makersTable([{ x: 0, y: power! }], rating!), {
  power: atLeast(0, 'W', 1e5),
  rating: above(0, 'W', 1.1e5),
});
testRanges(
  'powerAvailable',
  (rating, temperature, temperatureExponent) =>
    powerAvailable(
      { altitudeLaw: naturallyAspirated, temperatureExponent: temperatureExponent!, controlled: false },
      rating!,
      1000,
      temperature!,
    ).power,
  { rating: atLeast(0, 'W', 1e5), temperature: above(0, 'K', 280), temperatureExponent: finite(0.5) },
);

testRanges(
  'fixedPitchSpeedFraction',
  (staticFraction, bestClimbFraction, levelFraction, bestClimbSpeed, levelSpeed, trueAirspeed) =>
    fixedPitchSpeedFraction(
      {
        staticFraction: staticFraction!,
        bestClimbFraction: bestClimbFraction!,
        levelFraction: levelFraction!,
        bestClimbSpeed: bestClimbSpeed!,
        levelSpeed: levelSpeed!,
      },
      trueAirspeed!,
    ).value,
  {
    staticFraction: above(0, '', 0.85),
    bestClimbFraction: atLeast(0.85, '', 0.9),
    levelFraction: atLeast(0.9, '', 1),
    bestClimbSpeed: above(0, 'm/s', 38),
    levelSpeed: above(38, 'm/s', 65),
    trueAirspeed: atLeast(0, 'm/s', 50),
  },
);

const bsfc = above(0, 'kg/J', 8e-8);
const point = (powerFraction: number, consumption = 8e-8) => ({ powerFraction, bsfc: consumption });
testRanges(
  'point of bsfcCurve',
  (powerFraction, consumption) => bsfcCurve([point(powerFraction!, consumption)]),
  {
    powerFraction: above(0, '', 0.75),
    bsfc,
  },
);
testRanges('bsfcCurve held', (powerFraction) => bsfcCurve([point(0.75)])(powerFraction!).bsfc, {
  powerFraction: atLeast(0, '', 0.6),
});
testRanges('Willans line', (powerFraction) => bsfcCurve([point(0.55), point(0.75)])(powerFraction!).bsfc, {
  powerFraction: atLeast(0, '', 0.6),
});
testRanges('bsfcFromMassFlow', bsfcFromMassFlow, {
  massFlow: above(0, 'kg/s', 0.008),
  power: above(0, 'W', 1e5),
});
testRanges('fuelMassFlow', fuelMassFlow, { power: atLeast(0, 'W', 1e5), bsfc });
testRanges(
  'thermalEfficiency',
  (consumption, heatingValue) => thermalEfficiency(consumption!, heatingValue!).efficiency,
  {
    bsfc,
    heatingValue: above(0, 'J/kg', 43.5e6),
  },
);
testRanges('fuelFlowToDemonstrate', (flow) => fuelFlowToDemonstrate(flow!, 'pump'), {
  takeoffFuelFlow: atLeast(0, '', 0.012),
});
testRanges('minimumFuel', minimumFuel, {
  maximumContinuousPower: atLeast(0, 'W', 1e5),
  bsfc: atLeast(0, 'kg/J', 8e-8),
  time: atLeast(0, 's', 1800),
});

testRanges('meanTorque', (power, shaftSpeed) => meanTorque({ power: power!, shaftSpeed: shaftSpeed! }), {
  power: atLeast(0, 'W', 1e5),
  shaftSpeed: above(0, 'rev/s', 40),
});
testRanges('torqueFactor', (cylinders) => torqueFactor(cylinders!, 4), { cylinders: atLeast(1, '', 4) });
const rating = { power: 1e5, shaftSpeed: 40 };
testRanges('torqueCases', (factor) => torqueCases(rating, rating, factor!), { factor: atLeast(1, '', 2) });
testRanges('sideLoadFactor', sideLoadFactor, { limitLoadFactor: above(0, '', 3.8) });
testRanges('gyroscopicCouple', gyroscopicCouple, {
  polarInertia: atLeast(0, 'kg·m²', 1.2),
  angularSpeed: atLeast(0, 'rad/s', 260),
  turnRate: atLeast(0, 'rad/s', 2.5),
  blades: atLeast(2, '', 3),
});
testRanges(
  'firewallMoment',
  (mass, arm, firewallArm, loadFactor) =>
    firewallMoment([{ mass: mass!, arm: arm! }], firewallArm!, loadFactor!),
  { mass: finite(120), arm: finite(0.3), firewallArm: finite(1), loadFactor: atLeast(0, '', 3.8) },
);

testRanges(
  'batteryTime',
  (capacity, ratedTime, loadBeforeShedding, essentialLoad, timeToNotice, derating, peukertExponent) =>
    batteryTime({
      capacity: capacity!,
      ratedTime: ratedTime!,
      loadBeforeShedding: loadBeforeShedding!,
      essentialLoad: essentialLoad!,
      timeToNotice: timeToNotice!,
      derating: derating!,
      peukertExponent: peukertExponent!,
    }).time,
  {
    capacity: above(0, 'A·s', 90_000),
    ratedTime: above(0, 's', 3600),
    loadBeforeShedding: above(0, 'A', 20),
    essentialLoad: above(0, 'A', 8),
    timeToNotice: atLeast(0, 's', 300),
    derating: between(0, 1, '', 0.8),
    peukertExponent: between(1, 2, '', 1.1),
  },
);
testRanges('alternatorSurplus', (output, load) => alternatorSurplus([30, output!], [load!, 5]), {
  alternatorOutput: atLeast(0, 'A', 20),
  continuousLoad: atLeast(0, 'A', 12),
});
