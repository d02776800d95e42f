import { sizeOf, zoneOf, zoneToA1 } from './a1.ts';
import type { GoogleRange } from './google.ts';
import { protect } from './protection.ts';
import type { RangeContext } from './rangePlace.ts';
import { activateSheet } from './sheet.ts';

/** Where a range is, ranges beside it, merging and protecting. */
export function rangeGeometry(context: RangeContext): Partial<GoogleRange> {
  const { workbook, sheetId, zone } = context;
  const { left, right, top, bottom } = zone;
  const { rows, columns } = sizeOf(zone);
  const merges = () => workbook.model.getters.getMergesInZone(sheetId, zone);

  return {
    getA1Notation: () => zoneToA1(zone),
    getSheet: () => workbook.sheet(sheetId),
    getRow: () => top + 1,
    getColumn: () => left + 1,
    getLastRow: () => bottom + 1,
    getLastColumn: () => right + 1,
    getNumRows: () => rows,
    getNumColumns: () => columns,

    activate() {
      activateSheet(workbook, sheetId);
      workbook.model.selection.selectZone({ cell: { col: left, row: top }, zone });
      return context.range();
    },

    getCell(row: number, column: number) {
      return workbook.range(sheetId, zoneOf({ col: left + column - 1, row: top + row - 1 }));
    },

    offset(rowOffset: number, columnOffset: number, numRows: number = rows, numColumns: number = columns) {
      const firstRow = top + rowOffset;
      const firstColumn = left + columnOffset;
      return workbook.range(sheetId, {
        top: firstRow,
        bottom: firstRow + numRows - 1,
        left: firstColumn,
        right: firstColumn + numColumns - 1,
      });
    },

    merge() {
      workbook.dispatch('ADD_MERGE', { sheetId, target: [zone], force: true });
      return context.range();
    },

    breakApart() {
      const target = merges();
      if (target.length > 0) workbook.dispatch('REMOVE_MERGE', { sheetId, target });
      return context.range();
    },

    isPartOfMerge: () => merges().length > 0,
    protect: () => protect(workbook, sheetId, zone),
  };
}
