/**
 * Every call the script makes to Google's services, in order, with two hooks for tests: the n-th call fails, or
 * something else happens right after the n-th call (a second person's click, say). Calls count from 1.
 */
export class CallLog {
  /** Names of the calls made so far, such as `Range.setValues`. */
  readonly names: string[] = [];
  readonly #failures = new Map<number, string>();
  readonly #actions = new Map<number, () => void>();

  get count(): number {
    return this.names.length;
  }

  /** The n-th call throws instead of doing anything. */
  failAt(call: number, message = `Service failed at call ${call}`): void {
    this.#failures.set(call, message);
  }

  /** Runs an action once the n-th call has done its work. */
  afterCall(call: number, action: () => void): void {
    this.#actions.set(call, action);
  }

  /** Counts from 1 again, with no hooks. */
  reset(): void {
    this.names.length = 0;
    this.#failures.clear();
    this.#actions.clear();
  }

  perform<T>(name: string, call: () => T): T {
    const number = this.names.push(name);
    const failure = this.#failures.get(number);
    if (failure !== undefined) throw new Error(failure);
    const result = call();
    this.#actions.get(number)?.();
    return result;
  }
}
