import type { Assessment, Comparison } from './assess.ts';
import type { LoadingCheck } from './loadingCheck.ts';
import { loadingRegionBlock } from './loadingRegionBlock.ts';

/** CG across, weight up, in the workbook's units. */
export type PicturePoint = readonly [cg: number, weight: number];

/** A named loading on its way from takeoff through its worst state to zero fuel. */
export interface PictureLoading {
  readonly name: string;
  readonly passes: boolean;
  readonly path: readonly PicturePoint[];
}

/** All loadings of one package over the CG limits, as plain numbers for whoever draws them. */
export interface LoadingPicture {
  readonly packageName: string;
  /** place of the package, and of the baseline, among all: they decide how it is drawn */
  readonly index: number;
  readonly count: number;
  readonly baseline: number;
  readonly armUnit: string;
  readonly weightUnit: string;
  /** closed outline of the CG limits */
  readonly limits: readonly PicturePoint[];
  /** closed outline of every loading that the stations and tanks allow; empty where none is within the weights */
  readonly region: readonly PicturePoint[];
  readonly loadings: readonly PictureLoading[];
}

export function loadingPicture(comparison: Comparison, assessment: Assessment): LoadingPicture {
  const { context, assessments, baseline } = comparison;
  const { display } = context;
  const [, ...lines] = loadingRegionBlock(comparison, [assessment]);
  const outline = (column: number): PicturePoint[] =>
    lines.flatMap((line): PicturePoint[] => {
      const [cg, weight] = [line[0], line[column]];
      return typeof cg === 'number' && typeof weight === 'number' ? [[cg, weight]] : [];
    });
  const point = ({ cg, weight }: { cg: number; weight: number }): PicturePoint => [
    display.point('arm', cg),
    display.point('weight', weight),
  ];
  const path = ({ takeoff, worst, zeroFuel }: LoadingCheck) => {
    const isBetween =
      worst !== undefined && worst.weight < takeoff.weight - 1e-6 && worst.weight > zeroFuel.weight + 1e-6;
    return [takeoff, ...(isBetween ? [worst] : []), zeroFuel].map(point);
  };
  return {
    packageName: assessment.package.name,
    index: assessments.indexOf(assessment),
    count: assessments.length,
    baseline: assessments.indexOf(baseline),
    armUnit: display.unit('arm'),
    weightUnit: display.unit('weight'),
    limits: outline(1),
    region: outline(2),
    loadings: assessment.balance.loadings.map((check) => ({
      name: check.name,
      passes: check.passes,
      path: path(check),
    })),
  };
}
