/** Every text of the laid-out workbook can be read in its cell, with the widths of Arial's letters. */
import { describe, expect, test } from 'vitest';
import { openLocalWorkbook } from '../../src/local/localWorkbook.ts';
import { quoteTerms } from '../quoteTerms.ts';
import { sample, sampleNames } from '../sample.ts';
import { clippings } from './textFit.ts';

const quote = quoteTerms('Larch', ['customer', 'A. Buyer', '']);
const godwit = await openLocalWorkbook({ ...sample('godwit'), quote });

describe('nothing is cut off', () => {
  test('in the sample godwit with a quote in preparation', () => {
    expect(clippings(godwit.host.workbook)).toEqual([]);
  });

  test.each(sampleNames.filter((name) => name !== 'godwit'))('in the sample %s', async (name) => {
    const { host } = await openLocalWorkbook(sample(name));
    expect(clippings(host.workbook)).toEqual([]);
  });

  test('in a workbook without anything in its tables', async () => {
    const { host } = await openLocalWorkbook({});
    expect(clippings(host.workbook)).toEqual([]);
  });

  test('in the lists of faults that take the place of blocks laid out before', () => {
    const before = godwit.values('Components')[6]?.[3];
    godwit.setCell('Components', 'D7', "'heavier than it was thought to be by a good deal");
    const blocks = godwit.sheetNames().filter((name) =>
      godwit
        .values(name)
        .flat()
        .some((cell) => /^No result/.test(String(cell))),
    );
    expect(blocks.length).toBeGreaterThan(10);
    expect(clippings(godwit.host.workbook).filter(({ sheet }) => blocks.includes(sheet))).toEqual([]);
    godwit.setCell('Components', 'D7', Number(before));
  });
});

test('what is cut off is found: by a neighbour, by a row’s height, by a column', async () => {
  const { host } = await openLocalWorkbook({});
  const found = () => clippings(host.workbook).map(({ cell, why }) => `${cell}: ${why}`);
  host.type('Start!D40', "'a text that runs on into the next cell");
  expect(found()).toEqual([]);
  host.type('Start!E40', 'x');
  expect(found()).toEqual([expect.stringMatching(/^D40: \d+ px in \d+/)]);
  const sheetId = host.workbook.model.getters.getActiveSheetId();
  const target = [{ left: 3, right: 3, top: 39, bottom: 39 }];
  host.workbook.dispatch('SET_FORMATTING', { sheetId, target, style: { wrapping: 'wrap' } });
  expect(found()).toEqual([]);
  host.workbook.dispatch('RESIZE_COLUMNS_ROWS', { sheetId, dimension: 'ROW', elements: [39], size: 21 });
  expect(found()).toEqual([expect.stringMatching(/^D40: \d lines in 21 px/)]);
});
