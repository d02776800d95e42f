import { describe, expect, test } from 'vitest';
import { formulas, tableFunctions } from '../../src/functions/library.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import { everyTable } from '../documents/tables.ts';

/** The contract: every formula function with its arguments in order, optional ones in brackets with what stands for them. */
const contract = `
AIR_DENSITY_RATIO(pressure_altitude_ft, [oat_c = standard temperature])
DENSITY_ALTITUDE(pressure_altitude_ft, oat_c, [dew_point_c = dry air])
ISA_TEMPERATURE(pressure_altitude_ft)
HOT_DAY_TEMPERATURE(pressure_altitude_ft)
ENGINE_POWER_AT_ALTITUDE(rated_power_hp, pressure_altitude_ft, [oat_c = standard temperature], [critical_altitude_ft = none])
FUEL_FLOW(power_hp, bsfc_lb_per_hp_h, [fuel_lb_per_gal = 6])
FUEL_FLOW_AT_SETTING(power_percent, maximum_continuous_power_hp, fuel_points, [fuel_lb_per_gal = 6])
FUEL_FLOW_TO_DEMONSTRATE(takeoff_fuel_flow, feed)
MINIMUM_FUEL(maximum_continuous_power_hp, bsfc_lb_per_hp_h, [minutes = 30])
INSTALLED_WEIGHT(components)
WEIGHT_DELTA(candidate_components, baseline_components)
EXPECTED_WEIGHT(components, allowances)
CG_AFTER_CHANGE(weight, cg, weight_change, change_arm)
CG_PERCENT_MAC(cg, mac_leading_edge, mac_length)
BALLAST_WEIGHT(weight, cg, target_cg, ballast_arm)
USEFUL_LOAD(maximum_weight, empty_weight)
PAYLOAD_FULL_FUEL(maximum_weight, empty_weight, usable_fuel_gal, [fuel_lb_per_gal = 6])
WEIGHED_EMPTY_WEIGHT(scale_readings, tares, arms)
WHEEL_LOAD(weight, cg, nose_or_tail_wheel_arm, main_wheel_arm)
CG_MARGIN(weight, cg, envelope)
CG_EXTREME(empty_weight, empty_cg, stations, maximum_weight, direction)
CG_WORST_MARGIN(empty_weight, empty_cg, stations, maximum_weight, envelope)
ENDURANCE(usable_fuel_gal, fuel_flow_gal_per_h, [reserve_min = 30])
RANGE_BREGUET(propeller_efficiency, lift_drag_ratio, bsfc_lb_per_hp_h, start_weight, end_weight)
STALL_SPEED(weight_lb, wing_area_ft2, maximum_lift_coefficient, [density_ratio = 1])
PROPELLER_TIP_MACH(diameter_in, propeller_rpm, true_airspeed_kt, [oat_c = 15])
PROPELLER_THRUST(power_hp, true_airspeed_kt, diameter_in, [density_ratio = 1], [profile_efficiency = 0.85])
PROPELLER_CLEARANCE(axis_height, diameter)
CLIMB_RATE(excess_thrust_power_hp, weight_lb)
COOLING_HEAT(power_hp, heat_fraction_of_power)
COOLING_AIRFLOW(heat_btu_per_min, air_temperature_rise_f)
COOLING_PRESSURE_AVAILABLE(true_airspeed_kt, density_ratio, [recovery = 0.8], [exit_pressure_coefficient = 0], [slipstream_in_h2o = 0])
COOLING_INLET_AREA(airflow_lb_per_min, true_airspeed_kt, density_ratio, [velocity_ratio = 0.35])
COOLING_EXIT_AREA(airflow_lb_per_min, exit_pressure_difference_in_h2o, density_ratio, [air_temperature_rise_f = 0], [discharge_coefficient = 0.9])
HOT_DAY_CORRECTED(measured_c, oat_c, pressure_altitude_ft, [factor = 1])
RADIATOR_EFFECTIVENESS(ntu, capacity_ratio)
CHARGE_TEMPERATURE(inlet_c, pressure_ratio, compressor_efficiency, [intercooler_effectiveness = 0], [ambient_c = inlet_c])
FIREWALL_MOMENT(components, firewall_arm, [load_factor = 1])
MOUNT_TORQUE_LIMIT(power_hp, propeller_rpm, cylinders, [strokes = 4])
BATTERY_MINUTES(capacity_ah, rated_hours, load_before_shedding_a, essential_load_a, [minutes_to_notice = 5], [derating = 0.8], [peukert = 1.15])
`
  .trim()
  .split('\n');

/** Units of the results, one for each; empty where the unit is that of the arguments, or there is none. */
const resultUnits: Readonly<Record<string, readonly string[]>> = {
  DENSITY_ALTITUDE: ['ft'],
  ISA_TEMPERATURE: ['°C'],
  HOT_DAY_TEMPERATURE: ['°C'],
  ENGINE_POWER_AT_ALTITUDE: ['hp'],
  FUEL_FLOW: ['US gal/h'],
  FUEL_FLOW_AT_SETTING: ['US gal/h'],
  MINIMUM_FUEL: ['lb'],
  INSTALLED_WEIGHT: ['', '', ''],
  WEIGHT_DELTA: ['', ''],
  EXPECTED_WEIGHT: ['', '', ''],
  CG_PERCENT_MAC: ['%'],
  PAYLOAD_FULL_FUEL: ['lb'],
  WEIGHED_EMPTY_WEIGHT: ['', ''],
  WHEEL_LOAD: ['', ''],
  CG_EXTREME: ['', ''],
  CG_WORST_MARGIN: ['', '', ''],
  ENDURANCE: ['h'],
  RANGE_BREGUET: ['nmi'],
  STALL_SPEED: ['kt'],
  PROPELLER_THRUST: ['lbf'],
  CLIMB_RATE: ['ft/min'],
  COOLING_HEAT: ['Btu/min'],
  COOLING_AIRFLOW: ['lb/min'],
  COOLING_PRESSURE_AVAILABLE: ['inH2O'],
  COOLING_INLET_AREA: ['in²'],
  COOLING_EXIT_AREA: ['in²'],
  HOT_DAY_CORRECTED: ['°C'],
  CHARGE_TEMPERATURE: ['°C'],
  MOUNT_TORQUE_LIMIT: ['lbf·ft'],
  BATTERY_MINUTES: ['min'],
};

/** What an argument's name says of its unit, the longest ending first. */
const unitEndings: readonly (readonly [RegExp, string])[] = [
  [/_lb_per_hp_h$/, 'lb/hp·h'],
  [/_gal_per_h$/, 'US gal/h'],
  [/_lb_per_gal$/, 'lb/US gal'],
  [/_btu_per_min$/, 'Btu/min'],
  [/_lb_per_min$/, 'lb/min'],
  [/_in_h2o$/, 'inH2O'],
  [/temperature_rise_f$/, '°F'],
  [/_ft2$/, 'ft²'],
  [/_ft$/, 'ft'],
  [/_hp$/, 'hp'],
  [/_gal$/, 'US gal'],
  [/_kt$/, 'kt'],
  [/_in$/, 'in'],
  [/_lb$/, 'lb'],
  [/_rpm$/, 'rpm'],
  [/_c$/, '°C'],
  [/_ah$/, 'Ah'],
  [/_min$|^minutes/, 'min'],
  [/_hours$/, 'h'],
  [/_percent$/, '%'],
];

describe('formula functions', () => {
  test('are those of the contract, with their arguments in order', () => {
    const declared = formulas.map(({ name, arguments: parameters }) => {
      const list = parameters.map((each) => (each.optional ? `[${each.name} = ${each.omitted}]` : each.name));
      return `${name}(${list.join(', ')})`;
    });
    expect(declared).toEqual(contract);
  });

  test.each(formulas.map((formula) => [formula.name, formula] as const))('%s: units', (name, formula) => {
    expect(formula.results.map(({ measure }) => measure?.unit ?? '')).toEqual(resultUnits[name] ?? ['']);
    for (const argument of formula.arguments) {
      if (argument.type !== 'number') continue;
      const ending = unitEndings.find(([pattern]) => pattern.test(argument.name));
      // A number whose name has no unit is one of the field's own: any that agree, A, or all °C
      if (ending) expect(argument.measure?.unit, argument.name).toBe(ending[1]);
    }
  });

  test.each(formulas.map((formula) => [formula.name, formula] as const))(
    '%s: has help and a source, and arguments as Google Sheets wants them',
    (_, formula) => {
      expect(formula.help.length).toBeGreaterThan(10);
      expect(formula.source).not.toBe('');
      const names = formula.arguments.map((argument) => argument.name);
      expect(new Set(names).size).toBe(names.length);
      // Once an argument may be left out, so may all that follow
      const firstOptional = formula.arguments.findIndex(({ optional }) => optional);
      if (firstOptional >= 0)
        for (const { optional } of formula.arguments.slice(firstOptional)) expect(optional).toBe(true);
    },
  );
});

describe('table functions', () => {
  test('are those of the contract', () => {
    expect(tableFunctions.map(({ name }) => name)).toEqual([
      'PACKAGE_COMPARISON',
      'WEIGHT_BUILD_UP',
      'INSTALLATION_FINDINGS',
      'LOADING_CHECK',
      'LOADING_REGION',
      'FUEL_TABLE',
      'FLIGHT_TABLE',
      'COOLING_CHECK',
      'COST_TABLE',
      'MISSION_CHECK',
      'PAYLOAD_RANGE',
      'QUOTE_LINES',
      'WEIGHING_CHECK',
      'CHANGE_RECORD',
      'FLIGHT_TEST_CARDS',
    ]);
  });

  test('begin with the tables in their order', () => {
    const names = tableNames.map((table) => table.replace(/ /g, '_'));
    for (const { arguments: parameters } of tableFunctions)
      expect(parameters.slice(0, names.length).map(({ name }) => name)).toEqual(names);
  });

  test('ask for the tables that must be there, and no others', () => {
    const required = everyTable
      .filter(({ table, isBuilders }) => !isBuilders && table.required)
      .map(({ table }) => table.name.replace(/ /g, '_'));
    for (const { name, arguments: parameters } of tableFunctions) {
      const asked = parameters.slice(0, tableNames.length).filter(({ optional }) => !optional);
      expect(asked.map((each) => each.name).sort(), name).toEqual(required.sort());
    }
  });
});

test('every function is known by one name, which is that of no cell', () => {
  const names = [...formulas, ...tableFunctions].map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  for (const name of names) {
    expect(name).toMatch(/^[A-Z][A-Z0-9_]*$/);
    expect(name).not.toMatch(/^[A-Z]{1,3}[0-9]+$/);
  }
});
