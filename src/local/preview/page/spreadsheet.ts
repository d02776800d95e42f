import type { CellPosition, EngineModel } from '../../host/engine.ts';
import { say } from './status.ts';

type SpreadsheetEnv = InstanceType<typeof o_spreadsheet.Spreadsheet>['env'];

/**
 * A blank in a computed block is text without letters to the engine, which cuts off the text beside it. In Google Sheets a
 * blank is an empty cell, and the text runs on over it (from memory).
 */
function letTextRunOn({ getters }: EngineModel): void {
  const evaluated = getters.getEvaluatedCell;
  Object.assign(getters, {
    getEvaluatedCell(position: CellPosition) {
      const cell = evaluated(position);
      return cell.value === '' ? { ...cell, type: 'empty' } : cell;
    },
  });
}

/** Shows the workbook in an element. */
export async function mountSpreadsheet(model: EngineModel, element: HTMLElement): Promise<void> {
  const templates = await (await fetch('/assets/o_spreadsheet.xml')).text();
  letTextRunOn(model);
  const messages = {
    notifyUser: ({ text }: { readonly text: string }) => say(text),
    raiseError: (text: string, done?: () => void) => {
      window.alert(text);
      done?.();
    },
    askConfirmation: (text: string, confirmed: () => void, cancelled?: () => void) =>
      window.confirm(text) ? confirmed() : cancelled?.(),
  };
  const env = { ...messages, loadCurrencies: async () => [], loadLocales: async () => [], isSmall: false };
  const app = new owl.App(o_spreadsheet.Spreadsheet, {
    props: { model, ...messages },
    env: env as unknown as SpreadsheetEnv, // the rest of it is the component's own to add
    translateFn: (text: string) => text,
  });
  app.addTemplates(templates);
  await app.mount(element);
}
