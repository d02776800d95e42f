/** Calls to Google fail in the midst of an issue: numbers stay unique and gapless, and the next issue makes it good. */
import { expect, test, vi } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { smallInputs } from '../assessment/quoteFixture.ts';
import { callsOf, expectGapless, expectWhole, issue } from './issuedQuotes.ts';
import { quoteHost, registered } from './quoteHost.ts';
import { sheetNames } from './sheetsByHand.ts';
import { stopped } from './told.ts';

vi.setConfig({ testTimeout: 600_000 }); // every call of an issue is tried in turn

/** What the seller is told when a call fails: an error, or the quote's number. */
const failAt = (host: LocalHost, call: number): number | undefined => {
  host.workbook.calls.reset();
  host.workbook.calls.failAt(call);
  try {
    return issue(host);
  } catch (error) {
    expect((error as Error).message).toMatch(stopped);
    return undefined;
  } finally {
    host.workbook.calls.reset();
  }
};

test('a call fails while an issue reads, nothing is there of it', () => {
  const { firstWrite } = callsOf(quoteHost(smallInputs));
  const host = quoteHost(smallInputs);
  const before = sheetNames(host);
  for (let call = 1; call < firstWrite; call++) {
    failAt(host, call);
    expect([call, sheetNames(host)]).toEqual([call, before]);
  }
  expect(firstWrite).toBeGreaterThan(20);
  expect(issue(host)).toBe(1);
  expectWhole(host, 1);
});

test('a call fails while a first issue writes, the next makes it good', () => {
  const { count, firstWrite } = callsOf(quoteHost(smallInputs));
  for (let call = firstWrite; call <= count; call++) {
    const host = quoteHost(smallInputs);
    const told = failAt(host, call);
    const issued = registered(host).length; // 1 where only what comes after the register's row has failed
    expect([call, told]).toEqual([call, issued === 1 ? 1 : undefined]);
    expect([call, issue(host)]).toEqual([call, issued + 1]);
    expectGapless(host, issued + 1);
    const last = host.runFromPanel('quoteChanges', issued + 1);
    expect(last).toMatchObject({ name: `Q-000${issued + 1} A`, changes: [] });
  }
});

test('a call fails while a later issue writes', () => {
  let host = quoteHost(smallInputs);
  issue(host);
  const { count, firstWrite } = callsOf(host);
  for (let call = firstWrite; call <= count; call++) {
    const before = registered(host).length;
    const told = failAt(host, call);
    const issued = registered(host).length;
    expect([call, told]).toEqual([call, issued > before ? issued : undefined]);
    expect(issued - before === 0 || issued - before === 1).toBe(true);
    expect([call, issue(host)]).toEqual([call, issued + 1]);
    expectGapless(host, issued + 1);
    if (call % 12 > 0 && call < count) continue;
    expectWhole(host, issued + 1);
    host = quoteHost(smallInputs); // a full workbook is slow
    issue(host);
  }
});
