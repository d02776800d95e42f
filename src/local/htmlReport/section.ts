import type { Block } from '../block.ts';
import { html, type Markup } from './markup.ts';
import type { PackageLook } from './tables.ts';

/** What the sections are made from. */
export interface ReportData {
  /** The block of a custom function. */
  readonly block: (functionName: string) => Block;
  readonly packages: readonly PackageLook[];
}

/** One question and its answer. */
export interface Section {
  readonly id: string;
  readonly title: string;
  readonly body: Markup;
}

export const sectionMarkup = ({ id, title, body }: Section): Markup =>
  html`<section id="${id}"><h2>${title}</h2>
${body}
</section>`;

export const withTitle = (title: string, body: Markup): Markup => html`<h3>${title}</h3>
${body}`;
