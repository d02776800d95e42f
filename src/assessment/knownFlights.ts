import type { Air } from '../engineering/aircraftInFlight.ts';
import type { DragPolar } from '../engineering/dragPolar.ts';
import { nameKey } from '../tables/cell.ts';
import type { KnownPoint } from '../tables/knownPoints.ts';
import { equipmentDragArea, type PropellerOnAirframe } from './aircraft.ts';
import { attempt } from './attempt.ts';
import { type Context, packageNamed } from './context.ts';
import { engineOf } from './engine.ts';
import type { Finding } from './finding.ts';
import { measuredRoll } from './groundRoll.ts';
import { airOf } from './knownAir.ts';
import { type Flown, fitPolar } from './polarFit.ts';

/** The airframe as its measured flights describe it. */
export interface FlownAirframe {
  /** undefined without a known level flight that can be true */
  readonly flown: FlownPolar | undefined;
  /** measured over predicted ground roll; 1 where none was measured */
  readonly groundRollFactor: number;
  readonly findings: readonly Finding[];
}

export interface FlownPolar {
  /** without cooling air and options */
  readonly dragPolar: DragPolar;
  readonly propeller: PropellerOnAirframe;
  /** the known level flight: there the cooling drag of every package is found */
  readonly level: { readonly air: Air; readonly mass: number; readonly powerFraction: number };
}

const plausibleDrag = { low: 0.015, high: 0.07 } as const; // C_D0 of light aircraft; common practice, no source

const finding = (gravity: Finding['gravity'], text: string): Finding => ({
  gravity,
  package: '',
  subject: 'known flown points',
  source: 'known points table',
  text,
});

/** undefined where the row lacks what its condition needs. */
function flownPoint(context: Context, point: KnownPoint): Flown | undefined {
  const { condition, airspeed, climbRate = 0 } = point;
  if (airspeed === undefined || (condition === 'climb' && climbRate === 0)) return undefined;
  const engine = packageNamed(context.catalogue, point.package);
  return {
    point,
    trueAirspeed: airspeed,
    rateOfClimb: condition === 'climb' ? climbRate : 0,
    air: airOf(point),
    engine,
    curves: engineOf(context, engine),
  };
}

/** Drag and propeller of the airframe from the known points table. */
export function flownAirframe(context: Context, equipmentInFlight: ReadonlySet<string>): FlownAirframe {
  const { equipment, knownPoints } = context.catalogue;
  const points = knownPoints.filter(({ condition }) => condition !== 'takeoff roll');
  const flown = points.map((point) => flownPoint(context, point)).filter((point) => point !== undefined);
  const levels = flown.filter(({ point }) => point.condition === 'level flight');
  const [level, ...otherLevels] = levels;
  const incomplete = points.length - flown.length;
  const findings =
    incomplete === 0 ? [] : [finding('check', `${incomplete} without airspeed or rate of climb: not used`)];
  if (level === undefined) {
    const text = 'no known flown point in level flight: speeds, climb and range are not known';
    return { flown: undefined, groundRollFactor: 1, findings: [...findings, finding('check', text)] };
  }
  const climbs = flown.filter(({ point }) => point.condition === 'climb');
  const aboard = equipment.filter(({ name }) => equipmentInFlight.has(nameKey(name)));
  const optionsDragArea = equipmentDragArea(aboard);
  const fitted = attempt(() => fitPolar(context, { level, otherLevels, climbs, optionsDragArea }));
  if (fitted.value === undefined) {
    const text = `cannot be true together: ${fitted.refusal}; speeds, climb and range are not known`;
    return { flown: undefined, groundRollFactor: 1, findings: [...findings, finding('check', text)] };
  }
  const { dragPolar, propeller, converged, doubt } = fitted.value;
  if (!converged)
    findings.push(
      finding(
        'check',
        'drag and propeller do not settle: speeds, climb, range, mission and cooling of all packages are doubtful',
      ),
    );
  if (doubt !== undefined) {
    findings.push(
      finding(
        'check',
        `the first level flight and the other points do not belong together: ${doubt}; the e of the airframe table is used`,
      ),
    );
  }
  const { zeroLiftDragCoefficient: drag } = dragPolar;
  if (drag < plausibleDrag.low || drag > plausibleDrag.high) {
    const text = `CD0 ${drag.toFixed(4)} follows from it, light aircraft have ${plausibleDrag.low} to ${plausibleDrag.high}: power, speed or height is wrong`;
    findings.push(finding('check', text));
  }
  const powerFraction = Math.min(1, level.point.power / level.engine.continuousPower);
  const polar = { dragPolar, propeller, level: { air: level.air, mass: level.point.weight, powerFraction } };
  const roll = measuredRoll(context, polar, aboard);
  return { flown: polar, groundRollFactor: roll.factor, findings: [...findings, ...roll.findings] };
}
