/** The customer's report: what it says is what the functions gave, nothing in a table becomes part of the page. */
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { call } from '../../../src/functions/library.ts';
import { htmlReport } from '../../../src/local/htmlReport/htmlReport.ts';
import { readCatalogue, type TableGrids } from '../../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../../src/tables/cell.ts';
import { sample } from '../../sample.ts';
import { tableArguments } from '../../tableArguments.ts';

/** The part of the page's interface that is used here. */
interface Node {
  readonly textContent: string;
  readonly children: Iterable<Node>;
  querySelectorAll(selector: string): Iterable<Node>;
  getAttribute(name: string): string | null;
}

function reportOf(grids: TableGrids): { text: string; page: Node; block: (name: string) => Cell[][] } {
  const { catalogue, faults } = readCatalogue(grids);
  expect(faults).toEqual([]);
  if (catalogue === undefined) throw new Error('no catalogue');
  const block = (name: string) => call(name, tableArguments(grids)) as Cell[][];
  const text = htmlReport(catalogue, block, new Date(2025, 10, 25));
  const { document } = parseHTML(text) as unknown as { readonly document: Node };
  return { text, page: document, block };
}

const all = (page: Node, selector: string) => [...page.querySelectorAll(selector)];
const texts = (page: Node, selector: string) =>
  all(page, selector).map(({ textContent }) => textContent.trim());
const cellsOf = (row: Node) => [...row.children].map(({ textContent }) => textContent.trim());

const godwit = sample('godwit');
const { text, page, block } = reportOf(godwit);

describe('the report on the sample', () => {
  test('answers in the order in which a buyer asks, cautions last', () => {
    expect(all(page, 'section').map((section) => section.getAttribute('id'))).toEqual([
      'comparison',
      'mission',
      'loading',
      'range',
      'fuel',
      'flight',
      'cooling',
      'cost',
      'findings',
      'cautions',
    ]);
    expect(texts(page, 'h1')).toEqual(['Engine packages for the Godwit']);
    expect(text).toContain('25 November 2025');
  });

  test('needs no other file and asks nobody', () => {
    expect(all(page, 'script, link, img, iframe, [src]')).toEqual([]);
    expect(text.replaceAll('http://www.w3.org/', '')).not.toMatch(/https?:|url\(|@import/);
  });

  test('says every figure of the comparison', () => {
    /** A number however it is written, else the text. */
    const read = (text: string) => {
      const number = Number(text.replace(/[,+]/g, '').replace('−', '-'));
      return text === '' || Number.isNaN(number) ? text : number;
    };
    const shown = all(page, '#comparison tbody tr')
      .map(cellsOf)
      .map(([label, unit, ...values]) => [label, unit, ...values.map(read)]);
    const [, ...body] = block('PACKAGE_COMPARISON');
    const named = body.findIndex(([label]) => String(label).startsWith('Named loadings'));
    const figures = body
      .slice(0, named)
      .map(([label, unit, ...values]) => [
        String(label).trim(),
        unit ?? '',
        ...values.map((cell) => read(String(cell ?? ''))),
      ]);
    expect(figures.length).toBeGreaterThan(60);
    expect(shown.filter(([, unit]) => unit !== undefined)).toEqual(
      figures.filter((row) => row.slice(1).some((cell) => cell !== '')),
    );
  });

  test('says every finding, under its gravity', () => {
    const [, ...findings] = block('INSTALLATION_FINDINGS');
    for (const gravity of ['stop', 'check', 'note']) {
      const own = findings.filter(([mark]) => String(mark).toLowerCase().endsWith(gravity));
      const items = texts(page, `#findings ul.${gravity} li`);
      expect(items.length).toBe(own.length);
      own.forEach((finding, index) => {
        for (const cell of [finding[1], finding[2], finding[6]]) expect(items[index]).toContain(String(cell));
      });
    }
  });

  test('draws a picture where one would rather look, with a name for whoever cannot', () => {
    const pictures = (section: string) => texts(page, `#${section} svg[role="img"]`).length;
    const count = (block('PACKAGE_COMPARISON')[0] ?? []).length - 2;
    expect(pictures('loading')).toBe(count);
    expect(['range', 'fuel', 'flight', 'cooling'].map(pictures)).toEqual([1, 2, 2, 1]);
    for (const svg of all(page, 'svg[role="img"]')) expect(svg.getAttribute('aria-label')).toMatch(/\w/);
  });
});

describe('other aircraft', () => {
  test.each(['godwit-as-built', 'sanderling', 'minimal'])('%s has all sections too', (name) => {
    const report = reportOf(sample(name));
    expect(all(report.page, 'section').length).toBe(10);
    expect(report.text).not.toMatch(/NaN|undefined|\[object/);
  });
});

describe('what somebody typed', () => {
  const hostile = `<img src=x onerror="alert('1')">&amp;</td></table><script>`;
  const renamed = (grid: Grid | undefined) =>
    grid?.map((row) =>
      row.map((cell) => (typeof cell === 'string' ? cell.replaceAll('Rowan', `${hostile}`) : cell)),
    );

  test('stays text wherever it is shown', () => {
    const tables = Object.fromEntries(
      Object.entries(godwit).map(([name, grid]) => [name, renamed(grid)]),
    ) as TableGrids;
    const report = reportOf(tables);
    expect(all(report.page, 'img, script')).toEqual([]);
    expect(all(report.page, '[onerror]')).toEqual([]);
    expect(all(report.page, 'table').length).toBe(all(page, 'table').length);
    expect(texts(report.page, '#comparison thead th')).toContain(hostile);
    expect(texts(report.page, '#range svg text')).toContain(hostile);
  });
});
