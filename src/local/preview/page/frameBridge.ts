/** A call that a frame makes of the script, and the answer to it. */
export interface FrameCall {
  readonly id: number;
  readonly name: string;
  readonly values: readonly unknown[];
}

export type FrameAnswer = { readonly id: number } & (
  | { readonly value: unknown }
  | { readonly error: string }
);

/**
 * `google.script` inside a frame. Its text is put into the frame's page, so it uses nothing from outside itself. The frame
 * has an origin of its own, as in Google Sheets; values cross as messages and are checked by the host.
 */
export function frameBridge(): void {
  interface Handlers {
    readonly done?: (value: unknown, user: unknown) => void;
    readonly failed?: (error: Error, user: unknown) => void;
    readonly user?: unknown;
  }
  const calls = new Map<number, Handlers>();
  const send = (message: unknown) => parent.postMessage(message, '*'); // the page cannot be named from an origin of its own

  addEventListener('message', ({ source, data }: MessageEvent<FrameAnswer>) => {
    const handlers = source === parent ? calls.get(data.id) : undefined;
    if (handlers === undefined) return;
    calls.delete(data.id);
    const { done, failed, user } = handlers;
    if (!('error' in data)) done?.(data.value, user);
    else if (failed) failed(new Error(data.error), user);
    else console.error(data.error);
  });

  const runner = (handlers: Handlers): object =>
    new Proxy(
      {},
      {
        get: (_, name) => {
          if (name === 'withSuccessHandler')
            return (done: Handlers['done']) => runner({ ...handlers, ...(done && { done }) });
          if (name === 'withFailureHandler')
            return (failed: Handlers['failed']) => runner({ ...handlers, ...(failed && { failed }) });
          if (name === 'withUserObject') return (user: unknown) => runner({ ...handlers, user });
          return (...values: unknown[]) => {
            const id = calls.size === 0 ? 1 : Math.max(...calls.keys()) + 1;
            calls.set(id, handlers);
            send({ id, name: String(name), values });
          };
        },
      },
    );
  const host = { close: () => send('close'), setWidth() {}, setHeight() {}, editor: { focus() {} } };
  Object.assign(globalThis, {
    google: {
      script: {
        get run() {
          return runner({});
        },
        host,
      },
    },
  });
}
