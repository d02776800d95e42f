/** Electrical balance by phase and single failures: Godwit by hand. */
import { describe, expect, test } from 'vitest';
import { assessed, withPackage } from './sampleCatalogue.ts';

// Aboard in Godwit: dials 2.5, radio 4, lights 7 A; dials and radio are essential
describe('balance by phase', () => {
  test('Larch: 21 A and 13.5 A aboard against 70 A, 30 A at idle; one of two out against 14 + 6.5 A', () => {
    const { electrical } = assessed('Larch');
    expect(electrical.load).toBeCloseTo(34.5, 9);
    expect(electrical.surplusCruise).toBeCloseTo(35.5, 9);
    expect(electrical.surplusIdle).toBeCloseTo(-4.5, 9);
    expect(electrical.surplusOneOut).toBeCloseTo(35 - 20.5, 9);
  });

  test('one alternator: none is left when it is out', () => {
    expect(assessed('Rowan').electrical.surplusOneOut).toBeUndefined();
  });

  test('the others do not carry it: a finding where the engine needs it', () => {
    const { electrical } = assessed('Larch', withPackage('Larch', { alternatorCruise: 36 }));
    expect(electrical.surplusOneOut).toBeCloseTo(18 - 20.5, 9);
    expect(electrical.findings.find(({ subject }) => subject === 'one alternator out')?.gravity).toBe(
      'check',
    );
  });

  test('no load given: not known, and said so', () => {
    const { electrical } = assessed('Rowan', withPackage('Rowan', { electricalLoad: undefined }));
    expect(electrical.surplusCruise).toBeUndefined();
    expect(electrical.findings.map(({ text }) => text).join()).toMatch(/the balance is not known/);
  });
});

describe('single failures of an engine that stops without electricity', () => {
  const parts = (alternators: number | undefined) =>
    assessed('Alder', withPackage('Alder', { alternators })).electrical;

  test('one alternator is one; two are none that the tables know', () => {
    expect(parts(1).singleFailures).toEqual(['alternator']);
    expect(parts(2).singleFailures).toEqual([]);
  });

  test('none at all stops it, an unknown number is doubtful', () => {
    expect(
      parts(0).findings.some(({ subject, gravity }) => subject === 'single failures' && gravity === 'stop'),
    ).toBe(true);
    expect(parts(undefined).singleFailures).toEqual(['not known']);
  });

  test('an engine with magnetos has none to list', () => {
    expect(assessed('Hazel').electrical.singleFailures).toEqual([]);
  });
});
