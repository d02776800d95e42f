import type { FunctionDescriptor } from '../../../src/local/host/functionAdapter.ts';
import { LocalHost } from '../../../src/local/host/localHost.ts';
import { loadEngine } from '../../../src/local/host/node/loadEngine.ts';
import { scriptRealm } from '../../../src/local/host/node/scriptRealm.ts';
import type { WorkbookSnapshot } from '../../../src/local/host/snapshot.ts';

const engine = await loadEngine();

/** A host with a script of its own. */
export function hostWith(
  code: string,
  functions: readonly FunctionDescriptor[] = [],
  files: Readonly<Record<string, string>> = {},
  snapshot?: WorkbookSnapshot,
): LocalHost {
  return new LocalHost({ engine, evaluate: scriptRealm(code), functions, files, snapshot });
}

/** A descriptor with the given argument names; a name in brackets is optional. */
export function describeFunction(name: string, ...names: readonly string[]): FunctionDescriptor {
  return {
    name,
    description: `${name} of a test`,
    arguments: names.map((text) => {
      const optional = text.startsWith('[');
      return { name: text.replace(/[[\]]/g, ''), description: text, optional };
    }),
  };
}

/** What the body of a function gives; `sheet` is the first sheet, `book` the workbook. */
export function evaluateIn(host: LocalHost, body: string): unknown {
  const script = `function test() {
    const book = SpreadsheetApp.getActiveSpreadsheet();
    const sheet = book.getSheets()[0];
    ${body}
  }`;
  host.loadScript({ evaluate: scriptRealm(script), functions: [] });
  return host.run('test');
}

/** The same in a fresh workbook. */
export const evaluate = (body: string) => evaluateIn(hostWith(''), body);
