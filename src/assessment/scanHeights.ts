const scanStep = 609.6; // m, 2,000 ft

const sameHeight = 1e-6; // m

/** Heights from sea level to the ceiling at which curves are looked at, those where something changes among them. */
export function scanHeights(top: number, corners: readonly (number | undefined)[]): number[] {
  const steps = Math.max(1, Math.ceil(top / scanStep));
  const even = Array.from({ length: steps + 1 }, (_, step) => (top * step) / steps);
  const within = corners.filter(
    (height): height is number => height !== undefined && height > 0 && height < top,
  );
  const besides = even.filter((one) => within.every((corner) => Math.abs(one - corner) > sameHeight));
  return [...new Set([...besides, ...within])].sort((a, b) => a - b);
}
