import { writeFile } from 'node:fs/promises';
import { formulas, tableFunctions } from '../functions/library.ts';
import type { Cell } from '../tables/cell.ts';
import type { Grids } from '../workbook/layout.ts';
import { dataFiles, scriptText } from './build.ts';
import { zoneOf, zoneToA1 } from './host/a1.ts';
import type { FunctionDescriptor } from './host/functionAdapter.ts';
import { LocalHost } from './host/localHost.ts';
import { loadEngine } from './host/node/loadEngine.ts';
import { scriptRealm } from './host/node/scriptRealm.ts';
import type { WorkbookSnapshot } from './host/snapshot.ts';
import { workbookFile } from './workbookFile.ts';

/** Every custom function as the sheet's help shows it. */
export const functionDescriptors: readonly FunctionDescriptor[] = [...formulas, ...tableFunctions].map(
  ({ name, help, arguments: own }) => ({
    name,
    description: help,
    arguments: own.map((argument) => ({
      name: argument.name,
      description: argument.help,
      optional: argument.optional,
    })),
  }),
);

let script: Promise<string> | undefined;
let data: Promise<Readonly<Record<string, string>>> | undefined;

/** The pushed script, built once, in a local spreadsheet: a new one, or one as it was left. */
export async function localHost(
  snapshot?: WorkbookSnapshot,
  files?: Readonly<Record<string, string>>,
): Promise<LocalHost> {
  script ??= scriptText();
  data ??= dataFiles();
  const engine = await loadEngine();
  const evaluate = scriptRealm(await script);
  return new LocalHost({
    engine,
    evaluate,
    functions: functionDescriptors,
    files: files ?? (await data),
    snapshot,
  });
}

/** The workbook in a local spreadsheet, laid out and computed by the script that is pushed. */
export class LocalWorkbook {
  readonly host: LocalHost;

  constructor(host: LocalHost) {
    this.host = host;
  }

  sheetNames(): string[] {
    const { getters } = this.host.workbook.model;
    return getters.getSheetIds().map((id) => getters.getSheetName(id));
  }

  /** Every value of a sheet, from its first cell to the last one that holds something. */
  values(sheetName: string): Cell[][] {
    const { getters } = this.host.workbook.model;
    const id = this.host.workbook.sheetIdNamed(sheetName);
    if (id === undefined)
      throw new Error(`no sheet "${sheetName}"; there are ${this.sheetNames().join(', ')}`);
    const used = getters
      .getEvaluatedCellsPositions(id)
      .filter((position) => getters.getEvaluatedCell(position).formattedValue !== '');
    if (used.length === 0) return [];
    const bottom = used.reduce((last, { row }) => Math.max(last, row), 0);
    const right = used.reduce((last, { col }) => Math.max(last, col), 0);
    return this.host.values(`${sheetName}!${zoneToA1({ left: 0, top: 0, right, bottom })}`) as Cell[][];
  }

  /**
   * The block that a custom function spills, wherever it stands.
   * @throws Error with the function's message when it refused its arguments
   */
  block(functionName: string): Cell[][] {
    const { getters } = this.host.workbook.model;
    for (const sheetId of getters.getSheetIds()) {
      for (const position of getters.getEvaluatedCellsPositions(sheetId)) {
        const formula = this.host.workbook.formulaAt(position);
        if (!formula.toUpperCase().startsWith(`=${functionName}(`)) continue;
        const { type, message } = getters.getEvaluatedCell(position);
        if (type === 'error') throw new Error(String(message));
        const zone = getters.getSpreadZone(position) ?? zoneOf(position);
        const name = getters.getSheetName(sheetId);
        return this.host.values(`${name}!${zoneToA1(zone)}`) as Cell[][];
      }
    }
    throw new Error(`no cell holds ${functionName}`);
  }

  /** Types into a cell, as a person does. */
  setCell(sheetName: string, reference: string, value: string | number | boolean): void {
    this.host.type(`${sheetName}!${reference}`, String(value));
  }

  async save(path: string): Promise<void> {
    await writeFile(path, await workbookFile(this.host.workbook));
  }
}

/** Lays the workbook out from nothing with the given tables. */
export async function openLocalWorkbook(grids: Grids): Promise<LocalWorkbook> {
  const host = await localHost();
  host.run('layOutTables_', grids);
  return new LocalWorkbook(host);
}
