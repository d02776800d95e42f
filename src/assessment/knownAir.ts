import { standardTemperature } from '../engineering/air.ts';
import { type Air, airAt } from '../engineering/aircraftInFlight.ts';
import type { KnownPoint } from '../tables/knownPoints.ts';

/** The air of a known point; standard where its temperature is not given. */
export const airOf = ({ altitude, temperature }: KnownPoint): Air =>
  airAt(altitude, temperature === undefined ? 0 : temperature - standardTemperature(altitude));
