import { type Envelope, heaviest } from '../engineering/envelope.ts';
import type { Station as LoadStation } from '../engineering/loading.ts';
import { type LoadingPolygon, loadingPolygon } from '../engineering/loadingPolygon.ts';
import type { MassTotal } from '../engineering/massItem.ts';
import type { Context } from './context.ts';
import { seatStations, stationGroups } from './loadStations.ts';

/** The weight up to which loadings are looked at: nothing is known of the CG limits beyond their last point. */
export const heaviestLoading = ({ catalogue }: Context, envelope: Envelope): number =>
  Math.min(catalogue.airframe.maximumTakeoffWeight, heaviest(envelope));

/** Every loading of an empty aircraft with these tanks; undefined when the least loads are beyond a maximum weight. */
export function everyLoading(
  context: Context,
  envelope: Envelope,
  empty: MassTotal,
  tanks: readonly LoadStation[],
): LoadingPolygon | undefined {
  const { airframe, stations } = context.catalogue;
  const { maximumZeroFuelWeight } = airframe;
  const maximumWeight = heaviestLoading(context, envelope);
  const leastCabin = stations.reduce((weight, { minimum }) => weight + minimum, empty.weight);
  const least = tanks.reduce((weight, { minimum }) => weight + minimum, leastCabin);
  if (least > maximumWeight || leastCabin > (maximumZeroFuelWeight ?? maximumWeight)) return undefined;
  return loadingPolygon({
    empty,
    stations: seatStations(stations),
    tanks,
    maximumWeight,
    maximumZeroFuelWeight,
    groups: stationGroups(stations),
  });
}
