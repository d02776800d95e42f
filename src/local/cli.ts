import { Command, Option } from 'commander';
import { softwareVersion } from '../assessment/version.ts';
import type { CompareOptions } from './compare.ts';
import { endingOf } from './ending.ts';
import { folderArgument } from './folderArgument.ts';

const collect = (value: string, all: readonly string[] = []) => [...all, value];

const program = new Command('npm start --')
  .description(
    'Lays the workbook out from a folder of CSV tables, calculates it with the script that is pushed to Google Sheets,\n' +
      'prints the comparison and writes the workbook as .xlsx and a report for a customer as .html.',
  )
  .addArgument(folderArgument)
  .option('-o, --out <folder>', 'where workbook and report are written', 'out')
  .option('-p, --package <name>', 'print this package only (may be repeated)', collect)
  .option(
    '-m, --mission <attribute=value>',
    'replace a mission attribute, e.g. "distance=400 nmi" (may be repeated)',
    collect,
  )
  .addOption(
    new Option('-f, --format <form>', 'form of the output').choices(['text', 'json', 'csv']).default('text'),
  )
  .version(softwareVersion)
  .addHelpText(
    'after',
    '\nEnds with 0 when done, 1 when the tables cannot be read or have faults, 2 when the command is not understood.',
  )
  .exitOverride()
  .action(async (folder: string, options: CompareOptions) => {
    const { compare } = await import('./compare.ts'); // help and refusals need not wait for it
    await compare(folder, options);
  });

await endingOf(() => program.parseAsync());
