import { buttonSets, buttons } from './enumerations.ts';
import type {
  GoogleButton,
  GoogleButtonSet,
  GoogleHtmlOutput,
  GoogleMenu,
  GooglePromptResponse,
  GoogleUi,
} from './google.ts';
import { type HtmlPage, pageOf } from './html.ts';
import { ObjectRecords } from './objectRecords.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

type MenuItem =
  | { readonly kind: 'item'; readonly caption: string; readonly functionName: string }
  | { readonly kind: 'separator' }
  | { readonly kind: 'menu'; readonly menu: MenuRecord };

export interface MenuRecord {
  readonly caption: string;
  readonly items: readonly MenuItem[];
}

type ButtonName = 'CLOSE' | 'OK' | 'CANCEL' | 'YES' | 'NO';

export interface Question {
  readonly kind: 'alert' | 'prompt';
  readonly title: string;
  readonly prompt: string;
  /** Name of the set of buttons. */
  readonly buttons: string;
}

export interface Answer {
  readonly button: ButtonName;
  readonly text?: string;
}

/** What the script showed to the person, and what the person will answer. */
export interface UiRecord {
  readonly menus: MenuRecord[];
  readonly toasts: { readonly message: string; readonly title: string }[];
  readonly alerts: Omit<Question, 'kind'>[];
  readonly sidebars: HtmlPage[];
  readonly dialogs: { readonly page: HtmlPage; readonly title: string; readonly isModal: boolean }[];
  /** Answers to the coming alerts and prompts, first come first served. An alert with OK alone needs none. */
  readonly answers: Answer[];
  /** Somebody who is there to be asked what is not answered beforehand. */
  person?: (question: Question) => Answer;
}

export function emptyUiRecord(): UiRecord {
  return { menus: [], toasts: [], alerts: [], sidebars: [], dialogs: [], answers: [] };
}

const menus = new ObjectRecords<MenuRecord>('a Menu');

export function createUi(workbook: Workbook): GoogleUi {
  const { ui } = workbook;

  const ask = (kind: Question['kind'], texts: readonly (string | GoogleButtonSet)[]): Answer => {
    const [prompt, title, set = buttonSets.OK] = askedParts(texts);
    const shown = { title, prompt, buttons: String(set) };
    ui.alerts.push(shown);
    const answer = ui.answers.shift() ?? ui.person?.({ kind, ...shown });
    if (answer) return answer;
    if (set === buttonSets.OK) return { button: 'OK' };
    throw new Error(`no answer was prepared for '${prompt}'`);
  };

  return strict<GoogleUi>(workbook.calls, 'Ui', {
    Button: buttons,
    ButtonSet: buttonSets,
    alert: (...texts: (string | GoogleButtonSet)[]): GoogleButton => buttons[ask('alert', texts).button],

    prompt(...texts: (string | GoogleButtonSet)[]): GooglePromptResponse {
      const answer = ask('prompt', texts);
      return strict<GooglePromptResponse>(workbook.calls, 'PromptResponse', {
        getSelectedButton: () => buttons[answer.button],
        getResponseText: () => answer.text ?? '',
      });
    },

    createMenu: (caption: string) => createMenu(workbook, caption),
    createAddonMenu: () => createMenu(workbook, ''),

    showSidebar(page: GoogleHtmlOutput) {
      ui.sidebars.push(pageOf(page));
    },
    showModalDialog(page: GoogleHtmlOutput, title: string) {
      ui.dialogs.push({ page: pageOf(page), title, isModal: true });
    },
    showModelessDialog(page: GoogleHtmlOutput, title: string) {
      ui.dialogs.push({ page: pageOf(page), title, isModal: false });
    },
  });
}

/** The three forms of an alert: (prompt), (prompt, buttons), (title, prompt, buttons). */
function askedParts(
  texts: readonly (string | GoogleButtonSet)[],
): [prompt: string, title: string, buttons: GoogleButtonSet | undefined] {
  const [first, second, third] = texts;
  if (texts.length === 3) return [String(second), String(first), third as GoogleButtonSet];
  return [String(first), '', second as GoogleButtonSet | undefined];
}

function createMenu(workbook: Workbook, caption: string): GoogleMenu {
  const items: MenuItem[] = [];
  const record: MenuRecord = { caption, items };

  const menu: GoogleMenu = strict<GoogleMenu>(workbook.calls, 'Menu', {
    addItem(itemCaption: string, functionName: string) {
      items.push({ kind: 'item', caption: itemCaption, functionName });
      return menu;
    },
    addSeparator() {
      items.push({ kind: 'separator' });
      return menu;
    },
    addSubMenu(subMenu: GoogleMenu) {
      items.push({ kind: 'menu', menu: menus.of(subMenu) });
      return menu;
    },
    /** @throws Error when an item names a function that the script lacks: a person would find it only by choosing it */
    addToUi() {
      for (const name of functionsOf(record)) {
        if (typeof workbook.scope[name] !== 'function') throw new Error(`menu item: no function ${name}`);
      }
      workbook.ui.menus.push(record);
    },
  });
  menus.set(menu, record);
  return menu;
}

function functionsOf({ items }: MenuRecord): string[] {
  return items.flatMap((item) => {
    if (item.kind === 'item') return [item.functionName];
    return item.kind === 'menu' ? functionsOf(item.menu) : [];
  });
}
