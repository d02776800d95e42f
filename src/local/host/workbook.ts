import { rowsOf, zoneOf, zoneToA1 } from './a1.ts';
import { CallLog } from './callLog.ts';
import type { ChartRecord } from './chart.ts';
import type { FormatRule } from './conditionalFormat.ts';
import type { ValidationRule } from './dataValidation.ts';
import type {
  CellPosition,
  CommandPayload,
  CommandType,
  CoreCommand,
  Engine,
  EngineModel,
  EvaluatedCell,
  RangeData,
  Zone,
} from './engine.ts';
import type { GoogleRange, GoogleSheet, GoogleSpreadsheet } from './google.ts';
import { DocumentLock } from './lock.ts';
import type { ProtectionRecord } from './protection.ts';
import { restore, type WorkbookSnapshot } from './snapshot.ts';
import type { TrackedRange } from './trackedRange.ts';
import { emptyUiRecord } from './ui.ts';

/** A new sheet's size, as in Google Sheets. */
export const newSheetRows = 1000;
export const newSheetColumns = 26;

/** How the objects are made that hand each other out: a range its sheet, a sheet its ranges, both the spreadsheet. */
export interface ObjectMakers {
  readonly range: (workbook: Workbook, sheetId: string, zone: Zone) => GoogleRange;
  readonly sheet: (workbook: Workbook, sheetId: string) => GoogleSheet;
  readonly spreadsheet: (workbook: Workbook) => GoogleSpreadsheet;
}

/** The hooks that the engine's plugin and the functions find in the model's `custom` settings. */
interface ModelHooks {
  readonly workbook: Workbook;
}

/** Results of a command that leave everything as it was asked to be. */
const harmless = new Set(['NoChanges', 'UnchangedSheetName']);

/** The command whose handling is a run of the script. Not one of the engine's own. */
const runCommand = 'RUN_SCRIPT' as CommandType;

/**
 * One workbook: the engine's model, and what the engine does not know of.
 *
 * A run of the script is one command of the engine, so its writes take effect at once but formulas are evaluated only
 * when the run reads a value, or ends: Google batches in the same way.
 */
export class Workbook {
  readonly engine: Engine;
  readonly model: EngineModel;
  readonly calls = new CallLog();
  name = 'Untitled spreadsheet';
  readonly ui = emptyUiRecord();
  readonly lock = new DocumentLock();
  readonly properties = new Map<string, string>();
  /** Rules as the script made them, by the engine's id: the engine knows less of them. */
  readonly validationRules = new Map<string, ValidationRule>();
  readonly formatRules = new Map<string, FormatRule>();
  /** Charts in the order in which they were inserted. */
  readonly charts: ChartRecord[] = [];
  readonly protections: ProtectionRecord[] = [];
  /** What the script defined, by name. */
  scope: Readonly<Record<string, unknown>> = {};
  readonly #makers: ObjectMakers;
  #depth = 0;
  #stale = false;
  #job: () => void = () => {};
  #nextNumber = 1;
  readonly #tracked = new Set<TrackedRange>();
  #written: WrittenCell[] = [];

  /** @param snapshot a workbook as it was left; without one it is new, with one empty sheet */
  constructor(engine: Engine, makers: ObjectMakers, snapshot?: WorkbookSnapshot) {
    this.engine = engine;
    this.#makers = makers;
    addRunPlugin(engine);
    const hooks: ModelHooks = { workbook: this };
    const sheet = { id: '0', name: 'Sheet1', colNumber: newSheetColumns, rowNumber: newSheetRows };
    this.model = new engine.Model(snapshot?.model ?? { sheets: [sheet] }, { custom: { ...hooks } });
    if (snapshot) {
      this.#nextNumber = snapshot.nextNumber;
      restore(this, snapshot);
    }
  }

  range(sheetId: string, zone: Zone): GoogleRange {
    return this.#makers.range(this, sheetId, zone);
  }

  sheet(sheetId: string): GoogleSheet {
    return this.#makers.sheet(this, sheetId);
  }

  spreadsheet(): GoogleSpreadsheet {
    return this.#makers.spreadsheet(this);
  }

  /** A number not given before, for sheets, charts and rules. */
  nextNumber(): number {
    return this.#nextNumber++;
  }

  /** @throws Error with the engine's reasons when it refuses the command */
  dispatch<T extends CommandType>(type: T, payload: CommandPayload<T>): void {
    this.#stale = this.#depth > 0;
    const dispatch = this.model.dispatch as (type: string, payload: object) => DispatchOutcome;
    const result = dispatch(type, payload);
    const reasons = result.reasons.filter((reason) => !harmless.has(reason) && reason !== 'Success');
    if (!result.isSuccessful && reasons.length > 0) throw new Error(`${type}: ${reasons.join(', ')}`);
  }

  /** Does a job as one command. A job that throws keeps what it wrote, as in Google Sheets. */
  run<T>(job: () => T): T {
    let outcome: { value: T } | { error: unknown } | undefined;
    this.#job = () => {
      this.#depth++;
      this.lock.enterRun();
      try {
        outcome = { value: job() };
      } catch (error) {
        outcome = { error };
      } finally {
        this.lock.leaveRun();
        this.#depth--;
      }
    };
    (this.model.dispatch as (type: string) => DispatchOutcome)(runCommand);
    if (this.#depth === 0) this.#stale = false; // evaluated at the command's end
    if (outcome === undefined) throw new Error('the spreadsheet takes no commands now');
    if ('error' in outcome) {
      this.#written = [];
      throw outcome.error;
    }
    this.flush();
    return outcome.value;
  }

  /** While the script runs, what changes is its doing and no person's. */
  get isRunning(): boolean {
    return this.#depth > 0;
  }

  /** Evaluates what was written so far. */
  flush(): void {
    if (this.#depth > 0 && this.#stale) {
      // The engine evaluates when a command ends; inside a run the end has to be brought forward.
      const inner = this.model as unknown as { status: number; finalize(): void };
      const status = inner.status;
      inner.finalize();
      inner.status = status;
      this.#stale = false;
    }
    this.#refuseInvalid();
  }

  evaluated(position: CellPosition): EvaluatedCell {
    if (this.#depth > 0 && this.#stale) this.flush();
    return this.model.getters.getEvaluatedCell(position);
  }

  /** Rows of evaluated cells. */
  evaluatedRows(sheetId: string, zone: Zone): EvaluatedCell[][] {
    return rowsOf(zone, (col, row) => this.evaluated({ sheetId, col, row }));
  }

  /** Writes a cell; a value that its validation rule rejects is taken back at the next evaluation, with an error. */
  write(position: CellPosition, content: string, format?: string): void {
    const before = this.contentOf(position);
    this.dispatch('UPDATE_CELL', { ...position, content, ...(format === undefined ? {} : { format }) });
    if (content !== '') this.#written.push({ position, before });
    if (this.#depth === 0) this.#refuseInvalid();
  }

  sheetIdNamed(name: string): string | undefined {
    const { getters } = this.model;
    return getters.getSheetIds().find((id) => getters.getSheetName(id) === name);
  }

  /** A cell as messages name it: `Sheet1!B2`. */
  placeName(position: CellPosition): string {
    return `${this.model.getters.getSheetName(position.sheetId)}!${zoneToA1(zoneOf(position))}`;
  }

  /** The formula of a cell, '' where it has none. */
  formulaAt(position: CellPosition): string {
    const { getters } = this.model;
    const cell = getters.getCell(position);
    return cell?.isFormula ? cell.compiledFormula.toFormulaString(getters) : '';
  }

  /** What was typed into a cell: its text or its formula. */
  contentOf(position: CellPosition): string {
    const cell = this.model.getters.getCell(position);
    return cell && !cell.isFormula ? cell.content : this.formulaAt(position);
  }

  track(sheetId: string, zone: Zone): TrackedRange {
    const tracked = { sheetId, zone };
    this.#tracked.add(tracked);
    return tracked;
  }

  /** Called by the engine for every command, the script's or the person's. */
  handle(command: { readonly type: string }): void {
    if (command.type === runCommand) this.#job();
    else if (structural.has(command.type)) {
      this.#written = []; // these cells are elsewhere now
      for (const tracked of this.#tracked) this.#move(tracked, command as CoreCommand);
    }
  }

  #move(tracked: TrackedRange, command: CoreCommand): void {
    if (!tracked.zone) return;
    const range: RangeData = { _sheetId: tracked.sheetId, _zone: tracked.zone };
    tracked.zone = this.engine.helpers.transformRangeData(range, command)?._zone as Zone | undefined;
    if (!tracked.zone) this.#tracked.delete(tracked);
  }

  /** Google refuses a script's value that a rejecting rule does not allow. From memory. */
  #refuseInvalid(): void {
    const { getters } = this.model;
    const refused = this.#written.filter(({ position }) => {
      if (!getters.tryGetSheet(position.sheetId) || getters.getCell(position)?.isFormula) return false;
      const rule = getters.getValidationRuleForCell(position);
      return rule?.isBlocking && getters.isDataValidationInvalid(position);
    });
    this.#written = [];
    const messages = refused.map(({ position }) => {
      const value = getters.getEvaluatedCell(position).formattedValue;
      return `'${value}' entered in cell ${this.placeName(position)} violates the data validation rule of the cell`;
    });
    // The latest first, so that a cell that was written twice gets back what it held before both.
    for (const { position, before } of refused.reverse()) {
      this.dispatch('UPDATE_CELL', { ...position, content: before });
    }
    if (messages[0] !== undefined) throw new Error(messages[0]);
  }
}

/** A cell that was written, and what stood in it before. */
interface WrittenCell {
  readonly position: CellPosition;
  readonly before: string;
}

interface DispatchOutcome {
  readonly isSuccessful: boolean;
  readonly reasons: readonly string[];
}

const structural = new Set(['ADD_COLUMNS_ROWS', 'REMOVE_COLUMNS_ROWS', 'DELETE_SHEET']);

const pluginName = 'script_runs';

/** The engine's plugins are shared by all its models, so the plugin finds its workbook in the model's settings. */
function addRunPlugin(engine: Engine): void {
  if (engine.registries.featurePluginRegistry.contains(pluginName)) return;
  class ScriptRuns extends engine.UIPlugin {
    readonly #workbook: Workbook;

    constructor(config: ConstructorParameters<Engine['UIPlugin']>[0]) {
      super(config);
      this.#workbook = (config.custom as unknown as ModelHooks).workbook;
    }

    override handle(command: { readonly type: string }): void {
      this.#workbook?.handle(command);
    }
  }
  engine.registries.featurePluginRegistry.add(pluginName, ScriptRuns);
}
