import type { Station } from '../tables/stations.ts';

/** Who and what goes along. */
export interface CabinLoad {
  readonly persons: number;
  readonly personWeight: number;
  readonly bags: number;
}

/** Where they sit and lie. */
export interface Seating {
  /** weight in each station, in the order of the stations table */
  readonly loads: readonly number[];
  /** for more bags; negative: what finds none */
  readonly bagRoom: number;
}

export interface SeatingPlan {
  /** every way to seat them that the stations allow, seats in front filled first; empty when there is none */
  readonly seatings: readonly Seating[];
  /** how many of that weight could be seated */
  readonly seats: number;
}

const slack = 1 + 1e-9;

/** What an empty station takes, its own limit and its group's. */
function roomIn(stations: readonly Station[], loads: readonly number[], index: number): number {
  const { maximum, group, groupMaximum } = stations[index] as Station;
  if (groupMaximum === undefined) return maximum;
  const together = stations.reduce(
    (sum, other, at) => (other.group === group ? sum + (loads[at] as number) : sum),
    0,
  );
  return Math.min(maximum, groupMaximum - together);
}

/** Numbers of the stations that pass a test, by arm from the front. */
const fromTheFront = (stations: readonly Station[], test: (station: Station) => boolean) =>
  stations
    .map((_, index) => index)
    .filter((index) => test(stations[index] as Station))
    .sort((a, b) => (stations[a] as Station).arm - (stations[b] as Station).arm);

/** Bags into the places without seats, in the order given. */
function stow(
  stations: readonly Station[],
  seated: readonly number[],
  places: readonly number[],
  bags: number,
): Seating {
  const fill = (most: number) => {
    const loads = [...seated];
    let left = most;
    for (const index of places) {
      const load = Math.min(left, Math.max(0, roomIn(stations, loads, index)));
      loads[index] = (loads[index] as number) + load;
      left -= load;
    }
    return { loads, left };
  };
  const all = stations.reduce((sum, { maximum }) => sum + maximum, 0);
  return { loads: fill(bags).loads, bagRoom: all - fill(all).left - bags };
}

/**
 * Every way to seat people and to stow bags: a seat that always holds somebody (its minimum is above 0) gets one first.
 * Bags go into the places without seats, from the front and from the back.
 * @source enumeration
 */
export function seatingPlan(
  stations: readonly Station[],
  { persons, personWeight, bags }: CabinLoad,
): SeatingPlan {
  const seats = fromTheFront(stations, (station) => station.persons > 0);
  const seatings: Seating[] = [];

  /** Fills the seats from `at` on with up to `left` people; calls back with the loads and how many are left. */
  const seat = (
    at: number,
    loads: readonly number[],
    left: number,
    seated: (loads: readonly number[], left: number) => void,
  ): void => {
    const index = seats[at];
    if (index === undefined) {
      seated(loads, left);
      return;
    }
    const station = stations[index] as Station;
    const room = Math.floor((Math.max(0, roomIn(stations, loads, index)) / personWeight) * slack);
    const least = Math.ceil(station.minimum / personWeight / slack);
    for (let number = Math.min(station.persons, left, room); number >= least; number--) {
      const filled = loads.map((load, other) => (other === index ? number * personWeight : load));
      seat(at + 1, filled, left - number, seated);
    }
  };
  const nobody = stations.map(() => 0);
  const places = fromTheFront(stations, (station) => station.persons === 0);
  seat(0, nobody, persons, (loads, left) => {
    if (left > 0) return;
    seatings.push(stow(stations, loads, places, bags));
    if (places.length > 1 && bags > 0) seatings.push(stow(stations, loads, [...places].reverse(), bags));
  });
  const all = seats.reduce((sum, index) => sum + (stations[index] as Station).persons, 0);
  let most = 0;
  seat(0, nobody, all, (_, left) => {
    most = Math.max(most, all - left);
  });
  return { seatings, seats: most };
}
