import type { Grid } from '../../../tables/cell.ts';
import type { Layout } from '../../../workbook/layout.ts';
import { zoneToA1 } from '../../host/a1.ts';
import type { LocalHost } from '../../host/localHost.ts';
import { savedTable } from '../../savedTable.ts';

/** Every table of the workbook as it is kept in a file, and those that are no longer there. */
export function tablesToSave(
  host: LocalHost,
  layout: Layout,
): { readonly tables: Readonly<Record<string, Grid>>; readonly lost: readonly string[] } {
  const { getters } = host.workbook.model;
  const tables: Record<string, Grid> = {};
  const lost: string[] = [];
  for (const table of layout.sheets.flatMap((sheet) => sheet.tables)) {
    const range = getters.getNamedRange(table.range)?.range;
    const values =
      range && (host.values(`${getters.getSheetName(range.sheetId)}!${zoneToA1(range.zone)}`) as Grid);
    const saved = values && savedTable(table, values);
    if (saved) tables[table.table] = saved;
    else lost.push(table.table);
  }
  return { tables, lost };
}
