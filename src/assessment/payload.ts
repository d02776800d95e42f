import { payloadWithFuel, usefulLoad } from '../engineering/payload.ts';
import type { Package } from '../tables/packages.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { EmptyAircraft } from './emptyAircraft.ts';
import type { Finding } from './finding.ts';

/** A figure as the nominal weights give it, as expected, and as it may be promised. */
export interface Banded {
  readonly nominal: number;
  readonly expected: number;
  readonly countedOn: number;
}

export interface Payload {
  /** usable fuel of all tanks aboard: volume [m³] and weight [kg] */
  readonly fuelVolume: number;
  readonly fuelWeight: number;
  readonly usefulLoad: Banded;
  /** people and bags with all tanks full */
  readonly fullFuel: Banded;
  readonly findings: readonly Finding[];
}

/** The same figure for the nominal, the expected, and the heaviest empty weight that must be reckoned with. */
function each({ mass }: EmptyAircraft, figure: (emptyWeight: number) => number): Banded {
  const { nominal, expected, weightHalfWidth } = mass;
  return {
    nominal: figure(nominal.weight),
    expected: figure(expected.weight),
    countedOn: figure(expected.weight + weightHalfWidth),
  };
}

export function payloadOf(
  context: Context,
  engine: Package,
  empty: EmptyAircraft,
  configuration: Configuration,
): Payload {
  const { maximumTakeoffWeight, maximumZeroFuelWeight } = context.catalogue.airframe;
  const fuelVolume = configuration.tanks.reduce((volume, { usable }) => volume + usable, 0);
  const fuelWeight = fuelVolume * engine.fuelDensity;
  const fullFuel = each(empty, (weight) =>
    payloadWithFuel(maximumTakeoffWeight, weight, fuelWeight, maximumZeroFuelWeight),
  );
  const findings: Finding[] =
    fullFuel.countedOn >= 0
      ? []
      : [
          {
            gravity: fullFuel.nominal < 0 ? 'stop' : 'check',
            package: engine.name,
            subject: 'payload, full fuel',
            shown: 'payload',
            value: fullFuel.countedOn,
            limit: 0,
            source: 'airframe table: maximum takeoff weight',
            text: 'over the maximum weight with full tanks and nobody aboard',
          },
        ];
  return {
    fuelVolume,
    fuelWeight,
    usefulLoad: each(empty, (weight) => usefulLoad(maximumTakeoffWeight, weight)),
    fullFuel,
    findings,
  };
}
