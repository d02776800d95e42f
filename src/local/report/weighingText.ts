import type { Block } from '../block.ts';
import { type Emphasis, paragraph, rowTexts } from './layout.ts';

/** Rows of a block from the one whose first cell begins so, as many as wanted. */
function rowsFrom(block: Block, begins: string, count: number): Block {
  const start = block.findIndex(([first]) => String(first).startsWith(begins));
  return start < 0 ? [] : block.slice(start, start + count);
}

/** What the scales say against what was expected and quoted, and what alone would explain it; empty without a weighing. */
export function weighingText(block: Block, emphasis: Emphasis): string {
  const compared = rowsFrom(block, 'Against the prediction', 4).slice(2);
  if (compared.length === 0) return '';
  const lines = compared.map((row) => {
    const [stated, expected, band, weighed, accuracy, , difference] = rowTexts(row.slice(1, 8));
    const verdict = String(row[8]);
    const told = verdict === 'OUTSIDE' ? emphasis.check(verdict) : verdict;
    return `${row[0]}: stated ${stated}, expected ${expected} ± ${band}, weighed ${weighed} ± ${accuracy} ${row[9]}: ${difference} from what was expected, ${told}`;
  });
  const [where = []] = rowsFrom(block, 'the unexplained weight', 1);
  const placed = typeof where[1] === 'number' ? ` ${where[1]}` : '';
  const promised = rowsFrom(block, 'Against quote', 6)
    .filter((row) => row[4] === 'NOT KEPT' || row[4] === 'kept')
    .map(
      ([label, quoted, actual, difference, verdict, unit]) =>
        `${label}: quoted ${quoted}, as weighed ${actual} ${unit}, ${difference}: ${verdict}`,
    );
  const causes = block
    .map(([first]) => String(first))
    .filter((line) => /^(likeliest|no single weight)/.test(line));
  return [
    emphasis.heading('Weighing'),
    ...[...lines, `${where[0]}${placed} ${where[2] ?? ''}`, ...promised, ...causes].map((line) =>
      paragraph(line),
    ),
  ].join('\n');
}
