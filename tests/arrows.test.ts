import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../', import.meta.url));

interface SourceFile {
  readonly path: string;
  readonly text: string;
  /** what it imports: a path in the repository, a package, or node:… */
  readonly imports: readonly string[];
}

function pathsBelow(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = posix.join(folder, entry.name);
    if (entry.isDirectory()) return pathsBelow(path);
    return /\.(ts|mjs)$/.test(entry.name) ? [path] : [];
  });
}

/** Imports of every form: import, export from, import type, import(). */
function importsOf(path: string, text: string): string[] {
  const imports: string[] = [];
  const add = (specifier: ts.Node | undefined) => {
    if (!specifier || !ts.isStringLiteralLike(specifier)) return;
    const { text: name } = specifier;
    imports.push(name.startsWith('.') ? posix.join(dirname(path), name) : name);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) add(node.moduleSpecifier);
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node.argument.literal);
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(node.arguments[0]);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true));
  return imports;
}

const files: readonly SourceFile[] = pathsBelow('src').map((path) => {
  const text = readFileSync(join(root, path), 'utf8');
  return { path, text, imports: importsOf(path, text) };
});

/** What each folder may import besides itself. Arrows run one way. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  'src/engineering': ['src/units.ts'],
  'src/tables': ['src/units.ts', 'fastest-levenshtein'],
  'src/assessment': ['src/tables', 'src/engineering', 'src/units.ts'],
  'src/functions': ['src/assessment', 'src/tables', 'src/engineering', 'src/units.ts'],
  'src/workbook': ['src/functions', 'src/assessment', 'src/tables', 'src/engineering', 'src/units.ts'],
  'src/appsscript': [
    'src/workbook',
    'src/functions',
    'src/assessment',
    'src/tables',
    'src/engineering',
    'src/units.ts',
  ],
  'src/sidebar': [
    'src/appsscript',
    'src/workbook',
    'src/functions',
    'src/assessment',
    'src/tables',
    'src/units.ts',
  ],
};

const folderOf = (path: string) => path.split('/').slice(0, 2).join('/');
const inFolder = (folder: string) => files.filter(({ path }) => folderOf(path) === folder);

describe('arrows run one way', () => {
  test('there is something to hold them to', () => {
    expect(files.length).toBeGreaterThan(150);
    expect(files.flatMap(({ imports }) => imports).length).toBeGreaterThan(500);
    for (const folder of Object.keys(allowed).filter((each) => each !== 'src/sidebar'))
      expect(inFolder(folder).length, folder).toBeGreaterThan(0);
  });

  test.each(Object.entries(allowed))('%s', (folder, others) => {
    const wrong = inFolder(folder).flatMap(({ path, imports }) =>
      imports
        .filter(
          (each) => folderOf(each) !== folder && !others.includes(folderOf(each)) && !others.includes(each),
        )
        .map((each) => `${path} imports ${each}`),
    );
    expect(wrong).toEqual([]);
  });

  test('units import nothing', () => {
    expect(files.find(({ path }) => path === 'src/units.ts')?.imports).toEqual([]);
  });

  test('nobody imports src/local', () => {
    const wrong = files.filter(
      ({ path, imports }) =>
        folderOf(path) !== 'src/local' && imports.some((each) => folderOf(each) === 'src/local'),
    );
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  test('every file is in a folder that has its arrows', () => {
    const folders = new Set(files.map(({ path }) => folderOf(path)));
    expect([...folders].filter((folder) => !(folder in allowed)).sort()).toEqual([
      'src/local',
      'src/units.ts',
    ]);
  });

  test('no circle of imports, types apart', () => {
    const byPath = new Map(files.map((file) => [file.path, file]));
    const running = new Map(
      files.map(({ path, text }) => [
        path,
        importsOf(path, text.replace(/^(import|export) type [^;]*;/gm, '')).filter((each) =>
          byPath.has(each),
        ),
      ]),
    );
    const done = new Set<string>();
    const circles: string[] = [];
    const visit = (path: string, way: readonly string[]): void => {
      if (way.includes(path)) {
        circles.push([...way.slice(way.indexOf(path)), path].join(' → '));
        return;
      }
      if (done.has(path)) return;
      for (const next of running.get(path) ?? []) visit(next, [...way, path]);
      done.add(path);
    };
    for (const { path } of files) visit(path, []);
    expect(circles).toEqual([]);
  });
});

describe('each host stays at home', () => {
  /** Words of a file's code, without its comments and texts. */
  function identifiers({ path, text }: SourceFile): Set<string> {
    const names = new Set<string>();
    const visit = (node: ts.Node): void => {
      if (ts.isIdentifier(node)) names.add(node.text);
      ts.forEachChild(node, visit);
    };
    visit(ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true));
    return names;
  }

  test('Google’s services are named in src/appsscript, and where they are imitated', () => {
    const services = [
      'SpreadsheetApp',
      'GoogleAppsScript',
      'HtmlService',
      'PropertiesService',
      'LockService',
      'ScriptApp',
      'Utilities',
      'Logger',
      'Charts',
      'DriveApp',
      'UrlFetchApp',
      'Session',
    ];
    const wrong = files
      .filter(({ path }) => !/^src\/(appsscript|local\/host)\//.test(path))
      .flatMap((file) => {
        const names = identifiers(file);
        return services
          .filter((service) => names.has(service))
          .map((service) => `${file.path} names ${service}`);
      });
    expect(wrong).toEqual([]);
  });

  test('Node is imported in src/local only', () => {
    const wrong = files.filter(
      ({ path, imports }) =>
        folderOf(path) !== 'src/local' && imports.some((each) => each.startsWith('node:')),
    );
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  test('packages are imported in src/local only, but for the one that finds slips', () => {
    const wrong = files.flatMap(({ path, imports }) =>
      imports
        .filter((each) => !each.startsWith('src/') && !each.startsWith('node:'))
        .filter((each) => folderOf(path) !== 'src/local' && each !== 'fastest-levenshtein')
        .map((each) => `${path} imports ${each}`),
    );
    expect(wrong).toEqual([]);
  });

  test('imports of our own files say their extension and stay in src', () => {
    const ownPlaces = new Set(['..', ...readdirSync(root)]);
    const wrong = files.flatMap(({ path, imports }) =>
      imports
        .filter((each) => ownPlaces.has(each.split('/')[0] as string))
        .filter((each) => !/^src\/.*\.(ts|mjs)$/.test(each))
        .map((each) => `${path} imports ${each}`),
    );
    expect(wrong).toEqual([]);
  });
});
