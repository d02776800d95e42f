import type { AircraftInFlight } from '../engineering/aircraftInFlight.ts';
import type { Envelope } from '../engineering/envelope.ts';
import { fuelMassFlow } from '../engineering/fuelFlow.ts';
import type { MassTotal } from '../engineering/massItem.ts';
import type { Mission } from '../tables/mission.ts';
import type { Package } from '../tables/packages.ts';
import type { Tank } from '../tables/tanks.ts';
import { toSi } from '../units.ts';
import type { Assessment } from './assess.ts';
import type { Context } from './context.ts';
import type { ClimbSpeed } from './coolingClimbs.ts';
import type { StreamData } from './coolingStreams.ts';
import type { Finding } from './finding.ts';
import { cruisePower, hasOxygen } from './hourlyCost.ts';

/** What is asked of one package: the mission, and the aircraft that is to fly it. */
export interface MissionCase {
  readonly context: Context;
  readonly mission: Mission;
  readonly engine: Package;
  readonly tanks: readonly Tank[];
  readonly empty: MassTotal;
  /** how well the empty CG is known */
  readonly cgHalfWidth: number;
  readonly envelope: Envelope;
  /** undefined where speed or fuel consumption are not known */
  readonly aircraft: AircraftInFlight | undefined;
  readonly streams: readonly StreamData[];
  /** at best rate, or at the speed the package states for a hot climb */
  readonly climb: ClimbSpeed;
  readonly groundRollFactor: number;
  readonly hasOxygen: boolean;
  /** cruise is outside the fuel points: the nearest consumption is used */
  readonly fuelHeld: boolean;
  /** for start, taxi and run-up [kg] */
  readonly taxiFuel: number;
  /** what keeps the package off this airframe whatever the mission */
  readonly barred: readonly Finding[];
}

/** Start, taxi, run-up and takeoff as handbooks of light aircraft allow for them: common practice, from memory. */
const taxiTime = toSi('time', 5, 'min'); // at takeoff fuel flow

/** What a mission is asked of: everything but the answer. */
export type Assessed = Omit<Assessment, 'mission' | 'range' | 'findings'>;

/** The mission with the empty weight to be counted on: expected, and what it may be off. */
export function missionCase(context: Context, assessed: Assessed): MissionCase {
  const { package: engine, configuration, empty, engine: curves, flight, balance } = assessed;
  const { expected, weightHalfWidth } = empty.mass;
  const weight = expected.weight + weightHalfWidth;
  const rich = curves.consumption.rich?.(engine.takeoffPower / engine.continuousPower);
  const parts = [configuration, curves, assessed.installation, assessed.electrical];
  return {
    context,
    mission: context.catalogue.mission,
    engine,
    tanks: configuration.tanks,
    empty: { weight, moment: (expected.moment * weight) / expected.weight },
    cgHalfWidth: empty.expectedCg.halfWidth,
    envelope: balance.envelope,
    aircraft: rich && flight?.aircraft,
    streams: flight?.streams ?? [],
    climb: 'best rate',
    groundRollFactor: flight?.groundRollFactor ?? 1,
    hasOxygen: hasOxygen(engine, configuration),
    fuelHeld: curves.consumption.lean?.(cruisePower(context, curves)).extrapolated ?? false,
    taxiFuel: rich ? taxiTime * fuelMassFlow(engine.takeoffPower, rich.bsfc) : 0,
    barred: parts.flatMap(({ findings }) => findings.filter(({ gravity }) => gravity === 'stop')),
  };
}

/** The same with the weights as they are stated. */
export const asStated = (asked: MissionCase, { empty }: Assessed): MissionCase => ({
  ...asked,
  empty: empty.mass.nominal,
  cgHalfWidth: 0,
});

/** The speed of the climb: the stated one for a hot climb where it is flown, no slower than that of the best rate. */
export const climbSpeedIn = ({ climb, engine }: MissionCase, bestRate: number) =>
  climb === 'cooling climb' ? Math.max(bestRate, engine.coolingClimbSpeed ?? 0) : bestRate;
