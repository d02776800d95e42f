import type { LoadingPicture, PicturePoint } from '../assessment/quotePicture.ts';
import { limitColour, packageStyles } from '../workbook/palette.ts';
import { html, svg } from './element.ts';
import { along, letterPlace, outlineLabelPlace, type Spot } from './labelPlaces.ts';

const width = 720;
const height = 360;
const margin = { left: 72, right: 24, top: 24, bottom: 56 };
const labelSize = 13; // px
const letterWidth = 6.4; // px, of the average letter at that size
const ink = '#000000';
/** White around letters, so that a line under them does not run through them. */
const halo = { stroke: '#ffffff', 'stroke-width': '3', 'paint-order': 'stroke' };
const gridColour = '#dddddd';

/** Round numbers about so many steps apart, from below the least to above the greatest. */
function ticks(least: number, greatest: number, count: number): number[] {
  const raw = (greatest - least || Math.abs(greatest) || 1) / count;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5].find((factor) => factor * power >= raw) ?? 10) * power;
  const first = Math.floor(least / step);
  const last = Math.ceil(greatest / step);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}

/** The names A, B, C … by which the loadings are found in the drawing. */
const loadingLetter = (index: number) => String.fromCharCode('A'.charCodeAt(0) + (index % 26));

interface Scale {
  readonly x: (cg: number) => number;
  readonly y: (weight: number) => number;
  readonly spot: (point: PicturePoint) => Spot;
}

const round = (value: number) => Math.round(value * 10) / 10;

function pathOf(points: readonly PicturePoint[], { x, y }: Scale): string {
  return points.map(([cg, weight]) => `${round(x(cg))},${round(y(weight))}`).join(' ');
}

function text(content: string, x: number, y: number, attributes: Record<string, string> = {}): SVGElement {
  return svg(
    'text',
    { x: String(round(x)), y: String(round(y)), 'font-size': String(labelSize), fill: ink, ...attributes },
    content,
  );
}

function grid(scale: Scale, across: readonly number[], up: readonly number[]): SVGElement[] {
  const [left, right] = [scale.x(across[0] as number), scale.x(across[across.length - 1] as number)];
  const [bottom, top] = [scale.y(up[0] as number), scale.y(up[up.length - 1] as number)];
  const line = (x1: number, y1: number, x2: number, y2: number) =>
    svg('line', { x1: `${x1}`, y1: `${y1}`, x2: `${x2}`, y2: `${y2}`, stroke: gridColour });
  return [
    ...across.flatMap((cg) => [
      line(scale.x(cg), bottom, scale.x(cg), top),
      text(cg.toLocaleString('en-US'), scale.x(cg), bottom + 18, { 'text-anchor': 'middle' }),
    ]),
    ...up.flatMap((weight) => [
      line(left, scale.y(weight), right, scale.y(weight)),
      text(weight.toLocaleString('en-US'), left - 8, scale.y(weight) + 4, { 'text-anchor': 'end' }),
    ]),
  ];
}

/** Each loading: filled at takeoff, open with empty tanks, a cross where it fails; between them fuel burns off. */
function loadings(picture: LoadingPicture, scale: Scale, label: Spot[]): SVGElement[] {
  const marks = picture.loadings.map(({ path }) => path.map(scale.spot));
  const taken: Spot[] = [...label, ...marks.flat()];
  return picture.loadings.flatMap(({ path, passes }, index) => {
    const [takeoff, zeroFuel] = [marks[index]?.[0] as Spot, marks[index]?.[path.length - 1] as Spot];
    const place = letterPlace(takeoff, taken);
    taken.push(place);
    const arm = 6;
    const mark = passes
      ? svg('circle', { cx: `${takeoff.x}`, cy: `${takeoff.y}`, r: '4', fill: ink })
      : svg('path', {
          d: `M${takeoff.x - arm},${takeoff.y - arm}l${2 * arm},${2 * arm}m0,${-2 * arm}l${-2 * arm},${2 * arm}`,
          stroke: ink,
          'stroke-width': '2.5',
          fill: 'none',
        });
    return [
      svg('polyline', {
        points: pathOf(path, scale),
        fill: 'none',
        stroke: ink,
        'stroke-width': '1',
        'stroke-dasharray': '1 3',
      }),
      svg('circle', {
        cx: `${zeroFuel.x}`,
        cy: `${zeroFuel.y}`,
        r: '3.5',
        fill: '#ffffff',
        stroke: ink,
        'stroke-width': '1.2',
      }),
      mark,
      text(loadingLetter(index), place.x, place.y, {
        'text-anchor': 'middle',
        'font-weight': 'bold',
        ...halo,
      }),
    ];
  });
}

/** The drawing: CG across, weight up, the CG limits, everything the stations and tanks allow, the named loadings. */
function loadingDrawing(picture: LoadingPicture): SVGElement {
  const points = [...picture.limits, ...picture.region, ...picture.loadings.flatMap(({ path }) => path)];
  const cgs = points.map(([cg]) => cg);
  const weights = points.map(([, weight]) => weight);
  const across = ticks(Math.min(...cgs), Math.max(...cgs), 8);
  const up = ticks(Math.min(...weights), Math.max(...weights), 6);
  const span = (values: readonly number[]) => (values[values.length - 1] as number) - (values[0] as number);
  const x = (cg: number) =>
    margin.left + ((cg - (across[0] as number)) / span(across)) * (width - margin.left - margin.right);
  const y = (weight: number) =>
    height -
    margin.bottom -
    ((weight - (up[0] as number)) / span(up)) * (height - margin.top - margin.bottom);
  const scale: Scale = { x, y, spot: ([cg, weight]) => ({ x: x(cg), y: y(weight) }) };
  const style = packageStyles(picture.count, picture.baseline)[picture.index];
  const colour = style?.colour ?? ink;
  const top = picture.limits.reduce((best, point) => (point[1] > best[1] ? point : best), [
    0, 0,
  ] as PicturePoint);
  const name = `every loading with ${picture.packageName}`;
  const half = (name.length * letterWidth) / 2;
  const place = outlineLabelPlace(
    picture.region.map(scale.spot),
    half,
    along(picture.limits.map(scale.spot)),
    picture.loadings.flatMap(({ path }) => path.map(scale.spot)),
    margin.left,
    width - margin.right,
  );
  const parts = Math.ceil(half / 5);
  const label =
    place === undefined
      ? []
      : Array.from({ length: 2 * parts + 1 }, (_, part) => ({
          x: place.x + (part / parts - 1) * half,
          y: place.y,
        }));
  return svg(
    'svg',
    {
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': `Loadings of ${picture.packageName} over the CG limits; the table of loadings says the same in numbers`,
    },
    ...grid(scale, across, up),
    ...(picture.region.length > 0
      ? [
          svg('polygon', {
            points: pathOf(picture.region, scale),
            fill: colour,
            'fill-opacity': '0.1',
            stroke: colour,
            'stroke-width': '2',
            'stroke-dasharray': (style?.dash ?? []).join(' ') || undefined,
          }),
        ]
      : []),
    svg('polygon', {
      points: pathOf(picture.limits, scale),
      fill: 'none',
      stroke: limitColour,
      'stroke-width': '3',
    }),
    ...loadings(picture, scale, label),
    text('CG limits', scale.x(top[0]) + 6, scale.y(top[1]) - 7, { fill: limitColour, 'font-weight': 'bold' }),
    ...(place === undefined ? [] : [text(name, place.x, place.y, { 'text-anchor': 'middle', ...halo })]),
    text(`CG aft of datum, ${picture.armUnit}`, (margin.left + width - margin.right) / 2, height - 12, {
      'text-anchor': 'middle',
    }),
    text(`Weight, ${picture.weightUnit}`, -(margin.top + height - margin.bottom) / 2, 18, {
      'text-anchor': 'middle',
      transform: 'rotate(-90)',
    }),
  );
}

/** The drawing with what its marks mean. */
export function loadingFigure(picture: LoadingPicture): HTMLElement {
  const names = picture.loadings.map(
    ({ name, passes }, index) => `${loadingLetter(index)} ${name}${passes ? '' : ' (FAIL)'}`,
  );
  const marks =
    'Filled: takeoff; open: empty tanks; cross: fails. The dotted line between them is the fuel burning off, drawn straight.';
  return html(
    'figure',
    {},
    loadingDrawing(picture),
    html('figcaption', {}, names.length > 0 ? `${names.join(' · ')}. ${marks}` : 'No loadings are named.'),
  );
}
