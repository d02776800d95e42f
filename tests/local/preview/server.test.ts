/** The preview's server: what it serves, what it refuses, and where it writes. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { startServer } from '../../../src/local/preview/server.ts';
import { type Storage, storageOf } from '../../../src/local/preview/storage.ts';
import { readTableFolder } from '../../../src/local/tableFolder.ts';

const token = 'the token of this start';
let folder: string;
let storage: Storage;
let address: string;
let close: () => void;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'preview-'));
  storage = storageOf(join(folder, 'kit'), join(folder, 'out'), false);
  const served = { opening: '{"name":"kit"}', tables: ['tanks', 'fuel points'] };
  const started = await startServer(storage, served, token, 0);
  address = started.address;
  close = () => started.server.close();
});
afterEach(() => {
  close();
  rmSync(folder, { recursive: true });
});

interface Reply {
  readonly status: number;
  readonly body: string;
  readonly headers: Readonly<Record<string, unknown>>;
}

/** A request as it stands: `fetch` would tidy the path and choose the Host itself. */
function send(
  method: string,
  path: string,
  headers: Readonly<Record<string, string>> = {},
  body = '',
): Promise<Reply> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, method, path, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part) => {
        text += part;
      });
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, body: text, headers: response.headers }),
      );
    });
    sent.on('error', reject).end(body);
  });
}

const host = () => new URL(address).host;
const writing = () => ({ host: host(), origin: `http://${host()}`, 'x-preview-token': token });
const grid = [
  ['tank', 'usable'],
  ['', 'US gal'],
  ['main', 42],
  ['=1+1', true],
];

describe('serving', () => {
  test('the page with the token of this start, and a policy that lets nothing in from elsewhere', async () => {
    const { status, body, headers } = await send('GET', '/');
    expect(status).toBe(200);
    expect(body).toContain(`content="${token}"`);
    expect(headers['content-type']).toBe('text/html; charset=utf-8');
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toMatch(/https?:|\*/);
  });

  test('every file that the page and its styles name', async () => {
    const { body } = await send('GET', '/');
    const named = [...body.matchAll(/(?:src|href)="(\/[^"]+)"/g)].map(([, path]) => String(path));
    const fonts = '/assets/icons/fonts/fontawesome-webfont.woff2?v=4.7.0';
    expect(named.length).toBeGreaterThan(8);
    for (const path of [...named, fonts, '/assets/o_spreadsheet.xml']) {
      const { status, body: text, headers } = await send('GET', path);
      expect([path, status]).toEqual([path, 200]);
      expect(text.length).toBeGreaterThan(500);
      expect(headers['content-type']).not.toBe('application/octet-stream');
    }
    const { body: css } = await send('GET', '/assets/icons/css/font-awesome.css');
    expect(css).toContain('../fonts/fontawesome-webfont.woff2?v=4.7.0');
  });

  test.each([
    '/package.json',
    '/assets/../../../../../package.json',
    '/assets/%2e%2e/%2e%2e/package.json',
    '/..%2f..%2fetc/passwd',
    '/__proto__',
    '/assets/constructor',
  ])('nothing else: %s', async (path) => {
    expect(await send('GET', path)).toMatchObject({ status: 404, body: 'there is no such page' });
  });
});

describe('refusing', () => {
  test('a page elsewhere that has pointed its own name here', async () => {
    for (const name of ['evil.example', '127.0.0.1', 'localhost:1', '127.0.0.1.evil.example']) {
      expect(await send('GET', '/', { host: name })).toMatchObject({ status: 403 });
    }
    expect(await send('GET', '/', { host: `localhost:${new URL(address).port}` })).toMatchObject({
      status: 200,
    });
  });

  const bodies = { '/tables': JSON.stringify({ tanks: grid }), '/autosave': '{}' };
  test.each([
    ['no token', { 'x-preview-token': '' }],
    ['the token of another start', { 'x-preview-token': 'the token of that start' }],
    ['no Origin', { origin: '' }],
    ['the Origin of a page elsewhere', { origin: 'http://evil.example' }],
    ['the Origin of another port', { origin: 'http://127.0.0.1:1' }],
    ['the Origin of a page without one', { origin: 'null' }],
    ['a Host that is not this one', { host: 'evil.example', origin: 'http://evil.example' }],
  ])('a write with %s', async (_, wrong) => {
    for (const [path, body] of Object.entries(bodies)) {
      expect(await send('PUT', path, { ...writing(), ...wrong }, body)).toMatchObject({ status: 403 });
      expect(await send('DELETE', path, { ...writing(), ...wrong })).toMatchObject({ status: 403 });
    }
    expect(existsSync(join(folder, 'out'))).toBe(false);
  });

  test('tables that the workbook does not have, and what is no table; nothing of it is written', async () => {
    const put = (tables: unknown) => send('PUT', '/tables', writing(), JSON.stringify(tables));
    expect(await put({ tanks: grid, '../tanks': grid })).toMatchObject({
      status: 400,
      body: 'there is no table "../tanks"',
    });
    expect(await put({ tanks: grid, 'fuel points': [[{}]] })).toMatchObject({ status: 400 });
    expect(await put([])).toMatchObject({ status: 400, body: 'the body must be a JSON object' });
    expect(await send('PUT', '/tables', writing(), '{')).toMatchObject({ status: 400 });
    expect(existsSync(storage.target)).toBe(false);
  });
});

describe('writing', () => {
  test('tables as CSV into a folder beside the one opened, which read as they were', async () => {
    const reply = await send('PUT', '/tables', writing(), JSON.stringify({ tanks: grid }));
    expect(reply.status).toBe(200);
    expect(readdirSync(storage.target)).toEqual(['tanks.csv']);
    expect(storage.target).toBe(join(folder, 'out', 'kit-edited'));
    expect(existsSync(storage.folder)).toBe(false);
    expect(readTableFolder(storage.target).grids.tanks).toEqual(grid);
    expect(readFileSync(join(storage.target, 'tanks.csv'), 'utf8')).toContain("'=1+1");
  });

  test('the work in hand, until it is dropped', async () => {
    expect(await send('GET', '/autosave')).toMatchObject({ status: 200, body: 'null' });
    const work = JSON.stringify({ time: 'now', text: '“±”' });
    expect(await send('PUT', '/autosave', writing(), work)).toMatchObject({ status: 200 });
    expect(await send('GET', '/autosave')).toMatchObject({ status: 200, body: work });
    expect(await send('DELETE', '/autosave', writing())).toMatchObject({ status: 200 });
    expect(await send('GET', '/autosave')).toMatchObject({ body: 'null' });
  });
});

describe('where saved tables go', () => {
  test('never over the tables opened unless that is asked for', () => {
    expect(storageOf('samples/godwit', 'out', true).target).toBe(
      storageOf('samples/godwit', 'out', true).folder,
    );
    for (const opened of ['out/kit-edited', 'out/kit-edited/../kit-edited'])
      expect(storageOf(opened, 'out', false).target).toBe(resolve('out/kit-edited-edited'));
  });

  test('work on two folders of one name is kept apart', () => {
    expect(storageOf('a/kit', 'out', false).autosave).not.toBe(storageOf('b/kit', 'out', false).autosave);
  });
});
