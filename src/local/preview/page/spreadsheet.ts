import type { EngineModel } from '../../host/engine.ts';
import { say } from './status.ts';

type SpreadsheetEnv = InstanceType<typeof o_spreadsheet.Spreadsheet>['env'];

/** Shows the workbook in an element. */
export async function mountSpreadsheet(model: EngineModel, element: HTMLElement): Promise<void> {
  const templates = await (await fetch('/assets/o_spreadsheet.xml')).text();
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
