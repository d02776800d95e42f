import { hexColour } from './colour.ts';
import type { GoogleProtectionType, GoogleSheet } from './google.ts';
import { namedRangesOf } from './namedRange.ts';
import { ObjectRecords } from './objectRecords.ts';
import { protect, protectionsOf } from './protection.ts';
import { sheetCells } from './sheetCells.ts';
import { sheetCharts } from './sheetCharts.ts';
import { sheetGrid } from './sheetGrid.ts';
import { sheetRules } from './sheetRules.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

export interface SheetContext {
  readonly workbook: Workbook;
  readonly sheetId: string;
  /** For methods that return the sheet. */
  readonly sheet: () => GoogleSheet;
}

const ids = new ObjectRecords<string>('a Sheet');

export const sheetIdOf = (sheet: GoogleSheet): string => ids.of(sheet);

export function createSheet(workbook: Workbook, sheetId: string): GoogleSheet {
  const context: SheetContext = { workbook, sheetId, sheet: () => sheet };
  const sheet: GoogleSheet = strict<GoogleSheet>(workbook.calls, 'Sheet', {
    ...sheetIdentity(context),
    ...sheetCells(context),
    ...sheetGrid(context),
    ...sheetRules(context),
    ...sheetCharts(context),
  });
  ids.set(sheet, sheetId);
  return sheet;
}

function sheetIdentity({ workbook, sheetId, sheet }: SheetContext): Partial<GoogleSheet> {
  const { getters } = workbook.model;
  const name = () => getters.getSheetName(sheetId);

  return {
    getName: name,
    getSheetName: name,
    setName(newName: string) {
      workbook.dispatch('RENAME_SHEET', { sheetId, oldName: name(), newName });
      return sheet();
    },
    getSheetId: () => Number(sheetId),
    getIndex: () => getters.getSheetIds().indexOf(sheetId) + 1,
    getParent: () => workbook.spreadsheet(),

    activate() {
      activateSheet(workbook, sheetId);
      return sheet();
    },

    hideSheet() {
      if (!isHidden()) workbook.dispatch('HIDE_SHEET', { sheetId });
      return sheet();
    },
    showSheet() {
      if (isHidden()) workbook.dispatch('SHOW_SHEET', { sheetId });
      return sheet();
    },
    isSheetHidden: isHidden,

    setTabColor(colour: string | null) {
      const color = hexColour(colour);
      workbook.dispatch('COLOR_SHEET', color === undefined ? { sheetId } : { sheetId, color });
      return sheet();
    },
    getTabColor: () => getters.getSheet(sheetId).color ?? null,

    setHiddenGridlines(isHiding: boolean) {
      workbook.dispatch('SET_GRID_LINES_VISIBILITY', { sheetId, areGridLinesVisible: !isHiding });
      return sheet();
    },
    hasHiddenGridlines: () => !getters.getGridLinesVisibility(sheetId),

    protect: () => protect(workbook, sheetId),
    getProtections: (type: GoogleProtectionType) => protectionsOf(workbook, type, sheetId),
    getNamedRanges: () => namedRangesOf(workbook, sheetId),
  };

  function isHidden(): boolean {
    return !getters.isSheetVisible(sheetId);
  }
}

export function activateSheet(workbook: Workbook, sheetId: string): void {
  const sheetIdFrom = workbook.model.getters.getActiveSheetId();
  if (sheetIdFrom !== sheetId) workbook.dispatch('ACTIVATE_SHEET', { sheetIdFrom, sheetIdTo: sheetId });
}
