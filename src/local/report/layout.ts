import wrapAnsi from 'wrap-ansi';
import { numberText } from '../../assessment/display.ts';
import type { Cell } from '../../tables/cell.ts';

/** The report fits a terminal of this many columns. */
export const pageWidth = 80;

const labelWidth = 28;
const unitWidth = 8;
const leastValueWidth = 11;
export const packagesAcross = Math.floor((pageWidth - labelWidth - unitWidth) / leastValueWidth);

/** Emphasis for a terminal; plain where colour is not wanted. */
export interface Emphasis {
  readonly heading: (text: string) => string;
  readonly stop: (text: string) => string;
  readonly check: (text: string) => string;
  readonly quiet: (text: string) => string;
}

const same = (text: string) => text;
export const plainText: Emphasis = { heading: same, stop: same, check: same, quiet: same };
const sequence = (code: string) => (text: string) => `\u001b[${code}m${text}\u001b[0m`;
export const terminalColours: Emphasis = {
  heading: sequence('1'),
  stop: sequence('1;31'),
  check: sequence('33'),
  quiet: sequence('2'),
};

const decimalsOf = (value: number) => `${value}`.split('.')[1]?.length ?? 0;

/** Numbers of one row with the same decimals, thousands separated. */
export function rowTexts(cells: readonly Cell[]): string[] {
  const decimals = Math.max(0, ...cells.map((cell) => (typeof cell === 'number' ? decimalsOf(cell) : 0)));
  return cells.map((cell) => {
    if (typeof cell === 'number') return numberText(cell, 10 ** -decimals);
    return cell === null || cell === undefined ? '' : String(cell);
  });
}

/** A difference carries its sign. */
export function signed(text: string): string {
  return text === '' || text.startsWith('\u2212') || /^[0.]+$/.test(text) ? text : `+${text}`;
}

/** Wraps a paragraph, later lines indented. */
export function paragraph(text: string, indent = 2): string {
  const pad = ' '.repeat(indent);
  const [first = '', ...rest] = wrapAnsi(text, pageWidth - indent, { trim: true }).split('\n');
  return [first, ...rest.map((line) => pad + line)].join('\n');
}

/** One line of a table: label, unit, values right-aligned; a long label takes a line of its own. */
export function valueLine(label: string, unit: string, values: readonly string[]): string {
  const width = Math.floor((pageWidth - labelWidth - unitWidth) / Math.max(values.length, packagesAcross));
  const aligned = values.map((value) => ` ${value}`.padStart(width)).join('');
  const head = label.length < labelWidth ? label.padEnd(labelWidth) : `${label}\n${' '.repeat(labelWidth)}`;
  return `${head}${unit.padEnd(unitWidth)}${aligned}`.trimEnd();
}
