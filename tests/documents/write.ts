/** Writes REFERENCE.md and the generated blocks of README.md: npm run documents */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { withReadmeBlocks } from './readme.ts';
import { reference } from './reference.ts';

const pathOf = (name: string) => fileURLToPath(new URL(`../../${name}`, import.meta.url));

writeFileSync(pathOf('README.md'), withReadmeBlocks(readFileSync(pathOf('README.md'), 'utf8')));
writeFileSync(pathOf('REFERENCE.md'), reference());
