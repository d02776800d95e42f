import { cautions } from '../assessment/cautions.ts';
import { type Gravity, gravities, gravityLabels, gravityMeanings } from '../assessment/finding.ts';
import type { StartLine } from './layout.ts';

const heading = (text: string): StartLine => ({ text, look: 'heading' });

const meaning = (gravity: Gravity) => {
  const [first = '', ...rest] = gravityMeanings[gravity];
  return `${first.toUpperCase()}${rest.join('')}.`;
};

/** The first sheet: what this is, how it is used, what the marks mean, what to beware of. */
export const startLines = (
  sheets: readonly { name: string; question: string }[],
  versions: string,
): readonly StartLine[] => [
  {
    text: 'Compares engine packages for one kit airframe: price, weight, balance, payload, fuel, speed, cooling, cost.',
  },
  {
    text: 'Every number is computed from the tables in this workbook, in the units chosen in the Airframe table.',
  },
  heading('How to use it'),
  {
    text: '1',
    note: 'Fill in the data sheets at the end, or load a sample from the menu to see how they are filled.',
  },
  { text: '2', note: 'State the mission, tick the equipment.' },
  { text: '3', note: 'Read Comparison first, then Findings: what stands in the way, and what is not known.' },
  {
    text: '4',
    note: 'After adding or removing a package, a seat or a tank, choose "Lay out or upgrade" in the menu: columns and colours follow.',
  },
  heading('What the marks mean'),
  {
    text: 'input',
    note: 'Framed and filled: yours to fill in, the unit beside it too. Nothing else is framed.',
    look: 'input',
  },
  ...gravities.map(
    (gravity): StartLine => ({ text: gravityLabels[gravity], note: meaning(gravity), look: gravity }),
  ),
  { text: 'not known', note: 'A datum is missing. It is never taken as zero.', look: 'unknown' },
  {
    text: 'default',
    note: 'Nobody gave this value: a customary one stands for it, and Findings names it.',
    look: 'unknown',
  },
  heading('Beware'),
  ...cautions.map((text): StartLine => ({ text })),
  { text: 'The data sheets warn before they are changed. That prevents accidents, not intent.' },
  { text: 'Clear cells rather than delete rows where tables stand side by side.' },
  heading('The sheets'),
  ...sheets.map(({ name, question }): StartLine => ({ text: name, note: question })),
  heading('Versions'),
  { text: versions },
];
