import { noseOverAngle, tipBackAngle, type WheelLoads, wheelLoads } from '../engineering/wheelLoad.ts';
import type { Package } from '../tables/packages.ts';
import type { Balance } from './balance.ts';
import type { Context } from './context.ts';
import type { EmptyAircraft } from './emptyAircraft.ts';
import type { Finding } from './finding.ts';

/** How the aircraft stands on its wheels. */
export interface Stance {
  /** empty */
  readonly wheels: WheelLoads | undefined;
  /** greatest load of the nose or tail wheel over every allowed loading */
  readonly greatestWheelLoad: number | undefined;
  /** tail-down tilt to fall on the tail, or nose-over angle of a tailwheel aircraft [rad] */
  readonly tipAngle: number | undefined;
  readonly findings: readonly Finding[];
}

const leastTipBack = (15 * Math.PI) / 180; // Raymer, from memory

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

export function stanceOf(context: Context, engine: Package, empty: EmptyAircraft, balance: Balance): Stance {
  const { mainWheelArm, auxiliaryWheelArm, cgHeight, gear } = context.catalogue.airframe;
  const wheels =
    mainWheelArm !== undefined && auxiliaryWheelArm !== undefined
      ? wheelLoads(empty.mass.nominal.weight, empty.cg, auxiliaryWheelArm, mainWheelArm)
      : undefined;
  const greatest = greatestWheelLoad(context, balance);
  const angle = gear === 'nosewheel' ? tipBackAngle : noseOverAngle;
  const tipAngle =
    mainWheelArm !== undefined && cgHeight !== undefined
      ? angle(empty.cg, cgHeight, mainWheelArm)
      : undefined;
  return {
    wheels,
    greatestWheelLoad: greatest,
    tipAngle,
    findings: wheelFindings(context, engine, wheels, greatest, tipAngle),
  };
}
