/** The propeller as an actuator disc, its tips, its torque, and what hangs on the firewall. */
import { meanTorque } from '../../../src/engineering/mount.ts';
import {
  discArea,
  idealEfficiency,
  inducedVelocity,
  staticThrust,
} from '../../../src/engineering/propeller.ts';
import { foot, horsepower, inch, knot, poundForce } from '../../engineering/tradeUnits.ts';
import { fromFunction, type Topic } from '../publishedValue.ts';

const disc = 'Froude, actuator disc: T = 2 ρ A (V + w) w (formulas read in teaching material)';
const houghton =
  'Houghton and Carpenter, Aerodynamics for Engineering Students, chapter on propulsion (inputs from memory)';

export const propeller: Topic = {
  topic: 'propeller and mount',
  values: [
    {
      what: 'disc area of 1.8 m, m²',
      source: disc,
      status: 'derived',
      expected: 2.5447,
      tolerance: 0.00005,
      compute: () => discArea(1.8),
    },
    {
      what: 'induced velocity of that disc at 1,000 N, 60 m/s, 1.225 kg/m³, m/s',
      source: disc,
      status: 'derived',
      expected: 2.564,
      tolerance: 0.0005,
      compute: () => inducedVelocity(1000, 60, 1.8, 1.225),
    },
    {
      what: 'its ideal efficiency',
      source: disc,
      status: 'derived',
      expected: 0.959,
      tolerance: 0.0005,
      compute: () => idealEfficiency(1000, 60, 1.8, 1.225),
    },
    {
      what: 'its thrust from the ideal power of 62,564 W, N',
      source: disc,
      status: 'derived',
      expected: 1000,
      tolerance: 0.02,
      compute: () =>
        fromFunction('PROPELLER_THRUST', [62_564 / horsepower, 60 / knot, 1.8 / inch, 1, 1]) * poundForce,
    },
    {
      what: 'thrust of a disc of 2.5 m at 120 m/s from 490.8 kW, N',
      source: `${houghton}: 4,000 N`,
      status: 'derived',
      expected: 4000,
      tolerance: 1,
      compute: () =>
        fromFunction('PROPELLER_THRUST', [490_842 / horsepower, 120 / knot, 2.5 / inch, 1, 1]) * poundForce,
    },
    {
      what: 'ideal static thrust of 1 hp on a disc of 1 ft, lbf',
      source: 'aircraft performance textbooks: 10.42 (hp · D)^(2/3), sea level',
      status: 'from memory',
      expected: 10.42,
      tolerance: 0.02,
      compute: () => staticThrust(horsepower, foot, 1.225, 1) / poundForce,
    },
    {
      what: 'the same, lbf',
      source: 'Froude, actuator disc at rest: (550² × 2 × 0.0023769 × π/4)^(1/3)',
      status: 'derived',
      expected: Math.cbrt(550 ** 2 * 2 * 0.0023769 * (Math.PI / 4)),
      tolerance: 0.001,
      compute: () => staticThrust(horsepower, foot, 1.225, 1) / poundForce,
    },
    {
      what: 'the same through the custom function at 0 kt, lbf',
      source: 'Froude, actuator disc at rest: (550² × 2 × 0.0023769 × π/4)^(1/3)',
      status: 'derived',
      expected: Math.cbrt(550 ** 2 * 2 * 0.0023769 * (Math.PI / 4)),
      tolerance: 0.001,
      compute: () => fromFunction('PROPELLER_THRUST', [1, 0, 12, 1, 1]),
    },
    {
      what: 'thrust of 180 hp standing, 74 in, efficiency 0.5, lbf',
      source: 'Froude, actuator disc at rest: ((0.5 × 180 × 550)² × 2 × 0.0023769 × π/4 × 6.16667²)^(1/3)',
      status: 'derived',
      expected: Math.cbrt((0.5 * 180 * 550) ** 2 * 2 * 0.0023769 * (Math.PI / 4) * (74 / 12) ** 2),
      tolerance: 0.05,
      compute: () => fromFunction('PROPELLER_THRUST', [180, 0, 74, 1, 0.5]),
    },
    {
      what: 'tip speed of 1.8 m at 2,700 rpm over the speed of sound at sea level',
      source: 'kinematics: 254.47/340.29',
      status: 'derived',
      expected: 0.7478,
      tolerance: 0.00005,
      compute: () => fromFunction('PROPELLER_TIP_MACH', [1.8 / inch, 2700, 0]),
    },
    {
      what: 'helical tip Mach number of 1.8 m at 2,700 rpm and 60 m/s',
      source: 'kinematics: √(254.47² + 60²)/340.29',
      status: 'derived',
      expected: 0.7683,
      tolerance: 0.00005,
      compute: () => fromFunction('PROPELLER_TIP_MACH', [1.8 / inch, 2700, 60 / knot]),
    },
    {
      what: 'torque of 1 hp at 1 rpm, lbf·ft',
      source: 'engineering handbooks: 5,252 hp/rpm',
      status: 'from memory',
      expected: 5252,
      tolerance: 0.5,
      compute: () => fromFunction('MOUNT_TORQUE_LIMIT', [1, 1, 4]) / 2,
    },
    {
      what: 'moment of 350 lb, 20 in ahead of the firewall, at 3.8 g, lb·in',
      source: 'statics: 3.8 × 350 × 20; 30 lb behind the firewall count nothing',
      status: 'derived',
      expected: 26_600,
      tolerance: 1e-6,
      compute: () =>
        fromFunction('FIREWALL_MOMENT', [
          [
            [350, 40],
            [30, 75],
          ],
          60,
          3.8,
        ]),
    },
    {
      what: 'torque of 1 kW at 1 rpm, N·m',
      source: 'engineering handbooks: 9,549 kW/rpm',
      status: 'from memory',
      expected: 9549.3,
      tolerance: 0.05,
      compute: () => meanTorque({ power: 1000, shaftSpeed: 1 / 60 }),
    },
  ],
};
