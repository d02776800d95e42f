/** Sheets of a workbook by their names, deleted and renamed as a person does. */
import type { LocalHost } from '../../src/local/host/localHost.ts';

export function sheetNames({ workbook }: LocalHost): string[] {
  const { getters } = workbook.model;
  return getters.getSheetIds().map((id) => getters.getSheetName(id));
}

/** Of a sheet that there is. */
export const sheetId = ({ workbook }: LocalHost, name: string) => workbook.sheetIdNamed(name) as string;

export const deleteSheet = (host: LocalHost, name: string) =>
  host.workbook.dispatch('DELETE_SHEET', { sheetId: sheetId(host, name), sheetName: name });

export const renameSheet = (host: LocalHost, oldName: string, newName: string) =>
  host.workbook.dispatch('RENAME_SHEET', { sheetId: sheetId(host, oldName), oldName, newName });
