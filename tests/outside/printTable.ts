/** Writes the table of outside checks into DEVELOPERS.md: npm run checks */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { withChecks } from './checksTable.ts';

const path = fileURLToPath(new URL('../../DEVELOPERS.md', import.meta.url));
writeFileSync(path, withChecks(readFileSync(path, 'utf8')));
