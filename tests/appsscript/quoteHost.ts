import { dataFiles, scriptText } from '../../src/local/build.ts';
import { LocalHost } from '../../src/local/host/localHost.ts';
import { loadEngine } from '../../src/local/host/node/loadEngine.ts';
import { scriptRealm } from '../../src/local/host/node/scriptRealm.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { type Inputs, inputNames } from '../../src/tables/inputs.ts';
import { sheetNames } from './sheetsByHand.ts';

const engine = await loadEngine();
const files = await dataFiles();
const script = scriptRealm(await scriptText());

/** Puts tables on sheets of their own, under the names that the script knows them by. */
const setUp = scriptRealm(`
  function setUp(tables) {
    const book = SpreadsheetApp.getActiveSpreadsheet();
    for (const [name, cells] of tables) {
      const sheet = book.getSheetByName(name) ?? book.insertSheet(name);
      const range = sheet.getRange(3, 2, cells.length, cells[0].length);
      range.setValues(cells);
      book.setNamedRange(name.replace(/ /g, '_'), range);
    }
  }
`);

const typed = (cell: Cell) =>
  cell === null || cell === undefined || cell === '' ? '' : typeof cell === 'string' ? `'${cell}` : cell;

/** A workbook with these tables and the pushed script bound to it. */
export function quoteHost(inputs: Inputs): LocalHost {
  const host = new LocalHost({ engine, evaluate: setUp, functions: [] });
  const tables = inputNames.flatMap((name): [string, unknown[][]][] => {
    const grid = inputs[name];
    if (grid === undefined) return [];
    const width = Math.max(...grid.map((line) => line.length));
    return [[name, grid.map((line) => Array.from({ length: width }, (_, at) => typed(line[at])))]];
  });
  host.run('setUp', tables);
  host.loadScript({ evaluate: script, functions: [], files });
  host.runFromPanel('panelState'); // the first call of the script reads its library, which is no part of what is tested
  host.workbook.calls.reset();
  return host;
}

/** Quotes in the register, each as `Q-0001 A`. */
export function registered(host: LocalHost): string[] {
  if (!sheetNames(host).includes('Quotes issued')) return [];
  return host
    .values('Quotes issued!A1:B40')
    .filter(([name]) => /^Q-\d+$/.test(String(name)))
    .map(([name, revision]) => `${name} ${revision}`);
}

/** A copy's cells. */
export const contents = (host: LocalHost, sheet: string) => host.values(`${sheet}!A1:H160`);

/** Types into an input cell, found by the names of its row and column. */
export function change(
  host: LocalHost,
  table: keyof Inputs,
  row: string,
  column: string,
  text: string,
): void {
  const cells = host.values(`${table}!A1:Z40`);
  const headers = cells.find((line) => line.includes(column)) ?? [];
  const at = cells.findIndex((line) => line.includes(row));
  if (at < 0) throw new Error(`no row ${row} in ${table}`);
  const letter = String.fromCharCode('A'.charCodeAt(0) + headers.indexOf(column));
  host.type(`${table}!${letter}${at + 1}`, text);
}
