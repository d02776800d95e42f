import type { ActionName } from '../appsscript/actions.ts';
import type { Argument } from '../functions/argument.ts';
import type { Formula } from '../functions/formula.ts';
import type { TableArgument, TableFunction } from '../functions/tableFunction.ts';

/** The global that holds the bundled library; the underscore keeps it out of reach of `google.script.run`. */
export const libraryName = 'library_';

const isFormula = (declared: Formula | TableFunction): declared is Formula => 'results' in declared;

function argumentType(argument: Argument | TableArgument): string {
  if (!('type' in argument) || argument.type === 'rows') return 'Range';
  return argument.type === 'word' ? 'string' : 'number|Range';
}

function argumentLine(argument: Argument | TableArgument): string {
  const omitted = 'omitted' in argument && argument.omitted !== '' ? `, ${argument.omitted} when empty` : '';
  const optional = argument.optional ? `optional${omitted}: ` : '';
  return ` * @param {${argumentType(argument)}} ${argument.name} ${optional}${argument.help}`;
}

function returnLine(declared: Formula | TableFunction): string {
  if (!isFormula(declared)) return ' * @return {Array<Array<*>>} a labelled block';
  const what = declared.results.map(({ label, measure }) => (measure ? `${label}, ${measure.unit}` : label));
  return what.length === 1
    ? ` * @return {number} ${what[0]}`
    : ` * @return {Array<number>} ${what.join(' | ')}`;
}

/** One custom function as Google Sheets wants it: a top-level declaration with its JSDoc right above it. */
export function functionText(declared: Formula | TableFunction): string {
  const parameters = declared.arguments.map(({ name }) => name).join(', ');
  return [
    '/**',
    ` * ${declared.help}`,
    ...(isFormula(declared) ? [` * Source: ${declared.source}.`] : []),
    ' *',
    ...declared.arguments.map(argumentLine),
    returnLine(declared),
    ' * @customfunction',
    ' */',
    `function ${declared.name}(${parameters}) {`,
    `  return ${isFormula(declared) ? `${libraryName}.callFormula` : `${libraryName}.workbookLibrary().callTable`}('${declared.name}', arguments);`,
    '}',
  ].join('\n');
}

const nameAxes: ActionName = 'nameAxes_';

/**
 * What Google calls by itself when the workbook is opened, the add-on installed, a cell edited: it must be quick, so it
 * stands in Code.js. A simple trigger asks nobody for leave, and shows its errors to nobody (Google's guide to simple
 * triggers, from memory).
 */
const triggerBodies = {
  onOpen: `${libraryName}.onOpen();`,
  onInstall: `${libraryName}.onInstall();`,
  onEdit: `if (${libraryName}.touchesUnits(event)) ${nameAxes}();`,
} as const;

export const triggers = Object.keys(triggerBodies) as (keyof typeof triggerBodies)[];

export const triggerText = (name: keyof typeof triggerBodies) =>
  `function ${name}(event) {\n  ${triggerBodies[name]}\n}`;

/** A function that the menu, a page or the local host calls by name: no custom function. */
export function actionText(name: string): string {
  return `function ${name}() {\n  return ${libraryName}.workbookLibrary().act('${name}', arguments);\n}`;
}
