import type { Engine } from '../engine.ts';

/**
 * The spreadsheet engine on Node: Node 20 lacks `Object.groupBy`, which it uses, and it reports each command's time
 * through `console.debug`, which is silenced while it works and nowhere else.
 */
export async function loadEngine(): Promise<Engine> {
  (Object as { groupBy?: typeof groupBy }).groupBy ??= groupBy;
  const engine = await import('@odoo/o-spreadsheet');

  class QuietModel extends engine.Model {
    constructor(...parameters: ConstructorParameters<Engine['Model']>) {
      const unmute = silenceDebug();
      super(...parameters);
      unmute();
      const dispatch = this.dispatch as (...values: unknown[]) => unknown;
      this.dispatch = ((...values: unknown[]) => quietly(() => dispatch(...values))) as typeof this.dispatch;
    }

    override exportData() {
      return quietly(() => super.exportData());
    }
  }

  const { UIPlugin, addFunction, helpers, registries, DEFAULT_LOCALE } = engine;
  return { Model: QuietModel, UIPlugin, addFunction, helpers, registries, DEFAULT_LOCALE };
}

function quietly<T>(work: () => T): T {
  const unmute = silenceDebug();
  try {
    return work();
  } finally {
    unmute();
  }
}

function silenceDebug(): () => void {
  const { debug } = console;
  console.debug = () => {};
  return () => {
    console.debug = debug;
  };
}

/** `Object.groupBy` of ES2024. */
function groupBy<T>(
  items: Iterable<T>,
  key: (item: T, index: number) => PropertyKey,
): Record<PropertyKey, T[]> {
  const groups: Record<PropertyKey, T[]> = Object.create(null);
  let index = 0;
  for (const item of items) {
    const name = key(item, index++);
    groups[name] = [...(groups[name] ?? []), item];
  }
  return groups;
}
