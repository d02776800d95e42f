/** The menu, before and after a person has authorised the script. */
import { describe, expect, test } from 'vitest';
import type { MenuRecord } from '../../src/local/host/ui.ts';
import { localHost } from '../../src/local/localWorkbook.ts';

const captions = ({ items }: MenuRecord) =>
  items.flatMap((item) => (item.kind === 'item' ? [item.caption] : []));

describe.each(['onOpen', 'onInstall'])('%s', (trigger) => {
  test('draws the menu and asks for nothing that wants authorisation', async () => {
    const host = await localHost();
    host.run(trigger, { authMode: 'NONE' });
    const offered = captions(host.workbook.ui.menus[0] as MenuRecord);
    for (const caption of [
      'Lay out or upgrade',
      'Compare issued quotes',
      'Take weighing in …',
      'Print flight-test cards',
    ])
      expect(offered).toContain(caption);
    const services = new Set(host.workbook.calls.names.map((name) => name.split('.')[0]));
    expect([...services].sort()).toEqual(['Menu', 'SpreadsheetApp', 'Ui']);
  });
});

test('every item of the menu runs a function that the script has', async () => {
  const host = await localHost();
  host.run('onOpen'); // the host refuses a menu with an item that runs nothing
  expect(host.workbook.ui.menus).toHaveLength(1);
});
