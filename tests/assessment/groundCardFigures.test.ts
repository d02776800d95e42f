/** Figures and words of the ground cards, and what goes with all cards: on the plain aircraft and on the builder's. */
import { describe, expect, test } from 'vitest';
import type { Assessment } from '../../src/assessment/assess.ts';
import { flightCards } from '../../src/assessment/flightCards.ts';
import { groundCards } from '../../src/assessment/groundCards.ts';
import { emptyWeightWords, recordedFields, type TestCard } from '../../src/assessment/testCard.ts';
import { asBuiltGrids } from './asBuilt.ts';
import { cooledPackages } from './flightFixture.ts';
import { airframe, assessed, cardOf, engine, flightOf, plain } from './plainCards.ts';

describe('on the ground', () => {
  test('nose up as in the steepest climb and 5° more', () => {
    const { setUp } = cardOf('fuel flow on the ground');
    const [, nose = '', climb = ''] = /^nose (\d+)° up \(steepest climb (\d+)° and 5° more/.exec(setUp) ?? [];
    const { gradient } = flightOf().seaLevel.bestAngle; // the sine of it
    const sine = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
    expect(gradient).toBeGreaterThan(sine(Number(climb) - 0.5));
    expect(gradient).toBeLessThan(sine(Number(climb) + 0.5));
    expect(gradient).toBeGreaterThan(sine(Number(nose) - 6));
    expect(gradient).toBeLessThanOrEqual(sine(Number(nose) - 5));
    expect(cardOf('fuel flow on the ground', { ...plain, 'known points': [] }).setUp).toMatch(
      /^nose up as in the steepest climb, /,
    );
  });

  test('by pump 125 % of the takeoff flow, by gravity 150 % (14 CFR 23.955 before amendment 64)', () => {
    const fed = (feed: string) => cardOf('fuel flow on the ground', engine('fuel feed', feed));
    const takeoff = (110 * 0.3024) / 0.72 / 3.6e6; // m³/s
    const [pump, gravity] = [fed('pump'), fed('gravity')];
    expect(pump.setUp).toContain('each pump by itself');
    expect(gravity.setUp).toContain('by gravity');
    expect(pump.reduce).toContain('; 125 % of');
    expect(gravity.reduce).toContain('; 150 % of');
    expect(pump.figures[1]).toMatchObject({ least: true, limit: expect.closeTo(1.25 * takeoff, 12) });
    expect(gravity.figures[1]).toMatchObject({ least: true, limit: expect.closeTo(1.5 * takeoff, 12) });
  });

  test('static rpm: on the fine stop, or a fixed pitch', () => {
    expect(cardOf('static rpm').setUp).toContain('propeller on its fine stop');
    expect(cardOf('static rpm', engine('propeller', 'fixed pitch')).setUp).toContain('fixed pitch');
    expect(cardOf('static rpm').figures[0]).toMatchObject({
      limit: expect.closeTo(45, 9),
      band: { share: 0.03 },
    });
  });

  test('idle temperatures with their limits; where nothing drives the air, that', () => {
    const [fins, ...others] = cardOf('cooling on the ground', asBuiltGrids(), 'Rowan').figures;
    expect(others).toHaveLength(1);
    expect(fins).toMatchObject({
      label: 'fins at idle, steady, hot day',
      shown: 'engineTemperature',
      limit: expect.closeTo(((435 - 32) * 5) / 9 + 273.15, 6),
    });
    const { cooling } = cooledPackages(asBuiltGrids()).of('Rowan');
    expect(fins?.predicted).toBe(cooling?.streams[0]?.idleTemperature);
    expect(fins?.words).toBe(fins?.predicted === undefined ? 'nothing drives the air' : undefined);
    const { assessment } = assessed(asBuiltGrids(), 'Rowan');
    const streams =
      assessment.cooling?.streams.map((each) => ({ ...each, idleTemperature: undefined })) ?? [];
    const still = { ...assessment, cooling: { recommended: 'cooling climb', streams } } as Assessment;
    expect(groundCards(still)[2]?.figures[0]?.words).toBe('nothing drives the air');
  });

  test('the battery: half an hour at least (14 CFR 23.1353(h) before amendment 64, from memory)', () => {
    const [figure] = cardOf('battery', asBuiltGrids(), 'Rowan').figures;
    expect(figure).toMatchObject({ shown: 'minutes', limit: 1800, least: true, band: { share: 0.2 } });
    expect(figure?.predicted).toBe(assessed(asBuiltGrids(), 'Rowan').assessment.electrical.batteryTime);
  });

  test('unusable fuel of every tank: 2 US gal in the wing tanks', () => {
    const { figures } = cardOf('unusable fuel', asBuiltGrids(), 'Rowan');
    expect(figures).toHaveLength(1);
    expect(figures[0]).toMatchObject({
      label: 'wing tanks',
      shown: 'fuel',
      predicted: expect.closeTo(2 * 3.785411784e-3, 12),
      limit: expect.closeTo(2 * 3.785411784e-3, 12),
    });
  });
});

describe('what goes with the cards', () => {
  test('loadings begin with a predicted empty weight, or with a weighed one', () => {
    const { context, assessment } = assessed(plain);
    expect(emptyWeightWords(context, assessment)).toBe(
      'Loadings begin with an empty weight of 1,433.0 lb at 80.3 in, PREDICTED: weigh the aircraft and take the weighing in before flying any of these.',
    );
    const weighed = airframe('weighed with package', 'Elm');
    const { context: known, assessment: as } = assessed(weighed);
    expect(emptyWeightWords(known, as)).toMatch(/^Loadings begin with an empty weight of .*, as weighed\.$/);
  });

  test('what is written down: the columns that its test needs; both stalls those of a stall; a first flight none', () => {
    const columns = (name: TestCard['name']) =>
      recordedFields({ name } as TestCard).map(({ label }) => label);
    expect(columns('battery')).toEqual(['time']);
    expect(columns('stall, aft CG')).toEqual(['weight', 'flaps', 'calibrated airspeed']);
    expect(columns('stall, forward CG')).toEqual(columns('stall, aft CG'));
    expect(columns('first flights')).toEqual([]);
  });

  test('without a known flight the cards are those that need none', () => {
    const { context, assessment } = assessed({ ...plain, 'known points': [] });
    expect(flightCards(context, assessment).map(({ name }) => name)).toEqual([
      'first flights',
      'airspeed calibration',
      'fuel flow',
    ]);
  });
});
