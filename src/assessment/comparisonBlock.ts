import type { Cell } from '../tables/cell.ts';
import type { Comparison } from './assess.ts';
import { cautions } from './cautions.ts';
import { type ComparisonRow, comparisonGroups } from './comparisonRows.ts';
import { byGravity, gravityLabels } from './finding.ts';

const gravestShown = 8; // findings in words below the comparison; all of them stand in INSTALLATION_FINDINGS

function valueLine(row: ComparisonRow, comparison: Comparison): Cell[] {
  const { display } = comparison.context;
  const { shown } = row;
  const values = comparison.assessments.map((assessment): Cell => {
    const value = row.value(assessment, comparison);
    return typeof value === 'number' && shown ? display.cell(shown, value) : (value ?? 'not known');
  });
  return [row.label, shown ? display.unit(shown) : '', ...values];
}

/** Differences of the shown figures, so that the lines agree with each other to the last digit. */
function differenceLine(line: readonly Cell[], comparison: Comparison): Cell[] {
  const at = comparison.assessments.indexOf(comparison.baseline) + 2;
  const baseline = line[at];
  const differences = line.slice(2).map((value, index): Cell => {
    if (index + 2 === at || typeof value !== 'number' || typeof baseline !== 'number') return null;
    return Number((value - baseline).toPrecision(12));
  });
  return [`  against ${comparison.baseline.package.name}`, line[1] as Cell, ...differences];
}

/** PACKAGE_COMPARISON: attributes down in groups, one column a package, the gravest findings and the cautions below. */
export function comparisonBlock(comparison: Comparison): Cell[][] {
  const { context, assessments, findings } = comparison;
  const header: Cell[] = [
    context.catalogue.airframe.name,
    'unit',
    ...assessments.map((each) => each.package.name),
  ];
  const body = comparisonGroups.flatMap(({ title, rows }): Cell[][] => {
    const lines = rows(comparison).flatMap((row): Cell[][] => {
      const line = valueLine(row, comparison);
      return row.differs && assessments.length > 1 ? [line, differenceLine(line, comparison)] : [line];
    });
    return lines.length === 0 ? [] : [[title], ...lines];
  });
  const gravest = byGravity(findings)
    .filter(({ gravity }) => gravity !== 'note')
    .slice(0, gravestShown)
    .map((finding): Cell[] => [
      `${gravityLabels[finding.gravity]}: ${finding.package || 'all'}, ${finding.subject}: ${finding.text}`,
    ]);
  const rest = findings.length - gravest.length;
  return [
    header,
    ...body,
    ['Gravest findings'],
    ...(gravest.length > 0 ? gravest : [['none']]),
    ...(rest > 0 ? [[`and ${rest} more in the findings`]] : []),
    ['Cautions'],
    ...cautions.map((caution): Cell[] => [caution]),
  ];
}
