import type { OpeningData } from '../openingData.ts';
import { tokenHeader } from '../tokenHeader.ts';

const tokenIn = (page: Document) =>
  page.querySelector<HTMLMetaElement>('meta[name="preview-token"]')?.content ?? '';

let token = tokenIn(document);

/** The server may have been started anew while this page stayed open: its page tells the new token. */
async function renewToken(): Promise<void> {
  const text = await (await fetch('/')).text();
  token = tokenIn(new DOMParser().parseFromString(text, 'text/html'));
}

const send = (method: 'GET' | 'PUT' | 'DELETE', path: string, body?: string): Promise<Response> =>
  fetch(path, { method, headers: { [tokenHeader]: token }, ...(body === undefined ? {} : { body }) });

/** @throws Error with what the server said */
async function ask(...request: Parameters<typeof send>): Promise<unknown> {
  let response = await send(...request);
  if (response.status === 403) {
    await renewToken();
    response = await send(...request);
  }
  if (!response.ok) throw new Error(await response.text());
  return response.json();
}

export const readOpening = () => ask('GET', '/opening') as Promise<OpeningData>;
export const readAutosave = () => ask('GET', '/autosave');
export const writeAutosave = (text: string) => ask('PUT', '/autosave', text);
export const dropAutosave = () => ask('DELETE', '/autosave');
export const writeTables = (tables: object) =>
  ask('PUT', '/tables', JSON.stringify(tables)) as Promise<{ folder: string; files: string[] }>;
