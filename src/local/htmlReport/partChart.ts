import type { BlockPart } from './blockParts.ts';
import type { Markup } from './markup.ts';
import { chartSize, columnPoints, figure, packageCurve, picture } from './pictures.ts';
import type { PackageLook } from './tables.ts';

/** A heading that ends in its unit: "Best rate of climb …, ft/min". */
function titleAndUnit(title: string): [string, string] {
  const at = title.lastIndexOf(', ');
  return [title.slice(0, at), title.slice(at + 2)];
}

/** The chart of one part of a block: its header names the x axis and the packages. */
export function partChart(
  { title, rows }: BlockPart,
  packages: readonly PackageLook[],
  what: string,
  yFromZero: boolean,
): Markup {
  const [header = [], ...points] = rows;
  const [words, unit] = titleAndUnit(title);
  const curves = packages.map((look) => packageCurve(look, columnPoints(points, header.indexOf(look.name))));
  return figure(
    words,
    picture(words, curves, { x: String(header[0]), y: `${what}, ${unit}`, yFromZero }, chartSize),
  );
}
