type Child = Node | string;
type Attributes = Readonly<Record<string, string | boolean | undefined>>;

function fill<E extends Element>(element: E, attributes: Attributes, children: readonly Child[]): E {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === true) element.setAttribute(name, '');
    else if (typeof value === 'string') element.setAttribute(name, value);
  }
  element.append(...children); // a string becomes a text node: nothing in it is read as markup
  return element;
}

/** An element of the page. */
export function html<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  return fill(document.createElement(name), attributes, children);
}

/** An element of a drawing. */
export function svg(name: string, attributes: Attributes = {}, ...children: readonly Child[]): SVGElement {
  return fill(document.createElementNS('http://www.w3.org/2000/svg', name), attributes, children);
}

/** The element of the page's own HTML with that id. */
export function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page lacks #${id}`);
  return found;
}
