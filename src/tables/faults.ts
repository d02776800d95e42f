import { type Cell, quoted } from './cell.ts';

/** One thing wrong in a table, at a place a person can find. */
export interface Fault {
  readonly table: string;
  /** Row in the table, its header being row 1; undefined when the whole table is meant. */
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

/** Collects every fault and remark of a reading, so that all are reported together. */
export class FaultLog {
  readonly faults: Fault[] = [];
  readonly remarks: Remark[] = [];
  private currency: string | undefined;

  fault(
    table: string,
    place: { row?: number; rowName?: string; column?: string },
    got: Cell,
    expected: string,
  ): void {
    const { row, rowName = '', column = '' } = place;
    this.faults.push({ table, row, rowName, column, got: quoted(got), expected });
  }

  remark(table: string, text: string): void {
    this.remarks.push({ table, text });
  }

  /** All prices of one workbook are in one currency: the first named decides. */
  agreesOnCurrency(code: string): boolean {
    this.currency ??= code;
    return this.currency === code;
  }

  get currencyCode(): string | undefined {
    return this.currency;
  }
}

/** A fault in one line: `components, row 7 (Larch, radiator), weight: got "12,5", expected …`. */
export function faultText({ table, row, rowName, column, got, expected }: Fault): string {
  const where = [
    table,
    ...(row === undefined ? [] : [`row ${row}${rowName ? ` (${rowName})` : ''}`]),
    ...(column ? [column] : []),
  ];
  return `${where.join(', ')}: got ${got}, expected ${expected}`;
}
