import type { Grid } from '../../tables/cell.ts';
import type { FunctionDescriptor } from '../host/functionAdapter.ts';

/** What the page is given when it opens: the tables, and the script with all that belongs to it. */
export interface OpeningData {
  readonly name: string;
  /** Where tables are saved to, and whether those opened are among them. */
  readonly target: string;
  readonly isInPlace: boolean;
  readonly tables: Readonly<Record<string, Grid>>;
  readonly code: string;
  readonly files: Readonly<Record<string, string>>;
  readonly functions: readonly FunctionDescriptor[];
  /** Digests of the tables as they are in the folder, and of the script: work that was put away belongs to these. */
  readonly tablesDigest: string;
  readonly scriptDigest: string;
}
