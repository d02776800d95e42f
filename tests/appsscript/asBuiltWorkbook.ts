/** The sample that was built, weighed and flown, in a workbook of its own for every test, and what is asked of it. */

import { zoneToA1 } from '../../src/local/host/a1.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { snapshotOf, type WorkbookSnapshot } from '../../src/local/host/snapshot.ts';
import { LocalWorkbook, localHost, openLocalWorkbook } from '../../src/local/localWorkbook.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';

export const inputSheets = [
  'Airframe',
  'Seats and tanks',
  'Packages',
  'Engine data',
  'Cooling data',
  'Weighing data',
];
const { host: laidOut } = await openLocalWorkbook(sample('godwit-as-built'));
const saved = snapshotOf(laidOut.workbook);

/** What every table says, whatever room it has. */
export type Tables = Record<string, Cell[][]>;

export class AsBuiltWorkbook {
  readonly host: LocalHost;
  readonly workbook: LocalWorkbook;

  constructor(host: LocalHost) {
    this.host = host;
    this.workbook = new LocalWorkbook(host);
  }

  /** Runs an action of the menu; its questions are answered in turn. */
  act(name: string, ...answers: ('OK' | 'CANCEL')[]): void {
    const { ui } = this.host.workbook;
    ui.answers.push(...answers.map((button) => ({ button })));
    this.host.run(name);
    ui.answers.length = 0;
  }

  lastAsked(): string {
    return this.host.workbook.ui.alerts.at(-1)?.prompt ?? '';
  }

  inputs(): Cell[][][] {
    return inputSheets.map((name) =>
      this.workbook.values(name).map((line) => line.map((cell) => cell || '')),
    );
  }

  tables(): Tables {
    const { getters } = this.host.workbook.model;
    const ranges = getters
      .getNamedRanges()
      .map(({ name, range }) => [
        name,
        (
          this.host.values(`${getters.getSheetName(range.sheetId)}!${zoneToA1(range.zone)}`) as Cell[][]
        ).filter((line) => line.some((cell) => cell !== '' && cell !== false)),
      ]);
    return Object.fromEntries(ranges);
  }

  /** Row of the airframe's sheet with an attribute, counted from 1. */
  airframeRow(label: string): number {
    return this.workbook.values('Airframe').findIndex(([cell]) => cell === label) + 1;
  }

  /** Value and unit of an attribute of the airframe. */
  airframe(label: string): Cell[] {
    return this.workbook.values('Airframe')[this.airframeRow(label) - 1]?.slice(1, 3) ?? [];
  }

  /** The number in a row of the comparison, of several with one label that of the first. */
  compared(label: string): number {
    return Number(this.workbook.block('PACKAGE_COMPARISON').find(([cell]) => cell === label)?.[2]);
  }

  /** What has become of each thing that was taken in. */
  states(): Cell[] {
    if (this.host.workbook.sheetIdNamed('Former values') === undefined) return [];
    return this.workbook
      .values('Former values')
      .slice(1)
      .map((line) => line[2]);
  }
}

export const openAsBuilt = async (snapshot: WorkbookSnapshot = saved) =>
  new AsBuiltWorkbook(await localHost(snapshot));
