import type { GoogleSheet } from './google.ts';
import type { SheetContext } from './sheet.ts';

type Dimension = 'ROW' | 'COL';

/** Rows and columns of a sheet: how many, how wide, frozen, hidden. Positions count from 1. */
export function sheetGrid({ workbook, sheetId, sheet }: SheetContext): Partial<GoogleSheet> {
  const { getters } = workbook.model;
  const count = (dimension: Dimension) =>
    dimension === 'ROW' ? getters.getNumberRows(sheetId) : getters.getNumberCols(sheetId);
  const named = () => ({ sheetId, sheetName: getters.getSheetName(sheetId) });

  const indices = (dimension: Dimension, start: number, howMany: number): number[] => {
    if (start < 1 || howMany < 1 || start + howMany - 1 > count(dimension)) {
      throw new Error(`Those ${dimension === 'ROW' ? 'rows' : 'columns'} are out of bounds.`);
    }
    return Array.from({ length: howMany }, (_, index) => start - 1 + index);
  };
  const insert = (dimension: Dimension, at: number, quantity: number, position: 'before' | 'after') => {
    const [base] = indices(dimension, at, 1);
    workbook.dispatch('ADD_COLUMNS_ROWS', {
      ...named(),
      dimension,
      base: base as number,
      quantity,
      position,
    });
    return sheet();
  };
  const remove = (dimension: Dimension, start: number, howMany: number) => {
    const elements = indices(dimension, start, howMany);
    workbook.dispatch('REMOVE_COLUMNS_ROWS', { ...named(), dimension, elements });
    return sheet();
  };
  const resize = (dimension: Dimension, start: number, howMany: number, size: number) => {
    const elements = indices(dimension, start, howMany);
    workbook.dispatch('RESIZE_COLUMNS_ROWS', { sheetId, dimension, elements, size });
    return sheet();
  };
  const hide = (dimension: Dimension, start: number, howMany: number) => {
    const elements = indices(dimension, start, howMany);
    workbook.dispatch('HIDE_COLUMNS_ROWS', { sheetId, dimension, elements });
  };
  const show = (dimension: Dimension, start: number, howMany: number) => {
    const elements = indices(dimension, start, howMany);
    workbook.dispatch('UNHIDE_COLUMNS_ROWS', { sheetId, dimension, elements });
  };

  return {
    getMaxRows: () => count('ROW'),
    getMaxColumns: () => count('COL'),

    insertRowAfter: (row: number) => insert('ROW', row, 1, 'after'),
    insertRowBefore: (row: number) => insert('ROW', row, 1, 'before'),
    insertRowsAfter: (row: number, howMany: number) => insert('ROW', row, howMany, 'after'),
    insertRowsBefore: (row: number, howMany: number) => insert('ROW', row, howMany, 'before'),
    insertColumnAfter: (column: number) => insert('COL', column, 1, 'after'),
    insertColumnBefore: (column: number) => insert('COL', column, 1, 'before'),
    insertColumnsAfter: (column: number, howMany: number) => insert('COL', column, howMany, 'after'),
    insertColumnsBefore: (column: number, howMany: number) => insert('COL', column, howMany, 'before'),

    deleteRow: (row: number) => remove('ROW', row, 1),
    deleteColumn: (column: number) => remove('COL', column, 1),
    deleteRows(row: number, howMany: number) {
      remove('ROW', row, howMany);
    },
    deleteColumns(column: number, howMany: number) {
      remove('COL', column, howMany);
    },

    setColumnWidth: (column: number, width: number) => resize('COL', column, 1, width),
    setColumnWidths: (column: number, howMany: number, width: number) =>
      resize('COL', column, howMany, width),
    setRowHeight: (row: number, height: number) => resize('ROW', row, 1, height),
    setRowHeights: (row: number, howMany: number, height: number) => resize('ROW', row, howMany, height),
    getColumnWidth: (column: number) => getters.getColSize(sheetId, column - 1),
    getRowHeight: (row: number) => getters.getRowSize(sheetId, row - 1),

    setFrozenRows(rows: number) {
      if (rows === 0) workbook.dispatch('UNFREEZE_ROWS', { sheetId });
      else workbook.dispatch('FREEZE_ROWS', { sheetId, quantity: rows });
    },
    setFrozenColumns(columns: number) {
      if (columns === 0) workbook.dispatch('UNFREEZE_COLUMNS', { sheetId });
      else workbook.dispatch('FREEZE_COLUMNS', { sheetId, quantity: columns });
    },
    getFrozenRows: () => getters.getPaneDivisions(sheetId).ySplit,
    getFrozenColumns: () => getters.getPaneDivisions(sheetId).xSplit,

    hideRows(row: number, howMany: number = 1) {
      hide('ROW', row, howMany);
    },
    hideColumns(column: number, howMany: number = 1) {
      hide('COL', column, howMany);
    },
    showRows(row: number, howMany: number = 1) {
      show('ROW', row, howMany);
    },
    showColumns(column: number, howMany: number = 1) {
      show('COL', column, howMany);
    },
    isRowHiddenByUser: (row: number) => getters.isRowHidden(sheetId, row - 1),
    isColumnHiddenByUser: (column: number) => getters.isColHidden(sheetId, column - 1),
  };
}
