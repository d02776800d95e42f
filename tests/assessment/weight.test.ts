import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { configure } from '../../src/assessment/configuration.ts';
import { type Context, contextOf } from '../../src/assessment/context.ts';
import { bareAirframe, type EmptyAircraft, emptyAircraft } from '../../src/assessment/emptyAircraft.ts';
import { type Payload, payloadOf } from '../../src/assessment/payload.ts';
import { type Powerplant, powerplantOf } from '../../src/assessment/powerplant.ts';
import { readCatalogue } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import { inOtherUnits } from '../tables/otherUnits.ts';
import { put, smallWorkbook } from '../tables/smallWorkbook.ts';

/**
 * The small aircraft of tests/tables/smallWorkbook.ts, worked by hand in lb and in:
 * weighed complete with Ash, radio and lights: 900 at 80, moment 72,000; firewall at 50.
 */
const pound = 0.45359237; // kg, exact
const inch = 0.0254; // m, exact

type Grids = ReturnType<typeof smallWorkbook>;

interface Weights {
  readonly context: Context;
  readonly powerplant: Powerplant;
  readonly empty: EmptyAircraft;
  readonly payload: Payload;
}

function contextIn(grids: Grids): Context {
  const { catalogue, faults } = readCatalogue(grids);
  if (catalogue === undefined) throw new Error(faults.map(faultText).join('\n'));
  return contextOf(catalogue);
}

function weightsOf(grids: Grids, name: string): Weights {
  const context = contextIn(grids);
  const engine = context.catalogue.packages.find((each) => each.name === name)!;
  const configuration = configure(context.catalogue, engine);
  const powerplant = powerplantOf(context, engine);
  const empty = emptyAircraft(context, bareAirframe(context), engine, powerplant, configuration);
  return { context, powerplant, empty, payload: payloadOf(context, engine, empty, configuration) };
}

/** The small workbook with changes. */
function changed(change: (grids: Grids) => void): Grids {
  const grids = smallWorkbook();
  change(grids);
  return grids;
}

const ash = () => weightsOf(smallWorkbook(), 'Ash');
const birch = () => weightsOf(smallWorkbook(), 'Birch');
const inPounds = (kilograms: number) => kilograms / pound;
const inInches = (metres: number) => metres / inch;
const inPoundInches = (moment: number) => moment / (pound * inch);

describe('installed weight', () => {
  test('every component at its arm, those of the supplier measured from the firewall', () => {
    // 220 at 35, oil 12 at 50 − 8 = 42, propeller 30 at 50 − 40 = 10: 262, 7,700 + 504 + 300 = 8,504
    expect(inPounds(ash().powerplant.installed.weight)).toBeCloseTo(262, 9);
    expect(inPoundInches(ash().powerplant.installed.moment)).toBeCloseTo(8504, 8);
    // Dry, without the oil: 250, 8,000
    expect(inPounds(ash().powerplant.dry.weight)).toBeCloseTo(250, 9);
    expect(inPoundInches(ash().powerplant.dry.moment)).toBeCloseTo(8000, 8);
  });

  test('a lump counts once and sits where its details do', () => {
    // Details 210 at 34 and 50 at 28: 8,540/260 = 32.846; with coolant 9 at 36 and propeller 44 at 10: 313, 9,304
    expect(inPounds(birch().powerplant.installed.weight)).toBeCloseTo(313, 9);
    expect(inPoundInches(birch().powerplant.installed.moment)).toBeCloseTo(9304, 8);
    expect(inPounds(birch().powerplant.dry.weight)).toBeCloseTo(304, 9);
    expect(birch().powerplant.findings.filter(({ subject }) => subject === 'kit as delivered')).toEqual([]);
  });

  test('a lump with an arm of its own keeps it', () => {
    const { powerplant } = weightsOf(
      changed((grids) => put(grids.components, 6, 'arm', 30)),
      'Birch',
    );
    // 260 × 30 + 9 × 36 + 44 × 10
    expect(inPoundInches(powerplant.installed.moment)).toBeCloseTo(8564, 8);
  });

  test('details that do not add up are a finding; the lump counts', () => {
    const { powerplant } = weightsOf(
      changed((grids) => put(grids.components, 7, 'weight', 190)),
      'Birch',
    );
    expect(inPounds(powerplant.installed.weight)).toBeCloseTo(313, 9);
    const [finding] = powerplant.findings.filter(({ subject }) => subject === 'kit as delivered');
    expect(finding).toMatchObject({ gravity: 'check', text: expect.stringContaining('do not add up') });
    expect(inPounds(finding!.value!)).toBeCloseTo(240, 9); // 190 + 50
    expect(inPounds(finding!.limit!)).toBeCloseTo(260, 9);
  });

  test('details within a fiftieth of the lump are its rounding', () => {
    const { powerplant } = weightsOf(
      changed((grids) => put(grids.components, 7, 'weight', 205)), // 255 of 260
      'Birch',
    );
    expect(powerplant.findings.filter(({ subject }) => subject === 'kit as delivered')).toEqual([]);
  });

  test('a fluid inside a lump leaves the dry weight, and a fluid in a fluid only once', () => {
    const inLump = changed((grids) => put(grids.components, 9, 'included in', 'kit as delivered'));
    // The lump still weighs 260; its coolant of 9 at 36 is in it: dry 304 − 9
    expect(inPounds(weightsOf(inLump, 'Birch').powerplant.dry.weight)).toBeCloseTo(295, 9);
    const fluids = changed((grids) => {
      put(grids.components, 4, 'component', 'oil and coolant');
      const oil = [...(grids.components[3] as Cell[])];
      grids.components.push(oil);
      put(grids.components, 11, 'component', 'oil');
      put(grids.components, 11, 'weight', 12);
      put(grids.components, 11, 'included in', 'oil and coolant');
    });
    expect(inPounds(weightsOf(fluids, 'Ash').powerplant.dry.weight)).toBeCloseTo(250, 9);
  });

  test('a system only the other package names is a finding, until it is said to be not required', () => {
    const forgotten = (grids: Grids, name: string) =>
      weightsOf(grids, name)
        .powerplant.findings.filter(({ text }) => text.startsWith('no component of this system'))
        .map(({ subject }) => subject);
    expect(forgotten(smallWorkbook(), 'Ash')).toEqual(['coolant']);
    expect(forgotten(smallWorkbook(), 'Birch')).toEqual(['oil']);
    const grids = changed(({ components }) => {
      components.push(components[3]!.map(() => '' as Cell));
      for (const [header, cell] of [
        ['package', 'Ash'],
        ['component', 'radiator'],
        ['system', 'Coolant'],
        ['weight', 0],
        ['supplied by', 'not required'],
      ] as const)
        put(components, 11, header, cell);
    });
    expect(forgotten(grids, 'Ash')).toEqual([]);
  });
});

describe('the airframe without powerplant', () => {
  test('is the weighing less powerplant and unusable fuel', () => {
    // 900 − 262 − 1 US gal × 6 = 632; 72,000 − 8,504 − 6 × 88 = 62,968; at 99.633
    const { mass } = bareAirframe(ash().context);
    expect(inPounds(mass.nominal.weight)).toBeCloseTo(632, 9);
    expect(inPoundInches(mass.nominal.moment)).toBeCloseTo(62_968, 7);
  });

  test('without oil and coolant at the weighing, only the dry powerplant comes off', () => {
    const { context } = weightsOf(
      changed((grids) => grids.airframe.push(['weighed with fluids', false, '', ''])),
      'Ash',
    );
    // 900 − 250 − 6
    expect(inPounds(bareAirframe(context).mass.nominal.weight)).toBeCloseTo(644, 9);
  });

  test('drained to the last drop, no fuel comes off', () => {
    const { context, empty } = weightsOf(
      changed((grids) => grids.airframe.push(['weighed with unusable fuel', 'no', '', ''])),
      'Ash',
    );
    expect(inPounds(bareAirframe(context).mass.nominal.weight)).toBeCloseTo(638, 9);
    // and it is put in for the basic empty weight: 906
    expect(inPounds(empty.mass.nominal.weight)).toBeCloseTo(906, 9);
  });

  test('weighed without powerplant it is the weighing itself', () => {
    const bare = changed((grids) => put(grids.airframe, 7, 'value', ''));
    expect(inPounds(bareAirframe(contextIn(bare)).mass.nominal.weight)).toBeCloseTo(900, 9);
    // With Ash: 900 + 262, unusable fuel aboard already; drained: + 6
    expect(inPounds(weightsOf(bare, 'Ash').empty.mass.nominal.weight)).toBeCloseTo(1162, 9);
    const drained = changed((grids) => {
      put(grids.airframe, 7, 'value', '');
      grids.airframe.push(['weighed with unusable fuel', false, '', '']);
    });
    expect(inPounds(weightsOf(drained, 'Ash').empty.mass.nominal.weight)).toBeCloseTo(1168, 9);
  });
});

describe('empty weight and CG', () => {
  test('with the package it was weighed with, the weighing stands', () => {
    expect(inPounds(ash().empty.mass.nominal.weight)).toBeCloseTo(900, 9);
    expect(inInches(ash().empty.cg)).toBeCloseTo(80, 9);
    // 0.6 % of 900 and nothing else: what is subtracted and added again is not doubtful
    expect(inPounds(ash().empty.mass.weightHalfWidth)).toBeCloseTo(5.4, 9);
    expect(inPounds(ash().empty.mass.expected.weight)).toBeCloseTo(900, 9);
    expect(inInches(ash().empty.expectedCg.halfWidth)).toBeCloseTo(0, 9);
  });

  test('with the other package', () => {
    // 632 + 313 + 6.7 (1 US gal of Jet A at 88) = 951.7; 62,968 + 9,304 + 589.6 = 72,861.6; 76.5594
    expect(inPounds(birch().empty.mass.nominal.weight)).toBeCloseTo(951.7, 9);
    expect(inInches(birch().empty.cg)).toBeCloseTo(76.559_42, 5);
  });

  test('what is expected of it, and how well it is known', () => {
    // Growth 2 % of 260 calculated and 4 % of 9 estimated; nothing grows that is taken out: 951.7 + 5.2 + 0.36
    expect(inPounds(birch().empty.mass.expected.weight)).toBeCloseTo(957.26, 9);
    // Weighed, 0.6 %: 900, −220, −30, −6, 44, 6.7 → Σ (w u)² 31.0074. Calculated, 4 %, ρ 0.2: −12, 260
    // → 0.2 × 10.88² + 0.8 × (0.48² + 10.4²) = 110.3872. Estimated, 8 %: 9 → 0.5184. √141.913
    expect(inPounds(birch().empty.mass.weightHalfWidth)).toBeCloseTo(11.912_72, 5);
    // 72,861.6 + 5.2 × 32.846 + 0.36 × 36 = 73,045.36 over 957.26
    expect(inInches(birch().empty.expectedCg.cg)).toBeCloseTo(76.306_71, 5);
    // The same sum with w (arm − 76.307) in place of w, over 957.26
    expect(inInches(birch().empty.expectedCg.halfWidth)).toBeCloseTo(0.481_225, 5);
  });

  test('against the baseline', () => {
    expect(inPounds(birch().empty.mass.nominal.weight - ash().empty.mass.nominal.weight)).toBeCloseTo(
      51.7,
      9,
    );
    expect(inInches(birch().empty.cg - ash().empty.cg)).toBeCloseTo(-3.440_58, 5);
  });
});

describe('options', () => {
  test('one ticked that was not weighed comes in, one weighed that is not ticked comes out', () => {
    const ticked = changed((grids) => put(grids.equipment, 6, 'fitted', true)); // fairings, 12 at 88
    expect(inPounds(weightsOf(ticked, 'Ash').empty.mass.nominal.weight)).toBeCloseTo(912, 9);
    const unticked = changed((grids) => put(grids.equipment, 4, 'fitted', false)); // lights, 4 at 90
    const { empty } = weightsOf(unticked, 'Ash');
    expect(inPounds(empty.mass.nominal.weight)).toBeCloseTo(896, 9);
    expect(inInches(empty.cg)).toBeCloseTo((72_000 - 360) / 896, 9);
  });

  test('one for another package only is left out here, and said so', () => {
    const grids = changed(({ equipment }) => put(equipment, 5, 'fitted', true)); // autopilot, Birch only, 9 at 120
    expect(inPounds(weightsOf(grids, 'Ash').empty.mass.nominal.weight)).toBeCloseTo(900, 9);
    expect(inPounds(weightsOf(grids, 'Birch').empty.mass.nominal.weight)).toBeCloseTo(960.7, 9);
    const { catalogue } = contextIn(grids);
    expect(configure(catalogue, catalogue.packages[0]!).findings).toMatchObject([
      { gravity: 'note', subject: 'autopilot', text: 'cannot be had with Ash: left out of its figures' },
    ]);
  });

  test('one that was weighed but cannot be had with this package comes out', () => {
    const grids = changed(({ equipment }) => put(equipment, 3, 'fits', 'Ash')); // radio, 6 at 70
    expect(inPounds(weightsOf(grids, 'Birch').empty.mass.nominal.weight)).toBeCloseTo(945.7, 9);
  });

  test('needs and excludes', () => {
    const grids = changed(({ equipment }) => {
      put(equipment, 3, 'fitted', false); // the radio the autopilot needs
      for (const row of [5, 6, 7]) put(equipment, row, 'fitted', true);
    });
    const { catalogue } = contextIn(grids);
    const { findings } = configure(catalogue, catalogue.packages[1]!);
    expect(findings.map(({ gravity, subject, text }) => `${gravity} ${subject}: ${text}`)).toEqual([
      'stop autopilot: needs radio, which is not fitted',
      'stop fairings: cannot stand beside large tyres: choose one',
      'stop large tyres: cannot stand beside fairings: choose one',
    ]);
  });

  test('a battery that moves is one row out and one in: the weight stays, the CG goes', () => {
    const grids = changed(({ equipment }) => {
      equipment.push(
        ['battery out', -28, 48, 'weighed', 0, 0, '', '', '', false, true],
        ['battery aft', 28, 190, 'weighed', 0, 0, '', '', '', false, true],
      );
    });
    const { empty } = weightsOf(grids, 'Ash');
    expect(inPounds(empty.mass.nominal.weight)).toBeCloseTo(900, 9);
    // 28 × 142/900
    expect(inInches(empty.cg)).toBeCloseTo(80 + (28 * 142) / 900, 9);
  });

  test('an optional tank brings its own weight, its unusable and its usable fuel', () => {
    const grids = changed(({ tanks, loadings }) => {
      tanks.push(['tip tank', 92, 12, 0.5, 1, '', false, true, 14]);
      loadings.forEach((row, index) => {
        row.push(['tip tank', 'US gal'][index] ?? 0);
      });
    });
    const { empty, payload } = weightsOf(grids, 'Ash');
    // 900 + 14 + 0.5 × 6; moment 72,000 + 17 × 92
    expect(inPounds(empty.mass.nominal.weight)).toBeCloseTo(917, 9);
    expect(inInches(empty.cg)).toBeCloseTo((72_000 + 17 * 92) / 917, 9);
    expect(inPounds(payload.fuelWeight)).toBeCloseTo(252, 9); // 42 US gal
  });
});

describe('payload', () => {
  test('nominal, expected and to be counted on', () => {
    const { usefulLoad, fullFuel, fuelWeight } = birch().payload;
    expect(inPounds(fuelWeight)).toBeCloseTo(201, 9); // 30 × 6.7
    // 1,600 − 951.7; less 201; expected − 957.26; and − 11.9127
    expect(inPounds(usefulLoad.nominal)).toBeCloseTo(648.3, 9);
    expect(inPounds(fullFuel.nominal)).toBeCloseTo(447.3, 9);
    expect(inPounds(fullFuel.expected)).toBeCloseTo(441.74, 9);
    expect(inPounds(fullFuel.countedOn)).toBeCloseTo(429.827_28, 5);
  });

  test('no more than the zero-fuel weight leaves', () => {
    // 1,600 − 900 − 180 = 520; with a zero-fuel weight of 1,400 it is 500
    expect(inPounds(ash().payload.fullFuel.nominal)).toBeCloseTo(520, 9);
    const { payload } = weightsOf(
      changed((grids) => put(grids.airframe, 13, 'value', 1400)),
      'Ash',
    );
    expect(inPounds(payload.fullFuel.nominal)).toBeCloseTo(500, 9);
    expect(inPounds(payload.usefulLoad.nominal)).toBeCloseTo(700, 9);
  });

  test('too heavy with full tanks is a finding: certain where nominal, doubtful where only to be counted on', () => {
    const limited = (maximum: number) =>
      weightsOf(
        changed(({ airframe }) => {
          put(airframe, 10, 'value', maximum);
          for (const row of [11, 12, 13]) put(airframe, row, 'value', '');
        }),
        'Ash',
      ).payload.findings;
    // Empty 900 and 180 of fuel, known to 5.4
    expect(limited(1079)).toMatchObject([{ gravity: 'stop', subject: 'payload, full fuel' }]);
    expect(limited(1082)).toMatchObject([{ gravity: 'check', subject: 'payload, full fuel' }]);
    expect(limited(1086)).toEqual([]);
  });
});

describe('whatever the numbers', () => {
  const rowsOf = (grids: Grids, name: string) =>
    grids.components.flatMap((row, index) => (row[0] === name ? [index + 1] : []));

  test('moving a component aft never moves the CG forward', () => {
    fc.assert(
      fc.property(fc.nat({ max: 7 }), fc.double({ min: 0, max: 60, noNaN: true }), (at, aft) => {
        const plain = smallWorkbook();
        const row = at + 3;
        const name = String(plain.components[row - 1]![0]);
        const moved = changed((grids) => {
          const line = grids.components[row - 1] as Cell[];
          const [arm, from] = [line[4], line[5]];
          if (typeof arm !== 'number') return; // a lump takes the arm of its details
          line[4] = from === 'firewall' ? arm - aft : arm + aft;
          // The airframe was weighed with Ash: moving Ash's own part moves nothing of that weighing
          put(grids.airframe, 7, 'value', '');
        });
        put(plain.airframe, 7, 'value', '');
        expect(weightsOf(moved, name).empty.cg).toBeGreaterThanOrEqual(
          weightsOf(plain, name).empty.cg - 1e-12,
        );
      }),
      { numRuns: 60 },
    );
  });

  test('a package against itself differs by zero', () => {
    const grids = changed(({ packages, components }) => {
      packages.forEach((row, index) => {
        row.push(index === 0 ? 'Ash again' : row[2]);
      });
      for (const row of rowsOf({ components } as Grids, 'Ash'))
        components.push(['Ash again', ...components[row - 1]!.slice(1)]);
    });
    const again = weightsOf(grids, 'Ash again');
    expect(again.empty.mass).toEqual(ash().empty.mass);
    expect(again.empty.cg).toBe(ash().empty.cg);
    expect(again.payload).toEqual(ash().payload);
  });

  test('the order of rows does not matter', () => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat({ max: 999 })), (stream) => {
        const shuffled = changed((grids) => {
          for (const table of ['components', 'equipment', 'allowances'] as const) {
            const [header, units, ...rows] = grids[table];
            grids[table] = [
              header!,
              units!,
              ...rows
                .map((row) => ({ row, key: stream.next().value as number }))
                .sort((one, other) => one.key - other.key)
                .map(({ row }) => row),
            ];
          }
        });
        const { empty, payload } = weightsOf(shuffled, 'Birch');
        expect(empty.mass.nominal.weight).toBeCloseTo(birch().empty.mass.nominal.weight, 9);
        expect(empty.cg).toBeCloseTo(birch().empty.cg, 11);
        expect(empty.mass.weightHalfWidth).toBeCloseTo(birch().empty.mass.weightHalfWidth, 9);
        expect(payload.fullFuel.countedOn).toBeCloseTo(birch().payload.fullFuel.countedOn, 9);
      }),
      { numRuns: 40 },
    );
  });

  test('a heavier option never gives payload', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 7 }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.constantFrom('Ash', 'Birch'),
        (row, more, name) => {
          const heavier = changed(({ equipment }) => {
            const weight = (equipment[row - 1] as Cell[])[1] as number;
            put(equipment, row, 'fitted', true);
            put(equipment, row, 'weight', weight + more);
          });
          const plain = changed(({ equipment }) => put(equipment, row, 'fitted', true));
          const [one, other] = [weightsOf(heavier, name).payload, weightsOf(plain, name).payload];
          for (const figure of ['nominal', 'expected', 'countedOn'] as const)
            expect(one.fullFuel[figure]).toBeLessThanOrEqual(other.fullFuel[figure] + 1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('units of the tables never change a result', () => {
    const grids = changed(inOtherUnits);
    expect(grids.components[1]).toContain('kg');
    for (const name of ['Ash', 'Birch']) {
      const [one, other] = [weightsOf(smallWorkbook(), name), weightsOf(grids, name)];
      expect(other.empty.mass.nominal.weight).toBeCloseTo(one.empty.mass.nominal.weight, 9);
      expect(other.empty.mass.expected.moment).toBeCloseTo(one.empty.mass.expected.moment, 9);
      expect(other.empty.mass.weightHalfWidth).toBeCloseTo(one.empty.mass.weightHalfWidth, 9);
      expect(other.empty.expectedCg.cg).toBeCloseTo(one.empty.expectedCg.cg, 11);
      expect(other.empty.expectedCg.halfWidth).toBeCloseTo(one.empty.expectedCg.halfWidth, 9);
      expect(other.payload.fullFuel.countedOn).toBeCloseTo(one.payload.fullFuel.countedOn, 9);
      expect(other.powerplant.dry.moment).toBeCloseTo(one.powerplant.dry.moment, 9);
    }
  });
});
