import { toSi } from '../units.ts';
import { choice, count, flag, quantity } from './field.ts';
import { practice } from './practice.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  persons: count('people', {
    atLeast: 1,
    atMost: 20,
    fallback: { value: 2, source: 'no mission stated' },
    help: 'pilot included',
  }),
  personWeight: quantity('mass', 'weight of each', {
    above: 0,
    fallback: { value: toSi('mass', 170, 'lb'), source: '14 CFR 23.25 before amendment 64: 170 lb' },
    help: 'with clothes',
  }),
  bags: quantity('mass', 'bags', { atLeast: 0, fallback: { value: 0, source: '' }, help: 'all together' }),
  distance: quantity('distance', 'distance', { above: 0, help: 'one way' }),
  headwind: quantity('speed', 'headwind', {
    fallback: { value: 0, source: '' },
    help: 'on the way out; negative for a tailwind',
  }),
  reserve: quantity('time', 'reserve', {
    atLeast: 0,
    in: 'min',
    fallback: { value: toSi('time', 30, 'min'), source: '14 CFR 91.151: 30 min by day, 45 min by night' },
    help: 'at normal cruise, still aboard on landing',
  }),
  cruiseSetting: quantity('fraction', 'cruise power', {
    above: 0,
    atMost: 100,
    in: '%',
    fallback: { value: 0.75, source: practice },
    help: '% of maximum continuous power',
  }),
  cruiseAltitude: quantity('height', 'cruise altitude', {
    atLeast: 0,
    atMost: 25000,
    in: 'ft',
    fallback: { value: toSi('height', 8000, 'ft'), source: `8,000 ft: ${practice}` },
    help: 'pressure altitude',
  }),
  refuel: flag('refuel at destination', {
    fallback: { value: true, source: '' },
    help: 'or carry fuel for the way back',
  }),
  elevation: quantity('height', 'field elevation', {
    atLeast: -1000,
    atMost: 14000,
    in: 'ft',
    fallback: { value: 0, source: '' },
    help: 'pressure altitude of the home field',
  }),
  temperature: quantity('temperature', 'field temperature', {
    atLeast: -40,
    atMost: 60,
    in: '°C',
    help: 'at departure; standard where empty',
  }),
  runway: quantity('height', 'runway length', { above: 0, help: 'available for takeoff' }),
  surface: choice('surface', ['hard', 'short grass', 'long grass', 'soft'], {
    fallback: { value: 'hard', source: '' },
    help: 'of the home field',
  }),
  slope: quantity('fraction', 'slope', {
    atLeast: -10,
    atMost: 10,
    in: '%',
    fallback: { value: 0, source: '' },
    help: 'uphill positive, in the takeoff direction',
  }),
  fieldWind: quantity('speed', 'field headwind', {
    fallback: { value: 0, source: '' },
    help: 'along the runway',
  }),
  destinationElevation: quantity('height', 'destination elevation', {
    atLeast: -1000,
    atMost: 14000,
    in: 'ft',
    help: 'pressure altitude; as home where empty',
  }),
  destinationTemperature: quantity('temperature', 'destination temperature', {
    atLeast: -40,
    atMost: 60,
    in: '°C',
    help: 'as home where empty',
  }),
  destinationRunway: quantity('height', 'destination runway length', {
    above: 0,
    help: 'as home where empty',
  }),
  minimumClimb: quantity('climb', 'least rate of climb', {
    atLeast: 0,
    fallback: { value: toSi('climb', 300, 'ft/min'), source: `300 ft/min: ${practice}` },
    help: 'after takeoff, at takeoff weight and field temperature',
  }),
};

export const missionTable: Table<typeof fields> = {
  name: 'mission',
  shape: 'attributes',
  help: 'what the buyer wants to do with it',
  required: false,
  unique: true,
  fields,
};

export type Mission = RecordOf<typeof missionTable>;
