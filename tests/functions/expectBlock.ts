import { expect } from 'vitest';
import type { Cell } from '../../src/tables/cell.ts';

/** A block that a sheet can show: a rectangle of finite numbers, texts and blanks, nothing left undefined in words. */
export function expectBlock(rows: readonly (readonly Cell[])[], mayTick = false): void {
  expect(rows.length).toBeGreaterThan(0);
  const kinds = mayTick ? ['string', 'boolean'] : ['string'];
  for (const row of rows) {
    expect(row).toHaveLength(rows[0]?.length as number);
    for (const cell of row) {
      expect(cell === null || kinds.includes(typeof cell) || Number.isFinite(cell), String(cell)).toBe(true);
      expect(String(cell)).not.toMatch(/undefined|NaN|Infinity|\[object/);
    }
  }
}
