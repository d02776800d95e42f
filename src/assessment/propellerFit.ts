import { soundSpeed, standardTemperature } from '../engineering/air.ts';
import { groundClearance, helicalTipMach, requiredGroundClearance } from '../engineering/propeller.ts';
import type { Package } from '../tables/packages.ts';
import { practice } from '../tables/practice.ts';
import type { Context } from './context.ts';
import type { Engine } from './engine.ts';
import type { Finding } from './finding.ts';

/** How the propeller goes with airframe and engine. */
export interface PropellerFit {
  /** helical, at maximum continuous rpm and VNO at sea level, or standing still where there is no VNO */
  readonly tipMach: number;
  readonly clearance: number | undefined;
  readonly findings: readonly Finding[];
}

/** @source common practice, no source */
const tipMachNote = 0.85;
const tipMachWarning = 0.92;

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
      source: practice,
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

export function propellerFitOf(context: Context, engine: Package, { shaftSpeed }: Engine): PropellerFit {
  const tipMach = helicalTipMach(
    context.catalogue.airframe.cruiseLimitSpeed ?? 0,
    Math.max(shaftSpeed.takeoff, shaftSpeed.continuous),
    engine.propellerDiameter,
    soundSpeed(standardTemperature(0)),
  );
  const clearance =
    engine.axisHeight === undefined
      ? undefined
      : groundClearance(engine.axisHeight, engine.propellerDiameter);
  return { tipMach, clearance, findings: propellerFindings(context, engine, tipMach, clearance) };
}
