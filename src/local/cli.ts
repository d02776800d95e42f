import { mkdir } from 'node:fs/promises';
import { basename, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command, InvalidArgumentError, Option } from 'commander';
import Papa from 'papaparse';
import packageFile from '../../package.json' with { type: 'json' };
import { readCatalogue } from '../tables/catalogue.ts';
import { type Cell, nameKey } from '../tables/cell.ts';
import { withMission } from './missionOverrides.ts';
import { cautionsText, comparisonText, findingsText } from './report/comparisonText.ts';
import { faultsText } from './report/faultsText.ts';
import { plainText, terminalColours } from './report/layout.ts';
import { readTableFolder } from './tableFolder.ts';
import { openLocalWorkbook } from './workbook.ts';

const samples = fileURLToPath(new URL('../../samples/', import.meta.url));

interface Options {
  readonly out: string;
  readonly package: readonly string[];
  readonly mission: readonly string[];
  readonly format: 'text' | 'json' | 'csv';
}

type Block = readonly (readonly Cell[])[];

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
    .filter((row) => row.slice(1).some((cell) => cell !== null && cell !== ''))
    .map((row) => Object.fromEntries(header.map((name, index) => [String(name), row[index] ?? null])));
}

async function run(folder: string, options: Options): Promise<void> {
  const coloured = process.stdout.isTTY && !process.env.NO_COLOR;
  const emphasis = coloured ? terminalColours : plainText;
  const { grids, remarks } = readTableFolder(folder);
  const tables = withMission(grids, options.mission);
  for (const { table, text } of remarks) console.error(`${table}: ${text}`);
  const { faults } = readCatalogue(tables);
  if (faults.length > 0) {
    console.error(faultsText(faults, emphasis));
    process.exitCode = 1;
    return;
  }
  const workbook = await openLocalWorkbook(tables);
  const comparison = chosenColumns(workbook.block('PACKAGE_COMPARISON'), options.package);
  const findings = chosenFindings(workbook.block('INSTALLATION_FINDINGS'), options.package);
  await mkdir(options.out, { recursive: true });
  const file = join(options.out, `${basename(resolve(folder))}.xlsx`);
  await workbook.save(file);
  const written = `Workbook: ${relative(process.cwd(), file)}`;
  if (options.format === 'json') {
    console.log(JSON.stringify({ comparison: records(comparison), findings: records(findings) }, null, 2));
    console.error(written);
  } else if (options.format === 'csv') {
    console.log(Papa.unparse(comparison as Cell[][]));
    console.error(written);
  } else {
    const parts = [
      comparisonText(comparison, emphasis),
      findingsText(findings, emphasis),
      cautionsText(comparison, emphasis),
      written,
    ];
    console.log(parts.join('\n\n'));
  }
}

const collect = (value: string, all: readonly string[]) => [...all, value];

const program = new Command('npm start --')
  .description(
    'Lays the workbook out from a folder of CSV tables, calculates it with the script that is pushed to Google Sheets,\n' +
      'prints the comparison and writes the workbook as .xlsx.',
  )
  .argument('[folder]', 'folder of tables, one CSV file each', join(samples, 'godwit'))
  .option('-o, --out <folder>', 'where the workbook is written', 'out')
  .option('-p, --package <name>', 'print this package only (may be repeated)', collect, [])
  .option(
    '-m, --mission <attribute=value>',
    'replace a mission attribute, e.g. "distance=400 nmi"',
    collect,
    [],
  )
  .addOption(
    new Option('-f, --format <form>', 'form of the output').choices(['text', 'json', 'csv']).default('text'),
  )
  .version(packageFile.version)
  .exitOverride()
  .action(run);

try {
  await program.parseAsync();
} catch (error) {
  const { exitCode, code, message } = error as { exitCode?: number; code?: string; message: string };
  const fromCommander = code?.startsWith('commander.') ?? false;
  if (!fromCommander || code === 'commander.invalidArgument') console.error(message);
  process.exitCode = fromCommander ? (exitCode === 0 ? 0 : 2) : 1;
}
