import type { Topic } from './publishedValue.ts';
import { airspeed } from './values/airspeed.ts';
import { atmosphere } from './values/atmosphere.ts';
import { coolingAir } from './values/coolingAir.ts';
import { electrical } from './values/electrical.ts';
import { enginePower } from './values/enginePower.ts';
import { flight } from './values/flight.ts';
import { fuel } from './values/fuel.ts';
import { heatExchangers } from './values/heatExchangers.ts';
import { propeller } from './values/propeller.ts';
import { range } from './values/range.ts';
import { regulations } from './values/regulations.ts';
import { takeoffs } from './values/takeoff.ts';
import { units } from './values/units.ts';
import { weighing } from './values/weighing.ts';
import { weightAndBalance } from './values/weightAndBalance.ts';
import { weightUncertainty } from './values/weightUncertainty.ts';

/** Every list of published values, in the order of the table in DEVELOPERS.md. */
export const topics: readonly Topic[] = [
  units,
  atmosphere,
  airspeed,
  enginePower,
  fuel,
  weightAndBalance,
  weighing,
  weightUncertainty,
  regulations,
  propeller,
  flight,
  takeoffs,
  range,
  heatExchangers,
  coolingAir,
  electrical,
];
