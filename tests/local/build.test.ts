import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { runInContext } from 'node:vm';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { actions } from '../../src/appsscript/actions.ts';
import { formulas, tableFunctions } from '../../src/functions/library.ts';
import { pushedFiles } from '../../src/local/build.ts';
import { triggers } from '../../src/local/entryText.ts';
import { bareContext } from './bareContext.ts';

const files = await pushedFiles();
const script = files['Code.js']!;
const customFunctions = [...formulas, ...tableFunctions];
const names = [...customFunctions.map(({ name }) => name), ...triggers, ...Object.keys(actions)];

describe('the script', () => {
  test('defines the library, the custom functions and the actions, and no other global', () => {
    const context = bareContext({});
    runInContext(script, context, { filename: 'Code.js' });
    expect(Object.keys(context).sort()).toEqual(['library_', ...names].sort());
  });

  /** Runs a script whose every look at a global it does not define itself goes through a list of what is there. */
  function runLookingAt(text: string): string[] {
    const builtins = bareContext({});
    const known = new Set(runInContext('Object.getOwnPropertyNames(globalThis)', builtins) as string[]);
    const unknown: string[] = [];
    const defined: Record<PropertyKey, unknown> = {};
    const scope = new Proxy(defined, {
      has: (_, name) => name !== 'scope' && name !== Symbol.unscopables,
      get: (_, name) => {
        if (name === Symbol.unscopables || name in defined) return defined[name];
        if (!known.has(String(name))) unknown.push(String(name));
        return runInContext(`typeof ${String(name)} === 'undefined' ? undefined : ${String(name)}`, builtins);
      },
    });
    new Function('scope', `with (scope) { ${text} }`)(scope);
    return unknown;
  }

  test('does not touch a service of Google, or anything else of a host, while it is loaded', () => {
    expect(runLookingAt(script)).toEqual([]);
    // The look-out works
    expect(runLookingAt(`${script}; typeof SpreadsheetApp; console`)).toEqual(['SpreadsheetApp', 'console']);
  });

  test('answers in that bare context', () => {
    const context = bareContext({});
    runInContext(script, context, { filename: 'Code.js' });
    // 150 hp at 0.45 lb/hp·h and 6 lb/US gal
    expect(runInContext('FUEL_FLOW(150, 0.45)', context)).toBeCloseTo(11.25, 12);
    expect(() => runInContext('FUEL_FLOW(150, "#REF!")', context)).toThrow(
      'FUEL_FLOW: bsfc_lb_per_hp_h must be a number; the cell holds an error, got "#REF!"',
    );
    expect(runInContext('FUEL_FLOW([[150], [""]], 0.45)', context)).toEqual([
      [expect.closeTo(11.25, 12)],
      [null],
    ]);
  });

  test('is small: it is loaded anew for each call', () => {
    // Half of it are the comments that Google Sheets shows as help
    expect(Buffer.byteLength(script)).toBeLessThan(120_000);
  });

  test('has no module, no timer, no secret of this machine', () => {
    expect(script).not.toMatch(/^\s*(import|export)\s/m);
    expect(script).not.toMatch(/\b(setTimeout|require\(|process\.|__dirname|file:\/\/)/);
    expect(script).not.toContain(fileURLToPath(new URL('../../', import.meta.url)));
  });
});

describe('the help Google Sheets shows', () => {
  interface Declared {
    readonly name: string;
    readonly parameters: readonly string[];
    /** the comment that ends right above the function */
    readonly comment: string;
  }

  const source = ts.createSourceFile('Code.js', script, ts.ScriptTarget.ES2020, true);
  const declared = source.statements.filter(ts.isFunctionDeclaration).map((node): Declared => {
    const above = script.slice(0, node.getStart(source));
    const [, comment = ''] = /(\/\*\*(?:[^*]|\*(?!\/))*\*\/)\n$/.exec(above) ?? [];
    return {
      name: node.name!.text,
      parameters: node.parameters.map((parameter) => parameter.name.getText(source)),
      comment,
    };
  });
  const ofFunction = new Map(declared.map((each) => [each.name, each]));

  test('every function is declared at the top', () => {
    expect(declared.map(({ name }) => name).sort()).toEqual([...names].sort());
  });

  test.each(customFunctions.map((each) => [each.name, each] as const))(
    '%s',
    (name, { arguments: expected, help }) => {
      const { parameters, comment } = ofFunction.get(name)!;
      expect(comment.startsWith('/**')).toBe(true);
      expect(comment).toContain(` * ${help}\n`);
      expect(comment).toMatch(/^ \* @customfunction$/m);
      expect(comment).toMatch(/^ \* @return \{/m);
      const lines = [...comment.matchAll(/^ \* @param \{([^}]+)\} (\w+) (.+)$/gm)];
      expect(lines.map(([, , parameter]) => parameter)).toEqual(parameters);
      expect(parameters).toEqual(expected.map((argument) => argument.name));
      lines.forEach(([, type, , text], index) => {
        expect(type).toMatch(/^(Range|string|number\|Range)$/);
        expect(/^optional\b/.test(text!)).toBe(expected[index]!.optional);
        expect(text!.replace(/^optional[^:]*: /, '').length).toBeGreaterThan(3);
      });
      expect(name).not.toMatch(/^[A-Za-z]{1,3}[0-9]+$/); // the shape of a cell
      expect(name.endsWith('_')).toBe(false); // private to Google
    },
  );

  test('actions are no custom functions', () => {
    for (const name of Object.keys(actions)) expect(ofFunction.get(name)?.comment).toBe('');
  });
});

describe('what is pushed', () => {
  test('is the script, its manifest, pages of data and pages to show', () => {
    expect(Object.keys(files).sort()).toEqual([
      'CardsPage.html',
      'Code.js',
      'Layout.html',
      'Library.html',
      'Panel.html',
      'QuotePage.html',
      'Samples.html',
      'appsscript.json',
    ]);
  });

  test('asks for the spreadsheet it is bound to and its own panel, nothing more', () => {
    const manifest = JSON.parse(files['appsscript.json']!) as Record<string, unknown>;
    expect(manifest.oauthScopes).toEqual([
      'https://www.googleapis.com/auth/spreadsheets.currentonly',
      'https://www.googleapis.com/auth/script.container.ui',
    ]);
    expect(manifest.runtimeVersion).toBe('V8');
    expect(manifest.dependencies).toEqual({});
    expect(manifest).not.toHaveProperty('addOns');
  });

  test('as an add-on with a card, the manifest has what Google’s reference requires of an add-on, and a function that there is', async () => {
    const picture = 'https://example.invalid/icon.png';
    const { 'appsscript.json': text, ...others } = await pushedFiles({ addOn: picture });
    const { addOns, ...rest } = JSON.parse(text!) as { addOns: Record<string, Record<string, unknown>> };
    expect(rest).toEqual(JSON.parse(files['appsscript.json']!));
    expect(addOns).toEqual({
      common: { name: 'Engine packages', logoUrl: picture },
      sheets: { homepageTrigger: { runFunction: 'homeCard' } },
    });
    expect(Object.keys(actions)).toContain('homeCard');
    expect(others).toEqual(Object.fromEntries(Object.entries(files).filter(([name]) => name in others)));
  });

  test('pages of data hold no markup', () => {
    for (const name of ['Library.html', 'Layout.html', 'Samples.html']) {
      expect(files[name]).not.toMatch(/[<>&\u0080-\uffff]/);
      expect(() => JSON.parse(files[name]!)).not.toThrow();
    }
  });

  test('clasp lists exactly these files, offline', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'pushed-'));
    try {
      await mkdir(join(folder, 'dist'));
      for (const [name, text] of Object.entries(files)) await writeFile(join(folder, 'dist', name), text);
      await writeFile(join(folder, '.clasp.json'), JSON.stringify({ scriptId: 'none', rootDir: 'dist' }));
      const clasp = fileURLToPath(new URL('../../node_modules/.bin/clasp', import.meta.url));
      const { stdout } = await promisify(execFile)(clasp, ['show-file-status', '--json'], {
        cwd: folder,
        env: { ...process.env, HOME: folder },
      });
      const status = JSON.parse(stdout) as { filesToPush: string[]; untrackedFiles: string[] };
      expect(status.filesToPush.sort()).toEqual(
        Object.keys(files)
          .map((name) => `dist/${name}`)
          .sort(),
      );
      expect(status.untrackedFiles).toEqual([]);
    } finally {
      await rm(folder, { recursive: true });
    }
  }, 60_000);
});
