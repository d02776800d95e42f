/** Numbers of quotes are unique and gapless, whoever issues at the same time and whatever was deleted. */
import { expect, test } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { smallInputs } from '../assessment/quoteFixture.ts';
import { callsOf, expectWhole, issue } from './issuedQuotes.ts';
import { quoteHost, registered } from './quoteHost.ts';
import { renameSheet } from './sheetsByHand.ts';

/** Seller B's whole issue: its number, or what B is told. */
const attempt = (host: LocalHost): number | string => {
  try {
    return issue(host);
  } catch (error) {
    return (error as Error).message;
  }
};

test('seller B after every call of seller A’s while A has the lock is told to try again', () => {
  const host = quoteHost(smallInputs);
  const { calls, lock } = host.workbook;
  const told: unknown[] = [];
  const afterEveryCall = () => {
    if (lock.isHeld) told.push(attempt(host));
    calls.afterCall(calls.count + 1, afterEveryCall);
  };
  calls.afterCall(1, afterEveryCall);
  expect(issue(host)).toBe(1);
  calls.reset();
  expect(told.length).toBeGreaterThan(80);
  for (const message of told) expect(message).toContain('try again');
  expect(issue(host)).toBe(2);
  expectWhole(host, 2);
});

test('seller B before A has the lock, and after, gets a number of his own', () => {
  const { count } = callsOf(quoteHost(smallInputs));
  for (const call of [1, count]) {
    const host = quoteHost(smallInputs);
    const numbers: unknown[] = [];
    host.workbook.calls.afterCall(call, () => numbers.push(attempt(host)));
    numbers.push(issue(host));
    host.workbook.calls.reset();
    expect(numbers.sort()).toEqual([1, 2]);
    expectWhole(host, 2);
  }
});

test('a row deleted from the register comes back, and its number is not given again', () => {
  const host = quoteHost(smallInputs);
  host.runFromPanel('issueQuote');
  host.runFromPanel('issueQuote');
  for (const column of 'ABCDEFGHIJK') host.type(`Quotes issued!${column}3`, '');
  expect(registered(host)).toEqual(['Q-0001 A']);
  expect(issue(host)).toBe(3);
  expectWhole(host, 3);
});

test('a sheet of somebody else’s with the name of the next copy is left alone', () => {
  const host = quoteHost(smallInputs);
  host.runFromPanel('issueQuote');
  host.type('Sheet1!A1', 'mine');
  renameSheet(host, 'Sheet1', 'Q-0002 A');
  expect(() => host.runFromPanel('issueQuote')).toThrow('rename it and issue again');
  expect(host.values('Q-0002 A!A1')).toEqual([['mine']]);
  expect(registered(host)).toEqual(['Q-0001 A']);
});
