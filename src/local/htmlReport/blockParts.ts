import { type Block, isAlone, type Row } from '../block.ts';

/** The rows of a block below one of its headings; the rows above the first heading have none. */
export interface BlockPart {
  readonly title: string;
  readonly rows: Block;
}

/** A heading stands alone in its row and begins with a capital; a sentence ends in a stop. */
const isHeading = (row: Row) => isAlone(row) && /^\p{Lu}.*[^.]$/u.test(String(row[0]));

export function blockParts(block: Block): BlockPart[] {
  const starts = block.flatMap((row, index) => (isHeading(row) ? [index] : []));
  const first = starts[0] ?? block.length;
  const parts = starts.map((start, index) => ({
    title: String(block[start]?.[0]),
    rows: block.slice(start + 1, starts[index + 1]),
  }));
  return first > 0 ? [{ title: '', rows: block.slice(0, first) }, ...parts] : parts;
}

/** @throws Error when the block has no such heading: the report asks for what the functions no longer give */
export function partNamed(parts: readonly BlockPart[], beginning: string): BlockPart {
  const part = parts.find(({ title }) => title.startsWith(beginning));
  if (part === undefined)
    throw new Error(`no heading "${beginning}" among ${parts.map(({ title }) => `"${title}"`).join(', ')}`);
  return part;
}

/** A heading of the comparison whose rows belong to the report's section on loading. */
export const namedLoadings = 'Named loadings';
