import { messageOf } from '../functions/messages.ts';

/** What is remembered between runs, in the document's properties. Each value is written when its work is done. */
const read = <T>(key: string, otherwise: T, isSound: (value: unknown) => boolean): T => {
  const text = PropertiesService.getDocumentProperties().getProperty(key);
  try {
    const value: unknown = text === null ? otherwise : JSON.parse(text);
    return isSound(value) ? (value as T) : otherwise; // spoilt by another script: as good as lost
  } catch {
    return otherwise;
  }
};
const isNumber = (value: unknown) => typeof value === 'number';
const isText = (value: unknown) => typeof value === 'string';
const isNumbers = (value: unknown) =>
  typeof value === 'object' && value !== null && Object.values(value).every(isNumber);
const isTexts = (value: unknown) => Array.isArray(value) && value.every(isText);
const write = (key: string, value: unknown) => {
  try {
    PropertiesService.getDocumentProperties().setProperty(key, JSON.stringify(value));
  } catch (error) {
    const why = messageOf(error);
    throw new Error(
      `"${key}" could not be kept in the document’s properties (${why}): free some room there, then lay out again. No input is lost.`,
    );
  }
};

/** The sheet's number by its name in the layout: a person may have renamed it. */
export type SheetNumbers = Readonly<Record<string, number>>;

export const state = {
  /** Layout version of the last run that came to its end, 0 before the first. */
  version: () => read('layout version', 0, isNumber),
  setVersion: (version: number) => write('layout version', version),
  sheetNumbers: () => read<SheetNumbers>('layout sheets', {}, isNumbers),
  setSheetNumbers: (numbers: SheetNumbers) => write('layout sheets', numbers),
  /** Layout version whose looks a sheet has got, by its name in the layout. */
  looks: () => read<Readonly<Record<string, number>>>('layout looks', {}, isNumbers),
  /** Ranges of tables that got new cells, and not yet their looks. */
  undressed: () => read<readonly string[]>('layout undressed', [], isTexts),
  setUndressed: (ranges: readonly string[]) => write('layout undressed', ranges),
  setLooks: (looks: Readonly<Record<string, number>>) => write('layout looks', looks),
};
