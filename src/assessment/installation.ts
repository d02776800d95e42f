import {
  gyroscopicCouple,
  gyroscopicRates,
  sideLoadFactor,
  type TorqueCase,
  torqueCases,
  torqueFactor,
} from '../engineering/mount.ts';
import type { Package } from '../tables/packages.ts';
import type { Balance } from './balance.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { EmptyAircraft } from './emptyAircraft.ts';
import type { Engine } from './engine.ts';
import { aheadOfFirewall, firewallFindings } from './firewall.ts';
import type { Powerplant } from './powerplant.ts';
import { type PropellerFit, propellerFitOf } from './propellerFit.ts';
import { type Stance, stanceOf } from './stance.ts';

/** How the package sits on the airframe: screening of mount, firewall, propeller and wheels, not a stress analysis. */
export interface Installation extends PropellerFit, Stance {
  /** ahead of the firewall */
  readonly firewallWeight: number;
  /** weight times distance ahead of the firewall, at 1 g [kg·m] */
  readonly firewallMoment: number;
  readonly torque: readonly [TorqueCase, TorqueCase];
  readonly sideLoadFactor: number;
  /** in a yaw of 2.5 rad/s; undefined without the propeller's inertia */
  readonly gyroscopicCouple: number | undefined;
}

export function installationOf(
  context: Context,
  engine: Package,
  curves: Engine,
  powerplant: Powerplant,
  configuration: Configuration,
  empty: EmptyAircraft,
  balance: Balance,
  baselineMoment: number,
): Installation {
  const { shaftSpeed, rated } = curves;
  const strokes = engine.cycle === 'two-stroke' ? 2 : 4;
  const ahead = aheadOfFirewall(context, powerplant, configuration);
  const propeller = propellerFitOf(context, engine, curves);
  const stance = stanceOf(context, engine, empty, balance);
  return {
    ...propeller,
    ...stance,
    firewallWeight: ahead.weight,
    firewallMoment: ahead.moment,
    torque: torqueCases(
      { power: rated.takeoff, shaftSpeed: shaftSpeed.takeoff },
      { power: rated.continuous, shaftSpeed: shaftSpeed.continuous },
      torqueFactor(engine.cylinders, strokes),
    ),
    sideLoadFactor: sideLoadFactor(context.catalogue.airframe.limitLoadFactor),
    gyroscopicCouple:
      engine.propellerInertia === undefined
        ? undefined
        : gyroscopicCouple(
            engine.propellerInertia,
            2 * Math.PI * shaftSpeed.continuous,
            gyroscopicRates.yaw,
            Math.max(2, engine.blades),
          ),
    findings: [
      ...firewallFindings(context, engine, ahead, { moment: baselineMoment }),
      ...propeller.findings,
      ...stance.findings,
    ],
  };
}
