import { messageOf } from '../../../functions/messages.ts';
import type { LocalHost } from '../../host/localHost.ts';
import { snapshotOf, type WorkbookSnapshot } from '../../host/snapshot.ts';
import type { OpeningData } from '../openingData.ts';
import { writeAutosave } from './server.ts';
import { say } from './status.ts';

/** The work in hand, put away. */
export interface Work {
  readonly snapshot: WorkbookSnapshot;
  /** When, and what it was made from. */
  readonly time: string;
  readonly tablesDigest: string;
  readonly scriptDigest: string;
}

const quiet = 1200; // ms without a change before the work is put away: that takes the engine a while

/** Puts the work away a moment after every change, so that it is there when the page opens again. */
export class Autosave {
  readonly #host: LocalHost;
  readonly #opening: OpeningData;
  #timer: number | undefined;
  #isOn = false;

  constructor(host: LocalHost, opening: OpeningData) {
    this.#host = host;
    this.#opening = opening;
    addEventListener('beforeunload', (event) => {
      if (this.#timer !== undefined) event.preventDefault(); // the browser asks before the last change is lost
    });
  }

  start(): void {
    this.#isOn = true;
  }

  stop(): void {
    this.#isOn = false;
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  /** Called for every change of the workbook. */
  changed(): void {
    if (!this.#isOn) return;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#save(), quiet);
    document.body.dataset.work = 'in hand';
  }

  async #save(): Promise<void> {
    const timer = this.#timer;
    const { tablesDigest, scriptDigest } = this.#opening;
    const snapshot = snapshotOf(this.#host.workbook);
    const work: Work = { snapshot, time: new Date().toISOString(), tablesDigest, scriptDigest };
    try {
      await writeAutosave(JSON.stringify(work));
      if (this.#timer !== timer) return; // there was another change
      this.#timer = undefined;
      document.body.dataset.work = 'put away';
    } catch (error) {
      say(`Your work could not be put away: ${messageOf(error)}`, true);
    }
  }
}
