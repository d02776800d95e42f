/** The smallest sample laid out by the pushed script, in a workbook of its own every time. */
import { snapshotOf } from '../../src/local/host/snapshot.ts';
import { LocalWorkbook, localHost } from '../../src/local/localWorkbook.ts';
import { sample } from '../sample.ts';

const fresh = await localHost();
fresh.run('layOutTables_', sample('minimal'));
const saved = snapshotOf(fresh.workbook);

export async function openMinimal() {
  const host = await localHost(saved);
  return { host, workbook: new LocalWorkbook(host) };
}
