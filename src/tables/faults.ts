import { type Cell, quoted } from './cell.ts';
import type { Lines } from './lines.ts';

/** One thing wrong in a table, at a place a person can find. */
export interface Fault {
  readonly table: string;
  /** Row in the table, the first of its range being row 1; undefined when the whole table is meant. */
  readonly row: number | undefined;
  /** What stands in the row's naming cells, so that it is found after sorting. */
  readonly rowName: string;
  readonly column: string;
  readonly got: string;
  readonly expected: string;
}

/** Something read, or left unread, that is not wrong but should be seen. */
export interface Remark {
  readonly table: string;
  readonly text: string;
}

interface FaultPlace {
  readonly row?: number | undefined;
  readonly rowName?: string;
  readonly column?: string;
}

/** Collects every fault and remark of a reading, so that all are reported together. */
export class FaultLog {
  readonly faults: Fault[] = [];
  readonly remarks: Remark[] = [];
  /** The tables as found, so that a fault that shows later can quote what was typed. */
  readonly lines = new Map<string, Lines>();
  private readonly prices: { table: string; place: FaultPlace; got: Cell; code: string }[] = [];

  private add(table: string, { row, rowName = '', column = '' }: FaultPlace, got: string, expected: string) {
    this.faults.push({ table, row, rowName, column, got, expected });
  }

  fault(table: string, place: FaultPlace, got: Cell, expected: string): void {
    this.add(table, place, quoted(got), expected);
  }

  /** A table, a column or an attribute that is not there. */
  absent(table: string, place: FaultPlace, expected: string): void {
    this.add(table, place, 'nothing', expected);
  }

  /** True where a cell, its unit or the header above it has a fault already: what follows from it is not said again. */
  isFaulty(table: string, row: number, column: string): boolean {
    return this.faults.some(
      (fault) =>
        fault.table === table &&
        (fault.column === `unit of ${column}` ||
          fault.expected === `"${column}"` ||
          (fault.row === row && (fault.column === column || fault.column === 'unit'))),
    );
  }

  remark(table: string, text: string): void {
    this.remarks.push({ table, text });
  }

  /** A unit that names a currency. */
  priced(table: string, place: FaultPlace, got: Cell, code: string): void {
    this.prices.push({ table, place, got, code });
  }

  /**
   * All prices of one workbook are in one currency; units that name another are faults.
   * @param decided where it is known; else the one named most often, of equals the first
   */
  settleCurrency(decided?: string): string | undefined {
    const counts = new Map<string, number>();
    for (const { code } of this.prices) counts.set(code, (counts.get(code) ?? 0) + 1);
    const most = Math.max(...counts.values());
    const currency = decided ?? [...counts].find(([, count]) => count === most)?.[0];
    for (const { table, place, got, code } of this.prices)
      if (code !== currency) this.fault(table, place, got, `${currency}, the workbook's currency`);
    return currency;
  }
}

/** A fault in one line: `components, row 7 (Larch, radiator), weight: got "12,5", expected …`. */
export function faultText({ table, row, rowName, column, got, expected }: Fault): string {
  const name = row === undefined ? rowName : `row ${row}${rowName ? ` (${rowName})` : ''}`;
  return `${[table, name, column].filter((part) => part !== '').join(', ')}: got ${got}, expected ${expected}`;
}
