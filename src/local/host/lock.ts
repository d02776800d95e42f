import type { GoogleLock, GoogleLockService } from './google.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

/**
 * Who holds the document lock. Each run of the script is a holder of its own: a run that starts while another is under
 * way (from a `CallLog.afterCall`) is a second person's.
 */
export class DocumentLock {
  /** Set by a test: somebody outside this host holds the lock. */
  isHeldElsewhere = false;
  readonly #runs: object[] = [{}]; // the first is whoever calls outside a run
  #owner: object | undefined;

  enterRun(): void {
    this.#runs.push({});
  }

  /** A run that ends gives its lock back, as Google's does. */
  leaveRun(): void {
    if (this.#runs.pop() === this.#owner) this.#owner = undefined;
  }

  get isHeld(): boolean {
    return this.#owner !== undefined && this.#owner === this.#runs.at(-1);
  }

  take(): boolean {
    if (this.isHeld) return true;
    if (this.isHeldElsewhere || this.#owner !== undefined) return false;
    this.#owner = this.#runs.at(-1);
    return true;
  }

  release(): void {
    if (this.isHeld) this.#owner = undefined;
  }
}

/** Nobody lets go of a lock while a script waits here, so waiting is not done: the answer is there at once. */
export function createLockService(workbook: Workbook): GoogleLockService {
  const { lock } = workbook;
  return strict<GoogleLockService>(workbook.calls, 'LockService', {
    getDocumentLock: () =>
      strict<GoogleLock>(workbook.calls, 'Lock', {
        hasLock: () => lock.isHeld,
        tryLock: (_milliseconds: number) => lock.take(),
        waitLock(_milliseconds: number) {
          if (!lock.take()) {
            throw new Error('Lock timeout: another process was holding the lock for too long.');
          }
        },
        releaseLock: () => lock.release(),
      }),
  });
}
