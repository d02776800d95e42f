/**
 * A workbook in use, a quote issued and a weighing taken in, and what must hold whatever is done to it: every action says
 * so in words, nothing is lost, and laying out again repairs what can be repaired.
 *
 * Laid out without blocks and charts: what is tried here reads tables and records, and computes for itself.
 */
import { expect } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import type { Answer } from '../../src/local/host/ui.ts';
import { localHost } from '../../src/local/localWorkbook.ts';
import { isOwn } from '../../src/workbook/own.ts';
import { layout } from '../../src/workbook/sheets.ts';
import { quoteTerms } from '../quoteTerms.ts';
import { sample } from '../sample.ts';
import { filesWith } from './layoutFiles.ts';
import { missing } from './missing.ts';
import { withoutBlocks } from './olderLayout.ts';
import { withoutSpareRows } from './spareRows.ts';
import { foreign, type Told, told } from './told.ts';
import { cellContents } from './workbookState.ts';

const minimal = sample('minimal');
/** Three scales under the sample's aircraft, and level flights, both made up. */
const measured = {
  weighings: [
    ['weighing', 'date', 'point', 'reading', 'arm', 'level'],
    ['', '', '', 'kg', 'm', ''],
    [1, '2026-04-18', 'nosewheel', 110, 0.9, true],
    [1, '2026-04-18', 'left main', 160, 2.5, true],
    [1, '2026-04-18', 'right main', 162, 2.5, true],
  ],
  'test results': [
    ['test', 'date', 'power', 'weight', 'pressure altitude', 'OAT', 'true airspeed'],
    ['', '', 'kW', 'kg', 'ft', '°C', 'kt'],
    ['level flight', '2026-06-20', 50, 700, 8000, 5, 110],
    ['level flight', '2026-06-20', 40, 695, 8000, 5, 100],
    ['level flight', '2026-06-20', 35, 695, 8000, 5, 94],
  ],
};
export const OK = { button: 'OK' } as const;
const CANCEL = { button: 'CANCEL' } as const;

export const small = withoutBlocks(layout);
const files = filesWith(small);
export const used = await localHost(undefined, files);
used.run('layOutTables_', { ...minimal, ...measured, quote: quoteTerms('Elm') });
told(used, 'issueQuoteFromMenu');
told(used, 'adoptWeighing', [OK]);
told(used, 'compareIssuedQuotes');
const saved = withoutSpareRows(snapshotOf(used.workbook), small);
export const open = () => localHost(saved, files);

export type Action = readonly [name: string, answers?: readonly Answer[], values?: readonly unknown[]];

/** Actions that change nothing: what they ask is declined. */
export const looking: readonly Action[] = [
  ['checkData'],
  ['showPanel'],
  ['panelState', [], []],
  ['showInput', [], [{ table: 'tanks', row: 'wing tanks', column: 'usable' }]],
  ['quoteChanges', [], [1]],
  ['printQuote', [], [1, 'A']],
  ['takeQuoteIn', [{ ...OK, text: '1' }, CANCEL]],
  ['adoptResults', [CANCEL]],
  ['adoptWeighing', [CANCEL]],
  ['putBackAdopted', [CANCEL]],
  ['printTestCards'],
];
const writing: readonly Action[] = [
  ['putBackAdopted', [OK]],
  ['adoptWeighing', [OK]],
  ['adoptResults', [OK]],
  ['takeQuoteIn', [{ ...OK, text: '1' }, OK]],
  ['issueQuoteFromMenu'],
  ['issueQuote', [], [1]],
];

export const clearStop = (call: number) =>
  `It stopped on the way: Service failed at call ${call}. Nothing is lost: do it again.`;

/** What a person is told, in words for persons. */
export function clearly(host: LocalHost, [action, answers, values]: Action): Told {
  const given = told(host, action, answers, values);
  expect(given.words, action).not.toMatch(foreign);
  if (values === undefined) expect(given.isShown || given.words !== '', action).toBe(true);
  return given;
}

export const look = (host: LocalHost) => looking.map((action) => clearly(host, action));
export const seenWhenSound = look(await open());

/** Every action is clear; one that is not done changes nothing; an issue takes nothing away. */
export function expectClear(host: LocalHost): void {
  const before = cellContents(host);
  look(host);
  expect(cellContents(host)).toEqual(before);
  clearly(host, ['compareIssuedQuotes']);
  for (const action of writing) {
    const earlier = cellContents(host);
    const { words, result, isShown } = clearly(host, action);
    const later = cellContents(host);
    const isIssued = isShown || result !== '';
    if (isIssued) expect(missing(earlier.values(), later.values()), action[0]).toEqual([]);
    else if (!/Taken in\.|as they were/.test(words)) expect(later, action[0]).toEqual(earlier);
  }
}

/** Laid out again, all that a person wrote is still somewhere. */
export function layOutAgain(host: LocalHost): string {
  const before = [...cellContents(host).values()].filter((text) => !isOwn(text));
  const { words } = clearly(host, ['layOutFromMenu']);
  expect(missing(before, cellContents(host).values())).toEqual([]);
  return words;
}
