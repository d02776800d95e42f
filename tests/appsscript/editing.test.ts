/** One weight is changed in its cell: payload, CG and findings follow as worked out by hand. */
import { expect, test } from 'vitest';
import { openLocalWorkbook } from '../../src/local/localWorkbook.ts';
import { sample } from '../sample.ts';

const godwit = sample('godwit');

test('40 lb more in Larch’s exhaust blanket', async () => {
  const workbook = await openLocalWorkbook(godwit);
  const row = (label: string) =>
    workbook.block('PACKAGE_COMPARISON').find(([name]) => String(name).trim() === label) ?? [];
  const larch = workbook.block('PACKAGE_COMPARISON')[0]?.indexOf('Larch') as number;
  const components = workbook.values('Components');
  const at = components.findIndex(
    ([name, part]) => name === 'Larch' && part === 'exhaust blanket and heat shields',
  );
  const weightColumn = (components[2] ?? []).indexOf('weight');
  expect(components[at]?.[weightColumn]).toBe(4.4);
  const before = {
    empty: Number(row('empty weight, nominal')[larch]),
    cg: Number(row('empty CG, aft of datum')[larch]),
    payload: Number(row('payload, full fuel')[larch]),
    moment: Number(row('moment ahead of firewall')[larch]),
  };
  // The blanket sits 19 in ahead of the firewall, which is 60 in aft of the datum
  const firewall = Number(godwit.airframe?.find(([name]) => name === 'firewall arm')?.[1]);
  const arm = firewall - Number(components[at]?.[(components[2] ?? []).indexOf('arm')]);
  expect(arm).toBe(41);
  const weight = before.empty + 40;
  const cg = (before.empty * before.cg + 40 * arm) / weight;

  workbook.setCell('Components', `${String.fromCharCode(65 + weightColumn)}${at + 1}`, 44.4);

  expect(row('empty weight, nominal')[larch]).toBeCloseTo(weight, 1);
  expect(row('payload, full fuel')[larch]).toBeCloseTo(before.payload - 40, 0);
  // both CGs are shown to 0.1 in
  expect(Math.abs(Number(row('empty CG, aft of datum')[larch]) - cg)).toBeLessThanOrEqual(0.1 + 1e-9);
  expect(row('powerplant, installed')[larch]).toBe(478); // 438 lb before
  // 40 lb × 19 in more on the firewall, beyond its 10,650 lb·in; both moments are shown to 10
  const moment = Number(row('moment ahead of firewall')[larch]);
  expect(Math.abs(moment - before.moment - 760)).toBeLessThanOrEqual(10);
  const findings = workbook.block('INSTALLATION_FINDINGS');
  const stop = findings.find(
    ([, name, subject]) => name === 'Larch' && subject === 'moment ahead of firewall',
  );
  expect(stop?.[0]).toBe('■ Stop');
  expect(stop?.[3]).toBe(moment);
  expect(stop?.[4]).toBe(10650);
});
