import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type FolderGrids, readTableFolder } from '../src/local/tableFolder.ts';

const folder = fileURLToPath(new URL('../samples/', import.meta.url));

export const sampleNames = readdirSync(folder);

/** The tables of a sample. */
export const sample = (name: string): FolderGrids => readTableFolder(`${folder}${name}`).grids;
