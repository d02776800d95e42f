import type { Cell, Grid } from '../tables/cell.ts';
import { axisTitles } from '../workbook/axes.ts';
import type { ChartLayout } from '../workbook/layout.ts';
import { own } from '../workbook/own.ts';
import { blockNow } from './blockNow.ts';
import { type Chart, titleOf } from './charts.ts';
import { withDocumentLock } from './documentLock.ts';
import { readLayout } from './files.ts';
import type { Book, Sheet } from './places.ts';
import { state } from './state.ts';

type Block = readonly (readonly Cell[])[];

/** What named ranges hold, each read once. */
function gridReader(book: Book): (range: string) => Grid | undefined {
  const grids = new Map<string, Grid | undefined>();
  return (range) => {
    if (!grids.has(range)) grids.set(range, book.getRangeByName(range)?.getValues() as Cell[][] | undefined);
    return grids.get(range);
  };
}

/** Gives a chart the titles of its axes as its block reads now; one that has them is left alone. */
function nameAxesOf(sheet: Sheet, drawn: Chart, chart: ChartLayout, block: Block): void {
  const titles = Object.entries(axisTitles(chart, block));
  const moved = titles.filter(([axis, title]) => drawn.getOptions()?.get(`${axis}.title`) !== title);
  if (moved.length === 0) return;
  const builder = drawn.modify();
  for (const [axis, title] of moved) builder.setOption(`${axis}.title`, title);
  sheet.updateChart(builder.build());
}

/** Charts say the unit that their numbers are in: after a unit has changed, they are told. */
export function nameAxes(): void {
  const book: Book = SpreadsheetApp.getActiveSpreadsheet();
  const numbers = state.sheetNumbers();
  const gridOf = gridReader(book);
  const layouts = readLayout().sheets.filter(({ results }) =>
    results.some(({ charts }) => charts.length > 0),
  );
  const sheets = book.getSheets();
  withDocumentLock(() => {
    for (const { name, results } of layouts) {
      const sheet = sheets.find((each) => each.getSheetId() === numbers[name]);
      const drawn = sheet?.getCharts() ?? [];
      for (const result of results.filter(({ charts }) => charts.length > 0)) {
        const block = blockNow(result, gridOf);
        for (const chart of block.length > 0 ? result.charts : []) {
          const found = drawn.find((each) => titleOf(each) === own(chart.title));
          if (sheet && found) nameAxesOf(sheet, found, chart, block);
        }
      }
    }
  });
}
