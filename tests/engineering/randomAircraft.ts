/** Random aircraft to be loaded. */
import fc from 'fast-check';
import type { LoadingLimits } from '../../src/engineering/loadingPolygon.ts';
import { between } from './between.ts';

const station = (prefix: string) => (index: number) =>
  fc
    .record({ arm: between(20, 260), minimum: between(0, 60), room: between(0, 350), kept: fc.boolean() })
    .map(({ arm, minimum, room, kept }) => ({
      name: `${prefix}${index}`,
      arm,
      minimum: kept ? minimum : 0,
      maximum: (kept ? minimum : 0) + room,
    }));

const stations = (prefix: string, most: number) =>
  fc
    .integer({ min: prefix === 'seat' ? 1 : 0, max: most })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => station(prefix)(index))));

/** Seats and tanks anywhere, a maximum weight that may or may not be reached, limits or none. */
export const randomAircraft: fc.Arbitrary<LoadingLimits> = fc
  .record({
    weight: between(500, 2000),
    cg: between(80, 120),
    seats: stations('seat', 6),
    tanks: stations('tank', 3),
    takeoffRoom: between(0, 1),
    zeroFuelRoom: fc.option(between(0, 1), { nil: undefined }),
    groupRoom: fc.option(between(0, 1), { nil: undefined }),
  })
  .map(({ weight, cg, seats, tanks, takeoffRoom, zeroFuelRoom, groupRoom }) => {
    const sum = (key: 'minimum' | 'maximum', of: readonly { minimum: number; maximum: number }[]) =>
      of.reduce((total, one) => total + one[key], 0);
    const room = (of: readonly { minimum: number; maximum: number }[], share: number) =>
      sum('minimum', of) + share * (sum('maximum', of) - sum('minimum', of));
    const pair = seats.slice(0, 2);
    const paired = groupRoom !== undefined && pair.length === 2;
    const groups = paired
      ? [{ name: 'pair', stations: pair.map(({ name }) => name), maximum: room(pair, groupRoom) }]
      : [];
    return {
      empty: { weight, moment: weight * cg },
      stations: seats,
      tanks,
      maximumWeight: weight + room([...seats, ...tanks], takeoffRoom),
      maximumZeroFuelWeight: zeroFuelRoom === undefined ? undefined : weight + room(seats, zeroFuelRoom),
      groups,
    };
  });

/** The same aircraft with no limit but its maximum weight. */
export const withoutOtherLimits = ({
  empty,
  stations,
  tanks,
  maximumWeight,
}: LoadingLimits): LoadingLimits => ({
  empty,
  stations,
  tanks,
  maximumWeight,
});
