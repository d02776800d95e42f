import type { OpeningData } from '../openingData.ts';

const token = document.querySelector<HTMLMetaElement>('meta[name="preview-token"]')?.content ?? '';

/** @throws Error with what the server said */
async function ask(method: 'GET' | 'PUT' | 'DELETE', path: string, body?: string): Promise<unknown> {
  const response = await fetch(path, {
    method,
    headers: { 'x-preview-token': token },
    ...(body === undefined ? {} : { body }),
  });
  if (!response.ok) throw new Error(await response.text());
  return response.json();
}

export const readOpening = () => ask('GET', '/opening') as Promise<OpeningData>;
export const readAutosave = () => ask('GET', '/autosave');
export const writeAutosave = (text: string) => ask('PUT', '/autosave', text);
export const dropAutosave = () => ask('DELETE', '/autosave');
export const writeTables = (tables: object) =>
  ask('PUT', '/tables', JSON.stringify(tables)) as Promise<{ folder: string; files: string[] }>;
