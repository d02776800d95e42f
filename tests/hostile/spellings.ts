/** What a field takes, what it refuses, and how else a value may be written. */
import { type Cell, nameKey } from '../../src/tables/cell.ts';
import { meaning, oddCells } from './cells.ts';
import type { Spot } from './spots.ts';

type Kind = 'number' | 'text' | 'term' | 'names' | 'choice' | 'flag' | 'day';

/** What a field takes, found by asking it. */
export function kindOf({ read: readField, choices, unit }: Spot['field']): Kind {
  const takes = (cell: Cell) => 'value' in readField(cell, unit === undefined ? '' : 'x');
  if (choices !== undefined) return choices.includes('TRUE') ? 'flag' : 'choice';
  if (unit !== undefined) return 'number';
  if (takes('2026-03-14') && !takes('a name')) return 'day';
  if (!takes('a name')) return 'number';
  const one = readField('a, b', '');
  if ('value' in one && Array.isArray(one.value)) return 'names';
  return takes(5) ? 'text' : 'term';
}

/** What every kind of field refuses, whatever the table. */
export const refusedBy: Readonly<Record<Kind, readonly Cell[]>> = {
  number: oddCells.filter((cell) => meaning(cell) === 'refused'),
  text: [true, false, new Date(0), new Date(Number.NaN), '#REF!', '#BEZUG!'],
  term: [true, 12, new Date(0), '#N/A'],
  names: [true, new Date(0), '#N/A'],
  choice: [true, 12, new Date(0), '#N/A', 'another', 'x'.repeat(5000), '1,5', 'toString', '__proto__'],
  flag: [1, 0, 12, new Date(0), '#N/A', 'perhaps', 'x', '\u2713', 'TRUEE'],
  day: [
    true,
    12,
    45_000,
    '#N/A',
    'yesterday',
    '3/4/26',
    '14.03.2026',
    '2026-02-30',
    '2026-3-4',
    new Date(Number.NaN),
  ],
};

/** The same in another spelling. */
export function respelt(cell: Cell, kind: Kind): Cell[] {
  if (kind === 'number') {
    const value = meaning(cell) as number;
    const plainly = String(value);
    const forms = [
      plainly,
      ` ${plainly} `,
      `\u00a0${plainly}\u00a0`,
      `${plainly}\u200b`,
      `\t${plainly}`,
      value,
    ];
    const positive =
      value > 0 ? [`+${plainly}`] : value < 0 ? [plainly.replace('-', '\u2212')] : ['-0', '+0', -0];
    return [
      ...forms,
      ...positive,
      plainly.includes('.') ? `${plainly}0` : `${plainly}.`,
      plainly.replace(/^0\./, '.'),
    ];
  }
  const word = String(cell);
  if (kind === 'day') return [` ${word}`, `${word}\u00a0`, new Date(`${word}T12:00:00`)];
  if (kind === 'flag') {
    const yes = ['TRUE', 'true', ' Yes ', 'yes', '\u00a0TRUE', true];
    return cell === true || nameKey(word) === 'true' ? yes : ['FALSE', 'False', 'no', ' NO', false];
  }
  const spaced = [
    ` ${word}`,
    `${word}\u00a0`,
    `\u200b${word}`,
    word.replace(/ /g, '\u00a0'),
    word.replace(/ /g, '  '),
  ];
  return kind === 'term' || kind === 'choice' ? [...spaced, word.toUpperCase(), word.toLowerCase()] : spaced;
}
