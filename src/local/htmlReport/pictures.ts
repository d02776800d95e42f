import * as Plot from '@observablehq/plot';
import { parseHTML } from 'linkedom';
import { limitColour } from '../../workbook/palette.ts';
import type { Block } from '../block.ts';
import { html, Markup } from './markup.ts';
import type { PackageLook } from './tables.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** A line of a picture; a name given is written at its end. */
export interface Curve {
  readonly name: string;
  readonly points: readonly Point[];
  readonly stroke: string;
  readonly width: number;
  readonly dash: readonly number[] | undefined;
}

export interface Axes {
  readonly x: string;
  readonly y: string;
  readonly yFromZero: boolean;
  /** Both axes the same in several pictures side by side. */
  readonly domain?: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
}

/** Of a picture that stands alone: its letters can be read on a phone too. */
export const chartSize: Size = { width: 560, height: 340 };

interface Size {
  readonly width: number;
  readonly height: number;
}

const lineHeight = 13; // px, of a label
const letterWidth = 7; // px, of a label
const labelRoom = 88; // px, right of the curves

/** The points of one column of a chart block: an x column, then a column a curve, blank where it has no point. */
export function columnPoints(rows: Block, column: number, xColumn = 0): Point[] {
  return rows.flatMap((row) => {
    const [x, y] = [row[xColumn], row[column]];
    return typeof x === 'number' && typeof y === 'number' ? [{ x, y }] : [];
  });
}

export function packageCurve(look: PackageLook, points: readonly Point[], width = 2): Curve {
  return { name: look.name, points, stroke: look.colour, width, dash: look.dash };
}

export const limitCurve = (points: readonly Point[]): Curve => ({
  name: '',
  points,
  stroke: limitColour,
  width: 3,
  dash: undefined,
});

/** Ends of an axis that holds all the values, with a little room. */
export function domainOf(values: readonly number[], fromZero: boolean): [number, number] {
  const low = Math.min(...values, ...(fromZero ? [0] : []));
  const high = Math.max(...values, ...(fromZero ? [0] : []));
  const room = (high - low || 1) * 0.04;
  return [low === 0 ? 0 : low - room, high + room];
}

interface Label {
  readonly curve: Curve;
  readonly end: Point;
  /** Moved up by so many pixels. */
  readonly rise: number;
}

/** Labels at the curves' ends, moved up as far as they would cover one another. */
function endLabels(curves: readonly Curve[], pixels: { readonly x: number; readonly y: number }): Label[] {
  const named = curves.filter(({ name, points }) => name !== '' && points.length > 0);
  const fromBelow = named
    .map((curve) => ({ curve, end: curve.points.at(-1) as Point }))
    .sort((a, b) => a.end.y - b.end.y);
  const placed: (Label & { readonly left: number; readonly right: number; readonly height: number })[] = [];
  for (const { curve, end } of fromBelow) {
    const left = end.x * pixels.x;
    const right = left + curve.name.length * letterWidth;
    const height = end.y * pixels.y;
    const below = placed.filter((other) => other.left < right && left < other.right);
    const free = Math.max(height, ...below.map((other) => other.height + lineHeight));
    placed.push({ curve, end, rise: free - height, left, right, height: free });
  }
  return placed;
}

/** Curves over two axes as SVG; words where there is no point to draw. */
export function picture(
  title: string,
  curves: readonly Curve[],
  axes: Axes,
  { width, height }: Size,
): Markup {
  const points = curves.flatMap((curve) => curve.points);
  if (points.length === 0) return html`<p>Not known for any package: see the findings.</p>`;
  const x =
    axes.domain?.x ??
    domainOf(
      points.map((point) => point.x),
      false,
    );
  const y =
    axes.domain?.y ??
    domainOf(
      points.map((point) => point.y),
      axes.yFromZero,
    );
  const [top, bottom, left] = [24, 40, 52];
  const isLabelled = curves.some(({ name }) => name !== '');
  const right = isLabelled ? labelRoom : 12;
  const labels = endLabels(curves, {
    x: (width - left - right) / (x[1] - x[0]),
    y: (height - top - bottom) / (y[1] - y[0]),
  });
  const { document } = parseHTML('<html><body></body></html>') as unknown as { readonly document: object };
  const svg = Plot.plot({
    document,
    width,
    height,
    marginTop: top,
    marginBottom: bottom,
    marginLeft: left,
    marginRight: right,
    style: { fontFamily: 'inherit', fontSize: '12px' },
    x: { domain: x, label: axes.x, labelAnchor: 'center', labelArrow: 'none', grid: true },
    y: { domain: y, label: axes.y, labelArrow: 'none', grid: true },
    marks: [
      ...(y[0] < 0 ? [Plot.ruleY([0], { stroke: limitColour, strokeWidth: 2 })] : []),
      ...curves.map((curve) =>
        Plot.line(curve.points, {
          x: 'x',
          y: 'y',
          stroke: curve.stroke,
          strokeWidth: curve.width,
          strokeDasharray: curve.dash?.join(' ') ?? 'none',
        }),
      ),
      ...labels.map(({ curve, end, rise }) =>
        Plot.text([end], {
          x: 'x',
          y: 'y',
          text: [curve.name],
          dx: 5,
          dy: -4 - rise,
          textAnchor: 'start',
          fill: curve.stroke,
          fontWeight: 'bold',
          stroke: 'white',
          strokeWidth: 4,
        }),
      ),
    ],
  });
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', title);
  return new Markup(svg.outerHTML); // the library has escaped the texts in it
}

export const figure = (title: string, svg: Markup) =>
  html`<figure><figcaption>${title}</figcaption>${svg}</figure>`;
