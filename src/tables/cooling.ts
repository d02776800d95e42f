import { choice, quantity, ratio, text } from './field.ts';
import { practice } from './practice.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  package: text('package', { required: true, key: true, help: 'the package' }),
  stream: choice('stream', ['fins', 'coolant', 'oil', 'charge air'], {
    required: true,
    key: true,
    help: 'what the air cools: cylinder fins, coolant radiator, oil cooler, intercooler',
  }),
  heatFraction: quantity('fraction', 'heat fraction', {
    above: 0,
    atMost: 150,
    in: '%',
    help: 'heat into this stream; a customary share of shaft power where empty',
  }),
  heatOf: choice('heat of', ['shaft power', 'fuel energy'], {
    fallback: { value: 'shaft power', source: '' },
    help: 'what the heat fraction is a share of',
  }),
  limit: quantity('temperature', 'limit', {
    help: 'highest coolant, oil, head or charge temperature allowed',
  }),
  inletArea: quantity('openingArea', 'inlet area', { above: 0, help: 'of this stream' }),
  exitArea: quantity('openingArea', 'exit area', { above: 0, help: 'of this stream, as built' }),
  recovery: ratio('inlet recovery', {
    above: 0,
    atMost: 1,
    fallback: { value: 0.8, source: practice },
    help: 'share of the dynamic pressure that reaches the core',
  }),
  designDrop: quantity('pressure', 'core pressure drop', { above: 0, help: 'σ Δp at the core airflow' }),
  designAirflow: quantity('massFlow', 'core airflow', { above: 0, help: 'at which drop and NTU hold' }),
  designNtu: ratio('core NTU', { above: 0, atMost: 20, help: 'transfer units at the core airflow' }),
  coolantFlow: quantity('massFlow', 'coolant flow', { above: 0, help: 'of coolant or oil' }),
  knownPower: quantity('power', 'known power', {
    above: 0,
    help: 'one stabilised climb, or the rated point',
  }),
  knownAirspeed: quantity('speed', 'known true airspeed', { above: 0, help: 'of that climb' }),
  knownAltitude: quantity('height', 'known altitude', { help: 'pressure altitude of that climb' }),
  knownOat: quantity('temperature', 'known OAT', {
    atLeast: -60,
    atMost: 60,
    in: '°C',
    help: 'of that climb',
  }),
  knownTemperature: quantity('temperature', 'known temperature', { help: 'coolant, oil or head, steady' }),
  leakageDrag: quantity('area', 'leakage drag area', {
    atLeast: 0,
    fallback: { value: 0, source: '' },
    help: 'drag over dynamic pressure beside the momentum loss',
  }),
  source: text('source', { help: 'where the values come from' }),
};

export const coolingTable: Table<typeof fields> = {
  name: 'cooling',
  shape: 'rows',
  help: 'cooling streams of every package',
  required: false,
  unique: true,
  fields,
};

export type CoolingStreamRow = RecordOf<typeof coolingTable>;
