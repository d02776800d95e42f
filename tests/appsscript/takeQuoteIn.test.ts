/** The figures of an issued quote, taken into the as quoted table by the menu. */
import { beforeEach, expect, test } from 'vitest';
import { type AsBuiltWorkbook, openAsBuilt } from './asBuiltWorkbook.ts';

let built: AsBuiltWorkbook;
beforeEach(async () => {
  built = await openAsBuilt();
});

const answered = (text: string) => built.host.workbook.ui.answers.push({ button: 'OK', text });

test('its own figures go into the as quoted table, in the units that stand there', () => {
  built.act('takeQuoteIn');
  expect(built.lastAsked()).toContain('No quote was issued');
  built.host.runFromPanel('setQuotedPackage', 'Rowan');
  const { number } = built.host.runFromPanel('issueQuote') as { number: number };
  answered('q-1');
  built.act('takeQuoteIn', 'OK');
  const copy = built.workbook.values('Q-0001 A');
  const promise = (label: string, column: number) =>
    copy.find(([cell]) => new RegExp(label).test(String(cell)))?.[column];
  const row = (label: string) =>
    built.workbook
      .values('Weighing data')
      .flatMap((line) => line.flatMap((cell, at) => (cell === label ? [line.slice(at + 1, at + 3)] : [])))[0];
  expect(number).toBe(1);
  expect(row('quote')?.[0]).toBe('Q-0001 A');
  expect(row('empty weight expected')).toEqual([promise('^Empty weight$', 2), 'lb']);
  expect(row('payload to be counted on, full tanks')?.[0]).toBeCloseTo(
    Number(promise('^Payload with full tanks, ', 3)),
    3,
  );
  expect(built.workbook.block('WEIGHING_CHECK').map(([cell]) => cell)).toContain('Against quote Q-0001 A');
  built.act('putBackAdopted', 'OK');
  expect(row('quote')?.[0]).toBe('Q-0007 A');
});

test('one that there is not', () => {
  built.host.runFromPanel('setQuotedPackage', 'Rowan');
  built.host.runFromPanel('issueQuote');
  answered('8');
  built.act('takeQuoteIn');
  expect(built.lastAsked()).toBe('There is no quote "8" in the register.');
});
