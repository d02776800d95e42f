/** What may stand in a cell. */
import fc from 'fast-check';
import type { Cell } from '../../src/tables/cell.ts';

/** Everything a person, a paste or a formula may leave where a number belongs. */
export const oddCells: readonly Cell[] = [
  ...[
    0,
    -0,
    1,
    -1,
    0.1 + 0.2,
    1e-300,
    -1e-300,
    5e-324,
    1e12,
    1.0000001e12,
    1e15,
    1e100,
    -1e100,
    1e308,
    -1e308,
  ],
  ...[
    Number.MAX_SAFE_INTEGER,
    Number.MAX_VALUE,
    Number.EPSILON,
    -273.15,
    1 / 3,
    2 ** 31,
    -(2 ** 31),
    2 ** 53,
  ],
  ...['', ' ', '\u00a0', '\u200b', '\t\n', null, undefined],
  ...[true, false, 'TRUE', 'FALSE', 'yes', 'no'],
  ...[new Date(0), new Date('2024-02-29T12:00:00Z'), new Date(Number.NaN), new Date(8.64e15)],
  ...[
    '12',
    '-12',
    '+12',
    ' 12 ',
    '12.',
    '.5',
    '-.5',
    '012',
    '1.5',
    '\u22123.5',
    '\u00a07\u00a0',
    '8\u200b',
    '-0',
    '1e3',
    '1E-3',
  ],
  ...[
    '12,5',
    '1,200',
    '1.200,5',
    '1 200',
    "1'200",
    '1\u00a0200',
    '1\u202f200',
    '1_200',
    '1200-',
    '(12)',
    '12;5',
    ',5',
    '12,',
  ],
  ...[
    '75%',
    '75 %',
    '$12',
    '12 lb',
    '5 ft',
    '5\u2032',
    '12"',
    '1/2',
    '\u00bd',
    '\u0661\u0662',
    '\uff11\uff12',
    '0x10',
    '0b1',
  ],
  ...[
    '--5',
    '+-5',
    '-',
    '+',
    '.',
    '-.',
    'e',
    'NaN',
    'Infinity',
    '-Infinity',
    'undefined',
    'null',
    '[object Object]',
  ],
  ...['2024-02-29', '29.02.2024', '12:30', '=1+1', '+A1', '-A1', '@SUM(A1)', '=HYPERLINK("x")', "'12", "'"],
  ...['#REF!', '#N/A', '#DIV/0!', '#VALUE!', '#NAME?', '#BEZUG!', '#1 tank', '#', '# 1'],
  ...[
    'weight',
    'Ärger',
    'e\u0301',
    '\u00e9',
    '\u202e12',
    '\ufeff12',
    '\ud800',
    '\ud83d\udeeb',
    '\u0000',
    'a\nb',
    '<b>',
    '\\',
    '%s',
    '$&',
  ],
  ...['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', 'length'],
  'x'.repeat(60),
  'x'.repeat(50_000),
  `${'9'.repeat(400)}`,
  `0.${'0'.repeat(400)}1`,
];

export const hostileNumber: fc.Arbitrary<number> = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.integer(),
  fc.double({ min: -13, max: 13, noNaN: true }).map((power) => 10 ** power),
  fc.double({ min: -13, max: 13, noNaN: true }).map((power) => -(10 ** power)),
  fc.double({ min: -200, max: 6000, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
);

export const hostileCell: fc.Arbitrary<Cell> = fc.oneof(
  { arbitrary: fc.constantFrom(...oddCells), weight: 5 },
  { arbitrary: hostileNumber, weight: 4 },
  { arbitrary: hostileNumber.map(String), weight: 1 },
  { arbitrary: fc.string({ unit: 'binary', maxLength: 12 }), weight: 1 },
  { arbitrary: fc.date(), weight: 1 },
);

const grid = (rows: number, columns: number) =>
  fc.array(fc.array(hostileCell, { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  });

/** Ranges of every shape; a range of a sheet is a rectangle of at least one cell, the first two here are none. */
export const hostileRange: fc.Arbitrary<Cell[][]> = fc.oneof(
  fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 })).chain(([r, c]) => grid(r, c)),
  fc.constantFrom<Cell[][]>([], [[]], [[''], ['']], [[null, null]]),
);

/** What a cell means where a number belongs: digits with a decimal point and a sign, or nothing. Not with the code under test. */
export function meaning(cell: Cell): number | 'blank' | 'refused' {
  if (typeof cell === 'number') return cell;
  if (cell === null || cell === undefined) return 'blank';
  if (typeof cell !== 'string') return 'refused';
  const text = [...cell]
    .filter((letter) => !'\u200b\u200c\u200d\u2060'.includes(letter))
    .join('')
    .trim();
  if (text === '') return 'blank';
  const unsigned = '+-\u2212'.includes(text[0] as string) ? text.slice(1) : text;
  const [whole = '', part = '', ...more] = unsigned.split('.');
  const isDigits = [...`${whole}${part}`].every((letter) => letter >= '0' && letter <= '9');
  if (more.length > 0 || !isDigits || whole + part === '') return 'refused';
  const value = Number(`${whole || '0'}.${part || '0'}`);
  return Number.isFinite(value) ? ('-\u2212'.includes(text[0] as string) ? -value : value) : 'refused';
}
