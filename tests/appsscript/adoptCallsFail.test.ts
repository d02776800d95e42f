/** Calls to Google fail while a weighing and measured results are taken into the tables, and put back. */
import { beforeEach, expect, test, vi } from 'vitest';
import { snapshotOf, type WorkbookSnapshot } from '../../src/local/host/snapshot.ts';
import { type AsBuiltWorkbook, inputSheets, openAsBuilt, type Tables } from './asBuiltWorkbook.ts';
import { runOwnScript } from './ownScript.ts';
import { stopped } from './told.ts';

vi.setConfig({ testTimeout: 600_000 }); // every call of an action is tried in turn

let built: AsBuiltWorkbook;
beforeEach(async () => {
  built = await openAsBuilt();
});

const attempt = (name: string, call: number) => {
  built.host.workbook.calls.reset();
  built.host.workbook.calls.failAt(call);
  const alerts = built.host.workbook.ui.alerts.length;
  try {
    built.act(name, 'OK');
  } catch (error) {
    expect((error as Error).message).toMatch(stopped);
  }
  const failure = built.host.workbook.ui.alerts
    .slice(alerts)
    .find(({ prompt }) => prompt.includes('Service failed'));
  if (failure !== undefined) expect(failure.prompt).toMatch(stopped);
  built.host.workbook.calls.reset();
};
/** The calls of an action; what comes before its first write only reads. */
const callsOf = (name: string) => {
  built.host.workbook.calls.reset();
  built.act(name, 'OK');
  const names = [...built.host.workbook.calls.names];
  built.host.workbook.calls.reset();
  const firstWrite = names.findIndex((each) => /\.(set|insert)(?!ActiveS)/.test(each)) + 1;
  return { count: names.length, firstWrite };
};
const reopen = async (snapshot: WorkbookSnapshot) => {
  built = await openAsBuilt(snapshot);
};
/** The workbook without its computed sheets: nothing has to be computed anew after every call. */
const withoutBlocks = () => {
  const names = [...inputSheets, 'Components', 'Equipment', 'Rates', 'Mission', 'Test results'];
  const isOther = `!${JSON.stringify(names)}.includes(sheet.getName())`;
  runOwnScript(built.host, `for (const sheet of book.getSheets()) if (${isOther}) book.deleteSheet(sheet);`);
  return snapshotOf(built.host.workbook);
};

/** Every table is as it was or as it should be, never half of each. */
const expectWhole = (call: number, before: Tables, after: Tables) => {
  for (const [table, cells] of Object.entries(built.tables()))
    expect([call, table, [before[table], after[table]]]).toEqual([
      call,
      table,
      expect.arrayContaining([cells]),
    ]);
};

test('taking a weighing in: all of it or nothing; once more makes it good, and it can be put back', async () => {
  const light = withoutBlocks();
  const before = built.tables();
  const { count, firstWrite } = callsOf('adoptWeighing');
  const after = built.tables();
  expect(firstWrite).toBeGreaterThan(40);
  await reopen(light);
  for (let call = 1; call < firstWrite; call++) {
    attempt('adoptWeighing', call);
    // A lock that cannot be given back is no failure: all of it is done
    const isDone = built.states().length > 0;
    expect([call, built.tables()]).toEqual([call, isDone ? after : before]);
    if (isDone) await reopen(light);
  }
  for (let call = firstWrite; call <= count; call++) {
    await reopen(light);
    attempt('adoptWeighing', call);
    expectWhole(call, before, after);
    built.act('adoptWeighing', 'OK');
    expect([call, built.tables()]).toEqual([call, after]);
    built.act('putBackAdopted', 'OK');
    expect([call, built.tables()]).toEqual([call, before]);
  }
});

test('taking measured results in, which many tables get: each is whole, and all can be put back or taken in again', async () => {
  await reopen(withoutBlocks());
  const before = built.tables();
  built.act('adoptResults', 'OK');
  const after = built.tables();
  built.act('putBackAdopted', 'OK');
  const { count, firstWrite } = callsOf('adoptResults');
  built.act('putBackAdopted', 'OK');
  for (let call = firstWrite; call <= count; call++) {
    attempt('adoptResults', call);
    expectWhole(call, before, after);
    if (call % 6 === 0) {
      built.act('adoptResults', 'OK');
      expect([call, built.tables()]).toEqual([call, after]);
    }
    built.act('putBackAdopted', 'OK');
    expect([call, built.tables()]).toEqual([call, before]);
  }
});

test('putting back: once more makes it good', async () => {
  await reopen(withoutBlocks());
  const before = built.tables();
  built.act('adoptResults', 'OK');
  const adopted = snapshotOf(built.host.workbook);
  const { count, firstWrite } = callsOf('putBackAdopted');
  expect(built.tables()).toEqual(before);
  for (let call = firstWrite; call <= count; call++) {
    await reopen(adopted);
    attempt('putBackAdopted', call);
    built.act('putBackAdopted', 'OK');
    expect([call, built.tables()]).toEqual([call, before]);
    expect(built.states()).toEqual(['put back']);
  }
});
