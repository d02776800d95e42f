import type { Evaluate } from '../../host/localHost.ts';

/** The script in a frame of its own, so that its globals are its own. @throws Error when it defines nothing */
export function scriptFrame(code: string): Evaluate {
  return (globals) => {
    const frame = document.createElement('iframe');
    frame.hidden = true;
    document.body.append(frame);
    const scope = frame.contentWindow as unknown as Record<string, unknown>;
    const before = new Set(Object.keys(scope));
    Object.assign(scope, globals);
    const script = document.createElement('script'); // not eval: strict code would keep its declarations to itself
    script.textContent = code;
    frame.contentDocument?.body.append(script);
    const defined = Object.entries(scope).filter(([name]) => !before.has(name) && !(name in globals));
    if (defined.length === 0) throw new Error('the script does not load: see the console');
    return Object.fromEntries(defined);
  };
}
