import type { Cell } from '../tables/cell.ts';
import type { Display, Shown } from './display.ts';

/**
 * How grave a finding is: stop, the package as configured is outside a limit; check, something doubtful or missing that
 * changes the answer; note, worth knowing.
 */
export const gravities = ['stop', 'check', 'note'] as const;
export type Gravity = (typeof gravities)[number];

/** The word and the mark of each gravity; neither is a colour. */
export const gravityLabels: Readonly<Record<Gravity, string>> = {
  stop: '■ Stop',
  check: '▲ Check',
  note: '· Note',
};

/** What each gravity means, in words. */
export const gravityMeanings: Readonly<Record<Gravity, string>> = {
  stop: 'a limit is exceeded as configured',
  check: 'something doubtful or missing changes the answer',
  note: 'worth knowing, defaults among them',
};

/** One thing that whoever decides should know. */
export interface Finding {
  readonly gravity: Gravity;
  /** the package it concerns; empty for all of them */
  readonly package: string;
  readonly subject: string;
  readonly shown?: Shown;
  readonly value?: number | undefined;
  readonly limit?: number | undefined;
  /** where the limit, or the default, comes from */
  readonly source: string;
  readonly text: string;
}

/** The gravest first; otherwise in the order in which they were found. */
export function byGravity(findings: readonly Finding[]): Finding[] {
  return gravities.flatMap((gravity) => findings.filter((finding) => finding.gravity === gravity));
}

/** How many findings of one gravity there are. */
export function countOf(findings: readonly Finding[], gravity: Gravity): number {
  return findings.filter((finding) => finding.gravity === gravity).length;
}

/** All findings as a block: gravity, package, subject, number, limit, unit, words, source. */
export function findingsBlock(findings: readonly Finding[], display: Display): Cell[][] {
  return [
    ['Finding', 'Package', 'Subject', 'Value', 'Limit', 'Unit', 'In words', 'Limit or value from'],
    ...byGravity(findings).map((finding): Cell[] => {
      const { shown } = finding;
      return [
        gravityLabels[finding.gravity],
        finding.package === '' ? 'all' : finding.package,
        finding.subject,
        shown ? display.cell(shown, finding.value) : null,
        shown ? display.cell(shown, finding.limit) : null,
        shown ? display.unit(shown) : '',
        finding.text,
        finding.source,
      ];
    }),
  ];
}
