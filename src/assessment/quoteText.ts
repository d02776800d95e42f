import type { QuoteCell } from './quoteSection.ts';

/** Title of the section that the picture of the loadings stands above. */
export const pictured = 'Loadings, from takeoff to zero fuel';

/** A cell as it is printed. */
export const cellText = (cell: QuoteCell) => (typeof cell === 'string' ? cell : cell.text);
