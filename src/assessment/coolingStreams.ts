import { airSpecificHeat, standardTemperature } from '../engineering/air.ts';
import { type AircraftInFlight, airAt } from '../engineering/aircraftInFlight.ts';
import {
  defaultDischargeCoefficient,
  defaultExitPressureCoefficient,
  defaultHeatFraction,
  defaultSlipstreamShare,
} from '../engineering/coolingAir.ts';
import {
  coreFromKnownPoint,
  finsFromKnownPoint,
  type RadiatorData,
  radiatorFromKnownPoint,
  radiatorFromNtu,
} from '../engineering/coolingCalibration.ts';
import {
  type CoolingCondition,
  type CoolingCore,
  type CoolingDuct,
  type CoolingStream,
  defaultAirSideShare,
  defaultCorePressureExponent,
  type HeatFraction,
} from '../engineering/coolingStream.ts';
import { headFinLaw } from '../engineering/fins.ts';
import type { CoolingStreamRow } from '../tables/cooling.ts';
import type { Package } from '../tables/packages.ts';
import { attempt } from './attempt.ts';
import { coolingConditionOf } from './coolingCondition.ts';

/** One stream of the cooling table, with the constants that its known point or its design values give. */
export interface StreamData {
  readonly row: CoolingStreamRow;
  readonly heat: HeatFraction;
  /** undefined where the table does not give enough, or contradicts itself */
  readonly stream: CoolingStream | undefined;
  /** what was taken as customary, in words */
  readonly assumed: readonly string[];
  /** why it is not known, in words */
  readonly missing: string | undefined;
}

const exitAngle = Math.PI / 12; // rad, of the air to the flight path; common practice, no source

/** Heat fraction when none is given, by the table's word for the stream. */
const customaryHeat = { ...defaultHeatFraction, 'charge air': defaultHeatFraction.charge } as const;

/** What flows inside each radiator. */
const fluids = {
  coolant: {
    specificHeat: 3500, // J/(kg·K), equal parts water and glycol at 90 °C; from memory
    airSideShare: defaultAirSideShare.coolant,
    temperatureAt: 'radiatorInlet', // out of the engine
    customaryDrop: 8, // K through the radiator; common practice, no source
  },
  oil: {
    specificHeat: 2100, // J/(kg·K), engine oil at 90 °C; from memory
    airSideShare: defaultAirSideShare.oil,
    temperatureAt: 'radiatorOutlet', // into the engine
    customaryDrop: 20, // K; common practice, no source
  },
  'charge air': {
    specificHeat: airSpecificHeat,
    airSideShare: 0.5, // air on both sides; common practice, no source
    temperatureAt: 'radiatorOutlet', // into the engine
    customaryDrop: 60, // K; common practice, no source
  },
} as const;

function ductOf(row: CoolingStreamRow, heat: HeatFraction, exitArea: number): CoolingDuct {
  return {
    heat,
    inletRecovery: row.recovery,
    slipstreamShare: defaultSlipstreamShare,
    exitPressureCoefficient: defaultExitPressureCoefficient,
    exitArea,
    exitDischargeCoefficient: defaultDischargeCoefficient,
    exitAngle,
    leakageDragArea: row.leakageDrag,
  };
}

/** The stabilised point of a stream; undefined unless it is complete. */
function knownCondition(
  row: CoolingStreamRow,
  engine: Package,
  aircraft: AircraftInFlight,
): { readonly condition: CoolingCondition; readonly temperature: number } | undefined {
  const { knownPower, knownAirspeed, knownAltitude, knownOat, knownTemperature } = row;
  if (
    knownPower === undefined ||
    knownAirspeed === undefined ||
    knownAltitude === undefined ||
    knownOat === undefined ||
    knownTemperature === undefined
  )
    return undefined;
  const air = airAt(knownAltitude, knownOat - standardTemperature(knownAltitude));
  return {
    condition: coolingConditionOf(aircraft, engine.heatingValue, air, knownAirspeed, knownPower),
    temperature: knownTemperature,
  };
}

function radiatorData(
  row: CoolingStreamRow & { readonly stream: keyof typeof fluids },
  heat: HeatFraction,
  engine: Package,
): RadiatorData {
  const { specificHeat, airSideShare, temperatureAt, customaryDrop } = fluids[row.stream];
  // Of fuel energy at some 30 % brake efficiency: only the customary flow rests on it
  const heatAtRating = heat.fraction * engine.continuousPower * (heat.of === 'fuelEnergy' ? 3.3 : 1);
  const coolantCapacityRate =
    row.coolantFlow === undefined ? heatAtRating / customaryDrop : row.coolantFlow * specificHeat;
  return { kind: 'radiator', airSideShare, temperatureAt, coolantCapacityRate };
}

/** Which cells are missing for the stream to be judged, in words; empty when it can be. */
function missingData(row: CoolingStreamRow, known: boolean): string[] {
  const hasDesign =
    row.stream !== 'fins' &&
    row.designDrop !== undefined &&
    row.designAirflow !== undefined &&
    row.designNtu !== undefined;
  const point = 'one known point (power, airspeed, altitude, OAT, temperature)';
  return [
    ...(row.limit === undefined ? ['its limit'] : []),
    ...(row.exitArea === undefined ? ['its exit area'] : []),
    ...(known || hasDesign
      ? []
      : [row.stream === 'fins' ? point : `${point}, or pressure drop, airflow and NTU`]),
  ];
}

function assumptions(row: CoolingStreamRow, designCore: CoolingCore | undefined): string[] {
  const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;
  return [
    ...(row.heatFraction === undefined
      ? [`heat fraction ${percent(customaryHeat[row.stream])} of shaft power`]
      : []),
    ...(row.defaulted.includes('recovery') ? [`inlet recovery ${row.recovery}`] : []),
    ...(designCore === undefined ? ['half of the pressure available lost in the core'] : []),
    ...(row.stream !== 'fins' && row.coolantFlow === undefined
      ? [`a flow inside that cools by ${fluids[row.stream].customaryDrop} °C`]
      : []),
  ];
}

function streamOf(row: CoolingStreamRow, engine: Package, aircraft: AircraftInFlight): StreamData {
  const heat: HeatFraction =
    row.heatFraction === undefined
      ? { fraction: customaryHeat[row.stream], of: 'shaftPower' }
      : { fraction: row.heatFraction, of: row.heatOf === 'fuel energy' ? 'fuelEnergy' : 'shaftPower' };
  const unknown = (missing: string): StreamData => ({ row, heat, stream: undefined, assumed: [], missing });
  const known = knownCondition(row, engine, aircraft);
  const { limit, exitArea, designDrop, designAirflow, designNtu, stream: kind } = row;
  const missing = missingData(row, known !== undefined);
  if (limit === undefined || exitArea === undefined || missing.length > 0) {
    return unknown(`the table does not give ${missing.join(' and ')}`);
  }
  const duct = ductOf(row, heat, exitArea);
  const designCore =
    designDrop === undefined || designAirflow === undefined
      ? undefined
      : {
          referenceAirflow: designAirflow,
          referencePressureDrop: designDrop,
          pressureExponent: defaultCorePressureExponent,
        };
  const built = attempt((): CoolingStream => {
    if (heat.of === 'fuelEnergy') aircraft.fuelFlow(engine.continuousPower, 'rich'); // refuses without fuel points
    const core = designCore ?? coreFromKnownPoint(duct, known!.condition);
    if (kind === 'fins') {
      const { condition, temperature } = known!;
      return {
        ...duct,
        core,
        limit,
        exchanger: finsFromKnownPoint(duct, core, headFinLaw, condition, temperature),
      };
    }
    const radiator = radiatorData({ ...row, stream: kind }, heat, engine);
    const exchanger =
      known === undefined
        ? radiatorFromNtu(radiator, core, designNtu!)
        : radiatorFromKnownPoint(duct, core, radiator, known.condition, known.temperature);
    return { ...duct, core, limit, exchanger };
  });
  if (built.value === undefined) return unknown(`the values do not go together: ${built.refusal}`);
  return { row, heat, stream: built.value, assumed: assumptions(row, designCore), missing: undefined };
}

/** Every cooling stream of a package; its known point was flown with the thrust of the same power and speed here. */
export function streamsOf(
  rows: readonly CoolingStreamRow[],
  engine: Package,
  aircraft: AircraftInFlight,
): StreamData[] {
  return rows.map((row) => streamOf(row, engine, aircraft));
}
