/**
 * The Godwit adds up to the outline it was made from.
 * Expected values: the outline of the invented aircraft (read), its rounding as the tolerance; margins are those of its
 * simple model, which steps through loadings as `worstMargins` does.
 */
import { describe, expect, test } from 'vitest';
import {
  airframe,
  attribute,
  installed,
  type Mass,
  masses,
  packageValue,
  rows,
  stationRanges,
  sum,
  together,
  worstMargins,
} from './sampleFiles.ts';

describe('Godwit, in lb and in', () => {
  const sample = 'godwit';
  const engines = ['Rowan', 'Larch', 'Hazel', 'Alder'];
  const mainTanks = { arm: 104, usable: 42, unusable: 2 }; // US gal
  const density = (engine: string) => packageValue(sample, 'fuel density', engine);

  test.each([
    ['Rowan', 431, 35.6],
    ['Larch', 438, 36.4],
    ['Hazel', 334, 36.5],
    ['Alder', 508, 34.2],
  ])('%s: %d lb installed at %d in', (engine, weight, arm) => {
    const total = installed(sample, engine);
    expect(Math.abs(total.weight - weight)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(total.arm - arm)).toBeLessThanOrEqual(0.05);
  });

  const bare = () => {
    const complete = { weight: airframe(sample, 'empty weight'), arm: airframe(sample, 'empty CG') };
    const rowan = installed(sample, 'Rowan');
    const unusable = { weight: mainTanks.unusable * density('Rowan'), arm: mainTanks.arm };
    return together([
      complete,
      { ...rowan, weight: -rowan.weight },
      { ...unusable, weight: -unusable.weight },
    ]);
  };

  test('weighed complete with Rowan: 936 lb at 126.5 in without powerplant and unusable fuel', () => {
    expect(attribute(sample, 'airframe', 'weighed with package')).toBe('Rowan');
    expect(bare().weight).toBeCloseTo(936, 6);
    expect(Math.abs(bare().arm - 126.5)).toBeLessThanOrEqual(0.05);
  });

  test('weighed with the equipment that is fitted, none of which has a drag area of its own', () => {
    const equipment = rows(sample, 'equipment');
    const aboard = equipment.filter((row) => row.fitted === 'TRUE' || row.standard === 'TRUE');
    expect(attribute(sample, 'airframe', 'weighed with equipment')).toBe(
      aboard.map((row) => row.item).join(', '),
    );
    expect(aboard.map((row) => Number(row['drag area']))).toEqual(aboard.map(() => 0));
    expect(equipment.length).toBeGreaterThanOrEqual(12);
  });

  test('tanks of the outline', () => {
    const [main, longRange] = rows(sample, 'tanks');
    expect([main?.arm, main?.usable, main?.unusable, main?.fitted]).toEqual(['104', '42', '2', 'TRUE']);
    expect([longRange?.arm, longRange?.usable, longRange?.fitted]).toEqual(['112', '18', 'FALSE']);
  });

  const emptyWith = (engine: string, changes: readonly Mass[] = []) =>
    together([
      bare(),
      installed(sample, engine),
      { weight: mainTanks.unusable * density(engine), arm: mainTanks.arm },
      ...changes,
    ]);

  test.each([
    ['Rowan', 1379, 97.9, 889],
    ['Larch', 1386, 97.8, 882],
    ['Hazel', 1282, 102.8, 986],
    ['Alder', 1457, 94.1, 781],
  ])('%s: %d lb empty at %d in, %d lb with full standard fuel', (engine, weight, arm, payload) => {
    const empty = emptyWith(engine);
    expect(Math.abs(empty.weight - weight)).toBeLessThanOrEqual(0.5);
    // 0.05 from the outline's rounding, 0.05 from that of its airframe and package
    expect(Math.abs(empty.arm - arm)).toBeLessThanOrEqual(0.1);
    const left =
      airframe(sample, 'maximum takeoff weight') - empty.weight - mainTanks.usable * density(engine);
    expect(Math.abs(left - payload)).toBeLessThanOrEqual(0.5);
  });

  const forwardLimit = (weight: number) => (weight <= 2000 ? 97 : 97 + (6 * (weight - 2000)) / 520);
  const margins = (engine: string, changes: readonly Mass[] = []) =>
    worstMargins(
      emptyWith(engine, changes),
      [
        ...stationRanges(sample),
        { arm: mainTanks.arm, minimum: 0, maximum: mainTanks.usable * density(engine) },
      ],
      2520,
      forwardLimit,
      110,
    );

  test('worst margins: Rowan and Larch hold, Hazel goes aft, Alder forward', () => {
    const tolerance = 0.15; // in; two ways of stepping through the loadings
    expect(Math.abs(margins('Rowan').forward - 1.7)).toBeLessThan(tolerance);
    expect(Math.abs(margins('Rowan').aft - 0.2)).toBeLessThan(tolerance);
    expect(Math.abs(margins('Larch').forward - 1.6)).toBeLessThan(tolerance);
    expect(Math.abs(margins('Larch').aft - 0.2)).toBeLessThan(tolerance);
    expect(Math.abs(margins('Hazel').aft + 3.75)).toBeLessThan(tolerance);
    expect(Math.abs(margins('Alder').forward + 1.8)).toBeLessThan(tolerance);
    for (const engine of ['Rowan', 'Larch'])
      expect(Math.min(margins(engine).forward, margins(engine).aft)).toBeGreaterThan(0);
  });

  test('moving the 28 lb battery from 48 to 190 in cures Alder', () => {
    const moving = rows(sample, 'equipment').filter((row) => row.item?.startsWith('battery'));
    expect(moving.map((row) => [row.weight, row.arm, row.fits, row.fitted])).toEqual([
      ['-28', '48', 'Alder', 'FALSE'],
      ['28', '190', 'Alder', 'FALSE'],
      ['4.2', '120', 'Alder', 'FALSE'],
    ]);
    const changes = moving.map((row) => ({ weight: Number(row.weight), arm: Number(row.arm) }));
    const after = margins('Alder', changes);
    expect(Math.min(after.forward, after.aft)).toBeGreaterThan(0);
    // The same battery is a component: what is taken out is there
    expect(masses(sample, 'Alder')).toContainEqual({ weight: 28, arm: 48 });
  });

  test('nosewheel and firewall: Alder is beyond both limits, the others within', () => {
    const [nose, mains] = [airframe(sample, 'nose or tail wheel arm'), airframe(sample, 'main wheel arm')];
    const firewall = airframe(sample, 'firewall arm');
    const noseLoad = (engine: string) => {
      const { weight, arm } = emptyWith(engine);
      return (weight * (mains - arm)) / (mains - nose);
    };
    const momentShare = (engine: string) => {
      const ahead = masses(sample, engine).filter(({ arm }) => arm < firewall);
      const moment = sum(ahead.map(({ weight, arm }) => weight * (firewall - arm)));
      return moment / airframe(sample, 'maximum moment ahead of firewall');
    };
    expect(Math.abs(noseLoad('Alder') - 352)).toBeLessThan(1.5); // 1,457 lb × 0.05 in / 74 in, and as much again
    expect(airframe(sample, 'maximum nose or tail wheel load')).toBe(330);
    expect(Math.abs(momentShare('Alder') - 1.25)).toBeLessThan(0.005);
    for (const engine of ['Rowan', 'Larch', 'Hazel']) {
      expect(noseLoad(engine)).toBeLessThan(330);
      expect(momentShare(engine)).toBeLessThan(1);
    }
  });

  test('each package has a dozen components and more, and gaps to be found', () => {
    const components = rows(sample, 'components');
    for (const engine of engines) {
      const own = components.filter((row) => row.package === engine);
      expect(own.filter((row) => Number(row.weight) > 0).length).toBeGreaterThanOrEqual(12);
      expect(own.some((row) => row['supplied by'] === 'not required')).toBe(true);
      expect(own.some((row) => row['supplied by'] === 'builder' && row.fluid === '')).toBe(true);
    }
    const unpriced = components.filter(
      (row) => row.price === '' && row['included in'] === '' && row['supplied by'] !== 'not required',
    );
    expect(unpriced.map((row) => `${row.package}, ${row.component}`)).toEqual(['Alder, cowling, two halves']);
    const systems = (engine: string) =>
      new Set(components.filter((row) => row.package === engine).map((row) => row.system));
    const all = new Set(components.map((row) => row.system));
    expect(engines.map((engine) => [...all].filter((system) => !systems(engine).has(system)))).toEqual([
      [],
      [],
      [],
      ['cabin heat'],
    ]);
  });

  test('at 75 % the fuel flows of the outline', () => {
    const lean = (engine: string) =>
      rows(sample, 'fuel-points').find(
        (row) => row.package === engine && row.mixture === 'lean' && row.power === '75',
      );
    const flow = (engine: string) =>
      Number(lean(engine)?.['fuel flow']) ||
      (0.75 * packageValue(sample, 'maximum continuous power', engine) * Number(lean(engine)?.BSFC)) /
        density(engine);
    for (const [engine, expected] of [
      ['Rowan', 9.9],
      ['Larch', 8.8],
      ['Hazel', 7.1],
      ['Alder', 6.6],
    ] as const)
      expect(Math.abs(flow(engine) - expected)).toBeLessThanOrEqual(0.051);
  });
});
