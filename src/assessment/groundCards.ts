import { hotDayTemperature } from '../engineering/air.ts';
import { requiredBatteryTime } from '../engineering/electrical.ts';
import { defaultFixedPitchSpeedFraction } from '../engineering/propellerEfficiency.ts';
import type { Package } from '../tables/packages.ts';
import { fromSi } from '../units.ts';
import type { Assessment } from './assess.ts';
import { bands, type CardFigure, type TestCard } from './testCard.ts';

const steeper = 5; // degrees nose up beyond the steepest climb; AC 90-89, from memory

/** rpm standing still at full throttle. */
export const staticRpm = ({ propeller, staticRpm: share, takeoffRpm }: Package) =>
  propeller === 'constant speed' ? takeoffRpm : (share ?? defaultFixedPitchSpeedFraction.static) * takeoffRpm;

function fuelFlowCard({ package: engine, fuel, flight }: Assessment): TestCard {
  const climb = flight && (Math.asin(Math.min(1, flight.seaLevel.bestAngle.gradient)) * 180) / Math.PI;
  const attitude =
    climb === undefined
      ? 'nose up as in the steepest climb'
      : `nose ${Math.ceil(climb + steeper)}° up (steepest climb ${climb.toFixed(0)}° and ${steeper}° more, wing incidence not counted)`;
  return {
    name: 'fuel flow on the ground',
    setUp: `${attitude}, least fuel in the tank tried, line open at the engine, ${engine.fuelFeed === 'pump' ? 'each pump by itself' : 'by gravity'}; every tank`,
    figures: [
      { label: 'takeoff fuel flow', shown: 'fuelFlow', predicted: fuel.takeoffFlow, band: bands.fuelFlow },
      {
        label: 'rated delivery, against what is to be demonstrated',
        shown: 'fuelFlow',
        predicted: engine.fuelPumpFlow,
        limit: fuel.flowToDemonstrate,
        least: true,
      },
    ],
    record: 'fuel caught and time, the return line led into the can as well',
    reduce: `volume over time; ${engine.fuelFeed === 'pump' ? '125' : '150'} % of takeoff flow (14 CFR 23.955 before amendment 64)`,
    caution: 'fuel in the open: grounded cans, no electricity, extinguisher, outdoors',
  };
}

function staticRpmCard({ package: engine }: Assessment): TestCard {
  const constantSpeed = engine.propeller === 'constant speed';
  return {
    name: 'static rpm',
    setUp: `tied down, full throttle, ${constantSpeed ? 'propeller on its fine stop' : 'fixed pitch'}, into wind of less than 5 kt`,
    figures: [
      {
        label: 'engine rpm',
        shown: 'rpm',
        predicted: staticRpm(engine),
        band: bands.rpm,
        limit: engine.takeoffRpm,
      },
    ],
    record: 'tachometer beside the optical counter, manifold pressure',
    reduce: 'none for rpm; a pull on a scale gives the static efficiency of the propeller',
    caution: 'nobody near the propeller’s plane; no longer than temperatures allow',
  };
}

function coolingCard({ cooling, flight }: Assessment): TestCard {
  const figures = (cooling?.streams ?? []).map(
    ({ data, stream, idleTemperature }): CardFigure => ({
      label: `${data.row.stream} at idle, steady, hot day`,
      shown: 'engineTemperature',
      predicted: idleTemperature,
      band: bands.temperature,
      limit: stream.limit,
      words: idleTemperature === undefined ? 'nothing drives the air' : undefined,
    }),
  );
  const height = flight?.field.air.pressureAltitude ?? 0;
  return {
    name: 'cooling on the ground',
    setUp:
      'nose into wind, cowling closed, idle and then taxi power, until temperatures stand still or near a limit',
    figures,
    record: 'every minute; oil pressure, time to the first limit',
    reduce: `add (hot day − OAT): hot day at this field ${fromSi('temperature', hotDayTemperature(height), '°C').toFixed(0)} °C (14 CFR 23.1043)`,
    caution: 'stop at the first limit; predictions standing still are an indication only',
  };
}

function batteryCard({ electrical }: Assessment): TestCard {
  return {
    name: 'battery',
    setUp: 'battery full, alternator off, all on for 5 minutes, then the essential load alone',
    figures: [
      {
        label: 'until the voltage is too low for what must stay on',
        shown: 'minutes',
        predicted: electrical.batteryTime,
        band: bands.battery,
        limit: requiredBatteryTime,
        least: true,
      },
    ],
    record: 'volts every 5 minutes, amperes with everything on and after shedding',
    reduce: 'times 0.8 for an aged, cold battery if the one tried was new and warm',
    caution: 'recharge before flight; 30 minutes at least (14 CFR 23.1353(h) before amendment 64)',
  };
}

function unusableFuelCard({ configuration }: Assessment): TestCard {
  return {
    name: 'unusable fuel',
    setUp:
      'on the ground at climb and glide attitude first; in flight over a field, another tank proven and full, one tank at a time',
    figures: configuration.tanks.map(({ name, unusable }) => ({
      label: name,
      shown: 'fuel' as const,
      predicted: unusable,
      band: bands.fuelFlow,
      limit: unusable,
      words: 'more than that is no usable fuel: correct tanks and empty weight',
    })),
    record: 'attitude in which the engine first faltered',
    reduce:
      'the greatest of all attitudes is unusable and belongs to the empty weight (14 CFR 23.959 before amendment 64); placard it',
    caution: 'the engine will falter: height, a field below, both pumps proven to restart it',
  };
}

/** What is tried before it flies. */
export const groundCards = (assessment: Assessment): TestCard[] => [
  fuelFlowCard(assessment),
  staticRpmCard(assessment),
  coolingCard(assessment),
  batteryCard(assessment),
  unusableFuelCard(assessment),
];
