import { type Block, type BlockPart, blockParts, isFilled, partNamed, type Row } from './blockParts.ts';
import { html, type Markup } from './markup.ts';
import { type Curve, chartSize, columnPoints, figure, packageCurve, picture } from './pictures.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { type PackageLook, recordsTable } from './tables.ts';

/** The column of the range, and the units that its head names. */
function rangeHead(header: Row): { column: number; range: string; payload: string } {
  const column = header.findIndex((cell) => String(cell).startsWith('range, '));
  const [, range = '', payload = ''] = /^range, (.*) \(payload in (.*)\)$/.exec(String(header[column])) ?? [];
  return { column, range, payload };
}

/** The corners of every package's curve, which have a name beside them. */
function corners([header = [], ...rows]: Block, packages: readonly PackageLook[]): Markup {
  const { range, payload, column: rangeColumn } = rangeHead(header);
  const fuelColumn = header.findIndex((cell) => String(cell).startsWith('fuel aboard'));
  const pointColumn = header.indexOf('point');
  const records = packages.flatMap(({ name }) => {
    const column = header.indexOf(name);
    const own = rows.filter((row) => isFilled(row[column]) && isFilled(row[pointColumn]));
    return own.map((row): Row => [name, row[pointColumn], row[rangeColumn], row[column], row[fuelColumn]]);
  });
  const units: Row = ['', '', range, payload, String(header[fuelColumn]).split(', ')[1] ?? ''];
  return recordsTable([['Package', 'Point', 'Range', 'Payload', 'Fuel aboard'], units, ...records]);
}

export function rangeSection({ block, packages }: ReportData): Section {
  const range = block('PAYLOAD_RANGE');
  const [header = [], ...rows] = range;
  const { column, range: distance, payload } = rangeHead(header);
  const curves = packages.map((look) =>
    packageCurve(look, columnPoints(rows, header.indexOf(look.name), column)),
  );
  const title = 'Payload against range, with the mission’s cruise and reserve';
  const axes = { x: `range, ${distance}`, y: `payload, ${payload}`, yFromZero: true };
  return {
    id: 'range',
    title: 'How far with how much?',
    body: html`${figure(title, picture(title, curves, axes, chartSize))}
${corners(range, packages)}`,
  };
}

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
