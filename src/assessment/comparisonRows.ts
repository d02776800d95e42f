import { centreOfGravity, type MassTotal } from '../engineering/massItem.ts';
import type { Assessment, Comparison } from './assess.ts';
import { cgOnMac } from './cgOnMac.ts';
import { coolingRows } from './coolingRows.ts';
import { costRows, costTitle } from './costRows.ts';
import type { Shown } from './display.ts';
import { countOf } from './finding.ts';
import { flightRows } from './flightRows.ts';
import type { FuelAtSetting } from './fuelUse.ts';
import { isExceeded } from './loadingCheck.ts';
import { missionRows, missionTitle } from './missionRows.ts';

/** One line of the comparison: what it is called, how it is shown, and where the value comes from. */
export interface ComparisonRow {
  readonly label: string;
  readonly shown: Shown | undefined;
  readonly value: (assessment: Assessment, comparison: Comparison) => number | string | undefined;
  /** true where the difference from the baseline means something */
  readonly differs: boolean;
}

export interface ComparisonGroup {
  readonly title: (comparison: Comparison) => string;
  readonly rows: (comparison: Comparison) => readonly ComparisonRow[];
}

const number = (
  label: string,
  shown: Shown,
  value: (assessment: Assessment, comparison: Comparison) => number | undefined,
  differs = false,
): ComparisonRow => ({ label, shown, value, differs });
const words = (label: string, value: ComparisonRow['value'], shown?: Shown): ComparisonRow => ({
  label,
  shown,
  value,
  differs: false,
});
const group = (title: string, rows: readonly ComparisonRow[]): ComparisonGroup => ({
  title: () => title,
  rows: () => rows,
});

const arm = (mass: MassTotal) => (mass.weight === 0 ? undefined : centreOfGravity(mass));
const yesNo = (flag: boolean | undefined) => (flag === undefined ? 'not stated' : flag ? 'yes' : 'no');

function atSetting({ setting, mixture }: FuelAtSetting, index: number): ComparisonRow[] {
  const label = `${setting === 1 ? 'MCP' : `${Math.round(setting * 100)} %`} ${mixture}`;
  return [
    number(`fuel flow, ${label}`, 'fuelFlow', ({ fuel }) => fuel.settings[index]?.flow),
    number(`endurance, ${label}`, 'hours', ({ fuel }) => fuel.settings[index]?.endurance),
  ];
}

/** What the comparison shows, in the order in which a buyer asks. */
export const comparisonGroups: readonly ComparisonGroup[] = [
  group('Findings', [
    number('outside a limit (stop)', 'count', ({ findings }) => countOf(findings, 'stop')),
    number('doubtful or missing (check)', 'count', ({ findings }) => countOf(findings, 'check')),
  ]),
  { title: missionTitle, rows: missionRows },
  group('Price and delivery', [
    number('total, without tax', 'money', ({ price }) => price.total, true),
    number('  airframe kit', 'money', ({ price }) => price.kit),
    number('  powerplant', 'money', ({ price }) => price.powerplant),
    number('  options ticked', 'money', ({ price }) => price.options),
    number('tax', 'money', ({ price }) => price.tax),
    number('still to buy by the builder', 'money', ({ price }) => price.builder),
    number('lead time', 'weeks', ({ price }) => price.leadTime),
    number('build time', 'wholeHours', ({ price }) => price.buildTime),
  ]),
  { title: costTitle, rows: () => costRows },
  group('Weight', [
    number('powerplant, dry', 'weight', ({ powerplant }) => powerplant.dry.weight),
    number('powerplant, installed', 'weight', ({ powerplant }) => powerplant.installed.weight, true),
    number('  its CG, aft of datum', 'arm', ({ powerplant }) => arm(powerplant.installed)),
    number('empty weight, nominal', 'weight', ({ empty }) => empty.mass.nominal.weight, true),
    number('empty weight, expected', 'weight', ({ empty }) => empty.mass.expected.weight),
    number('  known to ±', 'weight', ({ empty }) => empty.mass.weightHalfWidth),
  ]),
  group('Centre of gravity', [
    number('empty CG, aft of datum', 'arm', ({ empty }) => empty.cg, true),
    number('  known to ±', 'arm', ({ empty }) => empty.expectedCg.halfWidth),
    number('empty CG, % MAC', 'percent', ({ empty }, { context }) =>
      cgOnMac(context.catalogue.airframe, empty.cg),
    ),
    number('least forward margin', 'arm', ({ balance }) => balance.margins?.forward.margin),
    number('least aft margin', 'arm', ({ balance }) => balance.margins?.aft.margin),
  ]),
  group('Payload', [
    number('useful load, nominal', 'payload', ({ payload }) => payload.usefulLoad.nominal),
    number('fuel, full tanks', 'fuel', ({ payload }) => payload.fuelVolume),
    number('payload, full fuel', 'payload', ({ payload }) => payload.fullFuel.nominal, true),
    number('payload, expected', 'payload', ({ payload }) => payload.fullFuel.expected),
    number('payload to be counted on', 'payload', ({ payload }) => payload.fullFuel.countedOn, true),
    number('range with full tanks', 'distance', ({ range }) => range?.fullTanks?.range),
    number('range with most payload', 'distance', ({ range }) => range?.mostPayload.range),
    number('  that payload', 'payload', ({ range }) => range?.mostPayload.payload),
  ]),
  group('Power', [
    number('takeoff power', 'power', ({ engine }) => engine.rated.takeoff),
    words('  for', ({ package: { takeoffMinutes } }, { context: { display } }) =>
      takeoffMinutes === undefined ? 'unlimited' : display.text('minutes', takeoffMinutes),
    ),
    number('maximum continuous power', 'power', ({ engine }) => engine.rated.continuous),
    number('propeller rpm, takeoff', 'rpm', ({ engine }) => engine.shaftSpeed.takeoff),
  ]),
  {
    title: () => 'Fuel and endurance, reserve kept',
    rows: ({ baseline }) => [
      number('fuel flow, takeoff', 'fuelFlow', ({ fuel }) => fuel.takeoffFlow),
      ...baseline.fuel.settings.flatMap(atSetting),
    ],
  },
  { title: () => 'Speed and climb, at maximum weight', rows: flightRows },
  { title: () => 'Cooling, hot day', rows: coolingRows },
  group('Installation', [
    number('weight ahead of firewall', 'weight', ({ installation }) => installation.firewallWeight),
    number('moment ahead of firewall', 'moment', ({ installation }) => installation.firewallMoment, true),
    number('limit torque, takeoff', 'torque', ({ installation }) => installation.torque[0].limitTorque),
    number('limit torque, MCP', 'torque', ({ installation }) => installation.torque[1].limitTorque),
    number('side load on mount', 'ratio', ({ installation }) => installation.sideLoadFactor),
    number('gyroscopic couple', 'torque', ({ installation }) => installation.gyroscopicCouple),
    number('propeller clearance', 'arm', ({ installation }) => installation.clearance),
    number('propeller tip Mach', 'ratio', ({ installation }) => installation.tipMach),
    words('propeller proven on engine', ({ package: { pairProven } }) => yesNo(pairProven)),
    number('nose or tail wheel, empty', 'weight', ({ installation }) => installation.wheels?.noseOrTail),
    number('fuel flow to demonstrate', 'fuelFlow', ({ fuel }) => fuel.flowToDemonstrate),
    words('tip-back or nose-over, empty', ({ installation: { tipAngle } }) =>
      tipAngle === undefined ? undefined : `${Math.round((tipAngle * 180) / Math.PI)}°`,
    ),
    number('alternator surplus, idle', 'current', ({ electrical }) => electrical.surplusIdle),
    number('alternator surplus, cruise', 'current', ({ electrical }) => electrical.surplusCruise),
    words(
      '  one out, load shed',
      ({ electrical: { surplusOneOut }, package: { alternators } }, { context: { display } }) =>
        (surplusOneOut && display.number('current', surplusOneOut)) ??
        (alternators === 1 ? 'only one' : undefined),
      'current',
    ),
    number('battery alone', 'minutes', ({ electrical }) => electrical.batteryTime),
    words(
      'single failure, electrical',
      ({ electrical: { singleFailures }, package: { needsElectricity } }) =>
        singleFailures.length > 0 ? singleFailures.join(', ') : needsElectricity ? 'none known' : 'no',
    ),
  ]),
  {
    title: () => 'Named loadings: least CG margin from takeoff to zero fuel',
    rows: ({ baseline }) =>
      baseline.balance.loadings.map(({ name }, index) =>
        words(
          name,
          ({ balance }, { context: { display } }) => {
            const check = balance.loadings[index];
            if (check?.worst === undefined || isExceeded(check.weight)) return 'FAIL weight';
            return `${check.passes ? 'pass' : 'FAIL'} ${display.number('arm', check.worst.margin)}`;
          },
          'arm',
        ),
      ),
  },
];
