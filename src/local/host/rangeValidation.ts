import { positionsOf, rowsOf, zoneOf } from './a1.ts';
import { createValidation, createValidationBuilder, ruleOf, type ValidationRule } from './dataValidation.ts';
import { engineCriterion } from './dataValidationCriteria.ts';
import type { CellPosition, Zone } from './engine.ts';
import { validationCriteria } from './enumerations.ts';
import type { GoogleDataValidation, GoogleRange } from './google.ts';
import type { RangeContext, RangePlace } from './rangePlace.ts';
import { requireSize } from './requireSize.ts';
import type { Workbook } from './workbook.ts';

/** Data validation and checkboxes of a range. */
export function rangeValidation(context: RangeContext): Partial<GoogleRange> {
  const { workbook, sheetId, zone } = context;
  const at = (col: number, row: number) => validationAt(workbook, { sheetId, col, row });
  const checkbox = () => createValidationBuilder(workbook).requireCheckbox().build();
  const isCheckbox = (rule: GoogleDataValidation | null) =>
    rule !== null && ruleOf(rule).criteria === validationCriteria.CHECKBOX;

  return {
    setDataValidation(rule: GoogleDataValidation | null) {
      applyRule(context, rule);
      return context.range();
    },

    setDataValidations(rules: (GoogleDataValidation | null)[][]) {
      requireSize(rules, zone);
      const places = new Map<ValidationRule | null, Zone[]>();
      for (const { col, row } of positionsOf(zone)) {
        const rule = rules[row - zone.top]?.[col - zone.left];
        const spec = rule ? ruleOf(rule) : null;
        places.set(spec, [...(places.get(spec) ?? []), zoneOf({ col, row })]);
      }
      for (const [spec, zones] of places) applyRules({ workbook, sheetId }, zones, spec);
      return context.range();
    },

    getDataValidation: () => at(zone.left, zone.top),

    getDataValidations: () => rowsOf(zone, at),

    /** Blank cells become FALSE, as in Google Sheets; cells that hold something keep it. */
    insertCheckboxes() {
      applyRule(context, checkbox());
      for (const { col, row } of positionsOf(zone)) {
        const isBlank =
          !workbook.model.getters.getCell({ sheetId, col, row })?.isFormula &&
          workbook.evaluated({ sheetId, col, row }).type === 'empty';
        if (isBlank) workbook.dispatch('UPDATE_CELL', { sheetId, col, row, content: 'FALSE' });
      }
      return context.range();
    },

    removeCheckboxes() {
      for (const { col, row } of positionsOf(zone)) {
        if (!isCheckbox(at(col, row))) continue;
        applyRule({ workbook, sheetId, zone: zoneOf({ col, row }) }, null);
        workbook.dispatch('UPDATE_CELL', { sheetId, col, row, content: '' });
      }
      return context.range();
    },

    isChecked: () =>
      isCheckbox(at(zone.left, zone.top))
        ? workbook.evaluated({ sheetId, col: zone.left, row: zone.top }).value === true
        : null,
  };
}

/** Puts a rule on a range, or takes away what rules it has; the cells of other ranges keep theirs. */
export function applyRule(place: RangePlace, rule: GoogleDataValidation | null): void {
  applyRules(place, [place.zone], rule && ruleOf(rule));
}

function applyRules(
  { workbook, sheetId }: Pick<RangePlace, 'workbook' | 'sheetId'>,
  zones: readonly Zone[],
  spec: ValidationRule | null,
): void {
  const add = (id: string, criterion: ReturnType<typeof engineCriterion>, isBlocking: boolean) =>
    workbook.dispatch('ADD_DATA_VALIDATION_RULE', {
      sheetId,
      ranges: zones.map((zone) => ({ _sheetId: sheetId, _zone: zone })),
      rule: { id, criterion, isBlocking },
    });
  const id = `validation-${workbook.nextNumber()}`;
  if (spec) {
    add(id, engineCriterion(workbook, sheetId, spec), !spec.allowInvalid);
    workbook.validationRules.set(id, spec);
  } else if (zones.some((zone) => hasRules(workbook, sheetId, zone))) {
    // A new rule takes its cells out of the older ones; removed again, it leaves them without any.
    add(id, { type: 'isEmail', values: [] }, false);
    workbook.dispatch('REMOVE_DATA_VALIDATION_RULE', { sheetId, id });
  }
}

function hasRules(workbook: Workbook, sheetId: string, zone: Zone): boolean {
  const { overlap } = workbook.engine.helpers;
  return workbook.model.getters
    .getDataValidationRules(sheetId)
    .some(({ ranges }) => ranges.some((range) => overlap(range.zone, zone)));
}

function validationAt(workbook: Workbook, position: CellPosition): GoogleDataValidation | null {
  const rule = workbook.model.getters.getValidationRuleForCell(position);
  const spec = rule && currentRule(workbook, position.sheetId, rule);
  return spec ? createValidation(workbook, spec) : null;
}

/** The script's rule for one of the engine's, with the list's range where it is now. */
export function currentRule(
  workbook: Workbook,
  sheetId: string,
  { id, criterion }: EngineRule,
): ValidationRule | undefined {
  const spec = workbook.validationRules.get(id);
  if (!spec || criterion.type !== 'isValueInRange') return spec;
  const range = workbook.model.getters.getRangeFromSheetXC(sheetId, String(criterion.values[0]));
  return { ...spec, values: [workbook.range(range.sheetId, range.zone), ...spec.values.slice(1)] };
}

type EngineRule = ReturnType<Workbook['model']['getters']['getDataValidationRules']>[number];
