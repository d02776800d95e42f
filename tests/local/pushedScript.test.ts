import { runInContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { call, formulas, tableFunctions } from '../../src/functions/library.ts';
import { dataFiles, scriptText } from '../../src/local/build.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';
import { examples } from '../functions/examples/examples.ts';
import { sample } from '../sample.ts';
import { tableArguments } from '../tableArguments.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';
import { bareContext, htmlService } from './bareContext.ts';

const script = await scriptText();
const files = await dataFiles();
const context = bareContext(htmlService(files));
runInContext(script, context, { filename: 'Code.js' });

type Call = (...cells: (Cell | Grid)[]) => unknown;
const answer = (run: () => unknown): string => {
  try {
    return JSON.stringify(run());
  } catch (error) {
    return String((error as Error).message);
  }
};
/** Where two answers part, with what stands before and behind; empty where they are the same. */
function difference(one: string, other: string): string {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at++;
  return one === other ? '' : `…${one.slice(at - 40, at + 80)}… is not …${other.slice(at - 40, at + 80)}…`;
}
const pushed = (name: string, cells: readonly (Cell | Grid)[]) =>
  answer(() => (context[name] as Call)(...cells));
const readable = (name: string, cells: readonly (Cell | Grid)[]) => answer(() => call(name, cells));

describe('the pushed script answers like the library, byte for byte', () => {
  test.each(tableFunctions.map(({ name }) => name))('%s', (name) => {
    const declared = tableFunctions.find((each) => each.name === name)!;
    const extras = declared.arguments.length - tableNames.length;
    for (const aircraft of ['godwit', 'minimal']) {
      const tables = tableArguments(sample(aircraft));
      const expected = readable(name, tables);
      expect(expected.length).toBeGreaterThan(20);
      expect(difference(pushed(name, tables), expected)).toBe('');
      if (extras > 0) {
        const one = [...tables, sample(aircraft).packages?.[0]?.[2]];
        expect(difference(pushed(name, one), readable(name, one))).toBe('');
      }
    }
  });

  test.each(formulas.map(({ name }) => name))('%s', (name) => {
    for (const { cells } of examples[name]!) expect(pushed(name, cells)).toBe(readable(name, cells));
  });

  test('in every message about the tables, one cell after another empty or wrong', () => {
    for (const table of tableNames) {
      const { length } = smallWorkbook()[table];
      for (let row = 0; row < Math.min(length, 5); row++) {
        for (const wrong of ['', 'kg?', true] as const) {
          const grids = smallWorkbook();
          grids[table][row] = grids[table][row]!.map(() => wrong);
          const cells = tableArguments(grids);
          expect(difference(pushed('PACKAGE_COMPARISON', cells), readable('PACKAGE_COMPARISON', cells))).toBe(
            '',
          );
        }
      }
    }
  });
});

test('in one file, for the case that Library.html cannot be read, it answers the same without any service', async () => {
  const alone = bareContext({});
  runInContext(await scriptText(true), alone, { filename: 'Code.js' });
  const tables = tableArguments(sample('godwit'));
  const block = JSON.stringify((alone.PACKAGE_COMPARISON as Call)(...tables));
  expect(difference(block, pushed('PACKAGE_COMPARISON', tables))).toBe('');
});

test('formula functions read no file', () => {
  const withoutServices = bareContext({});
  runInContext(script, withoutServices, { filename: 'Code.js' });
  expect((withoutServices.AIR_DENSITY_RATIO as Call)(0)).toBeCloseTo(1, 6);
  expect(() => (withoutServices.PACKAGE_COMPARISON as Call)()).toThrow(/HtmlService/);
});
