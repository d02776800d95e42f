/**
 * What Stryker has no mutant for: every range check of src/engineering is taken out in turn, and a test must notice.
 * Nothing is written: the check is missing only in what the test runner loads. Prints each that nobody missed.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { createVitest } from 'vitest/node';

const root = fileURLToPath(new URL('../../', import.meta.url));
const sources = `${root}src/engineering/`;
const tests = `${root}tests/engineering/`;

interface RangeCheck {
  readonly start: number;
  readonly end: number;
  readonly line: number;
}

function rangeChecks(source: string): RangeCheck[] {
  const file = ts.createSourceFile('source.ts', source, ts.ScriptTarget.ES2020, true);
  const found: RangeCheck[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isExpressionStatement(node) && /^require[A-Z]\w*\(/.test(node.getText())) {
      const start = node.getStart();
      found.push({ start, end: node.end, line: file.getLineAndCharacterOfPosition(start).line + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

let mutated: { readonly path: string; readonly code: string } | undefined;
const vitest = await createVitest(
  'test',
  {
    config: `${root}tests/mutants/vitest.config.ts`,
    dir: tests,
    watch: false,
    bail: 1,
    maxWorkers: 1,
    reporters: [{}],
  },
  {
    plugins: [
      {
        name: 'without one range check',
        enforce: 'pre',
        load: (id) => (id === mutated?.path ? mutated.code : undefined),
      },
    ],
  },
);

async function passes(files: string[]): Promise<boolean> {
  vitest.state.filesMap.clear();
  await vitest.start(files);
  const modules = vitest.state.getTestModules();
  return modules.length > 0 && modules.every((module) => module.ok());
}

const allTests = readdirSync(tests)
  .filter((name) => name.endsWith('.test.ts'))
  .map((name) => tests + name);
if (!(await passes(allTests))) throw new Error('the tests must pass before a check is taken out');

let checks = 0;
let missed = 0;
for (const name of readdirSync(sources)) {
  const path = sources + name;
  const source = readFileSync(path, 'utf8');
  const ownTest = `${tests}${name.replace('.ts', '.test.ts')}`;
  const likely = allTests.filter((file) => file === ownTest || file.includes('argumentRanges'));
  for (const { start, end, line } of rangeChecks(source)) {
    checks++;
    mutated = { path, code: `${source.slice(0, start)};${source.slice(end)}` };
    vitest.invalidateFile(path);
    if (!existsSync(ownTest) || (await passes(likely)))
      if (await passes(allTests)) {
        console.log(`src/engineering/${name}:${line}  ${source.slice(start, end)}`);
        missed++;
      }
  }
  mutated = undefined;
  vitest.invalidateFile(path);
}
console.log(`${checks - missed} of ${checks} range checks: a test fails without it`);
await vitest.close();
process.exit(0);
