/** How long a battery carries on when the alternator stops, and alternators against load. */
import { toSi } from '../units.ts';
import { requireAbove, requireAtLeast, requireBetween } from './check.ts';

/** Battery time after the loss of all generation [s]. @source 14 CFR 23.1353(h) before amendment 64 (30 min from memory) */
export const requiredBatteryTime = toSi('time', 30, 'min');

export interface BatteryDischarge {
  /** C, as rated [A·s; 1 A·h is 3,600] */
  readonly capacity: number;
  /** H, the time over which the capacity is rated [s] */
  readonly ratedTime: number;
  /** I₁, all that is on when generation stops [A] */
  readonly loadBeforeShedding: number;
  /** I₂, what must stay on [A] */
  readonly essentialLoad: number;
  /** t_r, from the stop of generation to the shedding of load [s] */
  readonly timeToNotice: number;
  /** δ, share of the rated capacity left by age and cold, 0 to 1 [-] */
  readonly derating: number;
  /** p, at least 1: about 1.15 lead-acid, 1.05 lithium [-] */
  readonly peukertExponent: number;
}

/**
 * Time on battery: t = t_r + H ((δ C − I₁ t_r) / (I₂ H))^p. When the battery is empty before the load is shed it is
 * t = δ C / I₁, where the two meet. Charge drawn before shedding is counted without Peukert's penalty; with the penalty
 * all along the time is a few per cent shorter.
 * @param discharge battery and loads, all above 0, timeToNotice at least 0
 * @returns t, and whether the load was shed in time
 * @throws RangeError when an argument is outside its range
 * @source Peukert (1897) on the charge left at shedding; that split is common practice, no source
 */
export function batteryTime(discharge: BatteryDischarge): {
  readonly time: number;
  readonly shedInTime: boolean;
} {
  const { capacity, ratedTime, loadBeforeShedding, essentialLoad, timeToNotice, derating, peukertExponent } =
    discharge;
  requireAbove('capacity', capacity, 0, 'A·s');
  requireAbove('ratedTime', ratedTime, 0, 's');
  requireAbove('loadBeforeShedding', loadBeforeShedding, 0, 'A');
  requireAbove('essentialLoad', essentialLoad, 0, 'A');
  requireAtLeast('timeToNotice', timeToNotice, 0, 's');
  requireBetween('derating', derating, 0, 1, '');
  requireBetween('peukertExponent', peukertExponent, 1, 2, '');
  const usableCharge = derating * capacity;
  const chargeAtShedding = usableCharge - loadBeforeShedding * timeToNotice;
  if (chargeAtShedding <= 0) return { time: usableCharge / loadBeforeShedding, shedInTime: false };
  const onEssentialLoad = ratedTime * (chargeAtShedding / (essentialLoad * ratedTime)) ** peukertExponent;
  return { time: timeToNotice + onEssentialLoad, shedInTime: true };
}

/**
 * Alternators against load in one phase of flight: surplus = Σ outputs − Σ loads.
 * @param alternatorOutputs at the engine speed of the phase, each at least 0 [A]
 * @param continuousLoads each at least 0 [A]
 * @returns surplus, below 0 when the battery is being emptied [A]
 * @throws RangeError when a current is below 0
 * @source definition
 */
export function alternatorSurplus(
  alternatorOutputs: readonly number[],
  continuousLoads: readonly number[],
): number {
  return sum('alternatorOutput', alternatorOutputs) - sum('continuousLoad', continuousLoads);
}

function sum(name: string, currents: readonly number[]): number {
  let total = 0;
  for (const current of currents) {
    requireAtLeast(name, current, 0, 'A');
    total += current;
  }
  return total;
}
