import type { LocalHost } from '../../src/local/host/localHost.ts';
import type { Layout } from '../../src/workbook/layout.ts';
import { say, seed } from '../hostile/seed.ts';

/** A kind of call in a step of a run, and the number of one such call. */
interface CallSite {
  readonly step: string;
  readonly call: number;
}

/** What a run is at by its toast: the steps before the sheets as they are called, sheets by what stands on them. */
function stepOf(message: string | undefined, { sheets }: Layout): string {
  const sheet = sheets.find(({ name }) => name === message);
  if (sheet === undefined) return message ?? 'Begin';
  return sheet.results.length > 0 ? 'a sheet with blocks' : 'a sheet of lines or tables';
}

/** Every kind of call in every step: one of them each, the first, the last and one in the middle by turns. */
export function callSites({ workbook }: LocalHost, layout: Layout): CallSite[] {
  const toasts = workbook.ui.toasts.map(({ message }) => message);
  const sites = new Map<string, { step: string; calls: number[] }>();
  let at = 0;
  workbook.calls.names.forEach((name, index) => {
    if (name === 'Spreadsheet.toast') at++;
    const step = stepOf(toasts[at - 1], layout);
    const site = sites.get(`${step} ${name}`) ?? { step, calls: [] };
    site.calls.push(index + 1);
    sites.set(`${step} ${name}`, site);
  });
  return [...sites.values()].map(({ step, calls }, turn) => {
    const places = [0, calls.length - 1, calls.length >> 1];
    return { step, call: calls[places[turn % 3] as number] as number };
  });
}

/** Every n-th of so many calls, from another one on in every run. */
export function everySoMany(n: number, count: number, what: string): number[] {
  const first = 1 + (seed % n);
  say(`${what}: of ${count} calls one in ${n} fails, from call ${first} on`);
  return Array.from({ length: Math.ceil((count - first + 1) / n) }, (_, index) => first + index * n);
}
