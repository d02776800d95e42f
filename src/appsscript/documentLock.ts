const patience = 5000; // ms that a person waits for another's work to end

const busy =
  'Someone else is issuing a quote or laying out this workbook just now. Nothing was done: try again in a moment.';

/**
 * Does something that two people must not do at once in one workbook.
 * @param isThere whether what the work wrote stands in the workbook, asked when Google could not say that it does
 * @throws Error when another run holds the document's lock
 */
export function withDocumentLock<T>(work: () => T, isThere = (_: T) => false): T {
  const lock = LockService.getDocumentLock() as GoogleAppsScript.Lock.Lock | null; // null outside a document
  if (!lock?.tryLock(patience)) throw new Error(busy);
  try {
    const result = work();
    try {
      SpreadsheetApp.flush(); // what was written is there before another run gets the lock
    } catch (error) {
      if (!isThere(result)) throw error;
    }
    return result;
  } finally {
    release(lock);
  }
}

/** A lock that can't be given back is given back when the run ends; the work is done either way. */
function release(lock: GoogleAppsScript.Lock.Lock): void {
  try {
    lock.releaseLock();
  } catch {}
}
