import { type Block, isAlone, isFilled, type Row } from '../block.ts';
import {
  type Emphasis,
  packagesAcross,
  pageWidth,
  paragraph,
  rowTexts,
  signed,
  valueLine,
} from './layout.ts';

/** The rows of a block up to the heading named. */
function upTo(block: Block, heading: string): Block {
  const end = block.findIndex((row) => isAlone(row) && row[0] === heading);
  return end < 0 ? block : block.slice(0, end);
}

function line(row: Row, chosen: readonly number[], emphasis: Emphasis): string {
  const [label, unit] = row;
  if (isAlone(row)) return `\n${emphasis.heading(String(label))}`;
  const values = rowTexts(row).filter((_, index) => chosen.includes(index));
  const isDifference = String(label).startsWith('  against ');
  const text = valueLine(
    String(label),
    isFilled(unit) ? String(unit) : '',
    isDifference ? values.map(signed) : values,
  );
  return isDifference ? emphasis.quiet(text) : text;
}

/** The comparison as text, a few packages side by side at a time. */
export function comparisonText(block: Block, emphasis: Emphasis): string {
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

/** The cautions at the foot of the comparison. */
export function cautionsText(block: Block, emphasis: Emphasis): string {
  const start = block.findIndex(([first]) => first === 'Cautions');
  const cautions = start < 0 ? [] : block.slice(start + 1).map(([text]) => paragraph(String(text)));
  return [emphasis.heading('Cautions'), ...cautions].join('\n');
}
