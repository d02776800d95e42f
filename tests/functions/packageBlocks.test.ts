import { describe, expect, test } from 'vitest';
import { call } from '../../src/functions/library.ts';
import { tableNames } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';
import { tableArguments } from '../tableArguments.ts';
import { expectBlock } from './expectBlock.ts';

const samples = ['godwit', 'sanderling', 'minimal'] as const;
const functions = [
  'LOADING_CHECK',
  'LOADING_REGION',
  'FUEL_TABLE',
  'COST_TABLE',
  'MISSION_CHECK',
  'PAYLOAD_RANGE',
] as const;

const blockOf = (name: string, aircraft: (typeof samples)[number], ...extras: Cell[]) =>
  call(name, [...tableArguments(sample(aircraft)), ...extras]) as Cell[][];
const texts = (block: readonly (readonly Cell[])[]) =>
  block.flat().filter((cell) => typeof cell === 'string');

describe.each(functions)('%s', (name) => {
  test.each(samples)('%s: a rectangle of finite numbers, text and blanks', (sample) => {
    expectBlock(blockOf(name, sample));
  });

  test('one package, however its name is typed; a blank is all of them', () => {
    const one = texts(blockOf(name, 'godwit', ' hazel ')).join('\n');
    expect(one).toMatch(/Hazel/);
    expect(one).not.toMatch(/^(Larch|Alder)/m);
    expect(blockOf(name, 'godwit', null)).toEqual(blockOf(name, 'godwit'));
  });

  test('a package that is not there is refused by name', () => {
    expect(() => blockOf(name, 'godwit', 'Oak')).toThrow(
      new RegExp(`^${name}: package must be one of Rowan, Larch, Hazel, Alder, got "Oak"`),
    );
  });

  test('faults of the tables in place of the results', () => {
    const tables = tableArguments(sample('godwit'));
    tables[tableNames.indexOf('stations')] = '';
    const block = call(name, tables) as Cell[][];
    expect(block[0]?.[0]).toMatch(/^No result:/);
  });
});

test('MISSION_CHECK: what the Godwit sample is there to show', () => {
  const block = blockOf('MISSION_CHECK', 'godwit');
  const row = (label: string) => block.find(([first]) => first === label)?.slice(2, 6);
  expect(block[0]?.[0]).toBe('Mission: 4 × 180 lb, 60 lb of bags, 350 nmi');
  expect(row('can it')).toEqual(['yes', 'NO', 'NO', 'NO']);
  expect(row('stopped first by')).toEqual(['–', 'cooling out', 'takeoff out', 'limits']);
});

test('LOADING_CHECK: the packages that fail, and for which limit', () => {
  const block = blockOf('LOADING_CHECK', 'godwit');
  const cures = block.slice(
    block.findIndex(([first]) => first === 'What would bring every loading inside') + 3,
  );
  expect(cures.map(([name, limit, cure]) => [name, limit, cure])).toEqual([
    ['Hazel', 'CG aft', 'ballast'],
    ['Alder', 'CG forward', 'ballast'],
    ['Alder', 'CG forward', 'moved from "battery for compression ignition"'],
  ]);
});

test('PACKAGE_COMPARISON shows the verdict before the price', () => {
  const block = blockOf('PACKAGE_COMPARISON', 'godwit');
  const at = (pattern: RegExp) => block.findIndex(([first]) => pattern.test(String(first)));
  expect(at(/^Mission: /)).toBeGreaterThan(0);
  expect(at(/^Mission: /)).toBeLessThan(at(/^Price and delivery/));
  expect(at(/^Cost: 120 h a year, 10 years/)).toBeGreaterThan(at(/^Price and delivery/));
});
