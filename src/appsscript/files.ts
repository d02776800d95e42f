import type { Grids, Layout } from '../workbook/layout.ts';

/** The text of a file beside the script. */
export const textOf = (name: string) => HtmlService.createHtmlOutputFromFile(name).getContent();

/** The layout, from the file beside the script: only laying out needs it, so it is no part of the script. */
export const readLayout = (): Layout => JSON.parse(textOf('Layout')) as Layout;

/** The sample aircraft by name, each with its tables. */
export const readSamples = (): Readonly<Record<string, Grids>> => JSON.parse(textOf('Samples'));
