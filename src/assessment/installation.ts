import { soundSpeed, standardTemperature } from '../engineering/air.ts';
import {
  firewallMoment,
  gyroscopicCouple,
  gyroscopicRates,
  sideLoadFactor,
  type TorqueCase,
  torqueCases,
  torqueFactor,
} from '../engineering/mount.ts';
import { groundClearance, helicalTipMach, requiredGroundClearance } from '../engineering/propeller.ts';
import { noseOverAngle, tipBackAngle, type WheelLoads, wheelLoads } from '../engineering/wheelLoad.ts';
import type { Package } from '../tables/packages.ts';
import { standardGravity } from '../units.ts';
import type { Balance } from './balance.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { EmptyAircraft } from './emptyAircraft.ts';
import type { Engine } from './engine.ts';
import type { Finding } from './finding.ts';
import type { Powerplant } from './powerplant.ts';

/** How the package sits on the airframe: screening of mount, firewall, propeller and wheels, not a stress analysis. */
export interface Installation {
  /** ahead of the firewall */
  readonly firewallWeight: number;
  /** weight times distance ahead of the firewall, at 1 g [kg·m] */
  readonly firewallMoment: number;
  readonly torque: readonly [TorqueCase, TorqueCase];
  readonly sideLoadFactor: number;
  /** in a yaw of 2.5 rad/s; undefined without the propeller's inertia */
  readonly gyroscopicCouple: number | undefined;
  /** helical, at maximum continuous rpm and VNO at sea level, or standing still where there is no VNO */
  readonly tipMach: number;
  readonly clearance: number | undefined;
  /** empty */
  readonly wheels: WheelLoads | undefined;
  /** greatest load of the nose or tail wheel over every allowed loading */
  readonly greatestWheelLoad: number | undefined;
  /** tail-down tilt to fall on the tail, or nose-over angle of a tailwheel aircraft [rad] */
  readonly tipAngle: number | undefined;
  readonly findings: readonly Finding[];
}

/** @source common practice, no source */
const tipMachNote = 0.85;
const tipMachWarning = 0.92;
const leastTipBack = (15 * Math.PI) / 180; // Raymer, from memory
const firewallMomentGrowth = 0.1; // a tenth more than the baseline wants a stress check; common practice, no source

function firewallFindings(
  context: Context,
  engine: Package,
  own: { weight: number; moment: number },
  baseline: { moment: number },
): Finding[] {
  const { airframe } = context.catalogue;
  const source = 'airframe table: limit ahead of the firewall';
  const findings: Finding[] = [];
  const over = (
    subject: string,
    shown: 'weight' | 'moment',
    value: number,
    limit: number | undefined,
  ): Finding | undefined =>
    limit !== undefined && value > limit * (1 + 1e-9)
      ? {
          gravity: 'stop',
          package: engine.name,
          subject,
          shown,
          value,
          limit,
          source,
          text: `${Math.round((value / limit - 1) * 100)} % beyond what mount and firewall are approved for: wants a stress check by someone qualified`,
        }
      : undefined;
  const weight = over(
    'weight ahead of firewall',
    'weight',
    own.weight,
    airframe.maximumFirewallForwardWeight,
  );
  const moment = over('moment ahead of firewall', 'moment', own.moment, airframe.maximumFirewallMoment);
  if (weight) findings.push(weight);
  if (moment) findings.push(moment);
  if (
    airframe.maximumFirewallMoment === undefined &&
    own.moment > baseline.moment * (1 + firewallMomentGrowth)
  ) {
    findings.push({
      gravity: 'check',
      package: engine.name,
      subject: 'moment ahead of firewall',
      shown: 'moment',
      value: own.moment,
      limit: baseline.moment,
      source: `the baseline ${context.baseline.name}; the airframe table states no limit`,
      text: `${Math.round((own.moment / baseline.moment - 1) * 100)} % more than the baseline's: mount and firewall want a stress check`,
    });
  }
  return findings;
}

function propellerFindings(
  context: Context,
  engine: Package,
  tipMach: number,
  clearance: number | undefined,
): Finding[] {
  const { airframe } = context.catalogue;
  const findings: Finding[] = [];
  const base = { package: engine.name } as const;
  if (tipMach > tipMachNote) {
    findings.push({
      ...base,
      gravity: tipMach > tipMachWarning ? 'stop' : 'check',
      subject: 'propeller tip',
      shown: 'ratio',
      value: tipMach,
      limit: tipMach > tipMachWarning ? tipMachWarning : tipMachNote,
      source: 'common practice, no source',
      text: 'helical tip Mach number: noise and lost thrust',
    });
  }
  const required = requiredGroundClearance[airframe.gear];
  if (clearance === undefined) {
    findings.push({
      ...base,
      gravity: 'check',
      subject: 'propeller clearance',
      shown: 'arm',
      limit: required,
      source: 'packages table: propeller axis height',
      text: 'the height of the propeller axis is not given: clearance is not known',
    });
  } else if (clearance < required - 1e-9) {
    findings.push({
      ...base,
      gravity: 'stop',
      subject: 'propeller clearance',
      shown: 'arm',
      value: clearance,
      limit: required,
      source: `14 CFR 23.925 before amendment 64, ${airframe.gear}`,
      text: 'too near the ground',
    });
  }
  if (engine.pairProven === undefined) {
    findings.push({
      ...base,
      gravity: 'check',
      subject: 'engine and propeller',
      source: 'packages table',
      text: 'not stated whether this propeller is proven on this engine for vibration',
    });
  } else if (!engine.pairProven) {
    findings.push({
      ...base,
      gravity: 'check',
      subject: 'engine and propeller',
      source: 'packages table',
      text: 'propeller not proven on this engine: torsional vibration must be surveyed, and phase-one flight testing is longer',
    });
  }
  if (engine.restrictedRpmFrom !== undefined && engine.restrictedRpmTo !== undefined) {
    findings.push({
      ...base,
      gravity: 'note',
      subject: 'restricted rpm',
      shown: 'rpm',
      value: engine.restrictedRpmFrom,
      limit: engine.restrictedRpmTo,
      source: 'packages table',
      text: 'avoid continuous running in this range',
    });
  }
  return findings;
}

/** Wheel loads are linear in weight and moment, so the greatest stands at a vertex of the loading polygon. */
function greatestWheelLoad(context: Context, { polygon }: Balance): number | undefined {
  const { mainWheelArm, auxiliaryWheelArm } = context.catalogue.airframe;
  if (polygon === undefined || mainWheelArm === undefined || auxiliaryWheelArm === undefined)
    return undefined;
  return Math.max(
    ...[...polygon.forward, ...polygon.aft].map(
      ({ weight, cg }) => wheelLoads(weight, cg, auxiliaryWheelArm, mainWheelArm).noseOrTail,
    ),
  );
}

function wheelFindings(
  context: Context,
  engine: Package,
  wheels: WheelLoads | undefined,
  greatest: number | undefined,
  tipAngle: number | undefined,
): Finding[] {
  const { airframe } = context.catalogue;
  const wheel = airframe.gear === 'nosewheel' ? 'nosewheel' : 'tailwheel';
  const limit = airframe.maximumAuxiliaryWheelLoad;
  const findings: Finding[] = [];
  if (wheels !== undefined && limit !== undefined && wheels.noseOrTail > limit * (1 + 1e-9)) {
    findings.push({
      gravity: 'stop',
      package: engine.name,
      subject: `${wheel} load, empty`,
      shown: 'weight',
      value: wheels.noseOrTail,
      limit,
      source: 'airframe table',
      text: `more than the ${wheel} may carry`,
    });
  }
  if (limit !== undefined && greatest !== undefined && greatest > limit * (1 + 1e-9)) {
    findings.push({
      gravity: 'check',
      package: engine.name,
      subject: `${wheel} load, worst loading`,
      shown: 'weight',
      value: greatest,
      limit,
      source: 'airframe table',
      text: `an allowed loading puts more on the ${wheel} than it may carry: ask the designer whether the limit is for the empty or the loaded aircraft`,
    });
  }
  if (wheels !== undefined && wheels.noseOrTail < 0) {
    findings.push({
      gravity: 'stop',
      package: engine.name,
      subject: `${wheel} load, empty`,
      shown: 'weight',
      value: wheels.noseOrTail,
      limit: 0,
      source: 'moments about the main wheels',
      text: airframe.gear === 'nosewheel' ? 'sits on its tail when empty' : 'stands on its nose when empty',
    });
  }
  if (tipAngle !== undefined && airframe.gear === 'nosewheel' && tipAngle < leastTipBack && tipAngle >= 0) {
    findings.push({
      gravity: 'check',
      package: engine.name,
      subject: 'tip-back',
      source: 'at least 15°: Raymer, from memory',
      text: `falls on its tail when tilted by ${Math.round((tipAngle * 180) / Math.PI)}°, empty`,
    });
  }
  return findings;
}

/** Weight and moment of what lies ahead of the firewall: powerplant, and options that sit there or are taken from there. */
export function aheadOfFirewall(
  context: Context,
  { items }: Powerplant,
  { equipment }: Configuration,
): { weight: number; moment: number } {
  const { firewallArm } = context.catalogue.airframe;
  const ahead = [...items, ...equipment].filter(({ arm }) => arm < firewallArm);
  const masses = ahead.map(({ weight, arm }) => ({ mass: weight, arm }));
  return {
    weight: ahead.reduce((sum, { weight }) => sum + weight, 0),
    moment: firewallMoment(masses, firewallArm, 1) / standardGravity,
  };
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
  const { airframe } = context.catalogue;
  const { shaftSpeed, rated } = curves;
  const strokes = engine.cycle === 'two-stroke' ? 2 : 4;
  const ahead = aheadOfFirewall(context, powerplant, configuration);
  const { mainWheelArm, auxiliaryWheelArm, cgHeight } = airframe;
  const { weight } = empty.mass.nominal;
  const wheels =
    mainWheelArm !== undefined && auxiliaryWheelArm !== undefined
      ? wheelLoads(weight, empty.cg, auxiliaryWheelArm, mainWheelArm)
      : undefined;
  const greatest = greatestWheelLoad(context, balance);
  const angle = airframe.gear === 'nosewheel' ? tipBackAngle : noseOverAngle;
  const tipAngle =
    mainWheelArm !== undefined && cgHeight !== undefined
      ? angle(empty.cg, cgHeight, mainWheelArm)
      : undefined;
  const tipMach = helicalTipMach(
    airframe.cruiseLimitSpeed ?? 0,
    Math.max(shaftSpeed.takeoff, shaftSpeed.continuous),
    engine.propellerDiameter,
    soundSpeed(standardTemperature(0)),
  );
  const clearance =
    engine.axisHeight === undefined
      ? undefined
      : groundClearance(engine.axisHeight, engine.propellerDiameter);
  return {
    firewallWeight: ahead.weight,
    firewallMoment: ahead.moment,
    torque: torqueCases(
      { power: rated.takeoff, shaftSpeed: shaftSpeed.takeoff },
      { power: rated.continuous, shaftSpeed: shaftSpeed.continuous },
      torqueFactor(engine.cylinders, strokes),
    ),
    sideLoadFactor: sideLoadFactor(airframe.limitLoadFactor),
    gyroscopicCouple:
      engine.propellerInertia === undefined
        ? undefined
        : gyroscopicCouple(
            engine.propellerInertia,
            2 * Math.PI * shaftSpeed.continuous,
            gyroscopicRates.yaw,
            Math.max(2, engine.blades),
          ),
    tipMach,
    clearance,
    wheels,
    greatestWheelLoad: greatest,
    tipAngle,
    findings: [
      ...firewallFindings(context, engine, ahead, { moment: baselineMoment }),
      ...propellerFindings(context, engine, tipMach, clearance),
      ...wheelFindings(context, engine, wheels, greatest, tipAngle),
    ],
  };
}
