import { requiredExitArea } from '../engineering/coolingLimit.ts';
import type { Package } from '../tables/packages.ts';
import { practice } from '../tables/practice.ts';
import type { Context } from './context.ts';
import {
  type Cooling,
  governing,
  heatKnownUpTo,
  highestOat,
  leastInletArea,
  type StreamCooling,
  type StreamInClimb,
  worstOf,
} from './cooling.ts';
import type { Finding } from './finding.ts';
import type { Flight } from './flight.ts';

const isOver = (found: StreamInClimb | undefined): found is StreamInClimb =>
  found !== undefined && (found.result.margin ?? -1) < 0;

/** The climb a stream fails in, from the gravest: what is recommended, then what may be avoided. */
function failure(
  { recommended }: Cooling,
  { hotDay, mission }: StreamCooling,
): { readonly gravity: Finding['gravity']; readonly found: StreamInClimb; readonly day: string } | undefined {
  const hot = 'on the hot day';
  const own = 'on the mission’s day';
  const steady = `${hot}, were it held long enough to be steady,`;
  const attempts = [
    { gravity: 'stop', found: worstOf(hotDay, 'continuous', recommended), day: hot },
    { gravity: 'stop', found: worstOf(mission, 'continuous', recommended), day: own },
    { gravity: 'check', found: worstOf(hotDay, 'continuous', 'best rate'), day: hot },
    { gravity: 'check', found: worstOf(mission, 'continuous', 'best rate'), day: own },
    { gravity: 'check', found: worstOf(hotDay, 'takeoff', recommended), day: steady },
    { gravity: 'note', found: worstOf(hotDay, 'takeoff', 'best rate'), day: steady },
  ] as const;
  for (const { gravity, found, day } of attempts) if (isOver(found)) return { gravity, found, day };
  return undefined;
}

/** What the limit needs: the highest temperature at the field for the recommended climb, and the exit in the failed one. */
function remedy(
  context: Context,
  engine: Package,
  flight: Flight,
  cooling: Cooling,
  each: StreamCooling,
  found: StreamInClimb,
) {
  const { display } = context;
  const recommended = governing(cooling, flight, each);
  const oat = recommended && highestOat(engine, flight, each.stream, recommended);
  const speed = recommended && display.text('speed', recommended.climb.trueAirspeed);
  const exit = requiredExitArea(each.stream, found.climb.condition);
  const built = display.text('opening', each.stream.exitArea);
  return [
    oat?.found === 'yes'
      ? `at ${speed} it holds up to ${display.text('oat', oat.temperature)} at the field`
      : '',
    exit === undefined
      ? 'no exit area is enough'
      : `needs ${display.text('opening', exit)} of exit there, has ${built}`,
  ]
    .filter((words) => words !== '')
    .join('; ');
}

function limitFindings(
  context: Context,
  engine: Package,
  flight: Flight,
  cooling: Cooling,
  each: StreamCooling,
): Finding[] {
  const { display } = context;
  const failed = failure(cooling, each);
  if (failed === undefined) return [];
  const { gravity, found, day } = failed;
  const { climb, result } = found;
  const power = climb.rating === 'takeoff' ? 'takeoff power' : 'MCP';
  const over =
    result.margin === undefined
      ? 'no air flows'
      : `${display.text('temperatureMargin', -result.margin)} over`;
  const where = `${power}, ${climb.speed} speed ${display.text('speed', climb.trueAirspeed)}, ${display.text('height', climb.air.pressureAltitude)}`;
  return [
    {
      gravity,
      package: engine.name,
      subject: `cooling, ${each.data.row.stream}`,
      shown: 'engineTemperature',
      value: result.temperature,
      limit: each.stream.limit,
      source: each.data.row.source ?? 'cooling table',
      text: `${over} ${day} at ${where}; ${remedy(context, engine, flight, cooling, each, found)}`,
    },
  ];
}

function idleFindings(engine: Package, { data, stream, idleTemperature }: StreamCooling): Finding[] {
  if (idleTemperature === undefined || idleTemperature <= stream.limit) return [];
  return [
    {
      gravity: 'note',
      package: engine.name,
      subject: `cooling, ${data.row.stream}`,
      shown: 'engineTemperature',
      value: idleTemperature,
      limit: stream.limit,
      source: `idle taken as 10 % of MCP: ${practice}`,
      text: 'on a hot day at ground idle it would go beyond its limit in the end: an indication only',
    },
  ];
}

/** An inlet that would have to take the air in faster than it comes spills and loses the recovery reckoned with. */
function inletFindings(
  context: Context,
  engine: Package,
  flight: Flight,
  cooling: Cooling,
  each: StreamCooling,
): Finding[] {
  const { inletArea, stream, source = 'cooling table' } = each.data.row;
  const found = governing(cooling, flight, each);
  if (inletArea === undefined || found === undefined) return [];
  const least = leastInletArea(found);
  if (inletArea >= least) return [];
  return [
    {
      gravity: 'check',
      package: engine.name,
      subject: `cooling, ${stream}, inlet`,
      shown: 'opening',
      value: inletArea,
      limit: least,
      source,
      text: `too small for its air at ${context.display.text('speed', found.climb.trueAirspeed)}: the pressure reckoned with is not to be had`,
    },
  ];
}

/** What a buyer and a builder must know of the cooling, one finding a stream for the gravest that it fails. */
export function coolingFindings(
  context: Context,
  engine: Package,
  flight: Flight,
  cooling: Cooling,
): Finding[] {
  const note = (subject: string, text: string): Finding => ({
    gravity: 'note',
    package: engine.name,
    subject,
    source: 'packages and cooling tables',
    text,
  });
  const assumed = cooling.streams
    .filter(({ data }) => data.assumed.length > 0)
    .map(({ data }) => `${data.row.stream}: ${data.assumed.join(', ')}`);
  return [
    ...cooling.streams.flatMap((each) => limitFindings(context, engine, flight, cooling, each)),
    ...cooling.streams.flatMap((each) => idleFindings(engine, each)),
    ...cooling.streams.flatMap((each) => inletFindings(context, engine, flight, cooling, each)),
    ...(assumed.length > 0 ? [note('cooling', `assumed for ${assumed.join('; ')}`)] : []),
    ...(engine.coolingClimbSpeed === undefined
      ? [note('cooling-climb speed', 'not given: cooling is judged at best-rate speed')]
      : []),
    ...cooling.streams
      .map(({ data }) => heatKnownUpTo(data, engine))
      .filter(Number.isFinite)
      .map(
        (height): Finding => ({
          ...note(
            'cooling, charge air',
            `not judged above ${context.display.text('height', height)}, where its heat is known: a compressor's grows up to the critical altitude`,
          ),
          gravity: 'check',
        }),
      ),
  ];
}
