/** What an answer of a custom function must be, whatever it was given. */
import type { Cell } from '../../src/tables/cell.ts';
import type { Answer } from './script.ts';

/** Words of a runtime or of an engine room, which help nobody at a cell. */
const foreign =
  /Cannot read|is not iterable|is not a function|not defined|Invalid array length|Maximum call stack|Invalid time value|out of memory|Reduce of empty|toSi|fromSi|undefined|\bNaN\b|Infinity|\[object|the function must give|Invalid regular|toPrecision|toFixed|Cannot convert/;

const isCell = (cell: unknown): cell is Cell =>
  cell === null || typeof cell === 'string' || typeof cell === 'boolean' || Number.isFinite(cell);

/** What is wrong with a result; empty where nothing is. */
function faultOfValue(value: unknown, typed: readonly unknown[]): string {
  if (!Array.isArray(value))
    return typeof value === 'number' && Number.isFinite(value) ? '' : `gave ${String(value)}`;
  if (value.length === 0) return 'gave an empty array';
  for (const row of value as unknown[]) {
    if (!Array.isArray(row) || row.length === 0 || row.length !== (value[0] as unknown[]).length)
      return 'gave no rectangle';
    const wrong = row.find((cell) => !isCell(cell));
    if (row.some((cell) => !isCell(cell))) return `gave a cell of ${String(wrong)}`;
    const odd = row.find((cell) => typeof cell === 'string' && isAlien(cell, typed));
    if (odd !== undefined) return `gave "${String(odd)}"`;
  }
  return '';
}

/** True where a person typed it: names are listed in messages. */
const holds = (typed: unknown, text: string): boolean =>
  Array.isArray(typed)
    ? typed.some((inner) => holds(inner, text))
    : typeof typed === 'string' && typed.toLowerCase().includes(text);

/** True for words of the insides that nobody typed. */
function isAlien(text: string, typed: readonly unknown[]): boolean {
  const [alien] = foreign.exec(text) ?? [];
  return alien !== undefined && !holds(typed, alien.toLowerCase());
}

/** A message without what it quotes of the input. */
const withoutQuotes = (message: string) => message.replace(/got (".*?"|[^ ]+)(?= \(row|$)/gs, 'got …');

/** What is wrong with a message: every one begins with the function's name and then says what is meant. */
function faultOfMessage(
  name: string,
  message: string,
  kind: string,
  named: readonly string[],
  typed: readonly unknown[],
): string {
  if (kind !== 'RangeError') return `threw ${kind}: ${message}`;
  if (!message.startsWith(`${name}: `)) return `does not name itself: ${message}`;
  const text = withoutQuotes(message.slice(name.length + 2));
  if (isAlien(text, typed)) return `speaks of its insides: ${message}`;
  if (!named.some((word) => text.startsWith(word))) return `names no argument: ${message}`;
  return '';
}

export const faultOf = (
  name: string,
  answer: Answer,
  named: readonly string[],
  typed: readonly unknown[],
): string =>
  'value' in answer
    ? faultOfValue(answer.value, typed)
    : faultOfMessage(name, answer.message, answer.kind, named, typed);
