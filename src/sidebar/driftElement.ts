import type { ToldDrift } from '../appsscript/quoteDrifts.ts';
import { html } from './element.ts';

/** What moved since a quote was issued, and what that does to price and payload. */
export function driftElement({ name, changes, figures, remarks }: ToldDrift): HTMLElement {
  const list = (texts: readonly string[]) => html('ul', {}, ...texts.map((text) => html('li', {}, text)));
  const moved = figures.map(({ label, quoted, now, unit }) =>
    `${label}: ${quoted === now ? `${now} as quoted` : `${quoted} → ${now}`} ${unit}`.trimEnd(),
  );
  const count = changes.length === 1 ? '1 input has' : `${changes.length} inputs have`;
  return html(
    'div',
    {},
    html('h3', {}, changes.length === 0 ? `${name}: no input has moved.` : `${name}: ${count} moved.`),
    ...(changes.length > 0 ? [list(changes), html('h3', {}, 'Issued now it would say')] : []),
    list([...moved, ...remarks]),
  );
}
