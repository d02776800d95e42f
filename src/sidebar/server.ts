import type { Issue } from '../appsscript/issueQuote.ts';
import type { PanelState } from '../appsscript/panel.ts';
import type { ToldDrift } from '../appsscript/quoteDrifts.ts';
import type { NamedPlace } from '../assessment/findingPlace.ts';

/** What the page may ask of the script; each goes and comes as JSON. */
export interface Server {
  panelState(): PanelState;
  setOption(table: 'equipment' | 'tanks', item: string, isFitted: boolean): PanelState;
  setQuotedPackage(name: string): PanelState;
  showInput(place: NamedPlace): void;
  issueQuote(revisionOf: number | null): Issue;
  quoteChanges(number: number): ToldDrift;
  compareIssuedQuotes(): void;
  printQuote(number: number, revision: string): void;
}

interface Runner {
  withSuccessHandler(handler: (value: unknown) => void): Runner;
  withFailureHandler(
    handler: (error: Error) => void,
  ): Runner & Record<string, (...values: unknown[]) => void>;
}

declare const google: { readonly script: { readonly run: Runner } };

/** Calls a function of the script. */
export function ask<K extends keyof Server>(
  name: K,
  ...values: Parameters<Server[K]>
): Promise<ReturnType<Server[K]>> {
  return new Promise((resolve, reject) => {
    const runner = google.script.run
      .withSuccessHandler((value) => resolve(value as ReturnType<Server[K]>))
      .withFailureHandler(reject);
    (runner[name] as (...given: unknown[]) => void)(...values);
  });
}
