import type { LocalHost } from '../../src/local/host/localHost.ts';
import { scriptRealm } from '../../src/local/host/node/scriptRealm.ts';

/**
 * Runs statements as a script of the person's own might; `book` is the workbook.
 * @param functions what the statements may call
 */
export function runOwnScript(host: LocalHost, statements: string, functions = ''): unknown {
  const { scope } = host.workbook;
  const evaluate = scriptRealm(`${functions}
    function does() { const book = SpreadsheetApp.getActiveSpreadsheet(); ${statements} }`);
  host.loadScript({ evaluate, functions: [] });
  const result = host.run('does');
  host.workbook.scope = scope;
  return result;
}
