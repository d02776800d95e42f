import { call } from '../../src/functions/library.ts';
import { comparisonText } from '../../src/local/report/comparisonText.ts';
import { plainText } from '../../src/local/report/layout.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { sample } from '../sample.ts';
import { tableArguments } from '../tableArguments.ts';
import { percent, signedPercent, summaries } from '../validation/validation.ts';
import { withBlock } from './markers.ts';

/** The comparison of the sample as `npm start` prints it. */
function comparison(): string {
  const block = call('PACKAGE_COMPARISON', tableArguments(sample('godwit'))) as Cell[][];
  return `\`\`\`\n${comparisonText(block, plainText)}\n\`\`\``;
}

/** Predicted against published figures of certificated aircraft, in short. */
function validation(): string {
  const rows = summaries().map(
    ({ title, count, rms, mean, worst }) =>
      `| ${title} | ${count} | ${percent(rms)} | ${signedPercent(mean)} | ${percent(worst)} |`,
  );
  return ['| predicted | figures | rms error | mean error | worst |', '|---|---|---|---|---|', ...rows].join(
    '\n',
  );
}

/** README with its generated blocks as they should be now. */
export function withReadmeBlocks(document: string): string {
  return withBlock(withBlock(document, 'comparison', comparison()), 'validation', validation());
}
