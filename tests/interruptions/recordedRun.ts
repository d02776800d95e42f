import { deflateSync, inflateSync } from 'node:zlib';
import { snapshotOf, type WorkbookSnapshot } from '../../src/local/host/snapshot.ts';
import { open, type Run } from '../appsscript/interruption.ts';
import { workbookState } from '../appsscript/workbookState.ts';

/** Calls that change no workbook. */
const readsOnly = /Builder\.|\.(get|new|copy)/;
const unusedNumber = 1_000_000; // beyond those of sheets and rules

/** A run as it went: what every call found and gave. Calls count from 1. */
export interface RecordedRun {
  readonly names: readonly string[];
  readonly expected: unknown;
  /** True where a call found the workbook as the call before it did. */
  readonly isFoundAsBefore: (call: number) => boolean;
  readonly foundBy: (call: number) => WorkbookSnapshot;
  /**
   * Goes through the run again up to a call that fails, every call giving what it gave.
   * @returns the calls that were made, and the failure
   */
  readonly failAt: (call: number) => { readonly made: readonly string[]; readonly failure: string };
}

export async function record(run: Run): Promise<RecordedRun> {
  const host = await open(run);
  host.runFromPanel('panelState'); // the script reads its library once
  const { calls } = host.workbook;
  calls.reset();
  const perform = calls.perform.bind(calls);
  const workbooks: Buffer[] = [];
  const foundAt: number[] = [];
  const given: unknown[] = [];
  let last = '';
  const keepWorkbook = () => {
    const text = JSON.stringify({ ...snapshotOf(host.workbook), nextNumber: unusedNumber });
    if (text !== last) workbooks.push(deflateSync(text, { level: 1 }));
    last = text;
  };
  keepWorkbook();
  calls.perform = <T>(name: string, call: () => T): T => {
    const index = calls.count;
    foundAt[index] = workbooks.length - 1;
    const result = perform(name, call);
    given[index] = result;
    if (!readsOnly.test(name)) keepWorkbook();
    return result;
  };
  host.run('layOutTables_', run.grids);
  const names = [...calls.names];
  const expected = workbookState(host);
  calls.perform = <T>(name: string) => perform(name, () => given[calls.count - 1] as T);

  return {
    names,
    expected,
    isFoundAsBefore: (call) => foundAt[call - 1] === foundAt[call - 2],
    foundBy: (call) => JSON.parse(inflateSync(workbooks[foundAt[call - 1] as number] as Buffer).toString()),
    failAt(call) {
      calls.reset();
      calls.failAt(call);
      try {
        host.run('layOutTables_', run.grids);
      } catch (error) {
        return { made: [...calls.names], failure: (error as Error).message };
      }
      return { made: [...calls.names], failure: '' };
    },
  };
}
