import type { Cell } from '../../tables/cell.ts';
import { type Block, blockParts, isFilled, partNamed, type Row } from './blockParts.ts';
import { html, type Markup } from './markup.ts';
import { type Curve, chartSize, columnPoints, figure, packageCurve, picture } from './pictures.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { type PackageLook, recordsTable } from './tables.ts';

/** The corners of every package's curve, which have a name beside them. */
function corners([header = [], ...rows]: Block, packages: readonly PackageLook[]): Markup {
  const fuelColumn = header.findIndex((cell) => String(cell).startsWith('fuel aboard'));
  const pointColumn = header.indexOf('point');
  const [, range = '', payload = ''] = /^range, (.*) \(payload in (.*)\)$/.exec(String(header[0])) ?? [];
  const records = packages.flatMap(({ name }) => {
    const column = header.indexOf(name);
    const own = rows.filter((row) => isFilled(row[column]) && isFilled(row[pointColumn]));
    return own.map((row): Row => [name, row[pointColumn], row[0], row[column], row[fuelColumn]]);
  });
  const units: Row = ['', '', range, payload, String(header[fuelColumn]).split(', ')[1] ?? ''];
  return recordsTable([['Package', 'Point', 'Range', 'Payload', 'Fuel aboard'], units, ...records]);
}

export function rangeSection({ block, packages }: ReportData): Section {
  const range = block('PAYLOAD_RANGE');
  const [header = [], ...rows] = range;
  const [, distance = '', payload = ''] = /^range, (.*) \(payload in (.*)\)$/.exec(String(header[0])) ?? [];
  const curves = packages.map((look) => packageCurve(look, columnPoints(rows, header.indexOf(look.name))));
  const title = 'Payload against range, with the mission’s cruise and reserve';
  const axes = { x: `range, ${distance}`, y: `payload, ${payload}`, yFromZero: true };
  return {
    id: 'range',
    title: 'How far with how much?',
    body: html`${figure(title, picture(title, curves, axes, chartSize))}
${corners(range, packages)}`,
  };
}

/** The curves whose heads are a package's name and what `ending` says; the rich ones thin. */
function fuelCurves(
  [header = [], ...rows]: Block,
  packages: readonly PackageLook[],
  ending: string,
): Curve[] {
  return packages.flatMap((look) =>
    ['rich', 'lean'].flatMap((mixture) => {
      const column = header.indexOf(`${look.name} ${mixture}${ending}`);
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
  const power = partNamed(parts, 'Continuous power');
  const [, flow = '', hours = ''] = /^Fuel flow, (.*?); endurance .*?, (.*?);/.exec(consumption.title) ?? [];
  const [header = [], ...settings] = consumption.rows;
  const x = String(header[0]);
  const own = header
    .map((cell, column) => ({ cell, column }))
    .filter(({ cell }) => isFilled(cell) && !String(cell).endsWith('endurance'));
  const pick = (row: Row): Cell[] => own.map(({ column }) => row[column] ?? null);
  const drawn = (title: string, y: string, ending: string) =>
    figure(
      title,
      picture(title, fuelCurves(consumption.rows, packages, ending), { x, y, yFromZero: true }, chartSize),
    );
  const [powerHeader = [], ...heights] = power.rows;
  const shown = powerHeader.flatMap((cell, column) =>
    isFilled(cell) && !String(cell).endsWith('MCP') ? [column] : [],
  );
  return {
    id: 'fuel',
    title: 'What does it burn, and what power is left at height?',
    body: html`<div class="charts">${drawn('Fuel flow against power', `fuel flow, ${flow}`, '')}
${drawn('Endurance against power, full tanks, reserve kept', `endurance, ${hours}`, ', endurance')}</div>
${withTitle(`Fuel flow, ${flow}; blank outside the fuel points`, recordsTable([pick(header), [], ...settings.map(pick)]))}
${withTitle(
  power.title.replace(/; share.*/, ''),
  recordsTable([
    shown.map((column) => powerHeader[column] ?? null),
    [],
    ...heights.map((row) => shown.map((column) => row[column] ?? null)),
  ]),
)}`,
  };
}
