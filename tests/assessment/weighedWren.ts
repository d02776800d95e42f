/**
 * The weighed Wren of tests/tables/smallWorkbook.ts with Birch against its prediction, worked by hand in lb and in.
 * Stated: 900 at 80, less Ash's 220 at 35, 12 at 42, 30 at 10 and 6 of fuel at 88, plus 260 at 32.846 (210 at 34, 50 at 28),
 * 9 at 36, 44 at 10, 6.7 of fuel at 88: 951.7, 72,861.6. Calculated ones grow by 2 %, estimated ones by 4 %: 957.26.
 */
import { basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { type Reconciliation, reconcile } from '../../src/assessment/reconciliation.ts';
import { reconciliationRows } from '../../src/assessment/reconciliationRows.ts';
import { type WeighedAircraft, weighingCheck } from '../../src/assessment/weighingCheck.ts';
import type { AsQuoted } from '../../src/tables/asQuoted.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { buildOf, catalogueOf } from '../tables/smallBuild.ts';
import { smallWorkbook } from '../tables/smallWorkbook.ts';

export const pound = 0.45359237; // kg, exact
export const inch = 0.0254; // m, exact

export const kitArm = (210 * 34 + 50 * 28) / 260;
export const expected = { weight: 957.26, moment: 72_861.6 + 5.2 * kitArm + 0.36 * 36 };
export const small: TableGrids = smallWorkbook();

/** Weighed `weight` heavier than expected, at `arm`: three scales of ±1 lb, arms ±0.1 in. */
export function weighed(weight: number, arm: number, grids = small) {
  const catalogue = catalogueOf(grids);
  const basis = basisOf(catalogue);
  const engine = packageNamed(catalogue, 'Birch');
  const sum = expected.weight + weight;
  const nose = (95 * sum - expected.moment - weight * arm) / 55;
  const rows = [
    ['nosewheel', nose, 40],
    ['left main', (sum - nose) / 2, 95],
    ['right main', (sum - nose) / 2, 95],
  ] as const;
  const weighings: Cell[][] = [
    ['weighing', 'date', 'point', 'reading', 'arm', 'scale accuracy', 'arm accuracy', 'level'],
    ['', '', '', 'lb', 'in', 'lb', 'in', ''],
    ...rows.map(([point, reading, at]): Cell[] => ['1', '2026-05-01', point, reading, at, 1, 0.1, true]),
  ];
  const { aircraft } = weighingCheck(basis.context, engine, buildOf({ weighings }, catalogue));
  const known = aircraft as WeighedAircraft;
  const found = reconcile(basis, engine, known);
  const rowsOf = (of: Reconciliation, quoted: Partial<AsQuoted> = {}) =>
    reconciliationRows(basis.context, known, of, quoted as AsQuoted);
  const shown = (quoted: Partial<AsQuoted> = {}) => rowsOf(found, quoted);
  const row = (label: string, quoted: Partial<AsQuoted> = {}) =>
    shown(quoted).find(([cell]) => String(cell).startsWith(label));
  /** half-width of a moment about an arm, from scales and measured arms */
  const about = (x: number) => Math.hypot(...rows.flatMap(([, reading, at]) => [at - x, reading * 0.1]));
  return { aircraft: known, found, rowsOf, shown, row, about, sum };
}
