/** Stall, drag, level flight, climb. */
import { airAt } from '../../../src/engineering/aircraftInFlight.ts';
import { bestRateOfClimb, ceiling } from '../../../src/engineering/climb.ts';
import {
  aspectRatio,
  type DragPolar,
  drag,
  dragCoefficient,
  liftCoefficient,
  minimumDragSpeed,
} from '../../../src/engineering/dragPolar.ts';
import { polarThroughPoint, polarThroughPoints } from '../../../src/engineering/knownFlight.ts';
import { levelFlight } from '../../../src/engineering/levelFlight.ts';
import { stallSpeed } from '../../../src/engineering/stall.ts';
import { standardGravity } from '../../../src/units.ts';
import { textbookAirplane, textbookMass } from '../../engineering/exampleAircraft.ts';
import { foot, horsepower, pound, poundForce } from '../../engineering/tradeUnits.ts';
import { fromFunction, type PublishedValue, type Topic } from '../publishedValue.ts';

const cengel = 'Çengel and Cimbala, Fluid Mechanics, example 11-5 (inputs read, answers from memory)';
const anderson = 'Anderson, Introduction to Flight, example 6.1';
const companion = 'Anderson, Introduction to Flight, examples 6.12 and 6.14 (companion read)';

// Anderson's light aircraft: 2,950 lb, 174 ft², 35.8 ft; the companion has it in SI
const mass = 13_127.5 / standardGravity;
const wingArea = 16.165; // m²
const polar: DragPolar = {
  zeroLiftDragCoefficient: 0.025,
  aspectRatio: aspectRatio(10.912, wingArea),
  spanEfficiency: 0.8,
};
const at200FeetPerSecond = () => liftCoefficient(mass, wingArea, 200 * foot, 1.225);

/** Greatest of a ratio of the polar, over lift coefficients. */
function greatest(ratio: (lift: number, drag: number) => number): number {
  let best = 0;
  for (let lift = 0.1; lift < 3; lift += 0.0005)
    best = Math.max(best, ratio(lift, dragCoefficient(polar, lift)));
  return best;
}

const levelSpeed = (feet: number) => {
  const level = levelFlight(textbookAirplane, 'continuous', airAt(feet * foot), textbookMass);
  return level.possible ? level.trueAirspeed / foot : 0;
};
const curve: readonly (readonly [string, number, number, () => number])[] = [
  ['greatest level speed at sea level, ft/s', 265, 0.02, () => levelSpeed(0)],
  ['greatest level speed at 12,000 ft, ft/s', 255, 0.02, () => levelSpeed(12_000)],
  [
    'greatest rate of climb at sea level, ft/min',
    1500,
    0.01,
    () => (bestRateOfClimb(textbookAirplane, 'continuous', airAt(0), textbookMass).rateOfClimb * 60) / foot,
  ],
  [
    'absolute ceiling, ft',
    27_000,
    0.02,
    () => ceiling(textbookAirplane, 'continuous', textbookMass, 0).pressureAltitude / foot,
  ],
  [
    'service ceiling, ft',
    25_000,
    0.02,
    () => ceiling(textbookAirplane, 'continuous', textbookMass).pressureAltitude / foot,
  ],
];

/** In air of 2 kg/m³ at 10 m/s q S of 10 m² is 1,000 N: C_L and drag in newtons. */
const dragPoint = (lift: number, newtons: number) => ({
  drag: newtons,
  mass: (1000 * lift) / standardGravity,
  trueAirspeed: 10,
  density: 2,
});
const throughTwoPoints = () => polarThroughPoints([dragPoint(0.5, 32.5), dragPoint(1, 70)], 10, 7.957747);

export const flight: Topic = {
  topic: 'stall, drag, climb',
  values: [
    {
      what: 'stall speed of 70 t on 150 m², C_Lmax 1.52, 1.2 kg/m³, m/s',
      source: cengel,
      status: 'from memory',
      expected: 70.9,
      tolerance: 0.07,
      note: 'rounded from 70.85, with g 9.81',
      compute: () => stallSpeed(70_000, 150, 1.52, 1.2),
    },
    {
      what: 'the same with C_Lmax 3.48, m/s',
      source: cengel,
      status: 'from memory',
      expected: 46.8,
      tolerance: 0.05,
      compute: () => stallSpeed(70_000, 150, 3.48, 1.2),
    },
    {
      what: '1.2 times its stall speed, flaps up, km/h',
      source: cengel,
      status: 'from memory',
      expected: 306,
      tolerance: 0.5,
      compute: () => 1.2 * 3.6 * stallSpeed(70_000, 150, 1.52, 1.2),
    },
    {
      what: '1.2 times its stall speed, flaps down, km/h',
      source: cengel,
      status: 'from memory',
      expected: 202,
      tolerance: 0.5,
      compute: () => 1.2 * 3.6 * stallSpeed(70_000, 150, 3.48, 1.2),
    },
    {
      what: 'stall speed of 2,400 lb on 174 ft², C_Lmax 1.6, sea level, kt',
      source: 'lift equation: √(2 W / ρ S C_L) with 0.0023769 slug/ft³: 85.169 ft/s',
      status: 'derived',
      expected: 50.461,
      tolerance: 0.002,
      compute: () => fromFunction('STALL_SPEED', [2400, 174, 1.6]),
    },
    {
      what: 'rise of the stall speed in a bank of 60°, %',
      source: "FAA-H-8083-25, Pilot's Handbook, load factors and stalling speeds",
      status: 'from memory',
      expected: 41,
      tolerance: 0.5,
      compute: () => 100 * (stallSpeed(1000, 10, 1.6, 1.225, 2) / stallSpeed(1000, 10, 1.6, 1.225) - 1),
    },
    {
      what: 'lift coefficient at 200 ft/s, sea level',
      source: anderson,
      status: 'from memory',
      expected: 0.357,
      tolerance: 0.001,
      compute: at200FeetPerSecond,
    },
    {
      what: 'drag coefficient there',
      source: anderson,
      status: 'from memory',
      expected: 0.0319,
      tolerance: 0.00005,
      compute: () => dragCoefficient(polar, at200FeetPerSecond()),
    },
    {
      what: 'thrust required there, lbf',
      source: anderson,
      status: 'from memory',
      expected: 263,
      tolerance: 1,
      note: 'he divides 2,950 by L/D rounded to 11.2',
      compute: () => drag(polar, wingArea, mass, 200 * foot, 1.225) / poundForce,
    },
    {
      what: 'greatest lift over drag',
      source: companion,
      status: 'read',
      expected: 13.62,
      tolerance: 0.02,
      note: 'read off a plot there; closed form 13.606',
      compute: () => greatest((lift, dragging) => lift / dragging),
    },
    {
      what: 'greatest C_L^1.5/C_D',
      source: companion,
      status: 'read',
      expected: 12.81,
      tolerance: 0.025,
      note: 'read off a plot there; closed form 12.791',
      compute: () => greatest((lift, dragging) => lift ** 1.5 / dragging),
    },
    {
      what: 'drag at the speed of least drag, as lift over drag',
      source: `${companion}: √(C_D0 π e A)/(2 C_D0)`,
      status: 'derived',
      expected: 13.6062,
      tolerance: 0.0001,
      compute: () => {
        const speed = minimumDragSpeed(polar, wingArea, mass, 1.225);
        return (mass * standardGravity) / drag(polar, wingArea, mass, speed, 1.225);
      },
    },
    {
      what: 'aspect ratio of 35.8 ft on 174 ft²',
      source: anderson,
      status: 'from memory',
      expected: 7.37,
      tolerance: 0.005,
      compute: () => polar.aspectRatio,
    },
    {
      what: 'greatest rate of climb at 0.8 of 230 hp, m/s',
      source: 'Anderson, Introduction to Flight, example 6.16, closed form (companion read)',
      status: 'derived',
      expected: 7.607,
      tolerance: 0.01,
      note: 'he has 746 W for a horsepower and L/D rounded to 13.6',
      compute: () => {
        // Least power required is at C_L = √(3 π e A C_D0)
        const speed = minimumDragSpeed(polar, wingArea, mass, 1.225) / 3 ** 0.25;
        const spare = 0.8 * 230 * 746 - drag(polar, wingArea, mass, speed, 1.225) * speed;
        const feetPerMinute = fromFunction('CLIMB_RATE', [spare / horsepower, mass / pound]);
        return (feetPerMinute * foot) / 60;
      },
    },
    ...curve.map(
      ([what, expected, tolerance, compute]): PublishedValue => ({
        what,
        source: 'Anderson, Introduction to Flight, chapter 6, the same aircraft with constant efficiency',
        status: 'from memory',
        expected,
        tolerance: { relative: tolerance },
        note: 'read off curves there',
        compute,
      }),
    ),
    {
      what: 'greatest level speed of the same at sea level, ft/s',
      source: 'level flight: η P = ½ ρ V³ S C_D0 + 2 K W²/(ρ V S), solved by another program',
      status: 'derived',
      expected: 261.55,
      tolerance: 0.05,
      compute: () => levelSpeed(0),
    },
    {
      what: 'C_D0 through C_L 0.5, C_D 0.0325 and C_L 1, C_D 0.07',
      source: 'parabolic polar: 0.02 + 0.05 C_L²',
      status: 'derived',
      expected: 0.02,
      tolerance: 1e-6,
      compute: () => throughTwoPoints().zeroLiftDragCoefficient,
    },
    {
      what: 'e of that polar, aspect ratio 7.957747',
      source: 'parabolic polar: 0.05 = 1/(π 0.8 A)',
      status: 'derived',
      expected: 0.8,
      tolerance: 1e-6,
      compute: () => throughTwoPoints().spanEfficiency,
    },
    {
      what: 'C_D0 through C_L 0.5, C_D 0.0325, e 0.8',
      source: 'parabolic polar: 0.0325 − 0.05 × 0.25',
      status: 'derived',
      expected: 0.02,
      tolerance: 1e-6,
      compute: () => polarThroughPoint(dragPoint(0.5, 32.5), 10, 7.957747, 0.8).zeroLiftDragCoefficient,
    },
    {
      what: 'rate of climb of 2,000 lb on 50 hp to spare, ft/min',
      source: 'definition of the horsepower, 33,000 ft·lbf/min',
      status: 'derived',
      expected: 825,
      tolerance: 1e-6,
      compute: () => fromFunction('CLIMB_RATE', [50, 2000]),
    },
  ],
};
