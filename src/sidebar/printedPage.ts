import { byId } from './element.ts';

/** What the script has put into the page. */
export const printedData = <T>(): T => JSON.parse(byId('printed-data').textContent ?? '') as T;

/**
 * Names the page and lets it be printed.
 * @param name stands beside the page numbers, in the margin: CSS knows no other way to put it there; nothing typed belongs
 * into it
 */
export function readyToPrint(name: string): void {
  document.title = name;
  byId('page-name').textContent = `@page { @bottom-left { content: "${name}"; } }`;
  byId('print').addEventListener('click', () => window.print());
}
