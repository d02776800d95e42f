import { type Block, isFilled, type Row } from '../block.ts';
import { html, type Markup } from './markup.ts';
import { chartSize, columnPoints, figure, packageCurve, picture } from './pictures.ts';
import type { ReportData, Section } from './section.ts';
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
