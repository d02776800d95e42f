import type { Rating } from '../engineering/aircraftInFlight.ts';
import { coolingAirflow, coolingInletArea } from '../engineering/coolingAir.ts';
import { streamHeat } from '../engineering/coolingFlow.ts';
import { requiredExitArea } from '../engineering/coolingLimit.ts';
import type { Cell } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import { toSi } from '../units.ts';
import { attempt } from './attempt.ts';
import type { Context } from './context.ts';
import {
  governing,
  highestOat,
  leastInletArea,
  onAnotherDay,
  type StreamCooling,
  worstOf,
} from './cooling.ts';
import { conditionIn, hotDayAir } from './coolingClimbs.ts';
import { isComplete, oatText } from './coolingRows.ts';
import type { StreamData } from './coolingStreams.ts';
import type { Display, Shown } from './display.ts';
import type { Flight } from './flight.ts';
import type { Cooled } from './flying.ts';

const columns: readonly (readonly [string, Shown | undefined])[] = [
  ['Package', undefined],
  ['Stream', undefined],
  ['Power', undefined],
  ['At', undefined],
  ['Airspeed, true', 'speed'],
  ['Worst height', 'height'],
  ['OAT there', 'oat'],
  ['Heat', 'heatFlow'],
  ['Airflow', 'massFlow'],
  ['Temperature', 'engineTemperature'],
  ['Limit', 'engineTemperature'],
  ['Margin', 'temperatureMargin'],
  ['Highest OAT at the field', 'oat'],
  ['Exit needed', 'opening'],
  ['Exit built', 'opening'],
  ['Inlet, least', 'opening'],
  ['Inlet built', 'opening'],
  ['Verdict', undefined],
];

const oats = Array.from({ length: 12 }, (_, step) => -10 + 5 * step); // °C

/** Values in the order of the columns, in the workbook's units; text stands as it is. */
const line = (display: Display, values: readonly (number | string | undefined)[]): Cell[] =>
  columns.map(([, shown], index): Cell => {
    const value = values[index];
    return typeof value === 'number' && shown ? display.cell(shown, value) : (value ?? null);
  });

function powerWords(display: Display, { takeoffMinutes }: Package, rating: Rating): string {
  if (rating === 'continuous') return 'MCP';
  return takeoffMinutes === undefined ? 'takeoff' : `takeoff, ${display.text('minutes', takeoffMinutes)}`;
}

/** A stream in the worst hot-day climb of each rating and speed. */
function knownLines(display: Display, engine: Package, flight: Flight, each: StreamCooling): Cell[][] {
  const { data, stream, hotDay } = each;
  const { air } = flight.field;
  const ratings = ['continuous', 'takeoff'] as const;
  const speeds = ['best rate', 'cooling climb'] as const;
  return ratings.flatMap((rating) =>
    speeds.flatMap((speed): Cell[][] => {
      const worst = worstOf(hotDay, rating, speed);
      const fromField = worstOf(hotDay, rating, speed, air.pressureAltitude);
      if (worst === undefined) return [];
      const { climb, result } = worst;
      const { temperature, margin, flow } = result;
      const verdict = margin !== undefined && margin >= 0 ? 'holds' : 'TOO HOT';
      return [
        line(display, [
          engine.name,
          data.row.stream,
          powerWords(display, engine, rating),
          `${speed} speed`,
          climb.trueAirspeed,
          climb.air.pressureAltitude,
          climb.air.temperature,
          flow.heat,
          flow.airflow,
          temperature,
          stream.limit,
          margin,
          // Of a climb that goes on; takeoff power is over before the day decides
          rating === 'continuous' && fromField
            ? oatText(display, highestOat(engine, flight, stream, fromField))
            : undefined,
          requiredExitArea(stream, climb.condition) ?? 'none is enough',
          stream.exitArea,
          leastInletArea(worst),
          data.row.inletArea,
          rating === 'takeoff' && verdict !== 'holds' ? `${verdict} if held until steady` : verdict,
        ]),
      ];
    }),
  );
}

/** Of a stream that is not known: the heat and, for air leaving half as far above the outside as the limit, what it takes. */
function unknownLine(display: Display, engine: Package, flight: Flight, { row, heat }: StreamData): Cell[] {
  const air = hotDayAir(flight.field.air.pressureAltitude);
  const { trueAirspeed } = flight.atField.bestRate.continuous;
  const condition = conditionIn(engine, flight, 'continuous', air, trueAirspeed);
  const watts = attempt(() => streamHeat(heat, condition)).value;
  const rise = row.limit === undefined ? 0 : (row.limit - air.temperature) / 2;
  const airflow = watts === undefined || rise <= 0 ? undefined : coolingAirflow(watts, rise);
  return line(display, [
    engine.name,
    row.stream,
    'MCP',
    'best rate speed',
    trueAirspeed,
    air.pressureAltitude,
    air.temperature,
    watts,
    airflow,
    undefined,
    row.limit,
    undefined,
    undefined,
    undefined,
    row.exitArea,
    airflow && coolingInletArea(airflow, trueAirspeed, air.density, 1),
    row.inletArea,
    'not known',
  ]);
}

function packageLines(display: Display, { package: engine, flight, cooling }: Cooled): Cell[][] {
  if (flight === undefined || cooling === undefined) return [[engine.name, 'not known: see the findings']];
  return flight.streams.flatMap((data) => {
    const each = cooling.streams.find((known) => known.data === data);
    return each === undefined
      ? [unknownLine(display, engine, flight, data)]
      : knownLines(display, engine, flight, each);
  });
}

/** Least margin of all streams with the field at a temperature; nothing when one of them is not known. */
function leastMargin({ package: engine, flight, cooling }: Cooled, temperature: number): number | undefined {
  if (flight === undefined || cooling === undefined || !isComplete(cooling, flight)) return undefined;
  const margins = cooling.streams.map((each) => {
    const worst = governing(cooling, flight, each);
    return worst && onAnotherDay(engine, flight, each.stream, worst, temperature).margin;
  });
  return margins.some((margin) => margin === undefined) ? undefined : Math.min(...(margins as number[]));
}

/**
 * COOLING_CHECK: for a chart, the least margin against the day's warmth, first because its rows are always as many; below
 * it every stream in its worst climb on the hot day.
 */
export function coolingBlock(context: Context, flying: readonly Cooled[]): Cell[][] {
  const { display } = context;
  const field = display.text('height', context.catalogue.mission.elevation);
  const margin = display.unit('temperatureMargin');
  return [
    [
      `Least margin of a package's streams where all are known, recommended speed, MCP, by OAT at the mission's field (${field}), ${margin}`,
    ],
    ['OAT at the field, °C', ...flying.map(({ package: { name } }) => name)],
    ...oats.map((celsius): Cell[] => [
      celsius,
      ...flying.map((each): Cell => {
        const least = leastMargin(each, toSi('temperature', celsius, '°C'));
        return least === undefined ? null : display.point('temperatureMargin', least);
      }),
    ]),
    [
      'Steady climb on the hot day, 38 °C at sea level, at maximum takeoff weight; the worst height between sea level and ceiling',
    ],
    columns.map(([label]) => label),
    columns.map(([, shown]) => (shown ? display.unit(shown) : '')),
    ...flying.flatMap((each) => packageLines(display, each)),
  ];
}
