/** Second opinion on conversions: GNU Units, which knows every unit. Where the program is not installed it is not asked. */
import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { toSi, unitsOf } from '../../src/units.ts';
import { namedUnits, unitNames } from './unitNames.ts';

function gnuUnits(from: string, to: string): number {
  return Number(execFileSync('units', ['-t', '-o', '%.15g', from, to], { encoding: 'utf8' }));
}

function installed(): boolean {
  try {
    return gnuUnits('1 in', 'mm') === 25.4;
  } catch {
    return false;
  }
}

const temperatures = [
  ['°C', 'tempC'],
  ['°F', 'tempF'],
] as const;

test('the list of names has every unit of every kind', () => {
  for (const kind of Object.keys(unitNames) as (keyof typeof unitNames)[])
    expect(Object.keys(unitNames[kind].units)).toEqual(unitsOf(kind));
});

if (installed()) {
  test.each(namedUnits)('$kind: 1 $unit', ({ kind, unit, gnu, gnuSi }) => {
    const theirs = gnuUnits(gnu, gnuSi);
    // inHg is kept to the nine digits of its conventional value
    expect(Math.abs(toSi(kind, 1, unit) / theirs - 1)).toBeLessThan(unit === 'inHg' ? 1e-9 : 1e-12);
  });
  test.each(temperatures)('temperatures in %s', (unit, name) => {
    for (const value of [-40, 0, 59, 212])
      expect(toSi('temperature', value, unit)).toBeCloseTo(gnuUnits(`${name}(${value})`, 'K'), 9);
  });
} else console.log('GNU Units is not installed: conversions were not held against it.');
