/** Quotes issued one after the other, and what must hold of their numbers, copies and records. */
import { expect } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { contents, registered } from './quoteHost.ts';
import { sheetNames } from './sheetsByHand.ts';

export const issue = (host: LocalHost) => (host.runFromPanel('issueQuote') as { number: number }).number;
/** Numbers from 1 on, each once, each with one copy of its own. */
export const expectGapless = (host: LocalHost, count: number) => {
  const names = Array.from({ length: count }, (_, index) => `Q-${String(index + 1).padStart(4, '0')} A`);
  expect(registered(host)).toEqual(names);
  expect(
    sheetNames(host)
      .filter((name) => name.startsWith('Q-'))
      .sort(),
  ).toEqual(names);
};
/** … and with a record that can be relied on. */
export const expectWhole = (host: LocalHost, count: number) => {
  expectGapless(host, count);
  for (const name of registered(host)) {
    expect(contents(host, name)[0]?.[0]).toMatch(new RegExp(`^Quote ${name}`));
    expect(host.runFromPanel('quoteChanges', Number(name.slice(2, 6)))).toMatchObject({
      name,
      changes: [],
    });
  }
};
/** The calls of one issue; what comes before its first write only reads. */
export const callsOf = (host: LocalHost) => {
  host.workbook.calls.reset();
  issue(host);
  const names = [...host.workbook.calls.names];
  host.workbook.calls.reset();
  return { count: names.length, firstWrite: names.indexOf('Spreadsheet.insertSheet') + 1 };
};
