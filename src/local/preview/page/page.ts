/** The page: the workbook in the spreadsheet engine, its script in a frame, its panel beside it. */

import { messageOf } from '../../../functions/messages.ts';
import { byId } from '../../../sidebar/element.ts';
import type { Layout } from '../../../workbook/layout.ts';
import { LocalHost } from '../../host/localHost.ts';
import type { WorkbookSnapshot } from '../../host/snapshot.ts';
import type { OpeningData } from '../openingData.ts';
import { Autosave, type Work } from './autosave.ts';
import { drawCurvesAsAsked } from './chartLooks.ts';
import { scriptFrame } from './scriptFrame.ts';
import { dropAutosave, readAutosave, readOpening, writeTables } from './server.ts';
import { mountSpreadsheet } from './spreadsheet.ts';
import { say } from './status.ts';
import { tablesToSave } from './tables.ts';
import { UserInterface } from './userInterface.ts';
import { watchChanges } from './watch.ts';
import { watchEdits } from './watchEdits.ts';

function hostOf({ code, files, functions }: OpeningData, snapshot?: WorkbookSnapshot): LocalHost {
  return new LocalHost({ engine: o_spreadsheet, evaluate: scriptFrame(code), functions, files, snapshot });
}

/** The workbook laid out with the folder's tables, or as it was left; a newer script brings that up to date. */
function openWorkbook(opening: OpeningData, work: Work | undefined): LocalHost {
  const host = hostOf(opening, work?.snapshot);
  if (work === undefined) host.run('layOutTables_', opening.tables);
  else if (work.scriptDigest !== opening.scriptDigest) host.run('layOutTables_', {});
  return host;
}

function greet(opening: OpeningData, work: Work | undefined): void {
  const where = opening.isInPlace ? 'Save writes over the tables in' : 'Save writes tables to';
  const saving = `${where} ${opening.target}.`;
  const back = work ? `Your work of ${new Date(work.time).toLocaleString()} is back. ` : '';
  const isMoved = work !== undefined && work.tablesDigest !== opening.tablesDigest;
  say(`${back}${isMoved ? 'The tables in the folder have changed since. ' : ''}${saving}`);
}

async function save(host: LocalHost, layout: Layout): Promise<void> {
  const { tables, lost } = tablesToSave(host, layout);
  try {
    const { folder, files } = await writeTables(tables);
    const left = lost.length > 0 ? ` Not saved, for its header is not found: ${lost.join(', ')}.` : '';
    say(`${files.length} tables saved to ${folder}.${left}`, lost.length > 0);
  } catch (error) {
    say(`The tables could not be saved: ${messageOf(error)}`, true);
  }
}

async function open(): Promise<void> {
  console.debug = () => {}; // the engine tells it the time of every command
  let autosave: Autosave | undefined;
  byId('again').addEventListener('click', async () => {
    if (!window.confirm('Drop all changes since the folder was opened, quotes issued here among them?'))
      return;
    autosave?.stop();
    await dropAutosave();
    location.reload();
  });
  const opening = await readOpening();
  const work = ((await readAutosave()) ?? undefined) as Work | undefined;
  watchChanges(() => autosave?.changed());
  let opened: LocalHost | undefined;
  watchEdits(() => opened);
  const host = openWorkbook(opening, work);
  opened = host;
  const layout = JSON.parse(opening.files.Layout ?? '') as Layout;
  const ui = new UserInterface(host);
  ui.run('onOpen');
  ui.addMenus();
  drawCurvesAsAsked(host);
  await mountSpreadsheet(host.workbook.model, byId('workbook'));
  document.title = `${opening.name} · workbook`;
  byId('name').textContent = opening.name;
  greet(opening, work);
  ui.run('showPanel');
  autosave = new Autosave(host, opening);
  autosave.start();
  byId('again').hidden = false;
  byId('save').hidden = false;
  byId('save').addEventListener('click', () => save(host, layout));
  addEventListener('keydown', (event) => {
    if (event.key.toLowerCase() !== 's' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    save(host, layout);
  });
  document.body.dataset.ready = String(Math.round(performance.now()));
  Object.assign(globalThis, { workbook: host }); // for whoever tries the script from the console
}

open().catch((error) => {
  console.error(error);
  say(`The workbook could not be opened: ${messageOf(error)}`, true);
  byId('again').hidden = false; // the work that was put away may be what can't be opened
});
