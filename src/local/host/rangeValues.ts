import { positionsOf, rowsOf, sizeOf } from './a1.ts';
import { scriptValue, typedContent } from './cellValue.ts';
import type { CellPosition, EvaluatedCell } from './engine.ts';
import type { GoogleRange } from './google.ts';
import { clearRange } from './rangeClearing.ts';
import type { RangeContext } from './rangePlace.ts';
import { requireSize } from './requireSize.ts';
import type { Workbook } from './workbook.ts';

/** Values and formulas of a range. */
export function rangeValues(context: RangeContext): Partial<GoogleRange> {
  const { workbook, sheetId, zone } = context;
  const { rows, columns } = sizeOf(zone);
  const readRows = () => workbook.evaluatedRows(sheetId, zone);
  const readFirst = () => workbook.evaluated({ sheetId, col: zone.left, row: zone.top });
  const display = (cell: EvaluatedCell) =>
    cell.type === 'error' ? String(scriptValue(workbook.engine, cell)) : cell.formattedValue;
  const written = (): GoogleRange => context.range();

  const writeRows = (values: readonly (readonly unknown[])[]): GoogleRange => {
    requireSize(values, zone);
    for (const { col, row } of positionsOf(zone)) {
      writeCell(workbook, { sheetId, col, row }, values[row - zone.top]?.[col - zone.left]);
    }
    return written();
  };

  return {
    getValue: () => scriptValue(workbook.engine, readFirst()),
    getValues: () => readRows().map((row) => row.map((cell) => scriptValue(workbook.engine, cell))),
    getDisplayValue: () => display(readFirst()),
    getDisplayValues: () => readRows().map((row) => row.map(display)),
    isBlank: () => readRows().every((row) => row.every((cell) => cell.type === 'empty')),

    setValue(value: unknown) {
      for (const { col, row } of positionsOf(zone)) writeCell(workbook, { sheetId, col, row }, value);
      return written();
    },

    setValues: writeRows,

    getFormula: () => workbook.formulaAt({ sheetId, col: zone.left, row: zone.top }),

    getFormulas: () => rowsOf(zone, (col, row) => workbook.formulaAt({ sheetId, col, row })),

    setFormula(formula: string) {
      if (rows * columns > 1) {
        throw new Error('Range.setFormula on several cells is not implemented by the local host');
      }
      writeCell(workbook, { sheetId, col: zone.left, row: zone.top }, requireFormula(formula));
      return written();
    },

    setFormulas: (formulas: string[][]) => writeRows(formulas.map((row) => row.map(requireFormula))),

    clear(options: Parameters<typeof clearRange>[1] = { contentsOnly: true, formatOnly: true }) {
      clearRange(context, options);
      return written();
    },

    clearContent() {
      clearRange(context, { contentsOnly: true });
      return written();
    },

    clearFormat() {
      clearRange(context, { formatOnly: true });
      return written();
    },

    clearDataValidations() {
      clearRange(context, { validationsOnly: true });
      return written();
    },
  };
}

/** @throws Error naming the cell when the value can't be written there */
export function writeCell(workbook: Workbook, position: CellPosition, value: unknown): void {
  let typed: ReturnType<typeof typedContent>;
  try {
    typed = typedContent(value);
  } catch (error) {
    throw new Error(`${workbook.placeName(position)}: ${(error as Error).message}`);
  }
  const needsFormat = typed.format !== undefined && !workbook.model.getters.getCell(position)?.format;
  workbook.write(position, typed.content, needsFormat ? typed.format : undefined);
}

function requireFormula(formula: string): string {
  if (formula === '' || formula.startsWith('=')) return formula;
  throw new Error(`a formula must begin with '=', got '${formula}'`);
}
