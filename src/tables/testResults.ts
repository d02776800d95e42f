import { day } from './day.ts';
import { choice, type Field, quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  test: choice(
    'test',
    [
      'fuel flow on the ground',
      'static rpm',
      'cooling on the ground',
      'battery',
      'unusable fuel',
      'takeoff roll',
      'level flight',
      'climb',
      'fuel flow',
      'cooling climb',
      'stall',
    ],
    { required: true, key: true, help: 'which card it was flown from' },
  ),
  date: day('date', { required: true, help: 'when it was measured' }),
  power: quantity('power', 'power', { above: 0, help: 'shaft power, from the engine’s monitor or chart' }),
  weight: quantity('mass', 'weight', { above: 0, help: 'gross weight at the time' }),
  altitude: quantity('height', 'pressure altitude', {
    atLeast: -2000,
    atMost: 40000,
    in: 'ft',
    help: 'altimeter set to standard pressure',
  }),
  temperature: quantity('temperature', 'OAT', {
    atLeast: -60,
    atMost: 60,
    in: '°C',
    help: 'outside air, corrected for airspeed',
  }),
  trueAirspeed: quantity('speed', 'true airspeed', {
    above: 0,
    help: 'from four runs on crossing tracks by satellite; or the calibrated airspeed',
  }),
  calibratedAirspeed: quantity('speed', 'calibrated airspeed', {
    above: 0,
    help: 'indicated, corrected by the calibration card; stall speeds always',
  }),
  climbRate: quantity('climb', 'rate of climb', { help: 'of pressure altitude, over at least 1,000 ft' }),
  flaps: choice('flaps', ['clean', 'takeoff', 'landing'], { help: 'in a stall' }),
  mixture: choice('mixture', ['rich', 'lean'], { help: 'when fuel flow is measured' }),
  fuelFlow: quantity('fuelFlow', 'fuel flow', { above: 0, help: 'from a tank measured before and after' }),
  stream: choice('stream', ['fins', 'coolant', 'oil', 'charge air'], { help: 'what was kept cool' }),
  measuredTemperature: quantity('temperature', 'temperature', {
    help: 'of head, coolant, oil, charge; steady',
  }),
  rpm: quantity('rotation', 'rpm', { above: 0, help: 'of the engine, by an optical counter' }),
  time: quantity('time', 'time', { above: 0, in: 'min', help: 'on the battery alone' }),
  tank: text('tank', { help: 'that ran dry' }),
  volume: quantity('volume', 'volume', { atLeast: 0, help: 'drained after the first interruption' }),
  roll: quantity('height', 'ground roll', { above: 0, help: 'hard, level, no wind' }),
};

export const testResultsTable: Table<typeof fields> = {
  name: 'test results',
  shape: 'rows',
  help: 'what the flight-test cards brought home, a row for every measurement',
  required: false,
  unique: false,
  fields,
};

export type TestResult = RecordOf<typeof testResultsTable>;
export type TestName = TestResult['test'];
export type ResultField = Exclude<keyof typeof fields, 'test' | 'date'>;

/** What every test must bring home; `trueAirspeed` may be given as calibrated. */
export const recordedIn: Readonly<Record<TestName, readonly ResultField[]>> = {
  'fuel flow on the ground': ['fuelFlow'],
  'static rpm': ['rpm'],
  'cooling on the ground': ['stream', 'temperature', 'measuredTemperature'],
  battery: ['time'],
  'unusable fuel': ['tank', 'volume'],
  'takeoff roll': ['power', 'weight', 'altitude', 'temperature', 'roll'],
  'level flight': ['power', 'weight', 'altitude', 'temperature', 'trueAirspeed'],
  climb: ['power', 'weight', 'altitude', 'temperature', 'trueAirspeed', 'climbRate'],
  'fuel flow': ['power', 'mixture', 'fuelFlow'],
  'cooling climb': ['stream', 'power', 'altitude', 'temperature', 'trueAirspeed', 'measuredTemperature'],
  stall: ['weight', 'flaps', 'calibratedAirspeed'],
};

/** A field of the table by its key. */
export const fieldOf = (field: ResultField): Field<unknown> => fields[field];

/** How it is called there. */
export const labelOf = (field: ResultField) => fieldOf(field).label;
