import { seaLevelDensity } from '../engineering/air.ts';
import { stallSpeed } from '../engineering/stall.ts';
import type { Airframe } from '../tables/airframe.ts';

export const flapSettings = ['clean', 'takeoff', 'landing'] as const;
export type FlapSetting = (typeof flapSettings)[number];

/** C_Lmax with those flaps; with fewer where they are not given. */
export function maximumLift({ liftClean, liftTakeoff = liftClean, liftLanding = liftTakeoff }: Airframe) {
  return { clean: liftClean, takeoff: liftTakeoff, landing: liftLanding };
}

/** Calibrated, in the predictions of slow flight the same as equivalent. */
export const stallAt = (airframe: Airframe, weight: number, flaps: FlapSetting) =>
  stallSpeed(weight, airframe.wingArea, maximumLift(airframe)[flaps], seaLevelDensity);
