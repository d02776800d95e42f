/** A picture puts a point where its axes say. */
import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { type Curve, columnPoints, domainOf, picture } from '../../../src/local/htmlReport/pictures.ts';

const curve = (name: string, points: readonly (readonly [number, number])[]): Curve => ({
  name,
  points: points.map(([x, y]) => ({ x, y })),
  stroke: '#0072b2',
  width: 2,
  dash: [8, 3],
});
const axes = { x: 'range, nmi', y: 'payload, lb', yFromZero: true };

interface Element {
  readonly textContent: string;
  readonly parentElement: Element;
  getAttribute(name: string): string | null;
}
interface Drawn {
  querySelectorAll(selector: string): Iterable<Element>;
}
const drawn = (text: string) => (parseHTML(text) as unknown as { readonly document: Drawn }).document;

test('corners of the axes at the corners of the frame', () => {
  // 400 by 300 px with 52 left, 12 right, 24 above and 40 below: x from 52 to 388, y from 260 up to 24
  const domain = { x: [0, 10], y: [0, 100] } as const;
  const svg = picture(
    't',
    [
      curve('', [
        [0, 0],
        [10, 100],
        [5, 50],
      ]),
    ],
    { ...axes, domain },
    { width: 400, height: 300 },
  );
  const [path] = drawn(svg.text).querySelectorAll('path[d^="M52"]');
  expect(path?.getAttribute('d')).toBe('M52,260L388,24L220,142');
});

/** How far down an element's own transform moves it. */
const down = (element: Element) =>
  Number(/,(-?[\d.]+)\)/.exec(element.getAttribute('transform') ?? '')?.[1] ?? 0);

test('labels of curves that end in one place do not cover one another', () => {
  const curves = ['Rowan', 'Larch', 'Hazel'].map((name) =>
    curve(name, [
      [0, 1],
      [10, 50],
    ]),
  );
  const texts = [
    ...drawn(picture('t', curves, axes, { width: 400, height: 300 }).text).querySelectorAll('text'),
  ];
  const heights = texts
    .filter(({ textContent }) => ['Rowan', 'Larch', 'Hazel'].includes(textContent))
    .map((label) => down(label) + down(label.parentElement))
    .sort((a, b) => a - b);
  expect(heights.length).toBe(3);
  heights.slice(1).forEach((height, index) => {
    expect(height - (heights[index] as number)).toBeGreaterThanOrEqual(12.9); // a line of 13 px, to 0.1
  });
});

test('points of a chart block are those of one column', () => {
  const rows = [
    [1, 10, null],
    [2, null, 30],
    [3, '', 40],
    [4, 'not known', 50],
  ];
  expect(columnPoints(rows, 1)).toEqual([{ x: 1, y: 10 }]);
  expect(columnPoints(rows, 2)).toEqual([
    { x: 2, y: 30 },
    { x: 3, y: 40 },
    { x: 4, y: 50 },
  ]);
});

test('an axis holds zero where that matters, and a little room', () => {
  expect(domainOf([20, 100], true)).toEqual([0, 104]);
  expect(domainOf([20, 120], false)).toEqual([16, 124]);
});

test('without a point there are words in place of a picture', () => {
  expect(picture('t', [curve('Rowan', [])], axes, { width: 400, height: 300 }).text).toContain('Not known');
});
