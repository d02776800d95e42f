import { messageOf } from '../../../functions/messages.ts';
import { byId } from '../../../sidebar/element.ts';
import type { LocalHost } from '../../host/localHost.ts';
import type { Answer, MenuRecord, Question } from '../../host/ui.ts';
import { showFrame } from './frames.ts';
import { say } from './status.ts';

/** Asks with the browser's own dialogs: the script waits for the answer. */
function person({ kind, title, prompt, buttons }: Question): Answer {
  const text = [title, prompt].filter((each) => each !== '').join('\n\n');
  if (kind === 'prompt') {
    const typed = window.prompt(text);
    return typed === null
      ? { button: 'CANCEL' }
      : { button: buttons.startsWith('YES') ? 'YES' : 'OK', text: typed };
  }
  if (buttons === 'OK') {
    window.alert(text);
    return { button: 'OK' };
  }
  const isAgreed = window.confirm(text);
  if (buttons.startsWith('YES')) return { button: isAgreed ? 'YES' : 'NO' };
  return { button: isAgreed ? 'OK' : 'CANCEL' };
}

/** What the script shows: its menu in the spreadsheet's own, its panel beside it, its dialogs over it. */
export class UserInterface {
  readonly #host: LocalHost;

  constructor(host: LocalHost) {
    this.#host = host;
    host.workbook.ui.person = person;
    const sidebar = byId('sidebar');
    const dialog = byId('dialog') as HTMLDialogElement;
    sidebar.querySelector('button')?.addEventListener('click', () => this.#closeSidebar());
    dialog.querySelector('button')?.addEventListener('click', () => dialog.close());
    dialog.addEventListener('close', () => dialog.querySelector('iframe')?.remove());
  }

  /** Runs a function of the script as its menu does; a failure is said. */
  run(name: string): void {
    try {
      this.#host.run(name);
    } catch (error) {
      say(messageOf(error), true);
    }
    this.#showNew();
  }

  /** Puts the script's menus into the spreadsheet's; those of an earlier run are replaced. */
  addMenus(): void {
    for (const [index, menu] of this.#host.workbook.ui.menus.entries()) {
      const key = `script-${index}`;
      const { topbarMenuRegistry } = o_spreadsheet.registries;
      topbarMenuRegistry.replace(key, {
        name: menu.caption,
        sequence: 1000 + index,
        children: this.#children(menu),
      });
    }
  }

  #children({ items }: MenuRecord): MenuEntry[] {
    return items.flatMap((item, index): MenuEntry[] => {
      const separator = items[index + 1]?.kind === 'separator';
      if (item.kind === 'item')
        return [{ name: item.caption, separator, execute: () => this.run(item.functionName) }];
      if (item.kind === 'menu')
        return [{ name: item.menu.caption, separator, children: this.#children(item.menu) }];
      return [];
    });
  }

  #closeSidebar(): void {
    const sidebar = byId('sidebar');
    sidebar.querySelector('iframe')?.remove();
    sidebar.hidden = true;
  }

  /** Shows what the script has asked to be shown since the last time. */
  #showNew(): void {
    const { sidebars, dialogs, toasts } = this.#host.workbook.ui;
    const fromFrame = (name: string, values: readonly unknown[]) => {
      try {
        return this.#host.runFromPanel(name, ...values);
      } finally {
        this.#showNew();
      }
    };
    const panel = sidebars.splice(0).at(-1);
    if (panel) {
      const sidebar = byId('sidebar');
      sidebar.hidden = false;
      byId('sidebar-title').textContent = panel.title;
      showFrame(sidebar, panel, fromFrame, () => this.#closeSidebar());
    }
    const shown = dialogs.splice(0).at(-1);
    if (shown) {
      const dialog = byId('dialog') as HTMLDialogElement;
      const { page, title, isModal } = shown;
      byId('dialog-title').textContent = title;
      if (page.width) dialog.style.setProperty('--width', `${page.width}px`);
      if (page.height) dialog.style.setProperty('--height', `${page.height}px`);
      showFrame(dialog, page, fromFrame, () => dialog.close());
      if (!dialog.open) isModal ? dialog.showModal() : dialog.show();
    }
    const toast = toasts.splice(0).at(-1);
    if (toast) say([toast.title, toast.message].filter((text) => text !== '').join(': '));
  }
}

interface MenuEntry {
  readonly name: string;
  readonly separator: boolean;
  readonly execute?: () => void;
  readonly children?: MenuEntry[];
}
