/** The card that an add-on's icon opens beside the sheet. */
import { beforeEach, describe, expect, test } from 'vitest';
import { cardOf } from '../../src/local/host/cards.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { localHost } from '../../src/local/localWorkbook.ts';
import { quoteTerms } from '../quoteTerms.ts';
import { sample } from '../sample.ts';

const quote = quoteTerms('Elm', ['customer', 'A Customer', '']);

const shown = (host: LocalHost) => cardOf(host.run('homeCard') as object);
const below = (host: LocalHost, heading: RegExp) =>
  shown(host).sections.find((each) => heading.test(each.heading))?.paragraphs;

describe('a workbook that is not laid out', async () => {
  const host = await localHost();

  test('is said to be none, and where the menu is', () => {
    expect(shown(host).header).toEqual({ title: 'Engine packages', subtitle: host.workbook.name });
    expect(below(host, /^Tables$/)).toEqual(['This workbook is not laid out yet.']);
    expect(below(host, /^Quotes$/)).toEqual(['None is issued.']);
    expect(below(host, /^In the menu: Extensions/)).toContain('Lay out or upgrade');
  });
});

describe('a workbook in use', async () => {
  const laidOut = await localHost();
  laidOut.run('layOutTables_', { ...sample('minimal'), quote });
  const saved = snapshotOf(laidOut.workbook);
  let host: LocalHost;
  beforeEach(async () => {
    host = await localHost(saved);
  });

  test('without faults', () => {
    expect(below(host, /^Check data: no faults$/)?.[0]).toBe(
      'The tables can be read; see Findings for what they lead to.',
    );
  });

  test('a fault in words, and what a person typed as text', () => {
    const attributes = host.values('Packages!A1:A80').map(([label]) => label);
    const takeoffPower = `Packages!C${attributes.indexOf('takeoff power') + 1}`;
    const was = String(host.values(takeoffPower)[0]?.[0]);
    host.type(takeoffPower, '<b>100 & more</b>');
    expect(below(host, /^Check data: 1 fault$/)?.[0]).toMatch(
      /^packages, .*takeoff power.* got "&lt;b&gt;100 &amp; more&lt;\/b&gt;"/,
    );
    host.type(takeoffPower, was);
    expect(below(host, /^Check data: no faults$/)).toHaveLength(1);
  });

  test('the last quote, by number and revision', () => {
    host.runFromPanel('issueQuote');
    host.runFromPanel('issueQuote');
    const { date } = host.runFromPanel('issueQuote', 2) as { date: string };
    expect(below(host, /^Quotes$/)?.[0]).toMatch(new RegExp(`^The last is Q-0002 B of ${date}, `));
  });

  test('an older version of the layout is said, and the card changes nothing', () => {
    host.workbook.properties.set('layout version', '0.5');
    host.workbook.calls.reset();
    expect(below(host, /^Check data/)?.[0]).toBe(
      'An older version laid it out: lay it out again, inputs stay.',
    );
    const changes = /^(Range|Sheet|Spreadsheet|Properties)\.(set|insert|delete|append|activate|copy|clear)/;
    expect(host.workbook.calls.names.filter((name) => changes.test(name))).toEqual([]);
  });
});
