import { seaLevelDensity, soundSpeed } from '../engineering/air.ts';
import { breguetRange, endurance } from '../engineering/endurance.ts';
import { groundClearance, helicalTipMach, propellerThrust } from '../engineering/propeller.ts';
import { stallSpeed } from '../engineering/stall.ts';
import { standardGravity } from '../units.ts';
import { defaulted, given } from './argument.ts';
import { type Formula, formula } from './formula.ts';
import {
  feetPerMinute,
  gallons,
  gallonsPerHour,
  horsepowers,
  hours,
  inches,
  knots,
  minutes,
  nauticalMiles,
  outsideAir,
  pounds,
  poundsForce,
  rpm,
  squareFeet,
} from './measures.ts';
import { mustBe } from './messages.ts';
import { bsfc, shaftPower, trueAirspeed } from './sharedArguments.ts';

const diameter = given('diameter_in', { help: 'propeller diameter, in', above: 0, measure: inches });
const densityRatio = defaulted('density_ratio', 1, {
  help: 'air density over sea-level standard',
  above: 0,
  atMost: 1.5,
});

export const flightFormulas: readonly Formula[] = [
  formula({
    name: 'ENDURANCE',
    help: 'Time in flight with a reserve kept, h; negative by what the fuel falls short of the reserve.',
    source: 'definition; reserve 30 min by day, 45 min by night: 14 CFR 91.151',
    arguments: [
      given('usable_fuel_gal', { help: 'usable fuel, US gal', atLeast: 0, measure: gallons }),
      given('fuel_flow_gal_per_h', { help: 'fuel flow, US gal/h', above: 0, measure: gallonsPerHour }),
      defaulted('reserve_min', 30, { help: 'reserve, min', atLeast: 0, measure: minutes }),
    ],
    results: [{ label: 'endurance', measure: hours }],
    compute: endurance,
  }),
  formula({
    name: 'RANGE_BREGUET',
    help: 'Range at constant lift coefficient and propeller efficiency, nmi. Weights in any unit that agrees.',
    source: 'Breguet; Anderson, Introduction to Flight, section 6.12',
    arguments: [
      given('propeller_efficiency', { help: 'thrust power over shaft power', above: 0, atMost: 1 }),
      given('lift_drag_ratio', { help: 'lift over drag', above: 0 }),
      bsfc,
      given('start_weight', { help: 'with fuel', above: 0 }),
      given('end_weight', { help: 'without the fuel burnt', above: 0 }),
    ],
    results: [{ label: 'range', measure: nauticalMiles }],
    compute: (efficiency, liftDragRatio, consumption, start, end) => {
      if (end > start) throw mustBe('end_weight', `at most start_weight, ${start}`, end);
      return breguetRange(efficiency, liftDragRatio, consumption, start, end);
    },
  }),
  formula({
    name: 'STALL_SPEED',
    help: 'Stall speed, kt true.',
    source: 'definition of the lift coefficient',
    arguments: [
      given('weight_lb', { help: 'weight, lb', above: 0, measure: pounds }),
      given('wing_area_ft2', { help: 'wing area, ft²', above: 0, measure: squareFeet }),
      given('maximum_lift_coefficient', { help: 'with the flaps as set', above: 0, atMost: 5 }),
      densityRatio,
    ],
    results: [{ label: 'stall speed', measure: knots }],
    compute: (weight, area, lift, ratio) => stallSpeed(weight, area, lift, ratio * seaLevelDensity),
  }),
  formula({
    name: 'PROPELLER_TIP_MACH',
    help: 'Helical tip Mach number. Noisy and losing above 0.85, to be avoided above 0.92 (common practice).',
    source: 'velocity triangle',
    arguments: [
      diameter,
      given('propeller_rpm', { help: 'of the propeller, behind any gearbox, rpm', atLeast: 0, measure: rpm }),
      trueAirspeed,
      defaulted('oat_c', 15, { help: 'outside air temperature, °C', ...outsideAir }),
    ],
    results: [{ label: 'tip Mach number' }],
    compute: (size, shaftSpeed, speed, temperature) =>
      helicalTipMach(speed, shaftSpeed, size, soundSpeed(temperature)),
  }),
  formula({
    name: 'PROPELLER_THRUST',
    help: 'Thrust of a propeller, lbf. One efficiency does not serve all speeds: use about 0.42 standing, 0.76 at best climb, 0.81 in cruise.',
    source: 'momentum theory of the actuator disc',
    arguments: [
      shaftPower,
      trueAirspeed,
      diameter,
      densityRatio,
      defaulted('profile_efficiency', 0.85, {
        help: 'share of the ideal: profile and installation losses',
        above: 0,
        atMost: 1,
      }),
    ],
    results: [{ label: 'thrust', measure: poundsForce }],
    compute: (power, speed, size, ratio, efficiency) =>
      propellerThrust(power, speed, size, ratio * seaLevelDensity, efficiency),
  }),
  formula({
    name: 'PROPELLER_CLEARANCE',
    help: 'Ground clearance of the propeller, in the unit of the arguments. 7 in with a nosewheel, 9 in with a tailwheel.',
    source: 'geometry; least clearance 14 CFR 23.925 before amendment 64',
    arguments: [
      given('axis_height', { help: 'propeller axis above the ground', atLeast: 0 }),
      given('diameter', { help: 'propeller diameter', above: 0 }),
    ],
    results: [{ label: 'clearance' }],
    compute: groundClearance,
  }),
  formula({
    name: 'CLIMB_RATE',
    help: 'Rate of climb from excess thrust power, ft/min; negative is a descent.',
    source: 'energy balance',
    arguments: [
      given('excess_thrust_power_hp', { help: 'thrust power less drag power, hp', measure: horsepowers }),
      given('weight_lb', { help: 'weight, lb', above: 0, measure: pounds }),
    ],
    results: [{ label: 'rate of climb', measure: feetPerMinute }],
    compute: (excess, weight) => excess / (weight * standardGravity),
  }),
];
