import type { ChartRecord, ChartSpec } from './chart.ts';
import type { FormatRule } from './conditionalFormat.ts';
import type { ValidationRule } from './dataValidation.ts';
import { booleanCriteria, chartTypes, validationCriteria } from './enumerations.ts';
import type { ProtectionRecord } from './protection.ts';
import type { TrackedRange } from './trackedRange.ts';
import type { Workbook } from './workbook.ts';

/** Rules by the engine's id. */
type Rules<T> = readonly (readonly [string, T])[];

/** A workbook as it was left, fit for JSON: what the engine exports, and what the engine does not know of. */
export interface WorkbookSnapshot {
  readonly model: object;
  readonly name: string;
  readonly nextNumber: number;
  readonly properties: readonly (readonly [string, string])[];
  readonly charts: readonly (Omit<ChartRecord, 'spec'> & { readonly spec: Named<ChartSpec, 'type'> })[];
  readonly protections: readonly ProtectionRecord[];
  readonly validationRules: Rules<Named<ValidationRule, 'criteria'>>;
  readonly formatRules: Rules<Named<FormatRule, 'criteria'>>;
}

/** With an enumeration's member by its name, which is what it is as JSON. */
type Named<T, K extends keyof T> = Omit<T, K> & Readonly<Record<K, string>>;

export function snapshotOf(workbook: Workbook): WorkbookSnapshot {
  const { model, name, properties, charts, protections, validationRules, formatRules } = workbook;
  const snapshot = {
    model: model.exportData(),
    name,
    nextNumber: workbook.nextNumber(),
    properties: [...properties],
    charts,
    protections,
    // Ranges that the rules hold are the engine's to know: they are asked of it wherever a rule is read.
    validationRules: [...validationRules].map(([id, rule]) => [
      id,
      rule.criteria === validationCriteria.VALUE_IN_RANGE
        ? { ...rule, values: [null, ...rule.values.slice(1)] }
        : rule,
    ]),
    formatRules: [...formatRules].map(([id, rule]) => [id, { ...rule, ranges: [] }]),
  };
  return JSON.parse(JSON.stringify(snapshot)) as WorkbookSnapshot;
}

/** Gives a workbook whose model was made from the snapshot what else was known of it. */
export function restore(workbook: Workbook, snapshot: WorkbookSnapshot): void {
  const tracked = ({ sheetId, zone }: TrackedRange) =>
    zone ? workbook.track(sheetId, zone) : { sheetId, zone };
  workbook.name = snapshot.name;
  for (const [key, value] of snapshot.properties) workbook.properties.set(key, value);
  for (const { spec, ...record } of snapshot.charts) {
    const type = spec.type === undefined ? undefined : chartTypes[spec.type as 'SCATTER'];
    workbook.charts.push({ ...record, spec: { ...spec, type, ranges: spec.ranges.map(tracked) } });
  }
  for (const { range, unprotected, ...record } of snapshot.protections) {
    workbook.protections.push({
      ...record,
      ...(range ? { range: tracked(range) } : {}),
      unprotected: unprotected.map(tracked),
    });
  }
  for (const [id, rule] of snapshot.validationRules) {
    const criteria = validationCriteria[rule.criteria as 'CHECKBOX'];
    workbook.validationRules.set(id, { ...rule, criteria });
  }
  for (const [id, rule] of snapshot.formatRules) {
    workbook.formatRules.set(id, { ...rule, criteria: booleanCriteria[rule.criteria as 'CELL_EMPTY'] });
  }
}
