import { keyText, laterRevision, quoteName } from '../assessment/issuedQuote.ts';
import { attemptQuote, changeText, driftText, quoteDrift } from '../assessment/quoteChanges.ts';
import { explained } from './explained.ts';
import { handEdits } from './handEdits.ts';
import { readInputs } from './inputs.ts';
import { readRecord, readRecords } from './quoteRecords.ts';
import { noteInRegister, type Register, type RegisterEntry, readRegister } from './quoteRegister.ts';
import { today } from './today.ts';

/** The last revision of every quote in the register, in the order of their numbers. */
export function lastRevisions({ entries }: Register): RegisterEntry[] {
  const last = new Map<number, RegisterEntry>();
  for (const entry of entries) {
    const known = last.get(entry.number);
    if (known === undefined || laterRevision(known.revision, entry.revision) < 0)
      last.set(entry.number, entry);
  }
  return [...last.values()].sort((one, other) => one.number - other.number);
}

/** What moved since a quote was issued, as the panel shows it. */
export interface ToldDrift {
  readonly name: string;
  readonly changes: readonly string[];
  readonly figures: readonly {
    readonly label: string;
    readonly unit: string;
    readonly quoted: string;
    readonly now: string;
  }[];
  readonly remarks: readonly string[];
}

/** What moved since the last revision of a quote was issued. @throws Error when there is no such quote */
export function quoteChanges(number: number): ToldDrift {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const key = lastRevisions(readRegister(book)).find((each) => each.number === number);
  if (key === undefined) throw new Error(`There is no quote ${quoteName(number)}.`);
  const issued = readRecord(readRecords(book), key);
  const { changes, figures, remarks } = quoteDrift(issued, readInputs(book));
  const edits = handEdits(book, key, issued);
  return { name: keyText(key), changes: changes.map(changeText), figures, remarks: [...remarks, ...edits] };
}

/** Writes beside the last revision of every quote in the register what has become of its inputs, and when it was looked. */
export function compareIssuedQuotes(): void {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const now = readInputs(book);
  const current = attemptQuote(now);
  const date = today(book);
  const register = readRegister(book);
  const records = readRecords(book);
  const textOf = (key: RegisterEntry) => {
    try {
      const issued = readRecord(records, key);
      return [driftText(quoteDrift(issued, now, current)), ...handEdits(book, key, issued)].join('. ');
    } catch (error) {
      return explained(error);
    }
  };
  const quotes = lastRevisions(register);
  noteInRegister(register, new Map(quotes.map((key) => [keyText(key), `${date}: ${textOf(key)}`])));
  const count = quotes.length === 1 ? '1 quote' : `${quotes.length} quotes`;
  book.toast(`${count} held against the tables of today.`, 'Quotes issued');
}
