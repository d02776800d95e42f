import { messageOf } from '../../../functions/messages.ts';
import type { HtmlPage } from '../../host/html.ts';
import { type FrameAnswer, type FrameCall, frameBridge } from './frameBridge.ts';

/** Calls a function of the script as `google.script.run` does. */
type RunFromPanel = (name: string, values: readonly unknown[]) => unknown;

const isCall = (data: unknown): data is FrameCall =>
  typeof data === 'object' &&
  data !== null &&
  'id' in data &&
  'name' in data &&
  typeof data.name === 'string' &&
  'values' in data &&
  Array.isArray(data.values);

/**
 * Shows one of the script's pages in a frame, in place of what the parent showed before.
 * @param close what the frame's own wish to be closed does
 */
export function showFrame(parent: Element, page: HtmlPage, run: RunFromPanel, close: () => void): void {
  parent.querySelector('iframe')?.remove();
  const frame = document.createElement('iframe');
  frame.title = page.title;
  frame.sandbox.add('allow-scripts', 'allow-modals', 'allow-forms'); // no origin: it reaches the script and nothing else
  const bridge = `<script>(${frameBridge})()</script>`;
  const head = /<head[^>]*>/i.exec(page.content)?.[0] ?? '';
  frame.srcdoc = page.content.replace(head, () => head + bridge); // before the page's own scripts
  const answer = ({ source, data }: MessageEvent<unknown>): void => {
    if (!frame.isConnected) removeEventListener('message', answer);
    if (source === null || source !== frame.contentWindow) return;
    if (data === 'close') close();
    if (!isCall(data)) return;
    const reply = (told: FrameAnswer) => frame.contentWindow?.postMessage(told, '*');
    try {
      reply({ id: data.id, value: run(data.name, data.values) });
    } catch (error) {
      reply({ id: data.id, error: messageOf(error) });
    }
  };
  addEventListener('message', answer);
  parent.append(frame);
}
