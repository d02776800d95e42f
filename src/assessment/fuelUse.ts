import type { Mixture } from '../engineering/aircraftInFlight.ts';
import { endurance } from '../engineering/endurance.ts';
import { fuelMassFlow } from '../engineering/fuelFlow.ts';
import { fuelFlowToDemonstrate, minimumFuel } from '../engineering/fuelSystem.ts';
import type { Package } from '../tables/packages.ts';
import type { Context } from './context.ts';
import type { Engine } from './engine.ts';
import type { Finding } from './finding.ts';
import type { Payload } from './payload.ts';

/** Fuel at one power setting. */
export interface FuelAtSetting {
  /** of maximum continuous power */
  readonly setting: number;
  readonly mixture: Mixture;
  readonly power: number;
  /** fuel volume per second [m³/s]; undefined where it is not known, or outside the fuel points */
  readonly flow: number | undefined;
  /** with full tanks and the mission's reserve kept [s] */
  readonly endurance: number | undefined;
}

export interface FuelUse {
  readonly settings: readonly FuelAtSetting[];
  readonly takeoffFlow: number | undefined;
  /** to be shown on the ground */
  readonly flowToDemonstrate: number | undefined;
  /** half an hour at maximum continuous power, for loading checks [m³] */
  readonly minimumFuel: number | undefined;
  readonly findings: readonly Finding[];
}

/** The settings shown side by side; 100 % is maximum continuous power. */
const shownSettings: readonly { readonly setting: number; readonly mixture: Mixture }[] = [
  { setting: 1, mixture: 'rich' },
  { setting: 0.75, mixture: 'rich' },
  { setting: 0.75, mixture: 'lean' },
  { setting: 0.65, mixture: 'lean' },
  { setting: 0.55, mixture: 'lean' },
];

/** Volume flow at a fraction of maximum continuous power, whether inside the fuel points or held beyond them. */
export function fuelVolumeFlow(
  engine: Package,
  curves: Engine,
  powerFraction: number,
  mixture: Mixture,
): { readonly flow: number; readonly extrapolated: boolean } | undefined {
  const consumption = curves.consumption[mixture];
  if (consumption === undefined) return undefined;
  const { bsfc, extrapolated } = consumption(powerFraction);
  return {
    flow: fuelMassFlow(powerFraction * engine.continuousPower, bsfc) / engine.fuelDensity,
    extrapolated,
  };
}

/** Fuel at one setting; no figure outside the fuel points. */
export function atSetting(
  context: Context,
  engine: Package,
  curves: Engine,
  payload: Payload,
  setting: number,
  mixture: Mixture,
): FuelAtSetting & { readonly outside: boolean } {
  const found = fuelVolumeFlow(engine, curves, setting, mixture);
  const outside = found?.extrapolated ?? false;
  const flow = outside ? undefined : found?.flow;
  return {
    setting,
    mixture,
    power: setting * engine.continuousPower,
    flow,
    endurance:
      flow === undefined ? undefined : endurance(payload.fuelVolume, flow, context.catalogue.mission.reserve),
    outside,
  };
}

function deliveryFindings(engine: Package, toDemonstrate: number | undefined): Finding[] {
  const base = { package: engine.name, subject: 'fuel delivery', shown: 'fuelFlow' } as const;
  const findings: Finding[] = [];
  if (
    engine.fuelPumpFlow !== undefined &&
    toDemonstrate !== undefined &&
    engine.fuelPumpFlow < toDemonstrate
  ) {
    findings.push({
      ...base,
      gravity: 'stop',
      value: engine.fuelPumpFlow,
      limit: toDemonstrate,
      source: '14 CFR 23.955 before amendment 64',
      text: `delivers less than must be shown on the ground with a ${engine.fuelFeed} feed`,
    });
  }
  if (engine.fuelReturn) {
    findings.push({
      package: engine.name,
      subject: 'fuel return',
      gravity: 'note',
      source: 'packages table',
      text: 'fuel comes back from the engine: selector, vents and header tank must send it to the tank in use',
    });
  }
  return findings;
}

export function fuelUseOf(context: Context, engine: Package, curves: Engine, payload: Payload): FuelUse {
  const settings = shownSettings.map(({ setting, mixture }) =>
    atSetting(context, engine, curves, payload, setting, mixture),
  );
  const outside = settings.filter((each) => each.outside);
  const takeoff = fuelVolumeFlow(engine, curves, engine.takeoffPower / engine.continuousPower, 'rich');
  const toDemonstrate = takeoff && fuelFlowToDemonstrate(takeoff.flow, engine.fuelFeed);
  const atMaximum = curves.consumption.rich?.(1);
  const heldFindings: Finding[] = takeoff?.extrapolated
    ? [
        {
          gravity: 'note',
          package: engine.name,
          subject: 'fuel flow, takeoff',
          shown: 'fuelFlow',
          value: takeoff.flow,
          source: 'fuel points table',
          text: 'takeoff power is beyond the rich fuel points: the BSFC of the nearest is used',
        },
      ]
    : [];
  const outsideFindings: Finding[] =
    outside.length === 0
      ? []
      : [
          {
            gravity: 'note',
            package: engine.name,
            subject: 'fuel consumption',
            source: 'fuel points table',
            text: `no figure at ${outside.map((each) => `${Math.round(each.setting * 100)} % ${each.mixture}`).join(', ')}: outside the fuel points`,
          },
        ];
  return {
    settings,
    takeoffFlow: takeoff?.flow,
    flowToDemonstrate: toDemonstrate,
    minimumFuel: atMaximum && minimumFuel(engine.continuousPower, atMaximum.bsfc) / engine.fuelDensity,
    findings: [...heldFindings, ...outsideFindings, ...deliveryFindings(engine, toDemonstrate)],
  };
}
