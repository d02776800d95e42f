/** The command line as people expect it: what it prints where, how it ends, what it writes. */
import { execFile } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import packageFile from '../../package.json' with { type: 'json' };

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'command-'));
afterAll(() => rmSync(folder, { recursive: true }));
const minimal = join(root, 'samples/minimal');

interface Ended {
  readonly status: number;
  readonly output: string;
  readonly errors: string;
}

/** Runs a command of ours with its output in pipes, as a script would. */
function run(command: 'cli' | 'preview/preview', ...values: readonly string[]): Promise<Ended> {
  const script = ['--import', './src/local/register.mjs', `src/local/${command}.ts`, ...values];
  return new Promise((resolve) => {
    execFile(process.execPath, script, { cwd: root }, (error, output, errors) =>
      resolve({ status: error ? Number(error.code) : 0, output, errors }),
    );
  });
}

describe('npm start', { timeout: 120_000 }, () => {
  test('prints the comparison without colour or progress into a pipe, and writes workbook and report', async () => {
    const { status, output, errors } = await run('cli', minimal, '--out', join(folder, 'text'));
    expect({ status, errors }).toEqual({ status: 0, errors: '' });
    expect(output).not.toContain('\u001b');
    for (const line of output.split('\n').slice(0, -3)) expect(line.length).toBeLessThanOrEqual(80);
    expect(output).toContain('Estimates for choosing and quoting an engine, not for flight.');
    expect(readdirSync(join(folder, 'text')).sort()).toEqual(['minimal.html', 'minimal.xlsx']);
    expect(readFileSync(join(folder, 'text/minimal.html'), 'utf8')).toContain('<h1>Engine packages for the ');
  });

  test('an aircraft that was weighed: the planted error is named, the engine’s 20 lb', async () => {
    const { status, output } = await run(
      'cli',
      join(root, 'samples/godwit-as-built'),
      '-o',
      join(folder, 'built'),
    );
    expect(status).toBe(0);
    const weighing = output.slice(output.indexOf('\nWeighing\n'));
    for (const line of weighing.split('\n').slice(0, 14)) expect(line.length).toBeLessThanOrEqual(80);
    const told = weighing.replace(/\s+/g, ' ');
    expect(told).toMatch(/likeliest: engine, dry, 24[2-5]\.\d lb instead of the 223\.6 lb stated/);
    expect(told).toContain('payload to be counted on, full tanks: quoted 860');
    expect(told).toContain('NOT KEPT');
  });

  test('JSON is JSON and nothing else', async () => {
    const { status, output, errors } = await run('cli', minimal, '-f', 'json', '-o', join(folder, 'json'));
    expect({ status, errors }).toEqual({ status: 0, errors: '' });
    const told = JSON.parse(output) as Record<string, unknown[]>;
    expect(Object.keys(told)).toEqual(['comparison', 'findings']);
    expect(told.comparison?.length).toBeGreaterThan(20);
  });

  test('faults of the tables are all named, nothing is written, and it ends with 1', async () => {
    const broken = join(folder, 'broken');
    cpSync(minimal, broken, { recursive: true });
    const tanks = readFileSync(join(broken, 'tanks.csv'), 'utf8').split('\n');
    writeFileSync(join(broken, 'tanks.csv'), [...tanks.slice(0, 2), 'wing,far,lots', ''].join('\n'));
    const { status, output, errors } = await run('cli', broken, '-o', join(folder, 'none'));
    expect(status).toBe(1);
    expect(output).toBe('');
    expect(errors).toMatch(/2 faults in the tables; nothing was written\./);
    expect(errors).toMatch(/"far"/);
    expect(errors).toMatch(/"lots"/);
    expect(existsSync(join(folder, 'none'))).toBe(false);
  });
});

describe('either command', { timeout: 60_000 }, () => {
  test.each([
    ['cli', '--version', 0, new RegExp(`^${packageFile.version.replaceAll('.', '\\.')}\n$`)],
    ['cli', '--help', 0, /Usage: npm start -- \[options\] \[folder\]/],
    ['preview/preview', '--help', 0, /Usage: npm run preview -- \[options\] \[folder\]/],
  ] as const)('%s %s prints what is asked for and ends with %d', async (command, option, status, text) => {
    expect(await run(command, option)).toMatchObject({
      status,
      errors: '',
      output: expect.stringMatching(text),
    });
  });

  test.each([
    ['cli', ['--colour'], 2, /unknown option '--colour'/],
    ['cli', ['--format', 'pdf'], 2, /Allowed choices are text, json, csv/],
    ['cli', ['--mission', 'haste=9'], 2, /mission must be attribute=value/],
    ['cli', ['no-such-folder'], 1, /there is no folder "no-such-folder"/],
    ['cli', ['src'], 1, /holds none of the tables/],
    ['preview/preview', ['--port', 'x'], 2, /must be a whole number up to 65535/],
    ['preview/preview', ['no-such-folder'], 1, /there is no folder "no-such-folder"/],
  ] as const)('%s %j ends with %d and says why', async (command, values, status, text) => {
    expect(await run(command, ...values)).toEqual({
      status,
      output: '',
      errors: expect.stringMatching(text),
    });
  });
});
