/** A piece of a page. Only `html` makes one, and it escapes whatever is not markup already. */
export class Markup {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

type Part = string | number | Markup | readonly Markup[];

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const escaped = (text: string) => text.replace(/[&<>"']/g, (character) => escapes[character] as string);

function textOf(part: Part): string {
  if (part instanceof Markup) return part.text;
  if (typeof part === 'object') return part.map(({ text }) => text).join('\n');
  return escaped(String(part));
}

/** Markup with its parts put in; text is escaped, so that no cell of a table can become part of the page. */
export function html(texts: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return new Markup(
    texts.map((text, index) => text + (index in parts ? textOf(parts[index] as Part) : '')).join(''),
  );
}

export const nothing = html``;
