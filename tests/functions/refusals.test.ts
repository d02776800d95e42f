/** What a person is told when a formula function refuses, word for word; that it always says something: tests/hostile. */
import { describe, expect, test } from 'vitest';
import { call } from '../../src/functions/library.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';

const envelope = [
  [1200, 97, 110],
  [2520, 103, 110],
];
const stations = [[80, 0, 200]];

const refusals: readonly (readonly [string, readonly (Cell | Grid)[], string])[] = [
  // Temperatures in °F, and heights nobody flies at
  ['AIR_DENSITY_RATIO', [5000, 77], 'oat_c must be at most 60 °C (is it in °F?), got 77'],
  ['DENSITY_ALTITUDE', [5000, 86], 'oat_c must be at most 60 °C (is it in °F?), got 86'],
  ['DENSITY_ALTITUDE', [5000, 30, 60], 'dew_point_c must be at most 35 °C (is it in °F?), got 60'],
  ['DENSITY_ALTITUDE', [5000, 20, 25], 'dew_point_c must be at most oat_c, got 25'],
  ['ENGINE_POWER_AT_ALTITUDE', [180, 8000, 61], 'oat_c must be at most 60 °C (is it in °F?), got 61'],
  ['PROPELLER_TIP_MACH', [74, 2700, 150, 90], 'oat_c must be at most 60 °C (is it in °F?), got 90'],
  ['HOT_DAY_CORRECTED', [110, 85, 5000], 'oat_c must be at most 60 °C (is it in °F?), got 85'],
  ['CHARGE_TEMPERATURE', [200, 2, 0.7], 'inlet_c must be at most 150 °C (is it in °F?), got 200'],
  ['CHARGE_TEMPERATURE', [15, 2, 0.7, 0.5, 100], 'ambient_c must be at most 60 °C (is it in °F?), got 100'],
  ['AIR_DENSITY_RATIO', [5000, -91], 'oat_c must be at least -90 °C, got -91'],
  ['ISA_TEMPERATURE', [-2001], 'pressure_altitude_ft must be at least -2000 ft, got -2001'],
  ['HOT_DAY_TEMPERATURE', [60_001], 'pressure_altitude_ft must be at most 60000 ft, got 60001'],
  // Power and fuel
  ['ENGINE_POWER_AT_ALTITUDE', [-1, 8000], 'rated_power_hp must be at least 0 hp, got -1'],
  ['ENGINE_POWER_AT_ALTITUDE', [180, 8000, '', -1], 'critical_altitude_ft must be at least 0 ft, got -1'],
  ['FUEL_FLOW', [150, 0], 'bsfc_lb_per_hp_h must be above 0 lb/hp·h, got 0'],
  ['FUEL_FLOW', [150, 0.45, 0], 'fuel_lb_per_gal must be above 0 lb/US gal, got 0'],
  ['FUEL_FLOW', [150, 0.45, -6], 'fuel_lb_per_gal must be above 0 lb/US gal, got -6'],
  [
    'FUEL_FLOW_AT_SETTING',
    [0.75, 180, [[75, 0.43]]],
    'power_percent must be at least 5 % (a cell shown as 75 % holds 0.75), got 0.75',
  ],
  ['FUEL_FLOW_AT_SETTING', [130, 180, [[75, 0.43]]], 'power_percent must be at most 125 %, got 130'],
  [
    'FUEL_FLOW_AT_SETTING',
    [75, 180, [[0.75, 0.43]]],
    'fuel_points % power must be at least 5 % (a cell shown as 75 % holds 0.75), got 0.75 (row 1, column 1)',
  ],
  [
    'FUEL_FLOW_AT_SETTING',
    [
      55,
      180,
      [
        [60, 0.43],
        [75, 0.43],
        [100, 0.5],
      ],
    ],
    'power_percent must be within the fuel_points, 60 to 100 %, got 55',
  ],
  [
    'FUEL_FLOW_AT_SETTING',
    [
      75,
      180,
      [
        [55, 0.43],
        ['', ''],
        [55, 0.44],
      ],
    ],
    'fuel_points % power must be another in every row, got 55 (row 3, column 1)',
  ],
  [
    'FUEL_FLOW_AT_SETTING',
    [75, 180, [[75]]],
    'fuel_points must be rows of % power, BSFC, got an empty cell (row 1, column 2)',
  ],
  [
    'FUEL_FLOW_AT_SETTING',
    [75, 180, [[75, 0.43, 'rich']]],
    'fuel_points must be rows of 2: % power, BSFC, got "rich" (row 1, column 3)',
  ],
  ['FUEL_FLOW_TO_DEMONSTRATE', [20, 'hand'], 'feed must be "pump" or "gravity", got "hand"'],
  [
    'FUEL_FLOW_TO_DEMONSTRATE',
    [20, [['pump'], ['pump']]],
    'feed must be one cell, "pump" or "gravity", got a range',
  ],
  ['FUEL_FLOW_TO_DEMONSTRATE', [20, 1], 'feed must be "pump" or "gravity", got 1'],
  ['FUEL_FLOW_TO_DEMONSTRATE', [-20, 'pump'], 'takeoff_fuel_flow must be at least 0, got -20'],
  ['MINIMUM_FUEL', [165, 0.5, -1], 'minutes must be at least 0 min, got -1'],
  ['ENDURANCE', [42, 0], 'fuel_flow_gal_per_h must be above 0 US gal/h, got 0'],
  ['ENDURANCE', [42, 9, -1], 'reserve_min must be at least 0 min, got -1'],
  ['RANGE_BREGUET', [1.1, 12, 0.45, 2400, 2150], 'propeller_efficiency must be at most 1, got 1.1'],
  ['RANGE_BREGUET', [0.8, 12, 0.45, 2150, 2400], 'end_weight must be at most start_weight, 2150, got 2400'],
  // Weight and balance
  [
    'INSTALLED_WEIGHT',
    [
      [
        [100, 40],
        [-100, 50],
      ],
    ],
    'components must be of a weight other than 0 together, to have a CG, got 0',
  ],
  [
    'INSTALLED_WEIGHT',
    [
      [
        ['weight', 'arm'],
        [100, 40],
      ],
    ],
    'components weight must be a number without unit or separators, got "weight" (row 1, column 1)',
  ],
  [
    'INSTALLED_WEIGHT',
    [
      [
        [100, 40],
        [50, ''],
      ],
    ],
    'components must be rows of weight, arm, got an empty cell (row 2, column 2)',
  ],
  [
    'INSTALLED_WEIGHT',
    [
      [
        [100, 40],
        ['', ''],
        [50, '#N/A'],
      ],
    ],
    'components arm must be a number; the cell holds an error, got "#N/A" (row 3, column 2)',
  ],
  [
    'EXPECTED_WEIGHT',
    [[[100, 'guessed']], [['weighed', 0, 0.005, 0]]],
    'components basis must be one of the allowances, weighed, got "guessed" (row 1, column 2)',
  ],
  [
    'EXPECTED_WEIGHT',
    [[[100, 'weighed']], [['weighed', 4, 0.005, 0]]],
    'allowances growth must be at most 1 (4 % is 0.04), got 4 (row 1, column 2)',
  ],
  [
    'EXPECTED_WEIGHT',
    [
      [[100, 'weighed']],
      [
        ['weighed', 0, 0, 0],
        ['Weighed', 0, 0, 0],
      ],
    ],
    'allowances basis must be another in every row, got "weighed" (row 2, column 1)',
  ],
  ['CG_AFTER_CHANGE', [100, 90, -100, 40], 'weight after the change must be above 0, got 0'],
  ['CG_AFTER_CHANGE', [0, 90, 10, 40], 'weight must be above 0, got 0'],
  ['CG_PERCENT_MAC', [161, 144, 0], 'mac_length must be above 0, got 0'],
  ['BALLAST_WEIGHT', [1876, 32.2, 33, 20], 'ballast_arm must be aft of target_cg, 33, got 20'],
  ['BALLAST_WEIGHT', [1876, 34, 33, 60], 'ballast_arm must be forward of target_cg, 33, got 60'],
  ['USEFUL_LOAD', [0, 1400], 'maximum_weight must be above 0, got 0'],
  ['PAYLOAD_FULL_FUEL', [2520, 1400, -1], 'usable_fuel_gal must be at least 0 US gal, got -1'],
  [
    'WEIGHED_EMPTY_WEIGHT',
    [
      [[345], [836]],
      [[5], [3], [3]],
      [[-32], [46]],
    ],
    'scale_readings, tares and arms must be equally many, got 2, 3 and 2',
  ],
  [
    'WEIGHED_EMPTY_WEIGHT',
    [
      [[345], ['']],
      [[5], [3]],
      [[-32], [46]],
    ],
    'scale_readings must be given, got an empty cell (row 2, column 1)',
  ],
  [
    'WEIGHED_EMPTY_WEIGHT',
    [
      [[5], [3]],
      [[5], [3]],
      [[-32], [46]],
    ],
    'scale_readings must be above the tares, all together, got 0',
  ],
  ['WHEEL_LOAD', [2006, 32, 46, 46], 'nose_or_tail_wheel_arm must be another than main_wheel_arm, got 46'],
  ['CG_MARGIN', [2600, 104, envelope], 'weight must be at most 2520 (end of the envelope), got 2600'],
  [
    'CG_MARGIN',
    [2000, 104, [[1200, 110, 97]]],
    'envelope aft limit must be above the forward limit, 110, got 97 (row 1, column 3)',
  ],
  [
    'CG_MARGIN',
    [
      2000,
      104,
      [
        [1200, 97, 110],
        [1200, 97, 110],
      ],
    ],
    'envelope weight must be another in every row, got 1200 (row 2, column 1)',
  ],
  ['CG_EXTREME', [1000, 90, stations, 1400, 'left'], 'direction must be "forward" or "aft", got "left"'],
  [
    'CG_EXTREME',
    [
      1000,
      90,
      [
        ['', '', ''],
        [80, 200, 100],
      ],
      1400,
      'aft',
    ],
    'stations maximum weight must be at least the minimum, 200, got 100 (row 2, column 3)',
  ],
  [
    'CG_EXTREME',
    [1000, 90, [[80, 200, 300]], 1100, 'aft'],
    'maximum_weight must be at least 1200, empty with the minimum weights, got 1100',
  ],
  [
    'CG_WORST_MARGIN',
    [2400, 104, stations, 2600, envelope],
    'maximum_weight must be at most 2520, where the envelope ends, got 2600',
  ],
  [
    'CG_WORST_MARGIN',
    [1000, 90, [[80, -5, 300]], 1400, envelope],
    'stations minimum weight must be at least 0, got -5 (row 1, column 2)',
  ],
  // Flight, cooling, mount, battery
  ['STALL_SPEED', [2520, 150, 6], 'maximum_lift_coefficient must be at most 5, got 6'],
  ['STALL_SPEED', [2520, 150, 1.5, 0], 'density_ratio must be above 0, got 0'],
  ['PROPELLER_TIP_MACH', [-76, 2700, 150], 'diameter_in must be above 0 in, got -76'],
  ['PROPELLER_THRUST', [180, 120, 74, 1, 85], 'profile_efficiency must be at most 1, got 85'],
  ['PROPELLER_CLEARANCE', [-1, 74], 'axis_height must be at least 0, got -1'],
  ['CLIMB_RATE', [50, 0], 'weight_lb must be above 0 lb, got 0'],
  ['COOLING_HEAT', [180, 55], 'heat_fraction_of_power must be at most 2, got 55'],
  ['COOLING_AIRFLOW', [4200, 0], 'air_temperature_rise_f must be above 0 °F, got 0'],
  ['COOLING_PRESSURE_AVAILABLE', [100, 1, 1.2], 'recovery must be at most 1, got 1.2'],
  ['COOLING_PRESSURE_AVAILABLE', [100, 0.05], 'density_ratio must be at least 0.08, got 0.05'],
  ['COOLING_INLET_AREA', [100, 0, 1], 'true_airspeed_kt must be above 0 kt, got 0'],
  ['COOLING_EXIT_AREA', [100, 0, 1], 'exit_pressure_difference_in_h2o must be above 0 inH2O, got 0'],
  ['COOLING_EXIT_AREA', [100, 4, 1, -1], 'air_temperature_rise_f must be at least 0 °F, got -1'],
  ['RADIATOR_EFFECTIVENESS', [1, 1.5], 'capacity_ratio must be at most 1, got 1.5'],
  ['RADIATOR_EFFECTIVENESS', [501, 1], 'ntu must be at most 500, got 501'],
  ['CHARGE_TEMPERATURE', [15, 0.9, 0.7], 'pressure_ratio must be at least 1, got 0.9'],
  ['CHARGE_TEMPERATURE', [15, 2, 70], 'compressor_efficiency must be at most 1, got 70'],
  ['FIREWALL_MOMENT', [[[300, 40]], 60, -1], 'load_factor must be at least 0, got -1'],
  ['MOUNT_TORQUE_LIMIT', [180, 0, 4], 'propeller_rpm must be above 0 rpm, got 0'],
  ['MOUNT_TORQUE_LIMIT', [180, 2700, 3.5], 'cylinders must be a whole number, got 3.5'],
  ['MOUNT_TORQUE_LIMIT', [180, 2700, 4, 3], 'strokes must be 2 or 4, got 3'],
  ['BATTERY_MINUTES', [20, 1, 12, 0], 'essential_load_a must be above 0, got 0'],
  ['BATTERY_MINUTES', [20, 1, 12, 6, 5, 80], 'derating must be at most 1, got 80'],
  ['BATTERY_MINUTES', [20, 1, 12, 6, 5, 0.8, 0.9], 'peukert must be at least 1, got 0.9'],
];

test.each(refusals)('%s(%j)', (name, cells, message) => {
  expect(() => call(name, cells)).toThrow(new RangeError(`${name}: ${message}`));
});

describe('in a range the place is told', () => {
  test.each<[string, readonly (Cell | Grid)[], string]>([
    [
      'FUEL_FLOW',
      [
        [
          [150, 160],
          [170, -1],
        ],
        0.45,
      ],
      'power_hp must be at least 0 hp, got -1 (row 2, column 2)',
    ],
    [
      'DENSITY_ALTITUDE',
      [5000, [[20], [77]]],
      'oat_c must be at most 60 °C (is it in °F?), got 77 (row 2, column 1)',
    ],
    // Refused by the computation, not by a limit of the argument
    [
      'CG_MARGIN',
      [[[2000], [2600]], 104, envelope],
      'weight must be at most 2520 (end of the envelope), got 2600 (row 2, column 1)',
    ],
    [
      'RANGE_BREGUET',
      [0.8, 12, 0.45, [[2400], [2100]], 2150],
      'end_weight must be at most start_weight, 2100, got 2150 (row 2, column 1)',
    ],
    // The single cell beside a range has no place
    ['FUEL_FLOW', [[[150], [160]], -1], 'bsfc_lb_per_hp_h must be above 0 lb/hp·h, got -1'],
  ])('%s(%j)', (name, cells, message) => {
    expect(() => call(name, cells)).toThrow(new RangeError(`${name}: ${message}`));
  });
});

test('a name that is no function', () => {
  expect(() => call('FUEL_FLOWS', [])).toThrow(new RangeError('FUEL_FLOWS: no such function'));
});
