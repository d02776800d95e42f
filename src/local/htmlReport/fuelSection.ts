import type { Block } from '../block.ts';
import { type BlockPart, blockParts, partNamed } from './blockParts.ts';
import { html } from './markup.ts';
import { type Curve, chartSize, columnPoints, figure, packageCurve, picture } from './pictures.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { type PackageLook, recordsTable } from './tables.ts';

/** A rich and a lean curve a package; the rich ones thin. */
function fuelCurves([header = [], ...rows]: Block, packages: readonly PackageLook[]): Curve[] {
  return packages.flatMap((look) =>
    ['rich', 'lean'].flatMap((mixture) => {
      const column = header.indexOf(`${look.name} ${mixture}`);
      const points = columnPoints(rows, column);
      return points.length === 0
        ? []
        : [
            packageCurve(
              { ...look, name: `${look.name} ${mixture}` },
              points,
              mixture === 'rich' ? 1.2 : 2.4,
            ),
          ];
    }),
  );
}

export function fuelSection({ block, packages }: ReportData): Section {
  const parts = blockParts(block('FUEL_TABLE'));
  const consumption = partNamed(parts, 'Fuel flow');
  const endurance = partNamed(parts, 'Endurance');
  const power = partNamed(parts, 'Continuous power');
  const [, flow = ''] = /^Fuel flow, (.*?);/.exec(consumption.title) ?? [];
  const [, hours = ''] = /, ([^,]*)$/.exec(endurance.title) ?? [];
  const drawn = (title: string, y: string, { rows }: BlockPart) => {
    const axes = { x: String(rows[0]?.[0] ?? ''), y, yFromZero: true };
    return figure(title, picture(title, fuelCurves(rows, packages), axes, chartSize));
  };
  const table = ({ title, rows: [header = [], ...rows] }: BlockPart) =>
    withTitle(title, recordsTable([header, [], ...rows]));
  return {
    id: 'fuel',
    title: 'What does it burn, and what power is left at height?',
    body: html`<div class="charts">${drawn('Fuel flow against power', `fuel flow, ${flow}`, consumption)}
${drawn('Endurance against power, full tanks, reserve kept', `endurance, ${hours}`, endurance)}</div>
${table(consumption)}
${table(power)}`,
  };
}
