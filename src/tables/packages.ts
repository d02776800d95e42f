import { toSi } from '../units.ts';
import { choice, count, flag, money, quantity, ratio, text } from './field.ts';
import { practice } from './practice.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  description: text('description', { help: 'the engine in a few words' }),
  cycle: choice('cycle', ['spark ignition', 'compression ignition', 'two-stroke'], {
    required: true,
    help: 'how it burns its fuel',
  }),
  takeoffPower: quantity('power', 'takeoff power', {
    required: true,
    above: 0,
    atMost: 1000,
    in: 'hp',
    help: 'sea level, standard day',
  }),
  takeoffRpm: quantity('rotation', 'takeoff rpm', {
    required: true,
    above: 0,
    atMost: 12000,
    in: 'rpm',
    help: 'of the engine',
  }),
  takeoffMinutes: quantity('time', 'takeoff power limit', {
    above: 0,
    in: 'min',
    help: 'how long takeoff power may be used; empty where it is continuous',
  }),
  continuousPower: quantity('power', 'maximum continuous power', {
    required: true,
    above: 0,
    atMost: 1000,
    in: 'hp',
    help: 'sea level, standard day; every % power is a share of it',
  }),
  continuousRpm: quantity('rotation', 'maximum continuous rpm', {
    above: 0,
    atMost: 12000,
    in: 'rpm',
    help: 'of the engine; takeoff rpm where empty',
  }),
  cylinders: count('cylinders', { required: true, atLeast: 1, atMost: 24, help: 'number' }),
  gearRatio: ratio('gear ratio', {
    atLeast: 1,
    atMost: 5,
    fallback: { value: 1, source: 'taken as direct drive' },
    help: 'engine rpm over propeller rpm; 1 for direct drive',
  }),
  criticalAltitude: quantity('height', 'critical altitude', {
    above: 0,
    atMost: 40000,
    in: 'ft',
    help: 'up to which a turbocharged engine holds its power; empty for a naturally aspirated one',
  }),
  temperatureExponent: ratio('power temperature exponent', {
    atLeast: 0,
    atMost: 1.5,
    fallback: { value: 0.5, source: practice },
    help: 'power varies with (standard/actual temperature) to this power',
  }),
  controlled: flag('power controller', {
    fallback: { value: false, source: '' },
    help: 'an engine control that never lets it exceed its rating',
  }),
  needsElectricity: flag('stops without electricity', {
    fallback: { value: false, source: '' },
    help: 'ignition, injection or pumps need the battery',
  }),
  fuel: text('fuel', { required: true, help: 'avgas, mogas, Jet A …: a fuel of the rates' }),
  fuelDensity: quantity('density', 'fuel density', {
    required: true,
    atLeast: 5.5,
    atMost: 7.5,
    in: 'lb/US gal',
    help: 'avgas 6.0 lb/US gal, Jet A 6.7 to 6.8',
  }),
  heatingValue: quantity('energyPerMass', 'lower heating value', {
    atLeast: 40,
    atMost: 46,
    in: 'MJ/kg',
    fallback: {
      value: toSi('energyPerMass', 43.5, 'MJ/kg'),
      source: 'ASTM D910, 100LL: at least 18,700 Btu/lb',
    },
    help: 'of the fuel',
  }),
  fuelFeed: choice('fuel feed', ['pump', 'gravity'], {
    fallback: { value: 'pump', source: '' },
    help: 'decides the flow to demonstrate',
  }),
  fuelReturn: flag('fuel return', {
    fallback: { value: false, source: '' },
    help: 'unburnt fuel goes back to a tank: selector and header tank must suit',
  }),
  fuelPumpFlow: quantity('fuelFlow', 'fuel delivery', {
    above: 0,
    help: 'demonstrated or rated, at the engine',
  }),
  propeller: choice('propeller', ['constant speed', 'fixed pitch', 'ground adjustable'], {
    required: true,
    help: 'kind',
  }),
  propellerDiameter: quantity('length', 'propeller diameter', {
    required: true,
    above: 20,
    atMost: 120,
    in: 'in',
    help: 'tip to tip',
  }),
  blades: count('propeller blades', {
    atLeast: 1,
    atMost: 8,
    fallback: { value: 2, source: '' },
    help: 'number',
  }),
  propellerInertia: quantity('inertia', 'propeller inertia', {
    above: 0,
    help: 'polar moment, for gyroscopic loads',
  }),
  axisHeight: quantity('length', 'propeller axis height', {
    above: 0,
    help: 'above the ground, level attitude (nosewheel) or takeoff attitude (tailwheel)',
  }),
  staticRpm: quantity('fraction', 'static rpm', {
    atLeast: 30,
    atMost: 100,
    in: '%',
    help: 'of rated rpm, fixed pitch standing still; 87 % where empty',
  }),
  climbRpm: quantity('fraction', 'climb rpm', {
    atLeast: 30,
    atMost: 105,
    in: '%',
    help: 'of rated rpm, fixed pitch at best-climb speed; 93 % where empty',
  }),
  pairProven: flag('propeller proven on this engine', {
    help: 'the maker of either has approved the pair for vibration',
  }),
  restrictedRpmFrom: quantity('rotation', 'restricted rpm from', {
    above: 0,
    in: 'rpm',
    help: 'of the engine',
  }),
  restrictedRpmTo: quantity('rotation', 'restricted rpm to', { above: 0, in: 'rpm', help: 'of the engine' }),
  coolingClimbSpeed: quantity('speed', 'cooling-climb speed', {
    above: 0,
    help: 'true airspeed the maker or builder recommends for a hot climb',
  }),
  alternators: count('alternators', { atLeast: 0, atMost: 4, help: 'number of independent sources' }),
  alternatorCruise: quantity('current', 'alternator output cruise', { atLeast: 0, help: 'all together' }),
  alternatorIdle: quantity('current', 'alternator output idle', { atLeast: 0, help: 'at ground idle' }),
  electricalLoad: quantity('current', 'engine electrical load', {
    atLeast: 0,
    help: 'of the package, continuous, before shedding; equipment adds to it',
  }),
  essentialLoad: quantity('current', 'essential load', {
    atLeast: 0,
    help: 'what must go on with the alternator dead: ignition, injection, pumps',
  }),
  batteryCapacity: quantity('charge', 'battery capacity', { above: 0, help: 'at the rated hours' }),
  batteryHours: quantity('time', 'battery rated hours', {
    above: 0,
    atMost: 100,
    in: 'h',
    fallback: { value: toSi('time', 1, 'h'), source: `the one-hour rate of aircraft batteries; ${practice}` },
    help: 'the discharge time its capacity is stated for',
  }),
  batteryKind: choice('battery kind', ['lead-acid', 'lithium'], {
    fallback: { value: 'lead-acid', source: 'the more careful of the two' },
    help: 'decides the discharge exponent',
  }),
  engineOverhaulHours: quantity('time', 'engine overhaul interval', { above: 0, help: 'or replacement' }),
  engineOverhaulPrice: money('engine overhaul price', { atLeast: 0, help: 'or replacement' }),
  gearboxOverhaulHours: quantity('time', 'gearbox overhaul interval', { above: 0, help: 'where apart' }),
  gearboxOverhaulPrice: money('gearbox overhaul price', { atLeast: 0, help: 'where apart' }),
  turboOverhaulHours: quantity('time', 'turbocharger overhaul interval', { above: 0, help: 'where apart' }),
  turboOverhaulPrice: money('turbocharger overhaul price', { atLeast: 0, help: 'where apart' }),
  propellerOverhaulHours: quantity('time', 'propeller overhaul interval', {
    above: 0,
    help: 'where it has one',
  }),
  propellerOverhaulPrice: money('propeller overhaul price', { atLeast: 0, help: 'where it has one' }),
  servicePrice: money('service price per hour', {
    atLeast: 0,
    help: 'oil, coolant, plugs, filters, inspections',
  }),
  leadTime: quantity('days', 'lead time', { atLeast: 0, in: 'weeks', help: 'from order to delivery' }),
  buildHours: quantity('time', 'powerplant build hours', { above: 0, help: 'to install it' }),
  oxygen: flag('oxygen fitted', {
    fallback: { value: false, source: '' },
    help: 'needed to use the heights a turbocharger reaches',
  }),
};

export const packagesTable: Table<typeof fields> = {
  name: 'packages',
  shape: 'across',
  help: 'the engine packages, one column each',
  required: true,
  unique: true,
  fields,
};

export type Package = RecordOf<typeof packagesTable> & { readonly name: string };
