import { airAt, type PowerSetting } from '../engineering/aircraftInFlight.ts';
import { bestRateOfClimb } from '../engineering/climb.ts';
import type { Cell } from '../tables/cell.ts';
import { toSi } from '../units.ts';
import type { Context } from './context.ts';
import type { Flight } from './flight.ts';
import { flightFigures } from './flightRows.ts';
import type { Flying } from './flying.ts';

/** Heights of the curves, as many for every aircraft and in every unit so that a chart keeps its place. */
const heights = (unit: 'ft' | 'm') =>
  Array.from({ length: 31 }, (_, step) => step * (unit === 'ft' ? 1000 : 300));

const climbAt = ({ aircraft, mass }: Flight, altitude: number) => {
  const { rateOfClimb } = bestRateOfClimb(aircraft, 'continuous', airAt(altitude), mass);
  return rateOfClimb < 0 ? undefined : rateOfClimb;
};

const speedAt = (setting: PowerSetting) => (flight: Flight, altitude: number) => {
  const level = flight.levelAt(setting, altitude);
  return level.possible ? level.trueAirspeed : undefined;
};

/**
 * FLIGHT_TABLE, for charts: climb and level speeds against pressure altitude, blank where it no longer flies; the single
 * figures below.
 */
export function flightBlock(context: Context, flying: readonly Flying[]): Cell[][] {
  const { display, catalogue } = context;
  const { height } = display.units;
  const weight = display.text('payload', catalogue.airframe.maximumTakeoffWeight);
  const names = flying.map(({ package: { name } }) => name);
  const section = (
    title: string,
    shown: 'climb' | 'speed',
    value: (flight: Flight, altitude: number) => number | undefined,
  ): Cell[][] => [
    [`${title}, standard air, ${weight}, ${display.unit(shown)}`],
    [`pressure altitude, ${height}`, ...names],
    ...heights(height).map((at): Cell[] => [
      at,
      ...flying.map(({ flight }): Cell => {
        const altitude = toSi('height', at, height);
        const found = flight && altitude <= flight.powerKnownUpTo ? value(flight, altitude) : undefined;
        return found === undefined ? null : display.point(shown, found);
      }),
    ]),
  ];
  const figures = flightFigures(context).map(({ label, shown, value }): Cell[] => [
    label,
    shown ? display.unit(shown) : '',
    ...flying.map((each): Cell => {
      const found = value(each);
      return typeof found === 'number' && shown ? display.cell(shown, found) : (found ?? 'not known');
    }),
  ]);
  return [
    ...section('Best rate of climb at maximum continuous power', 'climb', climbAt),
    ...section('Level speed at 75 % or the full throttle left, true', 'speed', speedAt(0.75)),
    ...section(
      'Level speed at full throttle, maximum continuous power, true',
      'speed',
      speedAt('continuous'),
    ),
    [`Figures at the maximum takeoff weight, ${weight}; takeoff power where nothing else is said`],
    ['', 'unit', ...names],
    ...figures,
  ];
}
