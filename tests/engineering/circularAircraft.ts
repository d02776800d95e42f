/**
 * The aircraft of AC 43.13-1B figures 10-10 and 10-11 (read), lb and in. Its least fuel, METO hp/2 = 82.5, is rounded to
 * 83 there.
 */
import type { LoadingLimits } from '../../src/engineering/loadingPolygon.ts';
import { station } from './station.ts';

export const circularAircraft: LoadingLimits = {
  empty: { weight: 1169, moment: 1169 * 10.6 },
  stations: [
    station('oil', -49, 17, 17),
    station('pilot', 16, 170, 170),
    station('front passenger', 16, 170),
    station('rear passengers', 48, 340),
    station('baggage', 75.5, 100),
  ],
  tanks: [station('fuel', 22, 240, 83)],
  maximumWeight: 2100,
};
