import { dataFiles } from '../../src/local/build.ts';
import type { Layout } from '../../src/workbook/layout.ts';

const pushed = await dataFiles();

/** The files that the pushed script reads, with a layout in place of its own. */
export const filesWith = (layout: Layout): Readonly<Record<string, string>> => ({
  ...pushed,
  Layout: JSON.stringify(layout),
});
