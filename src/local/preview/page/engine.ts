/** What the page's other scripts define: the spreadsheet engine, and the component library that it is written with. */
import type * as owlLibrary from '@odoo/owl';

declare global {
  const o_spreadsheet: typeof import('@odoo/o-spreadsheet');
  const owl: typeof owlLibrary;
}
