/** All tables replaced by the menu: by a sample, or by nothing. */
import { beforeEach, expect, test } from 'vitest';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import type { LocalWorkbook } from '../../src/local/localWorkbook.ts';
import { openMinimal } from './minimalWorkbook.ts';

let host: LocalHost;
let workbook: LocalWorkbook;
beforeEach(async () => {
  ({ host, workbook } = await openMinimal());
});

test('a sample in place of what the tables hold: what they held is kept', () => {
  host.workbook.ui.answers.push({ button: 'OK', text: 'Sanderling' }, { button: 'OK' });
  const kept = host.run('loadSample') as { why: string }[];
  const tables = ['airframe', 'envelope', 'stations', 'tanks', 'packages', 'components'];
  expect(kept.map(({ why }) => why)).toEqual(
    tables.map((table) => `the ${table} table before it was replaced`),
  );
  expect(String(workbook.block('PACKAGE_COMPARISON')[0]?.[0])).toBe('Sanderling');
  expect(workbook.values('Kept').flat()).toContain('Turnstone');
  expect(host.workbook.ui.alerts.at(-1)?.title).toBe('Kept');
});

test('a sample is not loaded unless a person says so twice', () => {
  host.workbook.ui.answers.push({ button: 'OK', text: 'godwit' }, { button: 'CANCEL' });
  expect(host.run('loadSample')).toEqual([]);
  host.workbook.ui.answers.push({ button: 'CANCEL' });
  expect(host.run('loadSample')).toEqual([]);
  host.workbook.ui.answers.push({ button: 'OK', text: 'Albatross' });
  expect(host.run('loadSample')).toEqual([]);
  expect(host.workbook.ui.alerts.at(-1)?.prompt).toContain('no sample "Albatross"');
  expect(String(workbook.block('PACKAGE_COMPARISON')[0]?.[0])).toBe('Turnstone');
});

test('starting blank leaves empty tables, once', () => {
  host.workbook.ui.answers.push({ button: 'OK' });
  host.run('startBlank');
  expect(String(workbook.block('PACKAGE_COMPARISON')[0]?.[0])).toMatch(/^No result/);
  host.workbook.ui.answers.push({ button: 'OK' });
  expect(host.run('startBlank')).toEqual([]);
});
