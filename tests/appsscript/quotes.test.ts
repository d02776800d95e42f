/** Issuing quotes from the pushed script over the local spreadsheet. */
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { canonicalText, type Inputs } from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from '../assessment/quoteFixture.ts';
import { quoteHost, registered } from './quoteHost.ts';
import { deleteSheet, renameSheet, sheetNames } from './sheetsByHand.ts';
import { stopped } from './told.ts';

const patience = 600_000; // ms: every call of an issue is tried in turn

/** Types into an input cell, found by the names of its row and column. */
function change(host: LocalHost, table: keyof Inputs, row: string, column: string, text: string): void {
  const cells = host.values(`${table}!A1:Z40`);
  const headers = cells.find((line) => line.includes(column)) ?? [];
  const at = cells.findIndex((line) => line.includes(row));
  if (at < 0) throw new Error(`no row ${row} in ${table}`);
  const letter = String.fromCharCode('A'.charCodeAt(0) + headers.indexOf(column));
  host.type(`${table}!${letter}${at + 1}`, text);
}

const contents = (host: LocalHost, sheet: string) => host.values(`${sheet}!A1:H160`);
const formulas = (host: LocalHost) => {
  const { getters } = host.workbook.model;
  return getters
    .getSheetIds()
    .filter((id) => /^(Q-|Quote)/.test(getters.getSheetName(id)))
    .flatMap((id) => getters.getEvaluatedCellsPositions(id))
    .filter((position) => getters.getCell(position)?.isFormula);
};
/** What the page gets: its JSON, taken from the HTML of the last dialog. */
function printed(host: LocalHost) {
  const content = host.workbook.ui.dialogs.at(-1)?.page.content ?? '';
  return JSON.parse(/id="printed-data">(.*?)<\/script>/s.exec(content)?.[1] ?? 'null');
}

describe('one issue', () => {
  const host = quoteHost(smallInputs);
  const issue = host.runFromPanel('issueQuote', null) as Record<string, unknown>;

  test('gives number, revision, day, validity', () => {
    const today = new Date().toISOString().slice(0, 10);
    expect(issue).toMatchObject({ number: 1, revision: 'A', name: 'Q-0001 A' });
    const days = (Date.parse(String(issue.validUntil)) - Date.parse(String(issue.date))) / 86_400_000;
    expect(days).toBe(30);
    expect(Math.abs(Date.parse(String(issue.date)) - Date.parse(today))).toBeLessThanOrEqual(86_400_000);
  });

  test('its digest is the SHA-256 of the inputs, by another implementation', () => {
    expect(issue.digest).toBe(createHash('sha256').update(canonicalText(smallInputs), 'utf8').digest('hex'));
  });

  test('the copy holds values only, and the register a row of it', () => {
    expect(formulas(host)).toEqual([]);
    const copy = contents(host, 'Q-0001 A');
    expect(copy[0]?.[0]).toBe('Quote Q-0001 A: Turnstone with Elm');
    expect(copy.find(([label]) => label === 'Total')?.[2]).toBe(74703.77);
    expect(copy.find(([label]) => label === 'Inputs, SHA-256')?.[1]).toBe(issue.digest);
    expect(host.values('Quotes issued!A2:K2')[0]).toEqual([
      'Q-0001',
      'A',
      issue.date,
      issue.validUntil,
      'A Customer',
      'Elm',
      74703.77,
      'EUR',
      244,
      'kg',
      issue.digest,
    ]);
  });

  test('copy, records and register are protected with a warning, the records hidden', () => {
    const { getters } = host.workbook.model;
    const hidden = getters.getSheetIds().filter((id) => !getters.isSheetVisible(id));
    expect(hidden.map((id) => getters.getSheetName(id))).toEqual(['Quote records']);
    expect(host.workbook.protections).toHaveLength(3); // and the register
    for (const protection of host.workbook.protections)
      expect(protection).toMatchObject({ isWarningOnly: true });
  });

  test('the copy stays as it is when inputs move', () => {
    const before = contents(host, 'Q-0001 A');
    change(host, 'airframe', 'kit price', 'value', '50000');
    expect(contents(host, 'Q-0001 A')).toEqual(before);
    change(host, 'airframe', 'kit price', 'value', '41234.55');
  });
});

describe('inputs that have moved', () => {
  const host = quoteHost(smallInputs);
  host.runFromPanel('issueQuote');
  const drift = () => host.runFromPanel('quoteChanges', 1) as Record<string, unknown>;

  test('none: the figures are as quoted', () => {
    expect(drift()).toMatchObject({ name: 'Q-0001 A', changes: [], remarks: [] });
  });

  // By hand: the mount 1 kg heavier, expected 4 % more, 1.04 kg; half-width² of the mount (8 % of 7)² = 0.3136, together
  // √(0.3136 + 2.6200) = 1.7128; payload 750 − 72 − (433.2 + 0.28) − 1.7128 = 242.81. Price: 1,765.45 more, 8.1 % of
  // 70,871.62 = 5,740.60; 76,612.22
  test('each is named, old and new, with what it does to price and payload', () => {
    change(host, 'airframe', 'kit price', 'value', '43000');
    change(host, 'components', 'mount', 'weight', '7');
    expect(drift()).toEqual({
      name: 'Q-0001 A',
      changes: [
        'airframe, kit price, value: 41234.55 EUR → 43000 EUR',
        'components, Elm, mount, weight: 6 kg → 7 kg',
      ],
      figures: [
        { label: 'Total with tax', unit: 'EUR', quoted: '74,703.77', now: '76,612.22' },
        { label: 'Payload to be counted on, full tanks', unit: 'kg', quoted: '244', now: '243' },
        { label: 'Payload expected, full tanks', unit: 'kg', quoted: '246', now: '245' },
        { label: 'Empty weight expected', unit: 'kg', quoted: '432.4', now: '433.5' },
      ],
      remarks: [],
    });
  });

  test('the register says so too, when asked', () => {
    host.run('compareIssuedQuotes');
    const text = String(host.values('Quotes issued!L2')[0]?.[0]);
    expect(text).toMatch(
      /^\d{4}-\d\d-\d\d: 2 inputs moved: airframe, kit price, value: 41234\.55 EUR → 43000 EUR; /,
    );
    expect(text).toContain('Total with tax 74,703.77 → 76,612.22 EUR');
  });

  test('a revision takes what moved, under the same number', () => {
    expect(host.runFromPanel('issueQuote', 1)).toMatchObject({ number: 1, revision: 'B', name: 'Q-0001 B' });
    expect(registered(host)).toEqual(['Q-0001 A', 'Q-0001 B']);
    expect(contents(host, 'Q-0001 B').find(([label]) => label === 'Total')?.[2]).toBe(76612.22);
    expect(contents(host, 'Q-0001 A').find(([label]) => label === 'Total')?.[2]).toBe(74703.77);
    expect(drift()).toMatchObject({ name: 'Q-0001 B', changes: [] });
  });

  test('faults in the tables stop an issue, and are said of an issued quote', () => {
    change(host, 'components', 'mount', 'weight', 'heavy');
    expect(() => host.runFromPanel('issueQuote')).toThrow(
      /No quote was issued.*\ncomponents, row 5 \(Elm, mount\), weight/s,
    );
    expect(registered(host)).toEqual(['Q-0001 A', 'Q-0001 B']);
    expect(drift().remarks).toContainEqual(expect.stringContaining('got "heavy"'));
    change(host, 'components', 'mount', 'weight', '7');
  });

  test('a revision of what was never issued', () => {
    expect(() => host.runFromPanel('issueQuote', 7)).toThrow('There is no quote Q-0007 to revise.');
  });
});

describe('numbers are unique and gapless', () => {
  const issue = (host: LocalHost) => (host.runFromPanel('issueQuote') as { number: number }).number;
  /** Numbers from 1 on, each once, each with one copy of its own. */
  const expectGapless = (host: LocalHost, count: number) => {
    const names = Array.from({ length: count }, (_, index) => `Q-${String(index + 1).padStart(4, '0')} A`);
    expect(registered(host)).toEqual(names);
    expect(
      sheetNames(host)
        .filter((name) => name.startsWith('Q-'))
        .sort(),
    ).toEqual(names);
  };
  /** … and with a record that can be relied on. */
  const expectWhole = (host: LocalHost, count: number) => {
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
  const callsOf = (host: LocalHost) => {
    host.workbook.calls.reset();
    issue(host);
    const names = [...host.workbook.calls.names];
    host.workbook.calls.reset();
    return { count: names.length, firstWrite: names.indexOf('Spreadsheet.insertSheet') + 1 };
  };
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

  test('whatever call fails while an issue reads, nothing is there of it', { timeout: patience }, () => {
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

  test('whatever call fails while a first issue writes, the next makes it good', {
    timeout: patience,
  }, () => {
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

  test('whatever call fails while a later issue writes', { timeout: patience }, () => {
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
    const host = quoteHost({ ...smallInputs });
    host.runFromPanel('issueQuote');
    host.type('Sheet1!A1', 'mine');
    renameSheet(host, 'Sheet1', 'Q-0002 A');
    expect(() => host.runFromPanel('issueQuote')).toThrow('rename it and issue again');
    expect(host.values('Q-0002 A!A1')).toEqual([['mine']]);
    expect(registered(host)).toEqual(['Q-0001 A']);
  });

  test('what was changed by hand in the register or in the copy is said, cell by cell', () => {
    const host = quoteHost(smallInputs);
    host.runFromPanel('issueQuote');
    const remarks = () => (host.runFromPanel('quoteChanges', 1) as { remarks: string[] }).remarks;
    expect(remarks()).toEqual([]);
    host.type('Quotes issued!G2', '70000');
    host.type('Q-0001 A!B30', 'as agreed by telephone');
    expect(remarks()).toEqual([
      'This row of the register was changed by hand: Total with tax; the record holds what was issued: delete the row, and the next issue writes it anew',
      'The sheet Q-0001 A was changed by hand: B30; the record holds what was issued',
    ]);
    host.run('compareIssuedQuotes');
    expect(host.values('Quotes issued!G2:L2')[0]?.at(-1)).toContain('changed by hand: Total with tax');
    deleteSheet(host, 'Q-0001 A');
    expect(remarks()).toContain('The sheet Q-0001 A is gone; the record holds what was issued');
  });

  test('a record that was changed is not believed', () => {
    const host = quoteHost(smallInputs);
    host.runFromPanel('issueQuote');
    host.type('Quote records!E2', '{}');
    expect(() => host.runFromPanel('quoteChanges', 1)).toThrow('was changed since it was issued');
    expect(host.runFromPanel('issueQuote')).toMatchObject({ number: 2 });
  });
});

describe('text that a person typed is text', () => {
  const hostile = [
    '=HYPERLINK("https://example.invalid","x")',
    '+1+1',
    '<script>alert(1)</script>',
    '"quoted" \'and\' \\"more\\"',
    'ѐ 🛩️ 𝛼 </script><!-- & &amp;',
    "'apostrophe",
    '=1+1\u00a0',
  ];

  test.each(hostile)('%s', (text) => {
    const plain = text.replace(/\s+/g, ' ').trim();
    const inputs = withCell(
      withCell(smallInputs, 'quote', 'customer', 'value', text),
      'equipment',
      'radio',
      'item',
      text,
    );
    const named = withCell(inputs, 'equipment', 'autopilot', 'needs', '');
    const host = quoteHost(withCell(named, 'quote', 'remark', 'value', text));
    const { name } = host.runFromPanel('issueQuote') as { name: string };
    expect(formulas(host)).toEqual([]);
    expect(host.values('Quotes issued!E2')).toEqual([[plain]]);
    const copy = contents(host, name).map((line) => line[0]);
    expect(copy.filter((cell) => cell === plain).length).toBeGreaterThanOrEqual(3); // price, note, scope
    host.runFromPanel('printQuote', 1, 'A');
    expect(printed(host).quote.customer).toEqual([plain]);
    const content = host.workbook.ui.dialogs.at(-1)?.page.content ?? '';
    expect(content.match(/<script/g)).toHaveLength(2); // the data and the page's own
    expect(host.runFromPanel('quoteChanges', 1)).toMatchObject({ changes: [] });
  });
});

describe('the panel', () => {
  test('gets the tables and the quotes as plain JSON', () => {
    const host = quoteHost(smallInputs);
    host.runFromPanel('issueQuote');
    const state = host.runFromPanel('panelState') as { inputs: Inputs; quotes: unknown[] };
    expect(canonicalText(state.inputs)).toBe(canonicalText(smallInputs));
    expect(state.quotes).toEqual([
      {
        number: 1,
        revision: 'A',
        name: 'Q-0001 A',
        text: expect.stringMatching(/^Q-0001 A, .*, Elm, A Customer$/),
      },
    ]);
  });

  test('ticks an option and chooses a package', () => {
    const host = quoteHost(smallInputs);
    host.runFromPanel('setOption', 'equipment', 'autopilot', true);
    const state = host.runFromPanel('setQuotedPackage', 'Ash') as { inputs: Inputs };
    const expected = withCell(
      withCell(smallInputs, 'equipment', 'autopilot', 'fitted', true),
      'quote',
      'package',
      'value',
      'Ash',
    );
    expect(canonicalText(state.inputs)).toBe(canonicalText(expected));
    expect(() => host.runFromPanel('setOption', 'equipment', 'no such thing', true)).toThrow('has no cell');
  });

  test('a package named like a formula is written as text', () => {
    const host = quoteHost(smallInputs);
    host.runFromPanel('setQuotedPackage', '=1+1');
    expect(host.values('quote!C4')).toEqual([['=1+1']]);
  });

  test('goes to the cell of a finding', () => {
    const host = quoteHost(smallInputs);
    host.runFromPanel('showInput', { table: 'equipment', row: 'autopilot', column: 'price' });
    const { getters } = host.workbook.model;
    expect(getters.getSheetName(getters.getActiveSheetId())).toBe('equipment');
    expect(getters.getActivePosition()).toMatchObject({ col: 5, row: 6 });
    host.runFromPanel('showInput', { table: 'tanks' });
    expect(getters.getActivePosition()).toMatchObject({ col: 1, row: 2 });
    expect(() => host.runFromPanel('showInput', { table: 'Quote records' })).toThrow('There is no');
  });

  test('issues from the menu, and shows why not', () => {
    const host = quoteHost(smallInputs);
    host.run('issueQuoteFromMenu');
    expect(host.workbook.ui.dialogs.map(({ title }) => title)).toEqual(['Quote Q-0001 A']);
    host.workbook.lock.isHeldElsewhere = true;
    host.run('issueQuoteFromMenu');
    expect(host.workbook.ui.alerts.at(-1)?.prompt).toContain('try again in a moment');
    host.run('showPanel');
    expect(host.workbook.ui.sidebars).toHaveLength(1);
  });
});
