import { parseA1, splitSheetName, zoneOf } from './a1.ts';
import { createCardService } from './cards.ts';
import { scriptValue } from './cellValue.ts';
import type { Engine, EvaluatedCell, Zone } from './engine.ts';
import { type FunctionDescriptor, registerFunctions } from './functionAdapter.ts';
import { createHtmlService } from './html.ts';
import { createLockService } from './lock.ts';
import { createPropertiesService } from './properties.ts';
import { createRange } from './range.ts';
import { writeCell } from './rangeValues.ts';
import { createSheet } from './sheet.ts';
import type { WorkbookSnapshot } from './snapshot.ts';
import { createSpreadsheet } from './spreadsheet.ts';
import { createCharts, createSpreadsheetApp } from './spreadsheetApp.ts';
import { createUtilities } from './utilities.ts';
import { type ObjectMakers, Workbook } from './workbook.ts';

/** Runs a script with the given globals and returns the globals it defined. */
export type Evaluate = (globals: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/** A script as it is bound to a workbook. */
export interface BoundScript {
  /** The script: a vm context on Node, a hidden frame's `eval` in a page. */
  readonly evaluate: Evaluate;
  readonly functions: readonly FunctionDescriptor[];
  /** The project's HTML files by name, without the ending. */
  readonly files?: Readonly<Record<string, string>>;
}

interface Hosting {
  readonly engine: Engine;
  readonly snapshot?: WorkbookSnapshot | undefined;
}

const makers: ObjectMakers = { range: createRange, sheet: createSheet, spreadsheet: createSpreadsheet };

/** A script and the workbook it is bound to. */
export class LocalHost {
  readonly workbook: Workbook;

  /** @param snapshot a workbook as it was left; without one it is new */
  constructor({ engine, snapshot, ...script }: BoundScript & Hosting) {
    registerFunctions(engine, script.functions); // known before formulas are read that call them
    this.workbook = new Workbook(engine, makers, snapshot);
    this.loadScript(script);
    if (snapshot) this.workbook.dispatch('EVALUATE_CELLS', {});
  }

  /** Binds a script to the workbook, in place of the one that was bound: another version, say. */
  loadScript({ evaluate, functions, files = {} }: BoundScript): void {
    const { workbook } = this;
    registerFunctions(workbook.engine, functions);
    workbook.scope = evaluate({
      SpreadsheetApp: createSpreadsheetApp(workbook),
      Charts: createCharts(workbook),
      HtmlService: createHtmlService(workbook, files),
      CardService: createCardService(workbook),
      PropertiesService: createPropertiesService(workbook),
      LockService: createLockService(workbook),
      Utilities: createUtilities(workbook),
    });
  }

  /** Runs one of the script's functions, as a menu item or a trigger does. */
  run(name: string, ...values: unknown[]): unknown {
    const scriptFunction = this.workbook.scope[name];
    if (typeof scriptFunction !== 'function') throw new Error(`Script function not found: ${name}`);
    return this.workbook.run(() => scriptFunction(...values) as unknown);
  }

  /**
   * Runs a function as the panel's `google.script.run` does: values go both ways as JSON, and a function whose name
   * ends in `_` is out of reach.
   */
  runFromPanel(name: string, ...values: unknown[]): unknown {
    if (name.endsWith('_')) throw new Error(`Script function not found: ${name}`);
    return asJson(this.run(name, ...values.map(asJson)));
  }

  /** Types something into a cell, as a person does. */
  type(reference: string, text: string): void {
    const { sheetId, zone } = this.#place(reference);
    const position = { sheetId, col: zone.left, row: zone.top };
    const oldValue = this.workbook.contentOf(position);
    writeCell(this.workbook, position, text);
    this.edited(sheetId, zoneOf(position), { value: text.replace(/^'/, ''), oldValue });
  }

  /** Tells the script of a person's edit, as Google does: of one cell what it holds and held, of several only where. */
  edited(sheetId: string, zone: Zone, cell: { value?: string; oldValue?: string } = {}): void {
    if (!('onEdit' in this.workbook.scope)) return;
    this.run('onEdit', { range: this.workbook.range(sheetId, zone), ...cell });
  }

  /** What a cell shows: value, formatted text, an error's message. */
  cell(reference: string): EvaluatedCell {
    const { sheetId, zone } = this.#place(reference);
    return this.workbook.evaluated({ sheetId, col: zone.left, row: zone.top });
  }

  /** Rows of values as a script would read them. */
  values(reference: string): unknown[][] {
    const { sheetId, zone } = this.#place(reference);
    const rows = this.workbook.evaluatedRows(sheetId, zone);
    return rows.map((row) => row.map((cell) => scriptValue(this.workbook.engine, cell)));
  }

  /** @throws Error when the reference names no sheet and cells, as `Sheet name!A1:B2` does */
  #place(text: string): { sheetId: string; zone: Zone } {
    const { getters } = this.workbook.model;
    const { sheetName, reference } = splitSheetName(text);
    const sheetId = sheetName === undefined ? undefined : this.workbook.sheetIdNamed(sheetName);
    const zone =
      sheetId === undefined
        ? undefined
        : parseA1(reference, getters.getNumberRows(sheetId), getters.getNumberCols(sheetId));
    if (sheetId === undefined || !zone) throw new Error(`no such cells: ${text}`);
    return { sheetId, zone };
  }
}

/** @throws Error for what `google.script.run` does not carry: functions, dates */
function asJson(value: unknown): unknown {
  refuseUncarried(value);
  return value === undefined ? undefined : JSON.parse(JSON.stringify(value));
}

function refuseUncarried(value: unknown): void {
  if (typeof value === 'function' || Object.prototype.toString.call(value) === '[object Date]') {
    throw new Error('google.script.run carries neither functions nor dates');
  }
  if (typeof value === 'object' && value !== null) Object.values(value).forEach(refuseUncarried);
}
