import { groundRollFactor } from '../engineering/takeoff.ts';
import type { Equipment } from '../tables/equipment.ts';
import { atPower, packageInFlight } from './aircraft.ts';
import { attempt } from './attempt.ts';
import { type Context, packageNamed } from './context.ts';
import { engineOf } from './engine.ts';
import { hardRunway, takeoffFrom } from './field.ts';
import type { Finding } from './finding.ts';
import { airOf } from './knownAir.ts';
import type { FlownPolar } from './knownFlights.ts';

const plausible = { low: 0.7, high: 1.4 } as const; // see `groundRollFactor`

/** Measured over predicted ground roll from the known points table; 1 where none was measured, or none can be believed. */
export function measuredRoll(
  context: Context,
  flown: FlownPolar,
  equipment: readonly Equipment[],
): { readonly factor: number; readonly findings: readonly Finding[] } {
  const { airframe, knownPoints } = context.catalogue;
  const finding = (gravity: Finding['gravity'], text: string): Finding => ({
    gravity,
    package: '',
    subject: 'takeoff roll',
    source: 'known points table',
    text,
  });
  const point = knownPoints.find(({ condition, roll }) => condition === 'takeoff roll' && roll !== undefined);
  if (point?.roll === undefined) {
    const text =
      'none measured: takeoff distances are the model’s alone, within 10 % for certificated aircraft (rms)';
    return { factor: 1, findings: [finding('note', text)] };
  }
  const measured = point.roll;
  const { value: found, refusal } = attempt(() => {
    const engine = packageNamed(context.catalogue, point.package);
    const { aircraft, settled } = packageInFlight(
      context,
      flown,
      engine,
      engineOf(context, engine),
      equipment,
    );
    const conditions = takeoffFrom(airframe, airOf(point), hardRunway, point.weight, 1);
    return { factor: groundRollFactor(atPower(aircraft, point.power), conditions, measured), settled };
  });
  if (found === undefined) {
    return { factor: 1, findings: [finding('check', `the measured roll is not used: ${refusal}`)] };
  }
  const { factor, settled } = found;
  const doubtful = factor < plausible.low || factor > plausible.high;
  const text = `the measured roll is ${factor.toFixed(2)} of the predicted one: something in its conditions is wrong`;
  const unsettled = `speed and cooling drag of ${point.package} in the measured roll do not settle: takeoff distances are doubtful`;
  return {
    factor,
    findings: [
      ...(settled ? [] : [finding('check', unsettled)]),
      ...(doubtful ? [finding('check', text)] : []),
    ],
  };
}
