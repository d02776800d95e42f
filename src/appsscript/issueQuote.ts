import {
  dayAfter,
  type IssuedQuote,
  keyText,
  laterRevision,
  type QuoteKey,
  quoteName,
  revisionAfter,
} from '../assessment/issuedQuote.ts';
import type { KeyFigure, Quote } from '../assessment/quote.ts';
import { quoteFrom } from '../assessment/quoteChanges.ts';
import { faultText } from '../tables/faults.ts';
import { canonicalText, type Inputs, keptInputs } from '../tables/inputs.ts';
import { digestOf } from './digest.ts';
import { withDocumentLock } from './documentLock.ts';
import { writeFrozenQuote } from './frozenQuote.ts';
import { readInputs } from './inputs.ts';
import type { Book } from './places.ts';
import {
  markIssued,
  type RecordHead,
  type Records,
  readRecord,
  readRecords,
  withSheet,
  writeRecord,
} from './quoteRecords.ts';
import { appendToRegister, type Register, readRegister } from './quoteRegister.ts';
import { today } from './today.ts';

/** What was issued, for the page and the panel. */
export interface Issue extends QuoteKey {
  readonly name: string;
  readonly date: string;
  readonly validUntil: string;
  readonly digest: string;
  readonly keyFigures: readonly KeyFigure[];
}

const mostFaultsTold = 5;

/** @throws Error listing what is wrong in the tables */
function quoteNow(inputs: Inputs): Quote {
  const { quote, faults } = quoteFrom(inputs);
  if (quote !== undefined) return quote;
  const told = faults.slice(0, mostFaultsTold).map(faultText).join('\n');
  const more = faults.length > mostFaultsTold ? `\nand ${faults.length - mostFaultsTold} more` : '';
  throw new Error(`No quote was issued. Correct the tables first:\n${told}${more}`);
}

const sameKey = (one: QuoteKey) => (other: QuoteKey) =>
  one.number === other.number && one.revision === other.revision;

/** The number and revision to give, from what was issued before. @throws Error when there is nothing to revise */
function nextKey(issued: readonly QuoteKey[], revisionOf: number | undefined): QuoteKey {
  if (revisionOf === undefined) {
    return { number: 1 + Math.max(0, ...issued.map(({ number }) => number)), revision: 'A' };
  }
  const revisions = issued.filter(({ number }) => number === revisionOf).map(({ revision }) => revision);
  const last = revisions.sort(laterRevision).pop();
  if (last === undefined) throw new Error(`There is no quote ${quoteName(revisionOf)} to revise.`);
  return { number: revisionOf, revision: revisionAfter(last) };
}

/** Records whose quote is issued: marked so, or in the register because marking them was interrupted. */
function issuedRecords({ heads }: Records, { entries }: Register): RecordHead[] {
  return heads.filter((head) => head.isIssued || entries.some(sameKey(head)));
}

/** A record that was tampered with keeps its number, and is not written into the register again. */
function intactRecord(records: Records, key: QuoteKey): IssuedQuote[] {
  try {
    return [readRecord(records, key)];
  } catch {
    return [];
  }
}

function commit(
  book: Book,
  issued: IssuedQuote,
  records: ReturnType<typeof withSheet>,
  register: Register,
): void {
  const before = issuedRecords(records, register);
  const lost = before
    .filter((head) => !register.entries.some(sameKey(head)))
    .flatMap((key) => intactRecord(records, key));
  const row = writeRecord(issued, records);
  appendToRegister(book, register, [...lost, issued]);
  // It is issued: what fails from here on is made good by the next issue
  try {
    const unmarked = before.filter(({ isIssued }) => !isIssued).map((head) => head.row);
    for (const each of [...unmarked, row]) markIssued(records.sheet, each);
  } catch {}
}

/**
 * Issues the quote that the tables make now: a new number, or the next revision of one.
 *
 * Numbers are unique and gapless, whatever fails: a number is not reserved beforehand, it is taken by the one call that
 * writes the register's row, and this call comes last. Under the document's lock, in this order:
 * 1. the inputs are read and the quote is computed; nothing is written while anything is wrong;
 * 2. the number is one more than the highest in the register and among the records marked as issued;
 * 3. the sheet of records is there, and the copy is written on a sheet of its own; 4. the record, not marked yet; 5. the
 * row of the register, by which the quote is issued; 6. the record's mark.
 * An issue that fails before 5 has given no number away: the next one takes the same number, replaces the sheet and the
 * record. One that fails after 5 is issued; its mark is made good by the next. A row that somebody deletes from the
 * register is written again from its marked record, so that a number is never given twice.
 * @throws Error when another run holds the lock, or with the faults of the tables
 */
export function issueQuote(revisionOf?: number | null): Issue {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const isRegistered = (issue: Issue) => readRegister(book).entries.some(sameKey(issue));
  return withDocumentLock(() => {
    const inputs = readInputs(book);
    const quote = quoteNow(inputs);
    const register = readRegister(book);
    const records = readRecords(book);
    const before = [...register.entries, ...issuedRecords(records, register)];
    const key = nextKey(before, revisionOf ?? undefined);
    const date = today(book);
    const issued: IssuedQuote = {
      ...key,
      date,
      validUntil: dayAfter(date, quote.validDays),
      digest: digestOf(canonicalText(inputs)),
      inputs: keptInputs(inputs),
      quote,
    };
    const kept = withSheet(book, records);
    const sheet = writeFrozenQuote(book, issued, records.sheet !== null);
    commit(book, issued, kept, register);
    try {
      book.setActiveSheet(sheet);
    } catch {} // it is issued
    return {
      ...key,
      name: keyText(key),
      date,
      validUntil: issued.validUntil,
      digest: issued.digest,
      keyFigures: quote.keyFigures,
    };
  }, isRegistered);
}
