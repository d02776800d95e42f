import { toSi } from '../units.ts';
import { day } from './day.ts';
import { flag, quantity, text } from './field.ts';
import { practice } from './practice.ts';
import type { RecordOf, Table } from './table.ts';

const fields = {
  weighing: text('weighing', {
    required: true,
    key: true,
    help: 'its name or number, the same on all its rows',
  }),
  date: day('date', { required: true, help: 'when it was weighed' }),
  point: text('point', {
    required: true,
    key: true,
    help: 'what stands on the scale: nosewheel, left main …',
  }),
  reading: quantity('mass', 'reading', { required: true, atLeast: 0, help: 'what the scale shows' }),
  tare: quantity('mass', 'tare', {
    atLeast: 0,
    fallback: { value: 0, source: '' },
    help: 'chocks, blocks and stands on that scale',
  }),
  arm: quantity('length', 'arm', {
    required: true,
    help: 'from the datum to the wheel’s axle or the jack point, measured in the attitude weighed',
  }),
  accuracy: quantity('mass', 'scale accuracy', {
    in: 'lb',
    atLeast: 0.01, // finer than any aircraft scale, and no scale that may be further off weighs one:
    atMost: 50, // common practice, no source
    fallback: { value: toSi('mass', 1, 'lb'), source: `±1 lb: ${practice}` },
    help: 'how far that scale may be off either way, from its calibration',
  }),
  armAccuracy: quantity('length', 'arm accuracy', {
    atLeast: 0,
    fallback: { value: toSi('length', 0.1, 'in'), source: `±0.1 in: ${practice}` },
    help: 'how far the measured arm may be off either way',
  }),
  level: flag('level', { help: 'whether it stood in the level attitude of the designer' }),
};

export const weighingsTable: Table<typeof fields> = {
  name: 'weighings',
  shape: 'rows',
  help: 'the aircraft on its scales, a row for every scale',
  required: false,
  unique: true,
  fields,
};

export type WeighingRow = RecordOf<typeof weighingsTable>;
