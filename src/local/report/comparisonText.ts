import type { Cell } from '../../tables/cell.ts';
import {
  type Emphasis,
  packagesAcross,
  pageWidth,
  paragraph,
  rowTexts,
  signed,
  valueLine,
} from './layout.ts';

const filled = (cell: Cell) => cell !== null && cell !== undefined && cell !== '';
const isHeading = (row: readonly Cell[]) => filled(row[0]) && !row.slice(1).some(filled);

/** The rows of a block up to the heading named. */
function upTo(block: readonly (readonly Cell[])[], heading: string): readonly (readonly Cell[])[] {
  const end = block.findIndex((row) => isHeading(row) && row[0] === heading);
  return end < 0 ? block : block.slice(0, end);
}

function line(row: readonly Cell[], chosen: readonly number[], emphasis: Emphasis): string {
  const [label, unit] = row;
  if (isHeading(row)) return `\n${emphasis.heading(String(label))}`;
  const values = rowTexts(row).filter((_, index) => chosen.includes(index));
  const isDifference = String(label).startsWith('  against ');
  const text = valueLine(
    String(label),
    filled(unit) ? String(unit) : '',
    isDifference ? values.map(signed) : values,
  );
  return isDifference ? emphasis.quiet(text) : text;
}

/** The comparison as text, a few packages side by side at a time. */
export function comparisonText(block: readonly (readonly Cell[])[], emphasis: Emphasis): string {
  const [header = [], ...body] = upTo(block, 'Gravest findings');
  const columns = header.map((_, index) => index).slice(2);
  const pages: string[] = [];
  for (let start = 0; start < columns.length; start += packagesAcross) {
    const chosen = columns.slice(start, start + packagesAcross);
    const names = chosen.map((index) => String(header[index]));
    pages.push(
      [
        emphasis.heading(valueLine(String(header[0]), 'unit', names)),
        '─'.repeat(pageWidth),
        ...body.map((row) => line(row, chosen, emphasis)),
      ].join('\n'),
    );
  }
  return pages.join('\n\n');
}

/** The number found and its limit: ` 351.7 against 330.0 lb`. */
function figures(row: readonly Cell[]): string {
  const [value = '', limit = ''] = rowTexts(row.slice(3, 5));
  const unit = filled(row[5]) ? ` ${row[5]}` : '';
  if (value === '') return '';
  return limit === '' ? ` ${value}${unit}` : ` ${value} against ${limit}${unit}`;
}

/** Findings in words, the gravest first; notes are counted. */
export function findingsText(block: readonly (readonly Cell[])[], emphasis: Emphasis): string {
  const findings = block.slice(1).filter(([gravity]) => filled(gravity));
  const isNote = ([gravity]: readonly Cell[]) => String(gravity).endsWith('Note');
  const lines = findings
    .filter((row) => !isNote(row))
    .map((row) => {
      const [gravity, name, subject, , , , words, source] = row;
      const mark = String(gravity);
      const shown = mark.endsWith('Stop') ? emphasis.stop(mark) : emphasis.check(mark);
      return paragraph(`${shown}  ${name}, ${subject}${figures(row)}: ${words} (${source})`, 4);
    });
  const notes = findings.filter(isNote).length;
  return [
    emphasis.heading('Findings'),
    ...(lines.length > 0 ? lines : ['None that stops or wants checking.']),
    ...(notes > 0 ? [`${notes} notes more, among them every default used: see the Findings sheet.`] : []),
  ].join('\n');
}

/** The cautions at the foot of the comparison. */
export function cautionsText(block: readonly (readonly Cell[])[], emphasis: Emphasis): string {
  const start = block.findIndex(([first]) => first === 'Cautions');
  const cautions = start < 0 ? [] : block.slice(start + 1).map(([text]) => paragraph(String(text)));
  return [emphasis.heading('Cautions'), ...cautions].join('\n');
}
