/** Takeoff: rolling friction, ground roll, the way to 50 ft. */
import { type AircraftInFlight, airAt } from '../../../src/engineering/aircraftInFlight.ts';
import { stallSpeed } from '../../../src/engineering/stall.ts';
import { rollingFriction, takeoff } from '../../../src/engineering/takeoff.ts';
import { fourSeater, fourSeaterMass, textbookAirplane } from '../../engineering/exampleAircraft.ts';
import type { PublishedValue, Topic } from '../publishedValue.ts';

const surfaces = [
  ['pavement', 0.03, 'dry concrete or asphalt, the smooth end'],
  ['wet pavement', 0.05, 'wet concrete or asphalt'],
  ['firm dirt', 0.04, 'firm dirt'],
  ['short grass', 0.05, 'hard turf'],
  ['wet grass', 0.08, 'wet grass'],
] as const;

/** 3,000 N at any speed on 1,000 kg, next to no drag: a disc of 1 km with an efficiency that grows with the speed. */
const steadyPull: AircraftInFlight = {
  ...textbookAirplane,
  wingArea: 10,
  dragPolar: { zeroLiftDragCoefficient: 1e-9, aspectRatio: 1e9, spanEfficiency: 1 },
  fullThrottlePower: () => 1e6,
  propellerEfficiency: (trueAirspeed) => (3000 * trueAirspeed) / 1e6,
};
const steadyTakeoff = () => {
  const run = takeoff(steadyPull, {
    air: airAt(0),
    mass: 1000,
    maximumLiftCoefficient: 1.6,
    dragArea: 0,
    rollingFriction: 0,
    slope: 0,
    headwind: 5,
    groundRollFactor: 1,
  });
  if (!run.possible) throw new Error('3,000 N must do');
  return run;
};
/** √(2 · 9,806.65 / (1.225 · 10 · 1.6)), m/s */
const stallOfThat = 31.6335;

function liftOffOverStall(): number {
  const air = airAt(0);
  const run = takeoff(fourSeater, {
    air,
    mass: fourSeaterMass,
    maximumLiftCoefficient: 1.6,
    dragArea: 0,
    rollingFriction: 0.03,
    slope: 0,
    headwind: 0,
    groundRollFactor: 1,
  });
  const stall = stallSpeed(fourSeaterMass, fourSeater.wingArea, 1.6, air.density);
  return run.possible ? run.liftOffSpeed / stall : 0;
}

export const takeoffs: Topic = {
  topic: 'takeoff',
  values: [
    ...surfaces.map(
      ([surface, expected, called]): PublishedValue => ({
        what: `rolling friction of ${called}`,
        source: 'Raymer, Aircraft Design, table of ground rolling resistance',
        status: 'from memory',
        expected,
        tolerance: 1e-9,
        compute: () => rollingFriction[surface],
      }),
    ),
    {
      what: 'rolling friction of long grass',
      source: 'Torenbeek, Synthesis of Subsonic Airplane Design, takeoff',
      status: 'from memory',
      expected: 0.1,
      tolerance: 1e-9,
      compute: () => rollingFriction['long grass'],
    },
    {
      what: 'rolling friction of soft ground',
      source: 'Torenbeek, Synthesis of Subsonic Airplane Design, takeoff: 0.10 to 0.30',
      status: 'from memory',
      expected: 0.2,
      tolerance: 0.1,
      compute: () => rollingFriction['soft ground'],
    },
    {
      what: 'ground roll of 1,000 kg by 3,000 N against 5 m/s, m',
      source: "Newton's second law: (1.1 V_S − 5)²/(2 × 3)",
      status: 'derived',
      expected: (1.1 * stallOfThat - 5) ** 2 / 6,
      tolerance: 0.01,
      compute: () => steadyTakeoff().groundRoll,
    },
    {
      what: 'time of that roll, s',
      source: "Newton's second law: (1.1 V_S − 5)/3",
      status: 'derived',
      expected: (1.1 * stallOfThat - 5) / 3,
      tolerance: 0.001,
      compute: () => steadyTakeoff().time,
    },
    {
      what: 'distance through the air to 50 ft after it, m',
      source: 'energy: (50 ft + (1.15² − 1.1²) V_S²/2g) m g/3,000 N, less the wind of 5 m/s',
      status: 'derived',
      expected:
        (((15.24 + ((1.15 ** 2 - 1.1 ** 2) * stallOfThat ** 2) / (2 * 9.80665)) * 9806.65) / 3000) *
        (1 - 5 / (stallOfThat * Math.sqrt((1.1 ** 2 + 1.15 ** 2) / 2))),
      tolerance: 0.01,
      note: '1.15 V_S at 50 ft is our own choice',
      compute: () => steadyTakeoff().distanceTo50Feet - steadyTakeoff().groundRoll,
    },
    {
      what: 'lift-off speed over stall speed',
      source: 'Anderson, Aircraft Performance and Design, takeoff',
      status: 'from memory',
      expected: 1.1,
      tolerance: 1e-6,
      compute: liftOffOverStall,
    },
  ],
};
