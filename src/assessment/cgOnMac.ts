import { macFraction } from '../engineering/mac.ts';
import type { Airframe } from '../tables/airframe.ts';

/** A CG as a fraction of the MAC; undefined where the airframe does not say where that lies. */
export const cgOnMac = ({ macLeadingEdge, macLength }: Airframe, cg: number): number | undefined =>
  macLeadingEdge === undefined || macLength === undefined
    ? undefined
    : macFraction(cg, macLeadingEdge, macLength);
