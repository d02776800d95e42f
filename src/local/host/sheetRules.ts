import { createFormatRule, formatRuleOf } from './conditionalFormat.ts';
import type { SingleColorRules } from './engine.ts';
import { engineCriteria } from './engineCriteria.ts';
import type { GoogleConditionalFormatRule, GoogleSheet } from './google.ts';
import { placeOf } from './rangePlace.ts';
import type { SheetContext } from './sheet.ts';

const operators: Readonly<Record<string, SingleColorRules['operator']>> = {
  ...engineCriteria,
  CELL_EMPTY: 'isEmpty',
  CELL_NOT_EMPTY: 'isNotEmpty',
  TEXT_EQUAL_TO: 'isEqual',
  TEXT_STARTS_WITH: 'beginsWithText',
  TEXT_ENDS_WITH: 'endsWithText',
};

/** Conditional formats of a sheet; the first rule has precedence in both hosts. */
export function sheetRules({ workbook, sheetId }: SheetContext): Partial<GoogleSheet> {
  const { getters } = workbook.model;

  const clear = (): void => {
    for (const { id } of getters.getConditionalFormats(sheetId)) {
      workbook.dispatch('REMOVE_CONDITIONAL_FORMAT', { sheetId, id });
      workbook.formatRules.delete(id);
    }
  };

  return {
    clearConditionalFormatRules: clear,

    setConditionalFormatRules(rules: GoogleConditionalFormatRule[]) {
      clear();
      for (const rule of rules) {
        const spec = formatRuleOf(rule);
        const operator = operators[String(spec.criteria)];
        if (!operator) throw new Error(`condition ${spec.criteria} is not implemented by the local host`);
        const places = spec.ranges.map(placeOf);
        if (places.some((place) => place.sheetId !== sheetId)) {
          throw new Error('a conditional format must lie on the sheet it is set on');
        }
        const id = `format-${workbook.nextNumber()}`;
        workbook.dispatch('ADD_CONDITIONAL_FORMAT', {
          sheetId,
          ranges: places.map(({ zone }) => ({ _sheetId: sheetId, _zone: zone })),
          cf: {
            id,
            rule: { type: 'CellIsRule', operator, values: spec.values.map(String), style: spec.style },
          },
        });
        workbook.formatRules.set(id, spec);
      }
    },

    getConditionalFormatRules: () =>
      getters.getConditionalFormats(sheetId).flatMap(({ id, ranges }) => {
        const spec = workbook.formatRules.get(id);
        if (!spec) return []; // made by a person in the page
        const current = ranges.map((range) =>
          workbook.range(sheetId, getters.getRangeFromSheetXC(sheetId, range).zone),
        );
        return [createFormatRule(workbook, { ...spec, ranges: current })];
      }),
  };
}
