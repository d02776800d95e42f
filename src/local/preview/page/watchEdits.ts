import type { CellPosition, Zone } from '../../host/engine.ts';
import type { LocalHost } from '../../host/localHost.ts';

type Command = Parameters<typeof o_spreadsheet.isCoreCommand>[0];

interface Edit {
  readonly position: CellPosition;
  readonly value: string;
  readonly oldValue: string;
}

/** Tells the script of what a person has typed, pasted or cleared, once the engine is done with it. */
export function watchEdits(hostNow: () => LocalHost | undefined): void {
  class Edits extends o_spreadsheet.UIPlugin {
    #edits: Edit[] = [];

    override beforeHandle(command: Command): void {
      const host = hostNow();
      if (host === undefined || host.workbook.isRunning || command.type !== 'UPDATE_CELL') return;
      const { sheetId, col, row, content } = command;
      if (content === undefined) return; // a look, not a content
      const position = { sheetId, col, row };
      this.#edits.push({ position, value: content, oldValue: host.workbook.contentOf(position) });
    }

    override finalize(): void {
      const edits = this.#edits;
      this.#edits = [];
      if (edits.length > 0) setTimeout(() => tell(hostNow() as LocalHost, edits));
    }
  }
  o_spreadsheet.registries.featurePluginRegistry.add('watch_edits', Edits);
}

function tell(host: LocalHost, edits: readonly Edit[]): void {
  const [first] = edits as [Edit];
  const columns = edits.map(({ position }) => position.col);
  const rows = edits.map(({ position }) => position.row);
  const zone: Zone = {
    left: Math.min(...columns),
    right: Math.max(...columns),
    top: Math.min(...rows),
    bottom: Math.max(...rows),
  };
  try {
    host.edited(first.position.sheetId, zone, edits.length === 1 ? first : {});
  } catch (error) {
    console.error(error); // Google shows a person no error of a trigger
  }
}
