import type { Assessment, Comparison } from './assess.ts';
import type { ComparisonRow } from './comparisonRows.ts';
import type { Amount } from './cost.ts';
import type { Display, Shown } from './display.ts';
import { flightRows } from './flightRows.ts';
import { missionRows, missionTitle } from './missionRows.ts';
import {
  notKnown,
  type QuoteCell,
  type QuoteRow,
  type QuoteSection,
  row,
  section,
  shownNumber,
} from './quoteSection.ts';

function atLeast(display: Display, shown: Shown, { value, complete }: Amount): QuoteCell {
  if (complete) return shownNumber(display, shown, value);
  return value === 0 ? notKnown : `at least ${display.number(shown, value)}`;
}

/** A line of the comparison for one package: the quote and the workbook say the same in the same words. */
function comparisonRow(
  { label, shown, value }: ComparisonRow,
  comparison: Comparison,
  assessment: Assessment,
) {
  const { display } = comparison.context;
  const found = value(assessment, comparison);
  const cell =
    typeof found === 'number' && shown ? shownNumber(display, shown, found) : String(found ?? notKnown);
  return row(label.replace(/^ +/, '… '), cell, shown && typeof cell === 'object' ? display.unit(shown) : '');
}

/** Speed, climb, range, mission and cost of the package quoted; what is not known says so. */
export function performanceSection(comparison: Comparison, assessment: Assessment): QuoteSection {
  const { display, catalogue } = comparison.context;
  const { mission, rates } = catalogue;
  const { flight, cost, range } = assessment;
  const number = (label: string, shown: Shown, value: number | undefined): QuoteRow =>
    row(label, shownNumber(display, shown, value), display.unit(shown));
  const cruise = flight?.levelAt(mission.cruiseSetting, mission.cruiseAltitude);
  const speed = cruise?.possible ? cruise.trueAirspeed : undefined;
  const throttled = cruise?.possible && cruise.fullThrottle ? ', full throttle gives less' : '';
  const setting = `${display.text('percent', mission.cruiseSetting)} of MCP${throttled}`;
  const full = range?.fullTanks;
  const aboard = full === undefined ? '' : ` and ${display.text('payload', full.payload)}`;
  const rows = (of: readonly ComparisonRow[]) =>
    of.map((each) => comparisonRow(each, comparison, assessment));
  const asked = missionRows(comparison);
  return section(
    'Speed, range, mission and cost',
    ['', 'Value', 'Unit'],
    [
      number(`cruise, ${display.text('height', mission.cruiseAltitude)}, ${setting}`, 'speed', speed),
      number('fuel flow there', 'fuelFlow', cost.cruiseFuelFlow),
      number(`range there, full tanks${aboard}, reserve kept`, 'distance', full?.range),
      ...rows(flightRows(comparison)),
      ...(asked.length > 0 ? [row(missionTitle(comparison), '', ''), ...rows(asked)] : []),
      row('an hour of flight', atLeast(display, 'moneyPerHour', cost.hour), display.unit('moneyPerHour')),
      row(
        'ready to fly, tax and labour in',
        atLeast(display, 'money', cost.readyToFly),
        display.unit('money'),
      ),
    ],
    [
      `Speeds are true, at the maximum takeoff weight, where not said otherwise. MCP: maximum continuous power. Costs for ${display.text('wholeHours', rates.hoursPerYear)} a year over ${rates.years} years.`,
    ],
  );
}
