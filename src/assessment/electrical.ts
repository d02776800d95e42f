import { alternatorSurplus, batteryTime, requiredBatteryTime } from '../engineering/electrical.ts';
import type { Package } from '../tables/packages.ts';
import { toSi } from '../units.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';

/** Electrical balance by phase, and what happens when the alternator stops. */
export interface Electrical {
  /** engine and equipment, all on; undefined where the engine's load is not given */
  readonly load: number | undefined;
  readonly surplusCruise: number | undefined;
  readonly surplusIdle: number | undefined;
  /** with one of several alternators dead and the load shed; undefined with a single one */
  readonly surplusOneOut: number | undefined;
  /** on the battery, load shed after five minutes */
  readonly batteryTime: number | undefined;
  /** what alone, failing, leaves the engine on its battery or stops it, as far as the tables say */
  readonly singleFailures: readonly string[];
  readonly findings: readonly Finding[];
}

const timeToNotice = toSi('time', 5, 'min'); // common practice, no source
const derating = 0.8; // of an aged, cold battery; common practice, no source
const peukertExponent = { 'lead-acid': 1.15, lithium: 1.05 } as const; // common practice, no source

function batteryFindings(context: Context, engine: Package, time: number | undefined): Finding[] {
  const base = { package: engine.name, subject: 'battery' } as const;
  const findings: Finding[] = [];
  if (time === undefined) {
    if (engine.needsElectricity) {
      findings.push({
        ...base,
        gravity: 'check',
        source: 'packages table: loads and battery',
        text: 'this engine stops without electricity, and how long the battery lasts is not known',
      });
    }
    return findings;
  }
  if (time < requiredBatteryTime) {
    findings.push({
      ...base,
      gravity: engine.needsElectricity ? 'stop' : 'check',
      shown: 'minutes',
      value: time,
      limit: requiredBatteryTime,
      source: '14 CFR 23.1353(h) before amendment 64',
      text: engine.needsElectricity
        ? 'the engine runs no longer than this after the alternator stops'
        : 'the essential load lasts no longer than this after the alternator stops',
    });
  }
  if (engine.needsElectricity && (engine.alternators ?? 1) < 2) {
    findings.push({
      ...base,
      gravity: 'note',
      shown: 'minutes',
      value: time,
      source: `${context.catalogue.airframe.name}: packages table`,
      text: 'one alternator and one battery: a single failure leaves this much time to land',
    });
  }
  return findings;
}

/**
 * What must be shown of an engine that stops without electricity, and which of its parts stand alone.
 * @source 14 CFR 23.1165 before amendment 64 (from memory): ignition goes on with an empty battery and with a dead generator
 */
function singleFailuresOf({ needsElectricity, alternators, name }: Package): {
  readonly parts: readonly string[];
  readonly findings: readonly Finding[];
} {
  if (!needsElectricity) return { parts: [], findings: [] };
  const base = { package: name, subject: 'single failures' } as const;
  const shown: Finding = {
    ...base,
    gravity: 'note',
    source: '14 CFR 23.1165 before amendment 64, from memory',
    text: 'show on the ground that it runs with the battery empty, and with every alternator dead; whether fuel pump and control unit are doubled is not in the tables',
  };
  if (alternators === undefined) {
    const text = 'the number of alternators is not given: it may hang on one';
    return {
      parts: ['not known'],
      findings: [{ ...base, gravity: 'check', source: 'packages table', text }, shown],
    };
  }
  if (alternators === 0) {
    const text = 'no alternator: it runs as long as the battery lasts';
    return {
      parts: ['battery'],
      findings: [{ ...base, gravity: 'stop', source: 'packages table', text }, shown],
    };
  }
  return { parts: alternators === 1 ? ['alternator'] : [], findings: [shown] };
}

function surplusFindings(
  engine: Package,
  surplus: number | undefined,
  idle: number | undefined,
  oneOut: number | undefined,
): Finding[] {
  const finding = (gravity: Finding['gravity'], subject: string, value: number, text: string): Finding => ({
    gravity,
    package: engine.name,
    subject,
    shown: 'current',
    value,
    limit: 0,
    source: 'packages and equipment tables',
    text,
  });
  return [
    ...(surplus === undefined
      ? [
          {
            gravity: 'check',
            package: engine.name,
            subject: 'alternator, cruise',
            source: 'packages table',
            text: 'alternator output or electrical load is not given: the balance is not known',
          } as const,
        ]
      : []),
    ...(oneOut !== undefined && oneOut < 0
      ? [
          finding(
            engine.needsElectricity ? 'check' : 'note',
            'one alternator out',
            oneOut,
            'the others do not carry the essential load: the battery runs down',
          ),
        ]
      : []),
    ...(surplus !== undefined && surplus < 0
      ? [
          finding(
            'stop',
            'alternator, cruise',
            surplus,
            'less output than continuous load: the battery runs down in flight',
          ),
        ]
      : []),
    ...(idle !== undefined && idle < 0
      ? [
          finding(
            'note',
            'alternator, idle',
            idle,
            'less output than load at ground idle: the battery runs down while taxiing',
          ),
        ]
      : []),
  ];
}

export function electricalOf(context: Context, engine: Package, configuration: Configuration): Electrical {
  const { electricalLoad, essentialLoad, batteryCapacity, alternatorCruise, alternatorIdle } = engine;
  const currents = configuration.equipment.map(({ current }) => current);
  const essentials = configuration.equipment
    .filter(({ essential }) => essential)
    .map(({ current }) => current);
  const load =
    electricalLoad === undefined ? undefined : currents.reduce((sum, one) => sum + one, electricalLoad);
  const essential =
    essentialLoad === undefined ? undefined : essentials.reduce((sum, one) => sum + one, essentialLoad);
  const surplus = (output: number | undefined) =>
    output === undefined || load === undefined ? undefined : alternatorSurplus([output], [load]);
  const onBattery =
    batteryCapacity === undefined ||
    load === undefined ||
    load === 0 ||
    essential === undefined ||
    essential === 0
      ? undefined
      : batteryTime({
          capacity: batteryCapacity,
          ratedTime: engine.batteryHours,
          loadBeforeShedding: load,
          essentialLoad: essential,
          timeToNotice,
          derating,
          peukertExponent: peukertExponent[engine.batteryKind],
        }).time;
  const surplusCruise = surplus(alternatorCruise);
  const surplusIdle = surplus(alternatorIdle);
  const { alternators = 1 } = engine;
  // Alternators of one package are taken as equal
  const surplusOneOut =
    alternators < 2 || alternatorCruise === undefined || essential === undefined
      ? undefined
      : alternatorSurplus([(alternatorCruise * (alternators - 1)) / alternators], [essential]);
  const single = singleFailuresOf(engine);
  return {
    load,
    surplusCruise,
    surplusIdle,
    surplusOneOut,
    singleFailures: single.parts,
    batteryTime: onBattery,
    findings: [
      ...batteryFindings(context, engine, onBattery),
      ...surplusFindings(engine, surplusCruise, surplusIdle, surplusOneOut),
      ...single.findings,
    ],
  };
}
