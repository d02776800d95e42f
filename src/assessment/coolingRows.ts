import { requiredExitArea } from '../engineering/coolingLimit.ts';
import type { Comparison } from './assess.ts';
import type { ComparisonRow } from './comparisonRows.ts';
import {
  type Cooling,
  governing,
  type HighestOat,
  highestOat,
  type StreamCooling,
  type StreamInClimb,
  worstOf,
} from './cooling.ts';
import type { Display } from './display.ts';
import type { Flight } from './flight.ts';
import type { Cooled } from './flying.ts';

const kinds = ['fins', 'coolant', 'oil', 'charge air'] as const;
type Kind = (typeof kinds)[number];

/** Whether every stream is known. */
export const isComplete = (cooling: Cooling, flight: Flight) =>
  cooling.streams.length === flight.streams.length;

/** The least margin over all streams; nothing when one of them is not known. */
function leastMargin(
  { cooling, flight }: Cooled,
  climbOf: (stream: StreamCooling, cooling: Cooling) => StreamInClimb | undefined,
): number | undefined {
  if (cooling === undefined || flight === undefined || !isComplete(cooling, flight)) return undefined;
  const margins = cooling.streams.map((stream) => climbOf(stream, cooling)?.result.margin);
  return margins.some((margin) => margin === undefined) ? undefined : Math.min(...(margins as number[]));
}

/** Of one stream, words where the package has none. */
function ofStream(
  { cooling, flight }: Cooled,
  kind: Kind,
  value: (stream: StreamCooling, cooling: Cooling) => number | string | undefined,
): number | string | undefined {
  if (cooling === undefined || flight === undefined) return undefined;
  if (!flight.streams.some(({ row }) => row.stream === kind)) return '–';
  const stream = cooling.streams.find(({ data }) => data.row.stream === kind);
  return stream && value(stream, cooling);
}

function streamRows(kind: Kind, display: Display): ComparisonRow[] {
  return [
    {
      label: `${kind}, margin in climb`,
      shown: 'temperatureMargin',
      differs: false,
      value: (assessment) =>
        ofStream(
          assessment,
          kind,
          ({ hotDay }, { recommended }) => worstOf(hotDay, 'continuous', recommended)?.result.margin,
        ),
    },
    {
      label: '  exit needed / built',
      shown: 'opening',
      differs: false,
      value: (assessment) =>
        ofStream(assessment, kind, ({ stream, hotDay }, { recommended }) => {
          const worst = worstOf(hotDay, 'continuous', recommended);
          const needed = worst && requiredExitArea(stream, worst.climb.condition);
          const text = needed === undefined ? 'none' : display.number('opening', needed);
          return `${text} / ${display.number('opening', stream.exitArea)}`;
        }),
    },
  ];
}

/** How warm it may be at the field, in words where the search found no end. */
export function oatText(display: Display, { found, temperature }: HighestOat): number | string {
  if (found === 'yes') return temperature;
  return found === 'exceededAtColdest' ? 'none' : `> ${display.number('oat', temperature)}`;
}

/** Of the stream that stands the least. */
function highestOfAll({ cooling, flight, package: engine }: Cooled): HighestOat | undefined {
  if (cooling === undefined || flight === undefined || !isComplete(cooling, flight)) return undefined;
  return cooling.streams
    .map((stream) => {
      const worst = governing(cooling, flight, stream);
      return worst && highestOat(engine, flight, stream.stream, worst);
    })
    .filter((found) => found !== undefined)
    .sort((a, b) => a.temperature - b.temperature)[0];
}

/** Cooling in the comparison, in steady climb at maximum continuous power. */
export function coolingRows({ assessments, context: { display } }: Comparison): ComparisonRow[] {
  const present = kinds.filter((kind) =>
    assessments.some(({ flight }) => flight?.streams.some(({ row }) => row.stream === kind)),
  );
  if (present.length === 0) return [];
  return [
    ...present.flatMap((kind) => streamRows(kind, display)),
    {
      label: 'least margin, best-rate speed',
      shown: 'temperatureMargin',
      differs: false,
      value: (assessment) =>
        leastMargin(assessment, ({ hotDay }) => worstOf(hotDay, 'continuous', 'best rate')),
    },
    {
      label: 'least margin, mission’s day',
      shown: 'temperatureMargin',
      differs: false,
      value: (assessment) =>
        leastMargin(assessment, ({ mission }, { recommended }) =>
          worstOf(mission, 'continuous', recommended),
        ),
    },
    {
      label: 'highest OAT at the field',
      shown: 'oat',
      differs: false,
      value: (assessment) => {
        const highest = highestOfAll(assessment);
        return highest && oatText(display, highest);
      },
    },
  ];
}
