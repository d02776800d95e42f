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

/** Differences of the shown figures, so that the lines agree with each other to the last digit. */
function differenceLine(line: readonly Cell[], baselineName: string, at: number): Cell[] {
  const baseline = line[at];
  const differences = line.slice(2).map((value, index): Cell => {
    if (index + 2 === at || typeof value !== 'number' || typeof baseline !== 'number') return null;
    return Number((value - baseline).toPrecision(12));
  });
  return [`  against ${baselineName}`, line[1] as Cell, ...differences];
}

/** Attributes down, one column a package, with the difference from the baseline where it means something. */
export function comparisonLines(
  rows: readonly ComparisonRow[],
  comparison: Comparison,
  assessments: readonly Assessment[],
): Cell[][] {
  const { baseline } = comparison;
  const at = assessments.indexOf(baseline);
  return rows.flatMap((row): Cell[][] => {
    const line = valueLine(row, comparison, assessments);
    return row.differs && at >= 0 && assessments.length > 1
      ? [line, differenceLine(line, baseline.package.name, at + 2)]
      : [line];
  });
}
