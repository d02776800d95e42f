import { type Block, isFilled, type Row } from '../block.ts';
import { type Emphasis, paragraph, rowTexts } from './layout.ts';

/** The number found and its limit: ` 351.7 against 330.0 lb`. */
function figures(row: Row): string {
  const [value = '', limit = ''] = rowTexts(row.slice(3, 5));
  const unit = isFilled(row[5]) ? ` ${row[5]}` : '';
  if (value === '') return '';
  return limit === '' ? ` ${value}${unit}` : ` ${value} against ${limit}${unit}`;
}

/** Findings in words, the gravest first; notes are counted. */
export function findingsText(block: Block, emphasis: Emphasis): string {
  const findings = block.slice(1).filter(([gravity]) => isFilled(gravity));
  const isNote = ([gravity]: Row) => String(gravity).endsWith('Note');
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
