import type { Side } from '../engineering/envelope.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import { loadingWords } from './loadingWords.ts';
import { flapSettings, stallAt } from './stallSpeeds.ts';
import { bands, type TestCard } from './testCard.ts';
import { type TestLoading, testLoading } from './testLoading.ts';

function reach({ display }: Context, { leastMargin, margin, side }: TestLoading): string {
  if (leastMargin > 1e-3)
    return `the limit is not reached within the weights: ${display.text('arm', leastMargin)} inside`;
  if (leastMargin < -1e-6)
    return `EVEN THE LEAST LOADING GOES ${display.text('arm', -leastMargin)} BEYOND THE ${side.toUpperCase()} LIMIT: do not fly it`;
  return margin > 1e-3 ? 'on the limit when the tanks are empty' : 'on the limit at takeoff';
}

function stallCard(context: Context, assessment: Assessment, side: Side): TestCard {
  const { airframe } = context.catalogue;
  const loading = testLoading(context, assessment, side);
  const name = side === 'forward' ? 'stall, forward CG' : 'stall, aft CG';
  const caution =
    side === 'aft'
      ? 'come to it in steps, from the middle aft; stop where the stick force goes; height for a spin, parachute, no turns'
      : 'enough elevator to stall it and to flare; height for a spin; power off first';
  const base = {
    name,
    record: 'CG, indicated airspeed, elevator left, wing drop; three stalls with each flap setting',
    reduce:
      'calibrated speed times √(maximum weight/weight); C_L = 2 W/(ρ₀ V² S); the lowest C_L, at forward CG, counts (14 CFR 23.49, from memory)',
    caution,
  } as const;
  if (loading === undefined)
    return { ...base, setUp: 'the least loads are beyond a maximum weight', figures: [] };
  const { weight, cg, limit, leastMargin } = loading;
  return {
    ...base,
    setUp: `pilot alone, the rest as ballast, strapped: ${loadingWords(context, assessment, loading)}; ${reach(context, loading)}`,
    figures: [
      { label: 'takeoff weight', shown: 'weight', predicted: weight, limit: airframe.maximumTakeoffWeight },
      {
        label: `CG at takeoff, ${side} limit`,
        shown: 'arm',
        predicted: cg,
        limit,
        ...(side === 'forward' ? { least: true as const } : {}),
      },
      {
        label: 'least margin until the tanks are empty',
        shown: 'arm',
        predicted: leastMargin,
        limit: 0,
        least: true,
      },
      ...flapSettings.map((flaps) => ({
        label: `stall, ${flaps}, calibrated`,
        shown: 'speed' as const,
        predicted: stallAt(airframe, weight, flaps),
        band: bands.stall,
      })),
    ],
  };
}

/** Stalls at both ends of the CG range, with the loadings that reach them. */
export const stallCards = (context: Context, assessment: Assessment): TestCard[] => [
  stallCard(context, assessment, 'forward'),
  stallCard(context, assessment, 'aft'),
];
