/** What the panel asks of the pushed script. */
import { expect, test } from 'vitest';
import { canonicalText, type Inputs } from '../../src/tables/inputs.ts';
import { smallInputs, withCell } from '../assessment/quoteFixture.ts';
import { quoteHost } from './quoteHost.ts';

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
