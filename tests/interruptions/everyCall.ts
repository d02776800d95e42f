import { afterAll, expect, test } from 'vitest';
import { open, type Run } from '../appsscript/interruption.ts';
import { workbookState } from '../appsscript/workbookState.ts';
import { record } from './recordedRun.ts';

const patience = 300_000; // ms
const passes = 8;

/**
 * A test for every call of a run. The call fails, and no other is made after it: what the call found is what the run
 * leaves. That workbook is laid out again, once for all calls in a row that find the same. In passes over the whole, so
 * that a command that is stopped has been everywhere.
 */
export async function failAtEveryCall(what: string, run: Run): Promise<void> {
  const { names, expected, isFoundAsBefore, foundBy, failAt } = await record(run);
  const calls = names.map((_, index) => index + 1);
  const inPasses = Array.from({ length: passes }, (_, pass) =>
    calls.filter((call) => call % passes === pass),
  );
  let done = 0;
  let repaired = 0;
  const tellProgress = () =>
    console.log(`${what}: ${done} of ${names.length} calls failed, ${repaired} workbooks repaired`);
  afterAll(tellProgress);
  test.each(inPasses.flat())(`${what}: call %i of ${names.length}`, { timeout: patience }, async (call) => {
    if (++done % 100 === 0) tellProgress();
    const { made, failure } = failAt(call);
    expect(failure).toContain(`Service failed at call ${call}`);
    expect(made).toEqual(names.slice(0, call));
    if (isFoundAsBefore(call)) return;
    const host = await open({ ...run, from: foundBy(call) });
    host.run('layOutTables_', run.grids);
    const state = workbookState(host);
    try {
      expect(state).toEqual(expected);
      repaired++;
    } catch (error) {
      console.log(`${what}: not repaired after call ${call}, ${names[call - 1]}`);
      throw error;
    }
  });
}
