import { endurance } from '../engineering/endurance.ts';
import type { Assessment, Comparison } from './assess.ts';
import type { Amount } from './cost.ts';
import type { Display, Shown } from './display.ts';
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

/** Speed, climb, range and cost of the package quoted; what is not known says so. */
export function performanceSection({ context }: Comparison, assessment: Assessment): QuoteSection {
  const { display, catalogue } = context;
  const { mission, rates } = catalogue;
  const { flight, payload, cost } = assessment;
  const number = (label: string, shown: Shown, value: number | undefined): QuoteRow =>
    row(label, shownNumber(display, shown, value), display.unit(shown));
  const altitude = display.text('height', mission.cruiseAltitude);
  const setting = `${display.text('percent', mission.cruiseSetting)} of maximum continuous power`;
  const cruise = flight?.levelAt(mission.cruiseSetting, mission.cruiseAltitude);
  const speed = cruise?.possible ? cruise.trueAirspeed : undefined;
  const throttled = cruise?.possible && cruise.fullThrottle ? ', full throttle gives less' : '';
  const flow = cost.cruiseFuelFlow;
  const time =
    flow === undefined ? undefined : Math.max(0, endurance(payload.fuelVolume, flow, mission.reserve));
  const range = speed === undefined || time === undefined ? undefined : speed * time;
  const ceiling = flight?.ceiling.found === 'yes' ? flight.ceiling.pressureAltitude : undefined;
  const takeoff = flight?.takeoff.possible ? flight.takeoff.distanceTo50Feet : undefined;
  return section(
    'Speed, range and cost',
    ['', 'Value', 'Unit'],
    [
      number(`Cruise speed at ${altitude}, ${setting}${throttled}`, 'speed', speed),
      number('Fuel flow there', 'fuelFlow', flow),
      number('Endurance there, full tanks, reserve kept', 'hours', time),
      number('Still-air range there, without the climb', 'distance', range),
      number('Rate of climb, sea level', 'climb', flight?.seaLevel.bestRate.takeoff.rateOfClimb),
      number('Rate of climb, the mission’s field', 'climb', flight?.atField.bestRate.takeoff.rateOfClimb),
      number('Service ceiling', 'height', ceiling),
      number('Takeoff to 50 ft, the mission’s field', 'runway', takeoff),
      number('Stall, landing configuration, calibrated', 'speed', flight?.stall.landing),
      row('An hour of flight', atLeast(display, 'moneyPerHour', cost.hour), display.unit('moneyPerHour')),
      row(
        'Ready to fly, tax and labour in',
        atLeast(display, 'money', cost.readyToFly),
        display.unit('money'),
      ),
    ],
    [
      `At the maximum takeoff weight, speeds true where not said otherwise. Costs for ${display.text('wholeHours', rates.hoursPerYear)} a year over ${rates.years} years.`,
    ],
  );
}
