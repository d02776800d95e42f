import { airAt, type PowerSetting } from '../engineering/aircraftInFlight.ts';
import { type SpeedMargins, speedMargins } from '../engineering/speedLimits.ts';
import type { Package } from '../tables/packages.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';
import type { Flight } from './flight.ts';
import { powerCorners, scanHeights } from './scanHeights.ts';

interface FastFlight {
  readonly altitude: number;
  readonly trueAirspeed: number;
  readonly margins: SpeedMargins;
}

/** Level speeds from sea level to the ceiling against the limits; one that is not given is not looked at. */
function levelFlights(
  context: Context,
  engine: Package,
  flight: Flight,
  setting: PowerSetting,
): FastFlight[] {
  const { cruiseLimitSpeed, neverExceedSpeed, neverExceedKind } = context.catalogue.airframe;
  const some = (neverExceedSpeed ?? cruiseLimitSpeed) as number;
  const limits = {
    normalOperating: cruiseLimitSpeed ?? some,
    neverExceed: some,
    neverExceedIsTrue: neverExceedKind !== 'calibrated airspeed',
  };
  const heights = scanHeights(flight.ceiling.pressureAltitude, powerCorners(context, engine));
  return heights.flatMap((altitude) => {
    const level = flight.levelAt(setting, altitude);
    if (!level.possible) return [];
    const { trueAirspeed } = level;
    return [{ altitude, trueAirspeed, margins: speedMargins(limits, trueAirspeed, airAt(altitude)) }];
  });
}

/** The worst flight beyond a limit, and from which height on it is beyond. */
function beyond(flights: readonly FastFlight[], limit: 'normalOperating' | 'neverExceed') {
  const over = flights.filter(({ margins }) => margins[limit] < 0);
  const [first] = over;
  if (first === undefined) return undefined;
  const worst = over.reduce((a, b) => (b.margins[limit] < a.margins[limit] ? b : a));
  return { from: first.altitude, worst };
}

/** Level speeds beyond V_NO or V_NE: what a turbocharged engine does at height. */
export function speedFindings(context: Context, engine: Package, flight: Flight): Finding[] {
  const { airframe, mission } = context.catalogue;
  const { cruiseLimitSpeed, neverExceedSpeed, neverExceedKind } = airframe;
  const { display } = context;
  const missing = (subject: string, text: string): Finding => ({
    gravity: 'check',
    package: '',
    subject,
    source: 'airframe table',
    text,
  });
  const findings: Finding[] = [
    ...(cruiseLimitSpeed === undefined ? [missing('VNO', 'not given: no speed is checked against it')] : []),
    ...(neverExceedSpeed === undefined ? [missing('VNE', 'not given: no speed is checked against it')] : []),
    ...(neverExceedSpeed !== undefined && neverExceedKind === undefined
      ? [missing('VNE', 'calibrated or true is not said: taken as true, the more careful')]
      : []),
  ];
  if (cruiseLimitSpeed === undefined && neverExceedSpeed === undefined) return findings;
  const cruise = levelFlights(context, engine, flight, mission.cruiseSetting);
  const fullThrottle = levelFlights(context, engine, flight, 'continuous');
  const limits = [
    { name: 'VNE', limit: neverExceedSpeed, key: 'neverExceed', gravity: 'stop' },
    { name: 'VNO', limit: cruiseLimitSpeed, key: 'normalOperating', gravity: 'check' },
  ] as const;
  for (const { name, limit, key, gravity } of limits) {
    if (limit === undefined) continue;
    const inCruise = beyond(cruise, key);
    const over = inCruise ?? beyond(fullThrottle, key);
    if (over === undefined) continue;
    const { worst, from } = over;
    const power = inCruise ? `${Math.round(mission.cruiseSetting * 100)} % power` : 'full throttle';
    const isTrue = key === 'neverExceed' && neverExceedKind !== 'calibrated airspeed';
    const start = from === 0 ? 'at sea level already' : `from ${display.text('height', from)} up`;
    findings.push({
      // Within reach of full throttle only, VNO is a matter of the throttle
      gravity: (inCruise ?? key === 'neverExceed') ? gravity : 'note',
      package: engine.name,
      subject: name,
      shown: 'speed',
      value: isTrue ? worst.trueAirspeed : worst.margins.calibratedAirspeed,
      limit,
      source: `airframe table: ${name}, ${isTrue ? 'true' : 'calibrated'} airspeed`,
      text: `level flight at ${power} exceeds it ${start}, most at ${display.text('height', worst.altitude)}`,
    });
  }
  return findings;
}
