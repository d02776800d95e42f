import { timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';
import { tokenHeader } from './tokenHeader.ts';

/** Names under which this machine calls itself: a page elsewhere may point a name of its own at 127.0.0.1. */
const ownNames = ['127.0.0.1', 'localhost'];

const isSame = (a: string, b: string) =>
  a.length === b.length && timingSafeEqual(Buffer.from(a), Buffer.from(b));

/** Why a request is refused; undefined when it is not. */
export function refusal(
  method: string,
  headers: IncomingHttpHeaders,
  { port, token }: { readonly port: number; readonly token: string },
): string | undefined {
  const { host = '', origin = '' } = headers;
  if (!ownNames.some((name) => host === `${name}:${port}`)) return 'the Host is not this server';
  if (method === 'GET' || method === 'HEAD') return undefined;
  if (origin !== `http://${host}`) return 'the Origin is not this page';
  const given = headers[tokenHeader];
  if (typeof given !== 'string' || !isSame(given, token)) return 'the token is not that of this start';
  return undefined;
}
