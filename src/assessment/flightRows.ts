import type { Takeoff } from '../engineering/takeoff.ts';
import { toSi } from '../units.ts';
import type { Comparison } from './assess.ts';
import type { ComparisonRow } from './comparisonRows.ts';
import type { Context } from './context.ts';
import type { Display, Shown } from './display.ts';
import type { Flight } from './flight.ts';
import type { Flying } from './flying.ts';

/** A line of the comparison that needs no more than flight and engine. */
export interface FlightRow extends ComparisonRow {
  readonly value: (flying: Flying) => number | string | undefined;
}

/** One figure of the flight; words where there is none to give. */
const row = (
  label: string,
  shown: Shown,
  value: (flight: Flight, flying: Flying) => number | string | undefined,
  differs = false,
): FlightRow => ({
  label,
  shown,
  differs,
  value: (flying) => flying.flight && value(flying.flight, flying),
});

/** Heights at which level speeds are shown side by side, in the workbook's unit. */
const shownHeights = { ft: [8000, 16_000], m: [2500, 5000] } as const;

const levelRow = (display: Display, setting: number, height: number, label: string) => {
  const altitude = toSi('height', height, display.units.height);
  return row(`${label}, ${display.text('height', altitude)}`, 'speed', ({ levelAt }) => {
    const level = levelAt(setting, altitude);
    return level.possible ? level.trueAirspeed : 'cannot';
  });
};

const runway = (takeoff: Takeoff, length: 'groundRoll' | 'distanceTo50Feet') =>
  takeoff.possible ? takeoff[length] : 'cannot';

const climbAtSeaLevel = row(
  'climb, sea level',
  'climb',
  ({ seaLevel }) => seaLevel.bestRate.takeoff.rateOfClimb,
  true,
);
const climbAtMcp = row('  at MCP', 'climb', ({ seaLevel }) => seaLevel.bestRate.continuous.rateOfClimb);
const climbAtField = row(
  'climb, mission’s field',
  'climb',
  ({ atField }) => atField.bestRate.takeoff.rateOfClimb,
  true,
);
const to50Feet = row(
  'to 50 ft, mission’s field',
  'runway',
  ({ takeoff }) => runway(takeoff, 'distanceTo50Feet'),
  true,
);
const stallLanding = row('stall, landing, calibrated', 'speed', ({ stall }) => stall.landing);

const ceilingRow = ({ display }: Context) =>
  row('service ceiling', 'height', ({ ceiling }) => {
    if (ceiling.found === 'yes') return ceiling.pressureAltitude;
    return ceiling.found === 'none' ? 'none' : `> ${display.number('height', ceiling.pressureAltitude)}`;
  });

/** Speed and climb in the comparison, true airspeeds. */
export function flightRows({ context }: Comparison): FlightRow[] {
  const { display } = context;
  const [low, high] = shownHeights[display.units.height];
  return [
    { ...levelRow(display, 0.75, low, 'level, up to 75 %'), differs: true },
    levelRow(display, 1, high, 'full throttle'),
    climbAtSeaLevel,
    climbAtMcp,
    climbAtField,
    ceilingRow(context),
    to50Feet,
    stallLanding,
  ];
}

/** Every figure that is not a curve, for the flight table. */
export function flightFigures(context: Context): FlightRow[] {
  const { display, catalogue } = context;
  const cruise = display.text('height', catalogue.mission.cruiseAltitude);
  const [low, high] = shownHeights[display.units.height];
  const reached = (
    label: string,
    shown: Shown,
    value: (climb: NonNullable<Flight['toCruise']>, flying: Flying) => number | undefined,
  ) =>
    row(label, shown, ({ toCruise }, flying) => {
      if (toCruise === undefined) return undefined;
      return toCruise.reached ? value(toCruise, flying) : 'not reached';
    });
  return [
    ...[low, high].flatMap((height) =>
      [0.75, 0.65, 0.55].map((setting) =>
        levelRow(display, setting, height, `level, up to ${Math.round(setting * 100)} %`),
      ),
    ),
    climbAtSeaLevel,
    climbAtMcp,
    row('  best-rate speed, true', 'speed', ({ seaLevel }) => seaLevel.bestRate.takeoff.trueAirspeed),
    row('  best-angle speed, true', 'speed', ({ seaLevel }) => seaLevel.bestAngle.trueAirspeed),
    climbAtField,
    row('  at MCP', 'climb', ({ atField }) => atField.bestRate.continuous.rateOfClimb),
    row('  best-rate speed, true', 'speed', ({ atField }) => atField.bestRate.takeoff.trueAirspeed),
    row('  best-angle speed, true', 'speed', ({ atField }) => atField.bestAngle.trueAirspeed),
    ceilingRow(context),
    reached(`time to ${cruise}`, 'minutes', ({ time }) => time),
    reached('  fuel', 'fuel', ({ fuel }, { engine, package: { fuelDensity } }) =>
      engine.consumption.rich === undefined ? undefined : fuel / fuelDensity,
    ),
    reached('  distance', 'distance', ({ distance }) => distance),
    row('ground roll, mission’s field', 'runway', ({ takeoff }) => runway(takeoff, 'groundRoll')),
    to50Feet,
    row('stall, clean, calibrated', 'speed', ({ stall }) => stall.clean),
    row('stall, takeoff, calibrated', 'speed', ({ stall }) => stall.takeoff),
    stallLanding,
    row('cooling drag area', 'dragArea', ({ coolingDragArea }) => coolingDragArea),
  ];
}
