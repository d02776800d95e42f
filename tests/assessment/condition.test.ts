/** One condition of a mission. Every number by hand. */
import { describe, expect, test } from 'vitest';
import { conditionName, measured, shareLeft, stated } from '../../src/assessment/condition.ts';

const fuel = { name: 'fuel', leg: undefined };
const takeoffOut = { name: 'takeoff', leg: 'out' } as const;

test('what is left as a share of what there is, what is missing as a share of what is needed', () => {
  expect(shareLeft(100, 80)).toBe(0.2);
  expect(shareLeft(80, 100)).toBe(-0.2);
});

describe('with a number', () => {
  test('its margin, and its share no further from nothing than all', () => {
    expect(measured(fuel, 'fuel', 12, 0.2, 'left')).toEqual({
      ...{ name: 'fuel', leg: undefined, shown: 'fuel', margin: 12, share: 0.2 },
      ...{ text: 'left', state: 'met' },
    });
    expect(measured(fuel, 'fuel', 12, 1.5, '').share).toBe(1);
    expect(measured(fuel, 'fuel', -12, -1.5, '')).toMatchObject({ margin: -12, share: -1, state: 'missed' });
  });

  test('met with nothing to spare, and by what rounding takes', () => {
    const stateOf = (share: number) => measured(fuel, 'fuel', share, share, '').state;
    expect(stateOf(0)).toBe('met');
    expect(stateOf(-1e-9)).toBe('met');
    expect(stateOf(-2e-9)).toBe('missed');
  });
});

test('without a number it is scarcest when missed, last of all otherwise', () => {
  expect(stated(takeoffOut, 'missed', 'no thrust')).toEqual({
    ...{ name: 'takeoff', leg: 'out', state: 'missed', text: 'no thrust' },
    ...{ shown: undefined, margin: undefined, share: -1 },
  });
  expect(stated(fuel, 'open', '').share).toBe(1);
});

test('its name in words', () => {
  expect(conditionName(stated(takeoffOut, 'met', ''))).toBe('takeoff out');
  expect(conditionName(stated(fuel, 'met', ''))).toBe('fuel');
});
