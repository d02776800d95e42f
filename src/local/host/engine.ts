/**
 * The spreadsheet engine as the host uses it: types only, the module itself is handed in (from the package on Node, from
 * a script tag in a page).
 */
import type * as spreadsheetEngine from '@odoo/o-spreadsheet';
import type { Command } from '@odoo/o-spreadsheet/dist/types/types/commands';

export type Engine = Pick<
  typeof spreadsheetEngine,
  'Model' | 'UIPlugin' | 'addFunction' | 'helpers' | 'registries' | 'DEFAULT_LOCALE'
>;
export type EngineModel = InstanceType<Engine['Model']>;
export type { EvaluatedCell } from '@odoo/o-spreadsheet/dist/types/types/cells';
export type { ChartDefinition } from '@odoo/o-spreadsheet/dist/types/types/chart/chart';
export type { CoreCommand } from '@odoo/o-spreadsheet/dist/types/types/commands';
export type { SingleColorRules } from '@odoo/o-spreadsheet/dist/types/types/conditional_formatting';
export type { DataValidationCriterion } from '@odoo/o-spreadsheet/dist/types/types/data_validation';
export type { EvalContext } from '@odoo/o-spreadsheet/dist/types/types/functions';
export type {
  Arg,
  Border,
  BorderDescr,
  CellPosition,
  FunctionResultObject,
  Style,
  Zone,
} from '@odoo/o-spreadsheet/dist/types/types/misc';
export type { RangeData } from '@odoo/o-spreadsheet/dist/types/types/range';

export type CommandType = Command['type'];
export type CommandPayload<T extends CommandType> = Omit<Extract<Command, { type: T }>, 'type'>;
