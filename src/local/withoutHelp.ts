import { readFile } from 'node:fs/promises';
import type { Plugin } from 'esbuild';
import ts from 'typescript';

/** Where a text of that name is read by the generators only: the entry file, the reference, the sheets' notes. */
const texts = { 'src/functions': ['help', 'source'], 'src/tables': ['help'] } as const;

/** The code without the properties of those names that are texts. */
function without(code: string, names: readonly string[]): string {
  const file = ts.createSourceFile('module.ts', code, ts.ScriptTarget.ES2022, true);
  const spans: { start: number; end: number }[] = [];
  const visit = (node: ts.Node): void => {
    if (
      ts.isPropertyAssignment(node) &&
      names.includes(node.name.getText(file)) &&
      (ts.isStringLiteral(node.initializer) || ts.isTemplateLiteral(node.initializer))
    ) {
      const comma = /^\s*,/.exec(code.slice(node.getEnd()))?.[0] ?? '';
      spans.push({ start: node.getStart(file), end: node.getEnd() + comma.length });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return spans.reduceRight((text, { start, end }) => text.slice(0, start) + text.slice(end), code);
}

/** Leaves help texts out of the pushed library: they stand in the entry file's JSDoc, and every call loads the library. */
export const withoutHelp: Plugin = {
  name: 'without help',
  setup: ({ onLoad }) => {
    for (const [folder, names] of Object.entries(texts)) {
      onLoad({ filter: new RegExp(`${folder}/[A-Za-z]+\\.ts$`) }, async ({ path }) => ({
        contents: without(await readFile(path, 'utf8'), names),
        loader: 'ts',
      }));
    }
  },
};
