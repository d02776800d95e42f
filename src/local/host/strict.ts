import type { CallLog } from './callLog.ts';

/**
 * An object of one of Google's classes of which only some members are implemented: any other member throws by name, so
 * that a script which runs here uses nothing that was not looked at. Calls are counted; an argument that is `undefined`
 * or NaN is refused, as Google's own signature check refuses it.
 */
export function strict<T extends object>(calls: CallLog, className: string, members: Partial<T>): T {
  return new Proxy(members, {
    get(target, key) {
      if (typeof key === 'symbol') return undefined;
      if (!Object.hasOwn(target, key)) {
        if (key === 'toString') return () => className;
        throw new Error(`${className}.${key} is not implemented by the local host`);
      }
      const member: unknown = Reflect.get(target, key);
      if (typeof member === 'function') {
        const name = `${className}.${key}`;
        return (...values: unknown[]) => {
          for (const [index, value] of values.entries()) refuseMissing(name, value, index);
          return calls.perform(name, () => member(...values));
        };
      }
      return member;
    },
    set(_target, key) {
      throw new Error(`${className}.${String(key)} can't be set`);
    },
  }) as T;
}

function refuseMissing(name: string, value: unknown, index: number): void {
  if (value === undefined || Number.isNaN(value)) {
    throw new Error(`${name}: argument ${index + 1} must not be ${value}`);
  }
}
