import type { Cell } from '../tables/cell.ts';
import type { Assessment, Comparison } from './assess.ts';
import type { ComparisonRow } from './comparisonRows.ts';

function valueLine(row: ComparisonRow, comparison: Comparison, assessments: readonly Assessment[]): Cell[] {
  const { display } = comparison.context;
  const { shown } = row;
  const values = assessments.map((assessment): Cell => {
    const value = row.value(assessment, comparison);
    return typeof value === 'number' && shown ? display.cell(shown, value) : (value ?? 'not known');
  });
  return [row.label, shown ? display.unit(shown) : '', ...values];
}

/**
 * Differences of the shown figures, so that the lines agree with each other to the last digit. The line stands there with
 * a single package too: what stands below keeps its place, and its looks, when a second one comes.
 */
function differenceLine(
  line: readonly Cell[],
  assessments: readonly Assessment[],
  { baseline }: Comparison,
  baselineValue: Cell,
): Cell[] {
  const isAlone = assessments.length === 1 && assessments[0] === baseline;
  if (isAlone) return ['  against another package', line[1] as Cell, 'none'];
  const differences = assessments.map((assessment, index): Cell => {
    const value = line[index + 2];
    if (assessment === baseline || typeof value !== 'number' || typeof baselineValue !== 'number')
      return null;
    return Number((value - baselineValue).toPrecision(12));
  });
  return [`  against ${baseline.package.name}`, line[1] as Cell, ...differences];
}

/** Attributes down, one column a package, with the difference from the baseline where it means something. */
export function comparisonLines(
  rows: readonly ComparisonRow[],
  comparison: Comparison,
  assessments: readonly Assessment[],
): Cell[][] {
  const { baseline } = comparison;
  return rows.flatMap((row): Cell[][] => {
    const line = valueLine(row, comparison, assessments);
    if (!row.differs) return [line];
    const baselineValue = valueLine(row, comparison, [baseline])[2] ?? null;
    return [line, differenceLine(line, assessments, comparison, baselineValue)];
  });
}
