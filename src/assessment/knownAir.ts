import { standardTemperature } from '../engineering/air.ts';
import { type Air, airAt } from '../engineering/aircraftInFlight.ts';

interface Measured {
  readonly altitude?: number | undefined;
  readonly temperature?: number | undefined;
}

/** The air that something was measured in; at sea level and standard where nothing is said. */
export const airOf = ({ altitude = 0, temperature }: Measured): Air =>
  airAt(altitude, temperature === undefined ? 0 : temperature - standardTemperature(altitude));
