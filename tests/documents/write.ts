/** Writes the generated blocks of README.md: npm run documents */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { withReadmeBlocks } from './readme.ts';

const path = fileURLToPath(new URL('../../README.md', import.meta.url));
writeFileSync(path, withReadmeBlocks(readFileSync(path, 'utf8')));
