/**
 * An older workbook without looks: its upgrade fails at every call in turn, and is done again; contents, formats,
 * validation, conditional formats and charts are compared.
 */
import { layout } from '../../src/workbook/sheets.ts';
import { olderWorkbook } from '../appsscript/interruption.ts';
import { failAtEveryCall } from './everyCall.ts';

await failAtEveryCall('an older workbook', { layout, grids: {}, from: await olderWorkbook() });
