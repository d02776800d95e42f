/** The data check of the menu. */
import { beforeEach, expect, test } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import type { LocalWorkbook } from '../../src/local/localWorkbook.ts';
import { openMinimal } from './minimalWorkbook.ts';

let host: LocalHost;
let workbook: LocalWorkbook;
beforeEach(async () => {
  ({ host, workbook } = await openMinimal());
});

test('the data check says where the first fault is, and goes there', () => {
  workbook.setCell('Components', 'D7', "'heavy");
  host.run('checkData');
  const { title, prompt } = host.workbook.ui.alerts.at(-1) ?? {};
  expect(title).toBe('Check data: 1 fault');
  expect(prompt).toContain('components, row 7 (Elm, propeller), weight: got "heavy"');
  const { getters } = host.workbook.model;
  expect(getters.getSheetName(getters.getActiveSheetId())).toBe('Components');
});

test('the data check says what stands below a table and is not read', () => {
  const bottom = Number(host.workbook.model.getters.getNamedRange('stations')?.range.zone.bottom) + 2;
  workbook.setCell('Seats and tanks', `A${bottom}`, "'jump seat");
  host.run('checkData');
  expect(host.workbook.ui.alerts.at(-1)?.prompt).toContain(`stations: row ${bottom} stands below the table`);
});
