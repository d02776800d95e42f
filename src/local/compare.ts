import { mkdir, writeFile } from 'node:fs/promises';
import { basename, join, relative, resolve } from 'node:path';
import { InvalidArgumentError } from 'commander';
import Papa from 'papaparse';
import { type Catalogue, readCatalogue, type TableGrids } from '../tables/catalogue.ts';
import { type Cell, nameKey } from '../tables/cell.ts';
import { type Block, isFilled } from './block.ts';
import { htmlReport } from './htmlReport/htmlReport.ts';
import { type LocalWorkbook, openLocalWorkbook } from './localWorkbook.ts';
import { withMission } from './missionOverrides.ts';
import { sayProgress } from './progress.ts';
import { cautionsText, comparisonText } from './report/comparisonText.ts';
import { faultsText } from './report/faultsText.ts';
import { findingsText } from './report/findingsText.ts';
import { plainText, terminalColours } from './report/layout.ts';
import { weighingText } from './report/weighingText.ts';
import { readTableFolder } from './tableFolder.ts';

/** What `npm start` was asked for. */
export interface CompareOptions {
  readonly out: string;
  readonly package?: readonly string[];
  readonly mission?: readonly string[];
  readonly format: 'text' | 'json' | 'csv';
}

/** The packages asked for, in the order of the block. @throws InvalidArgumentError naming those there are */
function chosenColumns(block: Block, names: readonly string[]): Block {
  const header = block[0] ?? [];
  const known = header.slice(2).map((name) => nameKey(String(name)));
  const unknown = names.find((name) => !known.includes(nameKey(name)));
  if (unknown !== undefined) {
    throw new InvalidArgumentError(`no package "${unknown}"; there are ${header.slice(2).join(', ')}`);
  }
  const wanted = new Set(names.map(nameKey));
  const kept = header.map(
    (name, index) => names.length === 0 || index < 2 || wanted.has(nameKey(String(name))),
  );
  return block.map((row) => row.filter((_, index) => kept[index]));
}

function chosenFindings(block: Block, names: readonly string[]): Block {
  const wanted = new Set([...names, 'all'].map(nameKey));
  return block.filter(
    (row, index) => index === 0 || names.length === 0 || wanted.has(nameKey(String(row[1]))),
  );
}

/** Rows as objects named by the block's header, headings left out. */
function records(block: Block): Record<string, Cell>[] {
  const [header = [], ...rows] = block;
  return rows
    .filter((row) => row.slice(1).some(isFilled))
    .map((row) => Object.fromEntries(header.map((name, index) => [String(name), row[index] ?? null])));
}

/** The tables with the mission that was asked for. @throws InvalidArgumentError when it is not understood */
function tablesWithMission(grids: TableGrids, overrides: readonly string[]): TableGrids {
  try {
    return withMission(grids, overrides);
  } catch (error) {
    if (error instanceof RangeError) throw new InvalidArgumentError(error.message);
    throw error;
  }
}

/** Colour only where somebody watches and has not declined it (no-color.org). */
const isColoured = (stream: NodeJS.WriteStream) =>
  stream.isTTY && !process.env.NO_COLOR && process.env.TERM !== 'dumb';

/** Writes the workbook and the report; gives their paths. */
async function writeFiles(
  workbook: LocalWorkbook,
  catalogue: Catalogue,
  outFolder: string,
  name: string,
): Promise<string[]> {
  await mkdir(outFolder, { recursive: true });
  const [workbookPath, reportPath] = [join(outFolder, `${name}.xlsx`), join(outFolder, `${name}.html`)];
  await workbook.save(workbookPath);
  await writeFile(
    reportPath,
    htmlReport(catalogue, (functionName) => workbook.block(functionName), new Date()),
  );
  return [workbookPath, reportPath].map((path) => relative(process.cwd(), path));
}

/** Lays out, calculates, prints, writes. @throws InvalidArgumentError for a package or mission attribute there is not */
export async function compare(folder: string, options: CompareOptions): Promise<void> {
  const { grids, remarks } = readTableFolder(folder);
  const tables = tablesWithMission(grids, options.mission ?? []);
  for (const { table, text } of remarks) console.error(`${table}: ${text}`);
  const { catalogue, faults } = readCatalogue(tables);
  if (catalogue === undefined) {
    console.error(faultsText(faults, isColoured(process.stderr) ? terminalColours : plainText));
    process.exitCode = 1;
    return;
  }
  const emphasis = isColoured(process.stdout) ? terminalColours : plainText;
  sayProgress('Laying out the workbook…');
  const workbook = await openLocalWorkbook(tables);
  const chosen = options.package ?? [];
  const comparison = chosenColumns(workbook.block('PACKAGE_COMPARISON'), chosen);
  const findings = chosenFindings(workbook.block('INSTALLATION_FINDINGS'), chosen);
  sayProgress('Writing workbook and report…');
  const [workbookPath, reportPath] = await writeFiles(
    workbook,
    catalogue,
    options.out,
    basename(resolve(folder)),
  );
  const written = `Workbook: ${workbookPath}\nReport:   ${reportPath}`;
  sayProgress(options.format === 'text' ? '' : `${written}\n`);
  if (options.format === 'json') {
    console.log(JSON.stringify({ comparison: records(comparison), findings: records(findings) }, null, 2));
  } else if (options.format === 'csv') {
    console.log(Papa.unparse(comparison as Cell[][]));
  } else {
    const weighing = weighingText(workbook.block('WEIGHING_CHECK'), emphasis);
    const parts = [
      comparisonText(comparison, emphasis),
      ...(weighing === '' ? [] : [weighing]),
      findingsText(findings, emphasis),
      cautionsText(comparison, emphasis),
      written,
    ];
    console.log(parts.join('\n\n'));
  }
}
