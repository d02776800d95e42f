import { createFormatRuleBuilder } from './conditionalFormat.ts';
import { createValidationBuilder } from './dataValidation.ts';
import {
  booleanCriteria,
  borderStyles,
  chartTypes,
  hiddenDimensionStrategies,
  mergeStrategies,
  protectionTypes,
  validationCriteria,
  wrapStrategies,
} from './enumerations.ts';
import type { GoogleCharts, GoogleSheet, GoogleSpreadsheetApp } from './google.ts';
import { activateSheet, sheetIdOf } from './sheet.ts';
import { strict } from './strict.ts';
import { createUi } from './ui.ts';
import type { Workbook } from './workbook.ts';

export function createSpreadsheetApp(workbook: Workbook): GoogleSpreadsheetApp {
  return strict<GoogleSpreadsheetApp>(workbook.calls, 'SpreadsheetApp', {
    BooleanCriteria: booleanCriteria,
    BorderStyle: borderStyles,
    DataValidationCriteria: validationCriteria,
    ProtectionType: protectionTypes,
    WrapStrategy: wrapStrategies,

    getActive: () => workbook.spreadsheet(),
    getActiveSpreadsheet: () => workbook.spreadsheet(),
    getActiveSheet: () => workbook.sheet(workbook.model.getters.getActiveSheetId()),
    setActiveSheet(sheet: GoogleSheet) {
      activateSheet(workbook, sheetIdOf(sheet));
      return sheet;
    },
    flush: () => workbook.flush(),
    getUi: () => createUi(workbook),
    newDataValidation: () => createValidationBuilder(workbook),
    newConditionalFormatRule: () => createFormatRuleBuilder(workbook),
  });
}

/** The enumerations of charts; charts themselves are built by the sheet. */
export function createCharts(workbook: Workbook): GoogleCharts {
  return strict<GoogleCharts>(workbook.calls, 'Charts', {
    ChartType: chartTypes,
    ChartMergeStrategy: mergeStrategies,
    ChartHiddenDimensionStrategy: hiddenDimensionStrategies,
  });
}
