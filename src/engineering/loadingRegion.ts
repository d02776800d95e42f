/** The region of all loadings as it is drawn: CG across, weight up. */
import { requireAtLeast } from './check.ts';
import type { LoadingPolygon } from './loadingPolygon.ts';

export interface RegionPoint {
  readonly cg: number;
  readonly weight: number;
}

/**
 * Outline of a loading polygon in CG and weight: up its forward boundary, down its aft one, first point repeated. An edge
 * straight in weight and moment is a hyperbola here, x = a + B/W, and gets points between its ends.
 * @param polygon all loadings
 * @param steps at least 1: no two points are further apart in weight than the whole range over this
 * @throws RangeError when steps is below 1
 * @source x = M/W
 */
export function loadingRegion(polygon: LoadingPolygon, steps = 40): RegionPoint[] {
  requireAtLeast('steps', steps, 1, '');
  const corners = [...polygon.forward, ...[...polygon.aft].reverse()];
  const lightest = polygon.forward[0]!;
  const spacing = (polygon.forward[polygon.forward.length - 1]!.weight - lightest.weight) / steps;
  const outline: RegionPoint[] = [{ cg: lightest.cg, weight: lightest.weight }];
  for (let edge = 1; edge < corners.length; edge++) {
    const [from, to] = [corners[edge - 1]!, corners[edge]!];
    const weightChange = to.weight - from.weight;
    const pieces = spacing > 0 ? Math.max(1, Math.ceil(Math.abs(weightChange) / spacing)) : 1;
    for (let piece = 1; piece < pieces; piece++) {
      const weight = from.weight + (weightChange * piece) / pieces;
      const moment = from.moment + ((to.moment - from.moment) * piece) / pieces;
      outline.push({ cg: moment / weight, weight });
    }
    outline.push({ cg: to.cg, weight: to.weight });
  }
  return outline;
}
