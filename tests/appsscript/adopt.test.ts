/** What was weighed and flown, taken into the tables by the menu of the pushed script, and out again. */
import { beforeEach, describe, expect, test } from 'vitest';
import { openLocalWorkbook } from '../../src/local/localWorkbook.ts';
import { sample } from '../sample.ts';
import { type AsBuiltWorkbook, openAsBuilt } from './asBuiltWorkbook.ts';
import { sheetId } from './sheetsByHand.ts';

let built: AsBuiltWorkbook;
beforeEach(async () => {
  built = await openAsBuilt();
});

describe('a weighing', () => {
  // By hand: weighings 1,425.30 and 1,425.54 lb, 140,726.4 and 140,756.6 lb·in; then 5.6 lb at 52 and 0.6 lb at 128
  const weight = 1425.42 + 5.6 + 0.6;
  const cg = (140_741.5 + 5.6 * 52 + 0.6 * 128) / weight;

  test('asks in words with numbers and units, and does nothing where that is declined', () => {
    const before = built.inputs();
    built.act('adoptWeighing', 'CANCEL');
    expect(built.lastAsked()).toContain('airframe, empty weight: 934 lb → 1431.62 lb');
    // 2,520 lb less 252 lb of fuel and 1,402.0 lb as the tables add up, or 1,431.6 lb as weighed
    expect(built.lastAsked()).toContain('payload with full tanks, as stated: 866 → 836 lb');
    expect(built.inputs()).toEqual(before);
    expect(built.states()).toEqual([]);
  });

  test('the comparison then reckons with it, and is as before when it is put back', () => {
    const before = built.inputs();
    const block = built.workbook.block('PACKAGE_COMPARISON');
    const payload = built.compared('payload, full fuel');
    built.act('adoptWeighing', 'OK');
    expect(built.compared('empty weight, nominal')).toBeCloseTo(weight, 1);
    expect(built.compared('empty weight, expected')).toBeCloseTo(weight, 1);
    expect(built.compared('  known to ±')).toBeCloseTo(Math.sqrt(3), 1); // three scales of ±1 lb
    expect(built.compared('empty CG, aft of datum')).toBeCloseTo(cg, 1);
    expect(payload - built.compared('payload, full fuel')).toBe(866 - 836);
    expect(built.airframe('empty weight')[1]).toBe('lb');
    built.act('adoptWeighing');
    expect(built.lastAsked()).toContain('the tables hold it already');
    expect(
      built.workbook
        .block('WEIGHING_CHECK')
        .map(([cell]) => String(cell))
        .filter((line) => line.startsWith('The airframe table holds this weighing')),
    ).toHaveLength(1);
    built.act('putBackAdopted', 'OK');
    expect(built.inputs()).toEqual(before);
    expect(built.workbook.block('PACKAGE_COMPARISON')).toEqual(block);
    expect(built.states()).toEqual(['put back']);
  });

  test('goes into the units that stand in the table', () => {
    const row = built.airframeRow('empty weight');
    built.workbook.setCell('Airframe', `B${row}`, 934 * 0.45359237);
    built.workbook.setCell('Airframe', `C${row}`, 'kg');
    built.act('adoptWeighing', 'OK');
    expect(built.airframe('empty weight')[0]).toBeCloseTo(weight * 0.45359237, 2);
    expect(built.airframe('empty weight')[1]).toBe('kg');
    expect(built.compared('empty weight, nominal')).toBeCloseTo(weight, 1);
  });

  test('a formula that stood there is a formula again, and typed text is text', () => {
    const row = built.airframeRow('empty weight');
    built.workbook.setCell('Airframe', `B${row}`, '=900+34');
    built.workbook.setCell('Airframe', `D${row}`, "'=1+1");
    const cell = { sheetId: sheetId(built.host, 'Airframe'), col: 1, row: row - 1 };
    const formula = () => built.host.workbook.model.getters.getCellText(cell, { showFormula: true });
    expect(formula()).toBe('=900+34');
    built.act('adoptWeighing', 'OK');
    expect(formula()).toBe('1431.62');
    built.act('putBackAdopted', 'OK');
    expect(formula()).toBe('=900+34');
    expect(built.workbook.values('Airframe')[row - 1]?.[3]).toBe('=1+1');
  });

  test('a table that was changed since is left alone, and it is said', () => {
    built.act('adoptWeighing', 'OK');
    const row = built.airframeRow('empty weight');
    built.workbook.setCell('Airframe', `B${row}`, 1440);
    const before = built.inputs();
    built.act('putBackAdopted', 'OK');
    expect(built.lastAsked()).toContain('1 cell was changed since');
    expect(built.inputs()).toEqual(before);
  });

  test('a record that somebody changed is not put back from', () => {
    built.act('adoptWeighing', 'OK');
    const before = built.inputs();
    const record = String(built.workbook.values('Former values')[1]?.[5]);
    built.workbook.setCell('Former values', 'F2', `'${record.replace('934', '1')}`);
    built.act('putBackAdopted', 'OK');
    expect(built.lastAsked()).toContain('Row 2 of the sheet "Former values" was changed');
    expect(built.inputs()).toEqual(before);
  });

  test('without a weighing, and with faults, it says so', async () => {
    const { host: bare } = await openLocalWorkbook(sample('minimal'));
    bare.run('adoptWeighing');
    expect(bare.workbook.ui.alerts.at(-1)?.prompt).toContain('no weighing that counts');
    const row = built.airframeRow('empty weight');
    built.workbook.setCell('Airframe', `B${row}`, "'heavy");
    built.act('adoptWeighing');
    expect(built.lastAsked()).toMatch(/^Correct the tables first:\nairframe.*got "heavy"/);
  });
});

describe('measured results', () => {
  test('go into every table they belong to, change the comparison, and come out again', () => {
    const before = built.inputs();
    const block = built.workbook.block('PACKAGE_COMPARISON');
    built.act('adoptResults', 'OK');
    // By hand, measured over predicted: rich 15.16 US gal/h at 176 hp over 176 × 0.5/6; lean at 139 and 111 hp. At 111 hp,
    // 60 %, the cubic from 0.438 with slope −0.0016 at 55 % to 0.43 with slope 0 at 65 % is 0.434 − 10/8 × 0.0016 = 0.432
    const bsfc = (mixture: string, power: number) =>
      built.workbook.values('Engine data').find((line) => line[1] === mixture && line[2] === power)?.[3];
    expect(bsfc('rich', 100)).toBeCloseTo((0.5 * 15.16) / ((176 * 0.5) / 6), 5);
    const lean = (10.29 / ((139 * 0.43) / 6) + 8.27 / ((111 * 0.432) / 6)) / 2;
    expect(bsfc('lean', 75)).toBeCloseTo(0.43 * lean, 5);
    // 2.4 US gal measured in climb attitude, 0.4 more than stated: 2.4 lb of the 866 lb of payload
    expect(built.workbook.values('Seats and tanks').flat()).toContain(2.4);
    expect(built.compared('payload, full fuel')).toBe(864);
    // Stalls by hand: C_L = 2 W / (ρ₀ V² S), 2,185 lb at 47.5 kt on 150 ft²: 1.908
    const [lift] = built.airframe('CLmax landing');
    expect(lift).toBeCloseTo((2 * 2185 * 4.4482216) / (1.225 * (47.5 * 0.514444) ** 2 * 150 * 0.09290304), 3);
    // The flights themselves: 10 of them, and the roll
    const flown = built.workbook
      .values('Airframe')
      .flat()
      .filter((cell) => /, 2026-0\d-\d\d$/.test(String(cell)));
    expect(flown).toHaveLength(11);
    // Flown at 8,000 ft and 5 °C: 132.5 kt with 119 hp, 142.1 kt with 139 hp, which is 75 %, lighter than it is here
    const speed = built.compared('level, up to 75 %, 8,000 ft');
    expect(speed).toBeGreaterThan(132.5);
    expect(speed).toBeLessThan(142.1);
    built.act('adoptResults');
    expect(built.lastAsked()).toContain('the tables hold it already');
    built.act('putBackAdopted', 'OK');
    expect(built.inputs()).toEqual(before);
    expect(built.workbook.block('PACKAGE_COMPARISON')).toEqual(block);
  });

  test('the figures after are those that the cards foretell', () => {
    const figure = (label: string) =>
      built.workbook.block('FLIGHT_TEST_CARDS').find(([cell]) => cell === label)?.[2];
    const climb = figure('rate of climb, sea level');
    const roll = figure('ground roll at the mission’s field');
    expect(roll).toEqual(expect.any(Number));
    built.act('adoptResults', 'OK');
    expect(built.compared('climb, sea level')).toBe(climb);
    expect(figure('ground roll at the mission’s field')).toBe(roll);
  });

  test('the last thing taken in comes out first', () => {
    const before = built.inputs();
    built.act('adoptWeighing', 'OK');
    const between = built.inputs();
    built.act('adoptResults', 'OK');
    expect(built.states()).toEqual(['taken in', 'taken in']);
    built.act('putBackAdopted', 'OK');
    expect(built.inputs()).toEqual(between);
    built.act('putBackAdopted', 'OK');
    expect(built.inputs()).toEqual(before);
    built.act('putBackAdopted');
    expect(built.lastAsked()).toContain('Nothing is taken in');
  });

  test('laid out again, all of it stays', () => {
    built.act('adoptResults', 'OK');
    const block = built.workbook.block('PACKAGE_COMPARISON');
    expect(built.host.run('layOutTables_', {})).toEqual([]);
    expect(built.workbook.block('PACKAGE_COMPARISON')).toEqual(block);
    built.act('putBackAdopted', 'OK');
    expect(built.states()).toEqual(['put back']);
  });
});

describe('somebody else at the same time', () => {
  test('while another has the lock nothing is done', () => {
    const before = built.inputs();
    built.host.workbook.lock.isHeldElsewhere = true;
    built.act('adoptWeighing', 'OK');
    expect(built.lastAsked()).toContain('try again in a moment');
    expect(built.inputs()).toEqual(before);
  });

  test('tables that change while the question stands are not overwritten', () => {
    built.host.workbook.ui.person = () => {
      const row = built.airframeRow('empty weight');
      built.workbook.setCell('Airframe', `B${row}`, 950);
      return { button: 'OK' };
    };
    built.host.run('adoptWeighing');
    expect(built.lastAsked()).toContain('nothing was written');
    expect(built.airframe('empty weight')[0]).toBe(950);
    expect(built.states()).toEqual([]);
  });
});
