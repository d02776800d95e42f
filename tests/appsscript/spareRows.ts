import type { WorkbookSnapshot } from '../../src/local/host/snapshot.ts';
import type { Layout } from '../../src/workbook/layout.ts';

const spare = 20;

/**
 * A workbook without most of the thousand rows that every sheet begins with, as a person may delete them: the host's engine
 * looks at every cell there is whenever it evaluates.
 */
export function withoutSpareRows(snapshot: WorkbookSnapshot, layout: Layout): WorkbookSnapshot {
  const { sheets, ...model } = snapshot.model as {
    sheets: { rowNumber: number; name: string; cells: object }[];
  };
  const fitted = sheets.map((sheet) => {
    const blocks = layout.sheets.find(({ name }) => name === sheet.name)?.results ?? [];
    const used = Object.keys(sheet.cells).map((reference) => Number(/\d+$/.exec(reference)?.[0]));
    const rowNumber = Math.max(0, ...used, ...blocks.map(({ row, rows }) => row + rows)) + spare;
    return { ...sheet, rowNumber };
  });
  return { ...snapshot, model: { ...model, sheets: fitted } };
}
