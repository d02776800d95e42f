/** A new workbook: its layout fails at every call in turn, and is done again. */
import { layout } from '../../src/workbook/sheets.ts';
import { sample } from '../sample.ts';
import { failAtEveryCall } from './everyCall.ts';

await failAtEveryCall('a new workbook', { layout, grids: sample('minimal') });
