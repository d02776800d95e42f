/** Numbers that follow the inputs without a jump, a part of an assessment at a time: what is not read is not computed. */
import type { Assessment } from '../../src/assessment/assess.ts';
import { worstOf } from '../../src/assessment/cooling.ts';
import { numbersOf } from './numbers.ts';

/** Not results, or told in words, or standing in an assessment a second time. */
const beside = [
  ...['row', 'findings', 'asked', 'context', 'package', 'configuration', 'data', 'streams', 'aircraft'],
  ...['items', 'fluids', 'scope', 'envelope', 'loads', 'stations', 'groups', 'rated', 'tanks'],
];

type Figures = Map<string, number>;
const of = (value: unknown, name: string, found: Figures = new Map()) =>
  numbersOf(value, beside, name, found);

/**
 * Which of several is the worst and what follows from that alone (its weight, arm, limit) jumps, and corners of a polygon come
 * and go: margins, and how far a polygon reaches, do not.
 */
function balance({ balance: { polygon, margins, loadings } }: Assessment): Figures {
  const found: Figures = new Map();
  for (const side of ['forward', 'aft'] as const) {
    if (polygon) found.set(`polygon ${side}`, Math.max(...polygon[side].map(({ weight }) => weight)));
    if (margins) found.set(`margin ${side}`, margins[side].margin);
  }
  for (const { name, takeoff, zeroFuel, worst, weight, burnBeforeLanding } of loadings) {
    of({ takeoff, zeroFuel, left: weight.margin, burnBeforeLanding }, name, found);
    if (worst) found.set(`${name} worst`, worst.margin);
  }
  return found;
}

/** On the hot day the heights looked at come and go: the least margins do not. */
function cooling({ cooling: found }: Assessment): Figures {
  const figures: Figures = new Map();
  for (const { data, hotDay, mission, idleTemperature } of found?.streams ?? []) {
    const { stream } = data.row;
    if (idleTemperature !== undefined) figures.set(`${stream} idle`, idleTemperature);
    for (const rating of ['continuous', 'takeoff'] as const)
      for (const speed of ['best rate', 'cooling climb'] as const)
        for (const [name, climbs] of [
          ['hot day', hotDay],
          ['mission', mission],
        ] as const) {
          const margin = worstOf(climbs, rating, speed)?.result.margin;
          if (margin !== undefined) figures.set(`${stream} ${name} ${rating} ${speed}`, margin);
        }
  }
  return figures;
}

function mission({ mission: found }: Assessment): Figures {
  const figures: Figures = new Map();
  // Another seating is another loading; another stream has another margin at the same share
  const seated = found?.loading?.seating.loads.map((load) => (load > 0 ? 1 : 0)).join('');
  for (const { name, leg, margin, share } of found?.conditions ?? [])
    if (margin !== undefined)
      figures.set(
        `${name} ${leg ?? 'both'}${name === 'CG' ? ` seated ${seated}` : ''}`,
        name === 'cooling' ? share : margin,
      );
  for (const { name, ...leg } of found?.legs ?? []) of(leg, name, figures);
  return figures;
}

function flight({ flight: found }: Assessment): Figures {
  if (found === undefined) return new Map();
  const { levelAt, ...figures } = found;
  const levels = Object.fromEntries(
    (
      [
        ['continuous', 0],
        [0.75, 2500],
        [0.55, 2500],
        ['continuous', 5000],
      ] as const
    ).map(([setting, altitude]) => [`level ${setting} ${altitude}`, levelAt(setting, altitude)]),
  );
  return of({ ...figures, levels }, '');
}

/** By name, what is read of an assessment. */
export const parts = {
  weight: ({ powerplant, empty, payload, price, installation }: Assessment) =>
    of({ powerplant, empty, payload, price, installation }, ''),
  balance,
  fuel: ({ fuel, electrical, cost }: Assessment) => of({ fuel, electrical, cost }, ''),
  flight,
  cooling,
  range: ({ range }: Assessment) =>
    of({ full: range?.fullTanks, most: range?.mostPayload, alone: range?.pilotAlone }, ''),
  mission,
} as const satisfies Readonly<Record<string, (assessment: Assessment) => Figures>>;

export type Part = keyof typeof parts;
