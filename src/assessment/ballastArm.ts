import type { Airframe } from '../tables/airframe.ts';

/**
 * Where ballast would sit to draw the CG over a limit: the airframe's place for it, or the firewall where only that is on the
 * right side.
 * @param aftwards 1 to draw it aft, −1 forward
 */
export const ballastArm = (airframe: Airframe, limit: number, aftwards: 1 | -1): number | undefined =>
  [airframe.ballastArm, airframe.firewallArm].find(
    (arm) => arm !== undefined && aftwards * (arm - limit) > 0,
  );
