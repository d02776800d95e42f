import { splitSheetName } from './a1.ts';
import type { GoogleProtectionType, GoogleRange, GoogleSheet, GoogleSpreadsheet } from './google.ts';
import { namedRangesOf, rangeByName, removeNamedRange, setNamedRange } from './namedRange.ts';
import { protectionsOf } from './protection.ts';
import { activateSheet, sheetIdOf } from './sheet.ts';
import { rangeOfReference } from './sheetCells.ts';
import { strict } from './strict.ts';
import { newSheetColumns, newSheetRows, type Workbook } from './workbook.ts';

/** The one open spreadsheet. */
export function createSpreadsheet(workbook: Workbook): GoogleSpreadsheet {
  const { getters } = workbook.model;

  const spreadsheet: GoogleSpreadsheet = strict<GoogleSpreadsheet>(workbook.calls, 'Spreadsheet', {
    getId: () => 'local-workbook',
    getName: () => workbook.name,
    rename(name: string) {
      workbook.name = name;
    },
    getSpreadsheetLocale: () => 'en_US',
    getSpreadsheetTimeZone: () => Intl.DateTimeFormat().resolvedOptions().timeZone,

    getSheets: () => getters.getSheetIds().map((id) => workbook.sheet(id)),
    getNumSheets: () => getters.getSheetIds().length,
    getSheetByName(name: string) {
      const id = workbook.sheetIdNamed(name);
      return id === undefined ? null : workbook.sheet(id);
    },
    getSheetById: (id: number) => (getters.tryGetSheet(String(id)) ? workbook.sheet(String(id)) : null),

    insertSheet(nameOrIndex?: unknown, index?: unknown) {
      const isNamed = typeof nameOrIndex === 'string';
      const at = isNamed ? index : nameOrIndex;
      if (at !== undefined && typeof at !== 'number') {
        throw new Error('Spreadsheet.insertSheet with a template is not implemented by the local host');
      }
      const name = isNamed ? nameOrIndex : freeName();
      if (workbook.sheetIdNamed(name) !== undefined) {
        throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
      }
      const sheetId = String(workbook.nextNumber());
      workbook.dispatch('CREATE_SHEET', {
        sheetId,
        name,
        position: at ?? getters.getSheetIds().indexOf(getters.getActiveSheetId()) + 1,
        rows: newSheetRows,
        cols: newSheetColumns,
      });
      activateSheet(workbook, sheetId);
      return workbook.sheet(sheetId);
    },

    deleteSheet(sheet: GoogleSheet) {
      const sheetId = sheetIdOf(sheet);
      workbook.dispatch('DELETE_SHEET', { sheetId, sheetName: getters.getSheetName(sheetId) });
    },

    getActiveSheet: () => workbook.sheet(getters.getActiveSheetId()),
    setActiveSheet(sheet: GoogleSheet) {
      activateSheet(workbook, sheetIdOf(sheet));
      return sheet;
    },
    moveActiveSheet(position: number) {
      const sheetId = getters.getActiveSheetId();
      const delta = position - 1 - getters.getSheetIds().indexOf(sheetId);
      if (delta !== 0) workbook.dispatch('MOVE_SHEET', { sheetId, delta });
    },

    getRange(reference: string): GoogleRange {
      const { sheetName } = splitSheetName(reference);
      const id = sheetName === undefined ? getters.getActiveSheetId() : workbook.sheetIdNamed(sheetName);
      const named = sheetName === undefined ? rangeByName(workbook, reference) : null;
      if (named) return named;
      if (id === undefined) throw new Error(`Range not found: ${reference}`);
      return rangeOfReference(workbook, id, reference);
    },

    setNamedRange: (name: string, range: GoogleRange) => setNamedRange(workbook, name, range),
    getNamedRanges: () => namedRangesOf(workbook),
    getRangeByName: (name: string) => rangeByName(workbook, name),
    removeNamedRange: (name: string) => removeNamedRange(workbook, name),
    getProtections: (type: GoogleProtectionType) => protectionsOf(workbook, type),

    toast(message: string, title?: string) {
      workbook.ui.toasts.push({ message, title: title ?? '' });
    },
  });

  function freeName(): string {
    let number = getters.getSheetIds().length;
    while (workbook.sheetIdNamed(`Sheet${number}`) !== undefined) number++;
    return `Sheet${number}`;
  }
  return spreadsheet;
}
