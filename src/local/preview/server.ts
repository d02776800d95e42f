import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Asset, packageAsset, pageAssets, typeOf } from './assets.ts';
import { refusal } from './guard.ts';
import { dropAutosave, readAutosave, type Storage, shown, writeAutosave, writeTables } from './storage.ts';

/** What is served beside the files of the page. */
export interface Served {
  /** What the page is given when it opens, as JSON. */
  readonly opening: string;
  /** Names of the tables that it may save. */
  readonly tables: readonly string[];
}

const loopback = '127.0.0.1';
const largestBody = 64 * 1024 * 1024; // bytes; a workbook of many packages is a few million

/**
 * Nothing of the page comes from, or goes, anywhere else. The script is evaluated, the engine compiles its templates, and
 * the panel is a page with its script inside.
 */
const contentPolicy = [
  "default-src 'self'",
  "script-src 'self' 'unsafe-eval' 'unsafe-inline'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
].join('; ');

const headers = {
  'content-security-policy': contentPolicy,
  'cross-origin-resource-policy': 'same-origin',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cache-control': 'no-store',
};

class HttpError extends Error {
  readonly status: number;

  constructor(status: number, message: string) {
    super(message);
    this.status = status;
  }
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request) {
    size += (part as Buffer).length;
    if (size > largestBody) throw new HttpError(413, 'too much at once');
    parts.push(part as Buffer);
  }
  return Buffer.concat(parts).toString('utf8');
}

function parsed(text: string): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null && !Array.isArray(value))
      return value as Record<string, unknown>;
  } catch {
    // said below
  }
  throw new HttpError(400, 'the body must be a JSON object');
}

/** Answers a request that was let in. */
function answers(storage: Storage, served: Served, pages: Readonly<Record<string, Asset>>) {
  const json = (value: unknown): Asset => ({ type: typeOf('answer.json'), content: JSON.stringify(value) });
  const routes: Readonly<Record<string, (request: IncomingMessage) => Promise<Asset>>> = {
    'GET /opening': async () => ({ type: typeOf('answer.json'), content: served.opening }),
    'GET /autosave': async () => ({
      type: typeOf('answer.json'),
      content: (await readAutosave(storage)) ?? 'null',
    }),
    'PUT /autosave': async (request) => {
      const text = await bodyOf(request);
      parsed(text);
      await writeAutosave(storage, text);
      return json({});
    },
    'DELETE /autosave': async () => {
      await dropAutosave(storage);
      return json({});
    },
    'PUT /tables': async (request) => {
      const tables = parsed(await bodyOf(request));
      const files = await writeTables(storage, tables, served.tables);
      return json({ folder: shown(storage.target), files });
    },
  };
  return async (request: IncomingMessage): Promise<Asset> => {
    const { pathname } = new URL(request.url ?? '/', 'http://page');
    const route = routes[`${request.method} ${pathname}`];
    if (route) return route(request);
    const asset = pages[pathname] ?? (await packageAsset(pathname));
    if (!asset) throw new HttpError(404, 'there is no such page');
    if (request.method !== 'GET') throw new HttpError(405, 'this can only be read');
    return asset;
  };
}

function send(response: ServerResponse, status: number, { type, content }: Asset): void {
  response.writeHead(status, { ...headers, 'content-type': type }).end(content);
}

/** Serves the page on loopback. @param port 0 for any that is free */
export async function startServer(
  storage: Storage,
  served: Served,
  token: string,
  port: number,
): Promise<{ readonly address: string; readonly server: Server }> {
  const answer = answers(storage, served, await pageAssets(token));
  const server = createServer(async (request, response) => {
    const { port: own } = server.address() as AddressInfo;
    const text = (content: string): Asset => ({ type: 'text/plain; charset=utf-8', content });
    try {
      const reason = refusal(request.method ?? '', request.headers, { port: own, token });
      if (reason !== undefined) throw new HttpError(403, reason);
      send(response, 200, await answer(request));
    } catch (error) {
      const status = error instanceof HttpError ? error.status : error instanceof RangeError ? 400 : 500;
      send(response, status, text((error as Error).message));
    }
  });
  await new Promise<void>((done, failed) => {
    server.once('error', failed);
    server.listen(port, loopback, done);
  });
  return { address: `http://${loopback}:${(server.address() as AddressInfo).port}/`, server };
}
