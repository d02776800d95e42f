import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import type { TestLoading } from './testLoading.ts';

/** Who sits and what lies where, in words: fuel by volume. */
export function loadingWords(
  { display }: Context,
  { package: engine, configuration }: Assessment,
  { stations, loads, ballast }: Pick<TestLoading, 'stations' | 'loads' | 'ballast'>,
): string {
  const firstTank = stations.length - configuration.tanks.length;
  const parts = stations.map(({ name }, index) => {
    const load = loads[index] as number;
    return index < firstTank
      ? `${name} ${display.text('payload', load)}`
      : `${name} ${display.text('fuel', load / engine.fuelDensity)}`;
  });
  const extra = ballast
    ? [`ballast ${display.text('payload', ballast.weight)} at ${display.text('arm', ballast.arm)}`]
    : [];
  return [...parts, ...extra].join(', ');
}
