import type { GoogleProperties, GooglePropertiesService } from './google.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

/** Google's quotas for properties: 9 kB a value, 500 kB a store. Documented; whether keys count is not: they do here. */
const valueLimit = 9 * 1024; // bytes
const storeLimit = 500 * 1024; // bytes

export function createPropertiesService(workbook: Workbook): GooglePropertiesService {
  return strict<GooglePropertiesService>(workbook.calls, 'PropertiesService', {
    getDocumentProperties: () => createProperties(workbook),
  });
}

function createProperties(workbook: Workbook): GoogleProperties {
  const store = workbook.properties;

  const change = (entries: readonly [string, string][], keepsOthers: boolean): GoogleProperties => {
    const next = new Map(keepsOthers ? store : []);
    for (const [key, value] of entries) {
      if (typeof value !== 'string') throw new Error(`the property ${key} must be text, got ${typeof value}`);
      if (byteLength(value) > valueLimit) throw new Error(`Argument too large: value of the property ${key}`);
      next.set(key, value);
    }
    const total = [...next].reduce((sum, [key, value]) => sum + byteLength(key) + byteLength(value), 0);
    if (total > storeLimit) throw new Error('The properties are larger than the limit of 500 kB');
    store.clear();
    for (const [key, value] of next) store.set(key, value);
    return properties;
  };

  const properties: GoogleProperties = strict<GoogleProperties>(workbook.calls, 'Properties', {
    getProperty: (key: string) => store.get(key) ?? null,
    getProperties: () => Object.fromEntries(store),
    getKeys: () => [...store.keys()],
    setProperty: (key: string, value: string) => change([[key, value]], true),
    setProperties: (values: Record<string, string>, deleteAllOthers = false) =>
      change(Object.entries(values), !deleteAllOthers),
    deleteProperty(key: string) {
      store.delete(key);
      return properties;
    },
    deleteAllProperties: () => change([], false),
  });
  return properties;
}

/** Length in UTF-8. The runtime of the script has no TextEncoder, the host's has; this runs in both hosts. */
function byteLength(text: string): number {
  return new TextEncoder().encode(text).length;
}
