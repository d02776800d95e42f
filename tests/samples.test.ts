/**
 * The sample folders: read without faults, and add up to the outline they were made from.
 *
 * Everything is worked out here from the text of the files by plain arithmetic, without the project's own engineering.
 * Expected values: the outline of the invented aircraft (read), its rounding as the tolerance; margins are those of its
 * simple model, which steps through loadings as this file does.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { csvOfGrid, gridOfCsv, readTableFolder } from '../src/local/tableFolder.ts';
import { readCatalogue } from '../src/tables/catalogue.ts';
import { faultText } from '../src/tables/faults.ts';

const samples = ['godwit', 'sanderling', 'minimal'] as const;
const folderOf = (sample: string) => fileURLToPath(new URL(`../samples/${sample}`, import.meta.url));
const textOf = (sample: string, file: string) => readFileSync(`${folderOf(sample)}/${file}.csv`, 'utf8');

type Row = Readonly<Record<string, string>>;

/** Records of a file by their column headers; in a table of rows the first is the row of units. */
function records(sample: string, file: string): Row[] {
  return Papa.parse<Row>(textOf(sample, file), { header: true, skipEmptyLines: true }).data;
}
const rows = (sample: string, file: string) => records(sample, file).slice(1);

function attribute(sample: string, file: string, name: string, column = 'value'): string {
  return records(sample, file).find((row) => row.attribute === name)?.[column] ?? '';
}
const airframe = (sample: string, name: string) => Number(attribute(sample, 'airframe', name));
const packageValue = (sample: string, name: string, engine: string) =>
  Number(attribute(sample, 'packages', name, engine));

interface Mass {
  readonly weight: number;
  readonly arm: number;
}
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

function together(masses: readonly Mass[]): Mass {
  const weight = sum(masses.map((mass) => mass.weight));
  return { weight, arm: sum(masses.map((mass) => mass.weight * mass.arm)) / weight };
}

/** Weights of a package that count, arms from the datum: a lump that has no arm is replaced by its details. */
function masses(sample: string, engine: string): Mass[] {
  const firewall = airframe(sample, 'firewall arm');
  const own = rows(sample, 'components').filter((row) => row.package === engine);
  const lumpsWithoutArm = own
    .filter((row) => row.arm === '' && Number(row.weight) !== 0)
    .map((row) => row.component);
  return own
    .filter((row) => Number(row.weight) !== 0 && row.arm !== '')
    .filter((row) => row['included in'] === '' || lumpsWithoutArm.includes(row['included in']))
    .map((row) => ({
      weight: Number(row.weight),
      arm: row['arm from'] === 'firewall' ? firewall - Number(row.arm) : Number(row.arm),
    }));
}

const installed = (sample: string, engine: string) => together(masses(sample, engine));

interface Range {
  readonly arm: number;
  readonly minimum: number;
  readonly maximum: number;
}

/** Least distance inside the forward and the aft limit over loadings in even steps of every station and tank. */
function worstMargins(
  empty: Mass,
  ranges: readonly Range[],
  maximumWeight: number,
  forwardLimit: (weight: number) => number,
  aftLimit: number,
): { forward: number; aft: number } {
  const steps = 8;
  const worst = { forward: Number.POSITIVE_INFINITY, aft: Number.POSITIVE_INFINITY };
  const load = (index: number, weight: number, moment: number): void => {
    const range = ranges[index];
    if (weight > maximumWeight) return;
    if (range === undefined) {
      worst.forward = Math.min(worst.forward, moment / weight - forwardLimit(weight));
      worst.aft = Math.min(worst.aft, aftLimit - moment / weight);
      return;
    }
    for (let step = 0; step <= steps; step++) {
      const added = range.minimum + ((range.maximum - range.minimum) * step) / steps;
      load(index + 1, weight + added, moment + added * range.arm);
    }
  };
  load(0, empty.weight, empty.weight * empty.arm);
  return worst;
}

function stationRanges(sample: string): Range[] {
  return rows(sample, 'stations').map((row) => ({
    arm: Number(row.arm),
    minimum: Number(row.minimum),
    maximum: Number(row.maximum),
  }));
}

describe.each(samples)('%s', (sample) => {
  test('reads without faults or remarks', () => {
    const { grids, remarks } = readTableFolder(folderOf(sample));
    const { catalogue, faults } = readCatalogue(grids);
    expect(faults.map(faultText)).toEqual([]);
    expect([...remarks, ...(catalogue?.remarks ?? [])]).toEqual([]);
  });

  test('its files are written as they stand', () => {
    for (const file of readdirSync(folderOf(sample))) {
      const text = textOf(sample, file.replace('.csv', ''));
      expect(csvOfGrid(gridOfCsv(text, file))).toBe(text);
    }
  });

  test('lumps are the sum of their details', () => {
    const components = rows(sample, 'components');
    for (const lump of components) {
      const details = components.filter(
        (row) => row.package === lump.package && row['included in'] === lump.component,
      );
      if (details.length > 0)
        expect(sum(details.map((row) => Number(row.weight)))).toBeCloseTo(Number(lump.weight), 6);
    }
  });
});

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

describe('Sanderling, in kg and mm', () => {
  const sample = 'sanderling';
  const unusable = 2; // L
  const bare = { weight: 228, arm: 1400 };
  const fuelArm = 760;
  const density = (engine: string) => packageValue(sample, 'fuel density', engine);
  const emptyWith = (engine: string, changes: readonly Mass[] = []) =>
    together([
      bare,
      installed(sample, engine),
      { weight: unusable * density(engine), arm: fuelArm },
      ...changes,
    ]);
  const forwardLimit = (weight: number) => (weight <= 480 ? 850 : 850 + (30 * (weight - 480)) / 120);
  const margins = (engine: string, changes: readonly Mass[] = []) =>
    worstMargins(
      emptyWith(engine, changes),
      [...stationRanges(sample), { arm: fuelArm, minimum: 0, maximum: 90 * density(engine) }],
      600,
      forwardLimit,
      1015,
    );

  test('weighed without powerplant', () => {
    expect(attribute(sample, 'airframe', 'weighed with package')).toBe('');
    expect(airframe(sample, 'empty weight')).toBe(bare.weight);
    expect(airframe(sample, 'empty CG')).toBe(bare.arm);
  });

  test.each([
    ['Sorrel', 92, -430],
    ['Thistle', 98, -400],
    ['Clover', 118, -440],
  ])('%s: %d kg installed at %d mm', (engine, weight, arm) => {
    const total = installed(sample, engine);
    expect(Math.abs(total.weight - weight)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(total.arm - arm)).toBeLessThanOrEqual(0.5);
  });

  test('Sorrel and Thistle stay within the limits, Clover is nose-heavy solo until its battery moves', () => {
    for (const engine of ['Sorrel', 'Thistle'])
      expect(Math.min(margins(engine).forward, margins(engine).aft)).toBeGreaterThan(0);
    const solo = together([emptyWith('Clover'), { weight: 85, arm: 980 }]);
    expect(solo.arm).toBeLessThan(forwardLimit(solo.weight) - 20);
    const moving = rows(sample, 'equipment')
      .filter((row) => row.item?.startsWith('battery'))
      .map((row) => ({ weight: Number(row.weight), arm: Number(row.arm) }));
    expect(moving).toHaveLength(3);
    const after = margins('Clover', moving);
    expect(Math.min(after.forward, after.aft)).toBeGreaterThan(0);
  });

  test('Clover is over the approved power, Thistle has a tip Mach number of 0.88', () => {
    const approved = airframe(sample, 'approved power');
    const over = ['Sorrel', 'Thistle', 'Clover'].filter(
      (engine) => packageValue(sample, 'takeoff power', engine) > approved,
    );
    expect(over).toEqual(['Clover']);
    const tipSpeed =
      (Math.PI *
        packageValue(sample, 'propeller diameter', 'Thistle') *
        packageValue(sample, 'takeoff rpm', 'Thistle')) /
      60;
    const airspeed = airframe(sample, 'VNO') / 3.6;
    expect(Math.abs(Math.hypot(tipSpeed, airspeed) / 340.294 - 0.88)).toBeLessThanOrEqual(0.005);
  });
});

describe('minimal', () => {
  test('holds the required tables and nothing else', () => {
    expect(readdirSync(folderOf('minimal')).sort()).toEqual(
      ['airframe', 'components', 'envelope', 'packages', 'stations', 'tanks'].map((name) => `${name}.csv`),
    );
    const { catalogue } = readCatalogue(readTableFolder(folderOf('minimal')).grids);
    expect(catalogue?.packages.map(({ name }) => name)).toEqual(['Elm', 'Ash']);
    expect(catalogue?.allowancesDefaulted).toBe(true);
    expect(catalogue?.airframe.defaulted).toContain('emptyBasis');
  });
});
