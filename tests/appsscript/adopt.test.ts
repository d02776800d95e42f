/** What was weighed, flown and quoted, taken into the tables by the menu of the pushed script, and out again. */
import { beforeEach, describe, expect, test } from 'vitest';
import { zoneToA1 } from '../../src/local/host/a1.ts';
import type { LocalHost } from '../../src/local/host/localHost.ts';
import { scriptRealm } from '../../src/local/host/node/scriptRealm.ts';
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { LocalWorkbook, localHost, openLocalWorkbook } from '../../src/local/localWorkbook.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';
import { stopped } from './told.ts';

const patience = 600_000; // ms: every call of an action is tried in turn
const { host: laidOut } = await openLocalWorkbook(sample('godwit-as-built'));
const saved = snapshotOf(laidOut.workbook);

let host: LocalHost;
let workbook: LocalWorkbook;
const open = async () => {
  host = await localHost(saved);
  workbook = new LocalWorkbook(host);
};
beforeEach(open);

const inputSheets = [
  'Airframe',
  'Seats and tanks',
  'Packages',
  'Engine data',
  'Cooling data',
  'Weighing data',
];
const inputs = () =>
  inputSheets.map((name) => workbook.values(name).map((line) => line.map((cell) => cell || '')));
/** What every table says, whatever room it has. */
type Tables = Record<string, Cell[][]>;
const tables = (): Tables => {
  const { getters } = host.workbook.model;
  const ranges = getters
    .getNamedRanges()
    .map(({ name, range }) => [
      name,
      (host.values(`${getters.getSheetName(range.sheetId)}!${zoneToA1(range.zone)}`) as Cell[][]).filter(
        (line) => line.some((cell) => cell !== '' && cell !== false),
      ),
    ]);
  return Object.fromEntries(ranges);
};
/** Values of a laid out table by the label in its first column: value, unit. */
const attribute = (sheet: string, label: string): Cell[] =>
  workbook
    .values(sheet)
    .find(([cell]) => cell === label)
    ?.slice(1, 3) ?? [];
const compared = (label: string, occurrence = 0) =>
  Number(workbook.block('PACKAGE_COMPARISON').filter(([cell]) => cell === label)[occurrence]?.[2]);
const states = () =>
  host.workbook.sheetIdNamed('Former values') !== undefined
    ? workbook
        .values('Former values')
        .slice(1)
        .map((line) => line[2])
    : [];
const act = (name: string, ...answers: ('OK' | 'CANCEL')[]) => {
  host.workbook.ui.answers.push(...answers.map((button) => ({ button })));
  host.run(name);
  host.workbook.ui.answers.length = 0;
};
const lastAsked = () => host.workbook.ui.alerts.at(-1)?.prompt ?? '';

describe('a weighing', () => {
  // By hand: weighings 1,425.30 and 1,425.54 lb, 140,726.4 and 140,756.6 lb·in; then 5.6 lb at 52 and 0.6 lb at 128
  const weight = 1425.42 + 5.6 + 0.6;
  const cg = (140_741.5 + 5.6 * 52 + 0.6 * 128) / weight;

  test('asks in words with numbers and units, and does nothing where that is declined', () => {
    const before = inputs();
    act('adoptWeighing', 'CANCEL');
    expect(lastAsked()).toContain('airframe, empty weight: 934 lb → 1431.62 lb');
    expect(lastAsked()).toContain('payload with full tanks, as stated: 866 → 836 lb');
    expect(inputs()).toEqual(before);
    expect(states()).toEqual([]);
  });

  test('the comparison then reckons with it, and is as before when it is put back', () => {
    const before = inputs();
    const block = workbook.block('PACKAGE_COMPARISON');
    const payload = compared('payload, full fuel');
    act('adoptWeighing', 'OK');
    expect(compared('empty weight, nominal')).toBeCloseTo(weight, 1);
    expect(compared('empty weight, expected')).toBeCloseTo(weight, 1);
    expect(compared('  known to ±')).toBeCloseTo(Math.sqrt(3), 1); // three scales of ±1 lb
    expect(compared('empty CG, aft of datum')).toBeCloseTo(cg, 1);
    expect(payload - compared('payload, full fuel')).toBeCloseTo(weight - 1402, 0); // the tables added up to 1,402.0
    expect(attribute('Airframe', 'empty weight')[1]).toBe('lb');
    act('adoptWeighing');
    expect(lastAsked()).toContain('the tables hold it already');
    expect(
      workbook
        .block('WEIGHING_CHECK')
        .map(([cell]) => String(cell))
        .filter((line) => line.startsWith('The airframe table holds this weighing')),
    ).toHaveLength(1);
    act('putBackAdopted', 'OK');
    expect(inputs()).toEqual(before);
    expect(workbook.block('PACKAGE_COMPARISON')).toEqual(block);
    expect(states()).toEqual(['put back']);
  });

  test('goes into the units that stand in the table', () => {
    const row = workbook.values('Airframe').findIndex(([cell]) => cell === 'empty weight') + 1;
    workbook.setCell('Airframe', `B${row}`, 934 * 0.45359237);
    workbook.setCell('Airframe', `C${row}`, 'kg');
    act('adoptWeighing', 'OK');
    expect(attribute('Airframe', 'empty weight')[0]).toBeCloseTo(weight * 0.45359237, 2);
    expect(attribute('Airframe', 'empty weight')[1]).toBe('kg');
    expect(compared('empty weight, nominal')).toBeCloseTo(weight, 1);
  });

  test('a formula that stood there is a formula again, and typed text is text', () => {
    const at = (label: string) => workbook.values('Airframe').findIndex(([cell]) => cell === label) + 1;
    workbook.setCell('Airframe', `B${at('empty weight')}`, '=900+34');
    workbook.setCell('Airframe', `D${at('empty weight')}`, "'=1+1");
    const formula = () =>
      host.workbook.model.getters.getCellText(cellAt('B', at('empty weight')), { showFormula: true });
    const cellAt = (column: string, row: number) => ({
      sheetId: host.workbook.sheetIdNamed('Airframe') as string,
      col: column.charCodeAt(0) - 65,
      row: row - 1,
    });
    expect(formula()).toBe('=900+34');
    act('adoptWeighing', 'OK');
    expect(formula()).toBe('1431.62');
    act('putBackAdopted', 'OK');
    expect(formula()).toBe('=900+34');
    expect(workbook.values('Airframe')[at('empty weight') - 1]?.[3]).toBe('=1+1');
  });

  test('a table that was changed since is left alone, and it is said', () => {
    act('adoptWeighing', 'OK');
    const row = workbook.values('Airframe').findIndex(([cell]) => cell === 'empty weight') + 1;
    workbook.setCell('Airframe', `B${row}`, 1440);
    const before = inputs();
    act('putBackAdopted', 'OK');
    expect(lastAsked()).toContain('1 cell was changed since');
    expect(inputs()).toEqual(before);
  });

  test('a record that somebody changed is not put back from', () => {
    act('adoptWeighing', 'OK');
    const before = inputs();
    const record = String(workbook.values('Former values')[1]?.[5]);
    workbook.setCell('Former values', 'F2', `'${record.replace('934', '1')}`);
    act('putBackAdopted', 'OK');
    expect(lastAsked()).toContain('Row 2 of the sheet "Former values" was changed');
    expect(inputs()).toEqual(before);
  });

  test('without a weighing, and with faults, it says so', async () => {
    const { host: bare } = await openLocalWorkbook(sample('minimal'));
    bare.run('adoptWeighing');
    expect(bare.workbook.ui.alerts.at(-1)?.prompt).toContain('no weighing that counts');
    const row = workbook.values('Airframe').findIndex(([cell]) => cell === 'empty weight') + 1;
    workbook.setCell('Airframe', `B${row}`, "'heavy");
    act('adoptWeighing');
    expect(lastAsked()).toMatch(/^Correct the tables first:\nairframe.*got "heavy"/);
  });
});

describe('measured results', () => {
  test('go into every table they belong to, change the comparison, and come out again', () => {
    const before = inputs();
    const block = workbook.block('PACKAGE_COMPARISON');
    const lean = compared('fuel flow, 75 % lean');
    act('adoptResults', 'OK');
    // Measured over predicted at 139 and 111 hp lean: 10.29 and 8.27 US gal/h, over power × BSFC / 6.02 lb/US gal
    const factor = (10.29 / ((139 * 0.43) / 6.02) + 8.27 / ((111 * 0.4325) / 6.02)) / 2;
    expect(compared('fuel flow, 75 % lean') / lean).toBeCloseTo(factor, 2);
    const seats = workbook.values('Seats and tanks').flat();
    expect(seats).toContain(2.4);
    // Stalls by hand: C_L = 2 W / (ρ₀ V² S), 2,185 lb at 47.5 kt on 150 ft²: 1.908
    const [lift] = attribute('Airframe', 'CLmax landing');
    expect(lift).toBeCloseTo((2 * 2185 * 4.4482216) / (1.225 * (47.5 * 0.514444) ** 2 * 150 * 0.09290304), 3);
    // The flights themselves: 10 of them, and the roll
    const flown = workbook
      .values('Airframe')
      .flat()
      .filter((cell) => /, 2026-0\d-\d\d$/.test(String(cell)));
    expect(flown).toHaveLength(11);
    expect(compared('level, up to 75 %, 8,000 ft')).toBeLessThan(
      Number(block.find(([cell]) => cell === 'level, up to 75 %, 8,000 ft')?.[2]),
    );
    act('adoptResults');
    expect(lastAsked()).toContain('the tables hold it already');
    act('putBackAdopted', 'OK');
    expect(inputs()).toEqual(before);
    expect(workbook.block('PACKAGE_COMPARISON')).toEqual(block);
  });

  test('the figures after are those that the cards foretell', () => {
    const figure = (label: string) =>
      workbook.block('FLIGHT_TEST_CARDS').find(([cell]) => cell === label)?.[2];
    const climb = figure('rate of climb, sea level');
    const roll = figure('ground roll at the mission’s field');
    act('adoptResults', 'OK');
    expect(compared('climb, sea level')).toBe(climb);
    expect(figure('ground roll at the mission’s field')).toBe(roll);
  });

  test('the last thing taken in comes out first', () => {
    const before = inputs();
    act('adoptWeighing', 'OK');
    const between = inputs();
    act('adoptResults', 'OK');
    expect(states()).toEqual(['taken in', 'taken in']);
    act('putBackAdopted', 'OK');
    expect(inputs()).toEqual(between);
    act('putBackAdopted', 'OK');
    expect(inputs()).toEqual(before);
    act('putBackAdopted');
    expect(lastAsked()).toContain('Nothing is taken in');
  });

  test('laid out again, all of it stays', () => {
    act('adoptResults', 'OK');
    const block = workbook.block('PACKAGE_COMPARISON');
    expect(host.run('layOutTables_', {})).toEqual([]);
    expect(workbook.block('PACKAGE_COMPARISON')).toEqual(block);
    act('putBackAdopted', 'OK');
    expect(states()).toEqual(['put back']);
  });
});

describe('the cards', () => {
  test('are shown in a dialog to print, with the loadings of the weighed aircraft once it is taken in', () => {
    host.run('printTestCards');
    const page = () => host.workbook.ui.dialogs.at(-1)?.page.content ?? '';
    expect(host.workbook.ui.dialogs.at(-1)?.title).toBe('Flight-test cards');
    const printed = () => JSON.parse(/id="printed-data">(.*?)<\/script>/s.exec(page())?.[1] ?? '');
    const cards = printed().groups.flatMap((group: { cards: unknown[] }) => group.cards);
    expect(cards).toHaveLength(14);
    expect(printed().words.join(' ')).toContain('PREDICTED');
    act('adoptWeighing', 'OK');
    host.run('printTestCards');
    expect(printed().words.join(' ')).toContain('1,431.6 lb at 98.6 in, as weighed');
  });

  test('with faults in the tables it says so', () => {
    const row = workbook.values('Airframe').findIndex(([cell]) => cell === 'wing area') + 1;
    workbook.setCell('Airframe', `B${row}`, "'much");
    host.run('printTestCards');
    expect(host.workbook.ui.dialogs).toHaveLength(0);
    expect(lastAsked()).toContain('got "much"');
  });
});

describe('an issued quote', () => {
  const answered = (text: string) => host.workbook.ui.answers.push({ button: 'OK', text });

  test('its own figures go into the as quoted table, in the units that stand there', () => {
    act('takeQuoteIn');
    expect(lastAsked()).toContain('No quote was issued');
    host.runFromPanel('setQuotedPackage', 'Rowan');
    const { number } = host.runFromPanel('issueQuote') as { number: number };
    answered('q-1');
    act('takeQuoteIn', 'OK');
    const copy = workbook.values('Q-0001 A');
    const promise = (label: string, column: number) =>
      copy.find(([cell]) => new RegExp(label).test(String(cell)))?.[column];
    const row = (label: string) =>
      workbook
        .values('Weighing data')
        .flatMap((line) =>
          line.flatMap((cell, at) => (cell === label ? [line.slice(at + 1, at + 3)] : [])),
        )[0];
    expect(number).toBe(1);
    expect(row('quote')?.[0]).toBe('Q-0001 A');
    expect(row('empty weight expected')).toEqual([promise('^Empty weight$', 2), 'lb']);
    expect(row('payload to be counted on, full tanks')?.[0]).toBeCloseTo(
      Number(promise('^Payload with full tanks, ', 3)),
      3,
    );
    expect(workbook.block('WEIGHING_CHECK').map(([cell]) => cell)).toContain('Against quote Q-0001 A');
    act('putBackAdopted', 'OK');
    expect(row('quote')?.[0]).toBe('Q-0007 A');
  });

  test('one that there is not', () => {
    host.runFromPanel('setQuotedPackage', 'Rowan');
    host.runFromPanel('issueQuote');
    answered('8');
    act('takeQuoteIn');
    expect(lastAsked()).toBe('There is no quote "8" in the register.');
  });
});

/** The workbook without its computed sheets: nothing has to be computed anew after every call. */
function withoutBlocks() {
  const evaluate = scriptRealm(`function strip(keep) {
    const book = SpreadsheetApp.getActiveSpreadsheet();
    for (const sheet of book.getSheets()) if (!keep.includes(sheet.getName())) book.deleteSheet(sheet);
  }`);
  const own = host.workbook.scope;
  host.loadScript({ evaluate, functions: [] });
  host.run('strip', [...inputSheets, 'Components', 'Equipment', 'Rates', 'Mission', 'Test results']);
  host.workbook.scope = own;
  return snapshotOf(host.workbook);
}

describe('whatever call fails', () => {
  const attempt = (name: string, call: number) => {
    host.workbook.calls.reset();
    host.workbook.calls.failAt(call);
    const alerts = host.workbook.ui.alerts.length;
    try {
      act(name, 'OK');
    } catch (error) {
      expect((error as Error).message).toMatch(stopped);
    }
    const failure = host.workbook.ui.alerts
      .slice(alerts)
      .find(({ prompt }) => prompt.includes('Service failed'));
    if (failure !== undefined) expect(failure.prompt).toMatch(stopped);
    host.workbook.calls.reset();
  };
  /** The calls of an action; what comes before its first write only reads. */
  const callsOf = (name: string) => {
    host.workbook.calls.reset();
    act(name, 'OK');
    const names = [...host.workbook.calls.names];
    host.workbook.calls.reset();
    const firstWrite = names.findIndex((each) => /\.(set|insert)(?!ActiveS)/.test(each)) + 1;
    return { count: names.length, firstWrite };
  };
  const reopen = async (snapshot: typeof saved) => {
    host = await localHost(snapshot);
    workbook = new LocalWorkbook(host);
  };

  /** Every table is as it was or as it should be, never half of each. */
  const expectWhole = (call: number, before: Tables, after: Tables) => {
    for (const [table, cells] of Object.entries(tables()))
      expect([call, table, [before[table], after[table]]]).toEqual([
        call,
        table,
        expect.arrayContaining([cells]),
      ]);
  };

  test('a weighing: all of it or nothing; once more makes it good, and it can be put back', {
    timeout: patience,
  }, async () => {
    const light = withoutBlocks();
    const before = tables();
    const { count, firstWrite } = callsOf('adoptWeighing');
    const after = tables();
    expect(firstWrite).toBeGreaterThan(40);
    await reopen(light);
    for (let call = 1; call < firstWrite; call++) {
      attempt('adoptWeighing', call);
      // A lock that cannot be given back is no failure: all of it is done
      const isDone = states().length > 0;
      expect([call, tables()]).toEqual([call, isDone ? after : before]);
      if (isDone) await reopen(light);
    }
    for (let call = firstWrite; call <= count; call++) {
      await reopen(light);
      attempt('adoptWeighing', call);
      expectWhole(call, before, after);
      act('adoptWeighing', 'OK');
      expect([call, tables()]).toEqual([call, after]);
      act('putBackAdopted', 'OK');
      expect([call, tables()]).toEqual([call, before]);
    }
  });

  test('measured results, of many tables: each is whole, and all can be put back or taken in again', {
    timeout: patience,
  }, async () => {
    await reopen(withoutBlocks());
    const before = tables();
    act('adoptResults', 'OK');
    const after = tables();
    act('putBackAdopted', 'OK');
    const { count, firstWrite } = callsOf('adoptResults');
    act('putBackAdopted', 'OK');
    for (let call = firstWrite; call <= count; call++) {
      attempt('adoptResults', call);
      expectWhole(call, before, after);
      if (call % 6 === 0) {
        act('adoptResults', 'OK');
        expect([call, tables()]).toEqual([call, after]);
      }
      act('putBackAdopted', 'OK');
      expect([call, tables()]).toEqual([call, before]);
    }
  });

  test('putting back: once more makes it good', { timeout: patience }, async () => {
    await reopen(withoutBlocks());
    const before = tables();
    act('adoptResults', 'OK');
    const adopted = snapshotOf(host.workbook);
    const { count, firstWrite } = callsOf('putBackAdopted');
    expect(tables()).toEqual(before);
    for (let call = firstWrite; call <= count; call++) {
      await reopen(adopted);
      attempt('putBackAdopted', call);
      act('putBackAdopted', 'OK');
      expect([call, tables()]).toEqual([call, before]);
      expect(states()).toEqual(['put back']);
    }
  });

  test('while another has the lock nothing is done', () => {
    const before = inputs();
    host.workbook.lock.isHeldElsewhere = true;
    act('adoptWeighing', 'OK');
    expect(lastAsked()).toContain('try again in a moment');
    expect(inputs()).toEqual(before);
  });

  test('tables that change while the question stands are not overwritten', () => {
    host.workbook.ui.person = () => {
      const row = workbook.values('Airframe').findIndex(([cell]) => cell === 'empty weight') + 1;
      workbook.setCell('Airframe', `B${row}`, 950);
      return { button: 'OK' };
    };
    host.run('adoptWeighing');
    expect(lastAsked()).toContain('nothing was written');
    expect(attribute('Airframe', 'empty weight')[0]).toBe(950);
    expect(states()).toEqual([]);
  });
});
