/** What the host knows of the objects of one class that a script has in hand. */
export class ObjectRecords<T> {
  readonly #records = new WeakMap<object, T>();
  readonly #className: string;

  /** @param className with its article, as the message says it: `a Range` */
  constructor(className: string) {
    this.#className = className;
  }

  set(object: object, record: T): void {
    this.#records.set(object, record);
  }

  /** @throws Error when a script passes something else */
  of(object: object): T {
    const record = this.#records.get(object);
    if (record === undefined) throw new Error(`the argument must be ${this.#className}`);
    return record;
  }
}
