import { type Condition, measured, stated } from './condition.ts';
import { oxygenAltitude } from './hourlyCost.ts';
import type { MissionCase } from './missionCase.ts';
import type { SeatingPlan } from './seating.ts';

const named = (name: string) => ({ name, leg: undefined });

/** Whatever the mission, the package may not be flown so. */
function limitsCondition({ barred }: MissionCase): Condition {
  const [first] = barred;
  if (first === undefined) return stated(named('limits'), 'met', 'within the airframe’s limits');
  const others = barred.length > 1 ? `; and ${barred.length - 1} more in the findings` : '';
  return stated(named('limits'), 'missed', `${first.subject}: ${first.text}${others}`);
}

function seatsCondition({ mission, context }: MissionCase, plan: SeatingPlan): Condition {
  const { persons, personWeight } = mission;
  if (context.catalogue.stations.every((station) => station.persons === 0)) {
    return stated(named('seats'), 'not known', 'the stations table does not say how many each seats');
  }
  // As many seats as people, and no way to fill them: the pilot's stays empty
  const spare = plan.seatings.length > 0 ? plan.seats - persons : Math.min(plan.seats - persons, -1);
  const words = `${plan.seats} of ${context.display.text('payload', personWeight)} can sit`;
  return measured(named('seats'), 'count', spare, spare < 0 ? spare / persons : 1, words);
}

function bagsCondition({ mission, context }: MissionCase, { seatings }: SeatingPlan): Condition {
  if (seatings.length === 0) return stated(named('bags'), 'not known', 'the people do not fit');
  const { display } = context;
  const room = Math.max(...seatings.map(({ bagRoom }) => bagRoom));
  const words =
    room < 0
      ? `${display.text('payload', -room)} find no room`
      : `room for ${display.text('payload', room)} more`;
  return measured(named('bags'), 'payload', room, room < 0 ? room / mission.bags : 1, words);
}

function oxygenCondition({ mission, context, hasOxygen }: MissionCase): Condition {
  const { cruiseAltitude } = mission;
  if (cruiseAltitude <= oxygenAltitude) {
    return stated(named('oxygen'), 'not asked', 'not needed at this height');
  }
  const words = `needed at ${context.display.text('height', cruiseAltitude)}`;
  return stated(named('oxygen'), hasOxygen ? 'met' : 'missed', words);
}

/** The airframe's own limits, people, bags, oxygen: what can be said without knowing how it flies. */
export const cabinConditions = (asked: MissionCase, plan: SeatingPlan): Condition[] => [
  limitsCondition(asked),
  seatsCondition(asked, plan),
  bagsCondition(asked, plan),
  oxygenCondition(asked),
];
