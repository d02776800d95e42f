import { type BlockPart, blockParts, partNamed } from './blockParts.ts';
import { html, type Markup } from './markup.ts';
import { chartSize, columnPoints, figure, packageCurve, picture } from './pictures.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { type PackageLook, packagesTable, recordsTable } from './tables.ts';

/** A heading that ends in its unit: "Best rate of climb …, ft/min". */
function titleAndUnit(title: string): [string, string] {
  const at = title.lastIndexOf(', ');
  return [title.slice(0, at), title.slice(at + 2)];
}

/** The chart of one part of a block: its header names the x axis and the packages. */
function drawn(
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

export function flightSection({ block, packages }: ReportData): Section {
  const parts = blockParts(block('FLIGHT_TABLE'));
  const figures = partNamed(parts, 'Figures');
  return {
    id: 'flight',
    title: 'How does it climb, how fast is it, what field does it need?',
    body: html`<div class="charts">${drawn(partNamed(parts, 'Best rate of climb'), packages, 'rate of climb', true)}
${drawn(partNamed(parts, 'Level speed at 75 %'), packages, 'true airspeed', false)}</div>
${withTitle(figures.title, packagesTable(figures.rows.slice(1), packages))}`,
  };
}

export function coolingSection({ block, packages }: ReportData): Section {
  const parts = blockParts(block('COOLING_CHECK'));
  const climbs = partNamed(parts, 'Steady climb');
  const margins = partNamed(parts, 'Least margin');
  const columns = [
    'Package',
    'Stream',
    'Power',
    'At',
    'Temperature',
    'Limit',
    'Margin',
    'Highest OAT at the field',
    'Exit needed',
    'Exit built',
    'Verdict',
  ];
  return {
    id: 'cooling',
    title: 'Does it stay cool on the hottest day?',
    body: html`${drawn(margins, packages, 'margin', false)}
${withTitle(climbs.title, recordsTable(climbs.rows, columns))}`,
  };
}
