/** The .xlsx file opens in LibreOffice, and says there what the workbook says. */
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readXlsx } from 'hucre/xlsx';
import { beforeAll, expect, test } from 'vitest';
import { convertInLibreOffice, pdfText, writeGodwit } from './programs.ts';

const folder = mkdtempSync(join(tmpdir(), 'office-'));

beforeAll(() => writeGodwit(folder));

const workbookIn = (path: string) => readXlsx(readFileSync(path), { readStyles: false });

test('every sheet, name and value is there after LibreOffice has read and written it', async () => {
  convertInLibreOffice(join(folder, 'godwit.xlsx'), 'xlsx:Calc MS Excel 2007 XML', join(folder, 'again'));
  const [before, after] = await Promise.all(
    [join(folder, 'godwit.xlsx'), join(folder, 'again', 'godwit.xlsx')].map(workbookIn),
  );
  const names = before?.sheets.map(({ name }) => name) ?? [];
  expect(names.length).toBeGreaterThan(15);
  expect(after?.sheets.map(({ name }) => name)).toEqual(names);
  let compared = 0;
  for (const [index, sheet] of (before?.sheets ?? []).entries()) {
    const same = after?.sheets[index]?.rows ?? [];
    sheet.rows.forEach((row, r) => {
      row.forEach((value, c) => {
        if (value === null || value === '') return;
        compared++;
        const found = same[r]?.[c];
        const place = `${sheet.name} ${r + 1}, ${c + 1}`;
        // LibreOffice writes a truth value as the number it shows as a word
        if (typeof value === 'boolean') expect(Boolean(found), place).toBe(value);
        else if (typeof value === 'number') expect(found, place).toBeCloseTo(value, 9);
        else expect(found, place).toBe(value);
      });
    });
  }
  expect(compared).toBeGreaterThan(5_000);
});

test('it is printed with its charts', () => {
  convertInLibreOffice(join(folder, 'godwit.xlsx'), 'pdf', folder);
  const text = pdfText(join(folder, 'godwit.pdf'));
  expect(text).toContain('Which package, at what price, weight and payload?');
  expect(text).toContain('Every loading the seats and tanks allow, inside the CG limits'); // a chart's title
  expect(text).toContain('payload to be counted on');
});
