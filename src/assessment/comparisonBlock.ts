import type { Cell } from '../tables/cell.ts';
import type { Comparison } from './assess.ts';
import { cautions } from './cautions.ts';
import { comparisonLines } from './comparisonLines.ts';
import { comparisonGroups } from './comparisonRows.ts';
import { byGravity, gravityLabels } from './finding.ts';

const gravestShown = 8; // findings in words below the comparison; all of them stand in INSTALLATION_FINDINGS

/** PACKAGE_COMPARISON: attributes down in groups, one column a package, the gravest findings and the cautions below. */
export function comparisonBlock(comparison: Comparison): Cell[][] {
  const { context, assessments, findings } = comparison;
  const header: Cell[] = [
    context.catalogue.airframe.name,
    'unit',
    ...assessments.map((each) => each.package.name),
  ];
  const body = comparisonGroups.flatMap(({ title, rows }): Cell[][] => {
    const lines = comparisonLines(rows(comparison), comparison, assessments);
    return lines.length === 0 ? [] : [[title(comparison)], ...lines];
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
