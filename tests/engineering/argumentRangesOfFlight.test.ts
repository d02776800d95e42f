/** Ranges of the arguments: drag, propeller, flight, fuel for a distance. */
import { airAt, climbGradient, shaftPower } from '../../src/engineering/aircraftInFlight.ts';
import { ceiling, climbToHeight, rateOfClimb, rateOfClimbFromPower } from '../../src/engineering/climb.ts';
import { cruiseOnFuel, cruiseOverDistance } from '../../src/engineering/cruise.ts';
import {
  aspectRatio,
  drag,
  liftCoefficient,
  minimumDragSpeed,
  withDragArea,
} from '../../src/engineering/dragPolar.ts';
import { breguetEndurance, breguetRange, endurance } from '../../src/engineering/endurance.ts';
import {
  dragOfKnownFlight,
  polarThroughPoint,
  polarThroughPoints,
} from '../../src/engineering/knownFlight.ts';
import { powerRequired } from '../../src/engineering/levelFlight.ts';
import { payloadRange } from '../../src/engineering/payloadRange.ts';
import {
  discArea,
  groundClearance,
  helicalTipMach,
  idealEfficiency,
  inducedVelocity,
  propellerThrust,
  staticThrust,
} from '../../src/engineering/propeller.ts';
import { efficiencyFromThrust, propellerEfficiency } from '../../src/engineering/propellerEfficiency.ts';
import { speedMargins } from '../../src/engineering/speedLimits.ts';
import { stallSpeed } from '../../src/engineering/stall.ts';
import { groundRollFactor, takeoff } from '../../src/engineering/takeoff.ts';
import { tripOnFuel, tripOverDistance } from '../../src/engineering/trip.ts';
import { above, aboveUpTo, atLeast, between, finite, testRanges } from './argumentRange.ts';
import { fourSeater, fourSeaterMass } from './exampleAircraft.ts';

const polar = fourSeater.dragPolar;
const mass = above(0, 'kg', fourSeaterMass);
const wingArea = above(0, 'm²', 14);
const density = above(0, 'kg/m³', 1.1);
const diameter = above(0, 'm', 1.9);
const movingAirspeed = above(0, 'm/s', 50);
const trueAirspeed = atLeast(0, 'm/s', 50);
const fraction = between(0, 1, '', 0.8);

testRanges('aspectRatio', aspectRatio, { span: above(0, 'm', 10), wingArea });
testRanges('liftCoefficient', liftCoefficient, {
  mass: atLeast(0, 'kg', 1000),
  wingArea,
  trueAirspeed: movingAirspeed,
  density,
});
testRanges('drag', (...[kilograms, speed]) => drag(polar, 14, kilograms!, speed!, 1.1), {
  mass: atLeast(0, 'kg', 1000),
  trueAirspeed: movingAirspeed,
});
testRanges('minimumDragSpeed', (area, kilograms, rho) => minimumDragSpeed(polar, area!, kilograms!, rho!), {
  wingArea,
  mass,
  density,
});
testRanges('withDragArea', (added, area) => withDragArea(polar, added!, area!), {
  dragArea: finite(0.02),
  wingArea,
});
testRanges('stallSpeed', stallSpeed, {
  mass,
  wingArea,
  maximumLiftCoefficient: above(0, '', 1.5),
  density,
  loadFactor: atLeast(0, '', 1),
});

testRanges('discArea', discArea, { diameter });
testRanges('propellerThrust', propellerThrust, {
  power: atLeast(0, 'W', 1e5),
  trueAirspeed,
  diameter,
  density,
  efficiency: fraction,
});
testRanges('staticThrust', staticThrust, {
  power: atLeast(0, 'W', 1e5),
  diameter,
  density,
  efficiency: fraction,
});
const disc = { thrust: atLeast(0, 'N', 1500), trueAirspeed, diameter, density };
testRanges('inducedVelocity', inducedVelocity, disc);
testRanges('idealEfficiency', idealEfficiency, disc);
testRanges('helicalTipMach', helicalTipMach, {
  trueAirspeed,
  shaftSpeed: atLeast(0, 'rev/s', 40),
  diameter,
  soundSpeed: above(0, 'm/s', 340),
});
testRanges('groundClearance', groundClearance, { axisHeight: atLeast(0, 'm', 1.2), diameter });
testRanges(
  'propellerEfficiency',
  (standing, climb, cruise, climbAirspeed, cruiseAirspeed) =>
    propellerEfficiency(
      { static: standing!, climb: climb!, cruise: cruise! },
      climbAirspeed!,
      cruiseAirspeed!,
    ),
  {
    'static propeller efficiency': aboveUpTo(0, 1, '', 0.42),
    'climb propeller efficiency': aboveUpTo(0, 1, '', 0.76),
    'cruise propeller efficiency': aboveUpTo(0, 1, '', 0.81),
    climbAirspeed: above(0, 'm/s', 38),
    cruiseAirspeed: above(38, 'm/s', 70),
  },
);
testRanges('efficiencyFromThrust', efficiencyFromThrust, {
  thrust: atLeast(0, 'N', 1500),
  shaftPower: above(0, 'W', 1e5),
  trueAirspeed,
  diameter,
  density,
});

const knownFlight = {
  shaftPower: 90e3,
  trueAirspeed: 62,
  density: 1.1,
  mass: 1050,
  propellerDiameter: 1.9,
  rateOfClimb: 0,
  dragArea: 0.01,
};
testRanges(
  'dragOfKnownFlight',
  (speed, rateOfClimb, dragArea) =>
    dragOfKnownFlight(
      { ...knownFlight, trueAirspeed: speed!, rateOfClimb: rateOfClimb!, dragArea: dragArea! },
      0.8,
    ),
  { trueAirspeed: movingAirspeed, rateOfClimb: finite(1), dragArea: finite(0.01) },
);
const slow = { drag: 1000, mass: 1050, trueAirspeed: 45, density: 1.1 };
const fast = { drag: 1350, mass: 1050, trueAirspeed: 65, density: 1.1 };
testRanges('polarThroughPoint', (aspect, span) => polarThroughPoint(fast, 14, aspect!, span!), {
  aspectRatio: above(0, '', 7.2),
  spanEfficiency: above(0, '', 0.7),
});
testRanges('polarThroughPoints', (aspect) => polarThroughPoints([slow, fast], 14, aspect!), {
  aspectRatio: above(0, '', 7.2),
});

const air = () => airAt(1000); // within the tests: not all of them fail when it fails
testRanges('shaftPower', (setting) => shaftPower(fourSeater, setting!, air()), {
  'power setting': aboveUpTo(0, 1, '', 0.7),
});
testRanges('climbGradient', (kilograms) => climbGradient(fourSeater, 'continuous', air(), kilograms!), {
  mass,
});
testRanges('rateOfClimbFromPower', (kilograms) => rateOfClimbFromPower(4e4, kilograms!), { mass });
testRanges(
  'rateOfClimb',
  (kilograms, speed) => rateOfClimb(fourSeater, 'continuous', air(), kilograms!, speed!),
  { mass, trueAirspeed: movingAirspeed },
);
testRanges('ceiling', (kilograms, rate) => ceiling(fourSeater, 'continuous', kilograms!, rate!), {
  mass,
  rate: atLeast(0, 'm/s', 0.5),
});
testRanges('climbToHeight', (to) => climbToHeight(fourSeater, 500, to!, 1100), {
  toAltitude: atLeast(500, 'm', 1500),
});
testRanges('powerRequired', (kilograms, speed) => powerRequired(fourSeater, air(), kilograms!, speed!), {
  mass: atLeast(0, 'kg', 1000),
  trueAirspeed: movingAirspeed,
});

const cruise = { setting: 0.65, mixture: 'lean', headwind: 0 } as const;
testRanges(
  'cruiseOverDistance',
  (distance) => cruiseOverDistance(fourSeater, { ...cruise, air: air() }, 1100, distance!),
  {
    distance: atLeast(0, 'm', 3e5),
  },
);
testRanges('cruiseOnFuel', (fuel) => cruiseOnFuel(fourSeater, { ...cruise, air: air() }, 1100, fuel!), {
  fuel: atLeast(0, 'kg', 60),
});
testRanges('endurance', endurance, {
  usableFuel: atLeast(0, 'kg', 100),
  fuelMassFlow: above(0, 'kg/s', 0.008),
  reserveTime: atLeast(0, 's', 1800),
});
const bsfc = above(0, 'kg/J', 8e-8);
const startMass = atLeast(900, 'kg', 1100);
const endMass = above(0, 'kg', 900);
testRanges('breguetRange', breguetRange, {
  propellerEfficiency: fraction,
  liftDragRatio: above(0, '', 11),
  bsfc,
  startMass,
  endMass,
});
testRanges('breguetEndurance', breguetEndurance, {
  propellerEfficiency: fraction,
  enduranceRatio: above(0, '', 12),
  bsfc,
  density,
  wingArea,
  startMass,
  endMass,
});

const plan = {
  fieldAltitude: 300,
  cruiseAltitude: 2000,
  temperatureDeviation: 0,
  setting: 0.65,
  mixture: 'lean',
  headwind: 0,
} as const;
const ground = { taxiFuel: atLeast(0, 'kg', 3), reserveTime: atLeast(0, 's', 1800) };
testRanges(
  'tripOverDistance',
  (distance, taxiFuel, reserveTime) =>
    tripOverDistance(
      fourSeater,
      { ...plan, taxiFuel: taxiFuel!, reserveTime: reserveTime! },
      1100,
      distance!,
    ),
  { distance: atLeast(0, 'm', 3e5), ...ground },
);
testRanges(
  'tripOnFuel',
  (usableFuel, taxiFuel, reserveTime) =>
    tripOnFuel(fourSeater, { ...plan, taxiFuel: taxiFuel!, reserveTime: reserveTime! }, 1100, usableFuel!),
  { usableFuel: atLeast(0, 'kg', 100), ...ground },
);
testRanges(
  'payloadRange',
  (usableFuel, leastPayload, cabinLimit) =>
    payloadRange(
      fourSeater,
      { ...plan, taxiFuel: 3, reserveTime: 1800 },
      {
        emptyMass: 700,
        maximumMass: 1100,
        usableFuel: usableFuel!,
        leastPayload: leastPayload!,
        cabinLimit: cabinLimit!,
      },
    ),
  { usableFuel: above(0, 'kg', 120), leastPayload: atLeast(0, 'kg', 80), cabinLimit: atLeast(80, 'kg', 320) },
);

const limits = { normalOperating: 70, neverExceed: 85, neverExceedIsTrue: true };
testRanges('normalOperating', (speed) => speedMargins({ ...limits, normalOperating: speed! }, 60, air()), {
  normalOperating: above(0, 'm/s', 70),
});
testRanges('neverExceed', (speed) => speedMargins({ ...limits, neverExceed: speed! }, 60, air()), {
  neverExceed: above(0, 'm/s', 85),
});
const takeoffConditions = () => ({
  air: air(),
  mass: 1100,
  maximumLiftCoefficient: 1.7,
  dragArea: 0.05,
  rollingFriction: 0.04,
  slope: 0,
  headwind: 0,
  groundRollFactor: 1,
});
testRanges(
  'takeoff',
  (slope, headwind, rollingFriction, rollFactor) =>
    takeoff(fourSeater, {
      ...takeoffConditions(),
      slope: slope!,
      headwind: headwind!,
      rollingFriction: rollingFriction!,
      groundRollFactor: rollFactor!,
    }),
  {
    slope: between(-0.2, 0.2, '', 0),
    headwind: finite(2),
    rollingFriction: atLeast(0, '', 0.04),
    groundRollFactor: above(0, '', 1.1),
  },
);
testRanges('groundRollFactor', (roll) => groundRollFactor(fourSeater, takeoffConditions(), roll!), {
  measuredRoll: above(0, 'm', 300),
});
