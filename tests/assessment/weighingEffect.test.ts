/** What a weighing changes, and what it is taken in as: the weighed Wren of weighedWren.ts, in lb and in. */
import { describe, expect, test } from 'vitest';
import { basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { effectRows, effectWords } from '../../src/assessment/weighingEffect.ts';
import { weighedEquipmentFindings } from '../../src/assessment/weighingEquipment.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { buildOf, catalogueOf } from '../tables/smallBuild.ts';
import { asBuiltBuildGrids, asBuiltGrids } from './asBuilt.ts';
import { catalogueOf as readGrids, withAttribute, withCells } from './flightFixture.ts';
import { small, weighed } from './weighedWren.ts';

const effect = (weight: number, arm: number, grids = small) => {
  const { found } = weighed(weight, arm, grids);
  const { context } = basisOf(catalogueOf(grids));
  const rows = effectRows(context, found);
  return {
    found,
    rows,
    words: effectWords(context, found),
    of: (label: string) => rows.find(([cell]) => cell === label)?.slice(1),
  };
};

describe('with the weighing', () => {
  test('useful load and payload: 951.7 stated, 977.26 weighed, 201 of fuel', () => {
    const { rows, of } = effect(20, 60);
    expect(rows.slice(0, 2)).toEqual([
      ['What the weighing changes'],
      ['', 'Predicted', 'As weighed', 'Difference', 'Unit'],
    ]);
    expect(of('useful load, as stated')).toEqual([648, 623, -26, 'lb']);
    expect(of('payload with full tanks, as stated')).toEqual([447, 422, -26, 'lb']);
    // 957.26 + 11.91 expected and as far as it may be off; 977.26 and √3
    expect(of('payload with full tanks, to be counted on')).toEqual([430, 420, -10, 'lb']);
  });

  test('CG margins of all loadings, as the balance of each has them', () => {
    const { of, found } = effect(20, 60);
    for (const [label, side] of [
      ['least forward CG margin of all loadings', 'forward'],
      ['least aft CG margin of all loadings', 'aft'],
    ] as const) {
      const [before, after] = [found.before, found.after].map(
        ({ balance }) => (balance.margins?.[side].margin ?? Number.NaN) / 0.0254,
      ) as [number, number];
      const [was, is, change, unit] = of(label) as [number, number, number, string];
      expect(Math.abs(was - before)).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(Math.abs(is - after)).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(Math.abs(change - (after - before))).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(unit).toBe('in');
    }
    expect(of('least forward CG margin of all loadings')?.[0]).toBe(-1.7); // tests/assessment/balance.test.ts
  });

  test('the mission’s verdict and what is scarcest; without a mission nothing is asked', () => {
    const { of, found, words } = effect(20, 60);
    expect(of('mission')).toEqual([found.before.mission?.verdict, found.after.mission?.verdict]);
    expect(found.before.mission?.verdict).toBeDefined();
    const scarcest = found.after.mission?.scarcest;
    expect(of('  scarcest')?.[1]).toContain(scarcest?.text);
    expect(of('  scarcest')?.[1]).toContain(scarcest?.name);
    expect(words.at(-2)).toBe(`mission: ${found.before.mission?.verdict} → ${found.after.mission?.verdict}`);
    expect(words.at(-1)).toMatch(/^scarcest: .* → /);
    const { mission: _none, ...idle } = small;
    const unasked = effect(20, 60, idle);
    expect(unasked.of('mission')).toEqual(['not asked', 'not asked']);
    expect(unasked.of('  scarcest')).toEqual(['not asked', 'not asked']);
  });

  test('no loading left within the weights: a margin that is not known, and no difference', () => {
    const heavy = withAttribute(small, 'airframe', 'maximum zero-fuel weight', 1070, 'lb');
    const { of } = effect(20, 60, heavy); // 951.7 and the lightest pilot, 110, are 1,061.7; as weighed 1,087
    expect(of('least aft CG margin of all loadings')?.slice(1)).toEqual(['not known', null, 'in']);
    expect(of('least forward CG margin of all loadings')?.slice(1)).toEqual(['not known', null, 'in']);
  });

  test('in sentences, without the headings', () => {
    const { words, rows } = effect(20, 60);
    expect(words).toHaveLength(rows.length - 2);
    expect(words[0]).toBe('useful load, as stated: 648 → 623 lb');
  });
});

describe('taken in as', () => {
  test('weighed, whatever the basis before, where the allowances know that', () => {
    const estimated = withAttribute(small, 'airframe', 'empty weight basis', 'estimated');
    expect(weighed(20, 60, estimated).found.adopted.emptyBasis).toBe('weighed');
  });

  test('else on the basis that it was', () => {
    const grids: TableGrids = {
      ...withAttribute(small, 'airframe', 'empty weight basis', 'calculated'),
      allowances: (small.allowances ?? []).filter(([basis]) => basis !== 'weighed'),
      components: (small.components ?? []).map((line) =>
        line.map((cell): Cell => (cell === 'weighed' ? 'calculated' : cell)),
      ),
      equipment: (small.equipment ?? []).map((line) =>
        line.map((cell): Cell => (cell === 'weighed' ? 'calculated' : cell)),
      ),
    };
    expect(weighed(20, 60, grids).found.adopted.emptyBasis).toBe('calculated');
  });
});

describe('drag of what is aboard now against what was weighed', () => {
  const told = (grids: TableGrids) => {
    const catalogue = readGrids(grids);
    const build = buildOf({ ...asBuiltBuildGrids(), 'weighing items': [] }, catalogue);
    return weighedEquipmentFindings(basisOf(catalogue).context, packageNamed(catalogue, 'Rowan'), build).map(
      ({ text }) => /differs by (\S+ ft²)/.exec(text)?.[1],
    );
  };
  const with_ = (item: string, grids = asBuiltGrids() as TableGrids) =>
    withCells(grids, 'equipment', [item], { fitted: true });
  const weighedWith = (items: string, grids = asBuiltGrids() as TableGrids) =>
    withAttribute(grids, 'airframe', 'weighed with equipment', items);

  test('the difference: fairings of −0.35 in place of tyres of 0.3; none where both have them', () => {
    expect(told(with_('wheel fairings'))).toEqual(['−0.35 ft²']);
    expect(told(weighedWith('Large tyres', with_('wheel fairings')))).toEqual(['−0.65 ft²']);
    expect(told(weighedWith('large tyres'))).toEqual(['−0.30 ft²']);
    expect(told(weighedWith('wheel fairings', with_('wheel fairings')))).toEqual([]);
    expect(told(weighedWith('', with_('wheel fairings')))).toEqual(['−0.35 ft²']);
  });

  test('nothing was flown, nothing differs', () => {
    expect(told({ ...with_('wheel fairings'), 'known points': [] })).toEqual([]);
  });
});
