import { choice, quantity, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  package: text('package', { required: true, key: true, help: 'the package' }),
  rating: choice('rating', ['takeoff', 'continuous'], { required: true, key: true, help: 'which rating' }),
  altitude: quantity('height', 'altitude', {
    required: true,
    key: true,
    atLeast: -2000,
    atMost: 40000,
    in: 'ft',
    help: 'pressure altitude, standard temperature',
  }),
  power: quantity('power', 'power', { required: true, above: 0, help: 'full-throttle power there' }),
};

export const powerPointsTable: Table<typeof fields> = {
  name: 'power points',
  shape: 'rows',
  help: "the engine maker's power against altitude; replaces the altitude law",
  required: false,
  unique: true,
  fields,
};

export type PowerPoint = RecordOf<typeof powerPointsTable>;
