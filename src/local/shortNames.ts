/**
 * Property names of our own that the pushed script may shorten.
 *
 * Every call of a custom function loads the whole script, and long property names are a quarter of it: the bundler shortens
 * variables by itself, but properties only when it is told which. A name may be shortened when nothing outside the script
 * knows it and nothing inside asks for it as a text. It is kept when
 * - it stands in the workbook's data, the Apps Script side, the panel or the units, whose names are seen, stored or sent;
 * - it belongs to something that is written or read as JSON, which must mean the same to the next version of the script, or
 *   that an action takes or gives back;
 * - it is also a text somewhere: `record[key]` may look it up;
 * - the language or Google's services have a property of that name.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../../', import.meta.url));
const own = /^src\/(engineering|tables|assessment|functions)\//;
const kept = /^src\/(units\.ts|workbook\/|appsscript\/)/;
const actionsPath = 'src/appsscript/actions.ts';
const shortest = 3; // a shorter name gains nothing

const visitAll = (node: ts.Node, visit: (node: ts.Node) => void): void => {
  visit(node);
  ts.forEachChild(node, (child) => visitAll(child, visit));
};

const isMember = (node: ts.Node): node is ts.NamedDeclaration =>
  ts.isTypeElement(node) || ts.isClassElement(node) || ts.isObjectLiteralElement(node);

/** Names of members as they are declared in types, classes and object literals. */
function memberNames(file: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  visitAll(file, (node) => {
    if (isMember(node) && node.name && ts.isIdentifier(node.name)) names.add(node.name.text);
  });
  return names;
}

/** Names by which a file gets at members: after a dot, in a pattern, or as they are declared. */
function namesUsed(file: ts.SourceFile): Set<string> {
  const names = memberNames(file);
  visitAll(file, (node) => {
    if (ts.isPropertyAccessExpression(node)) names.add(node.name.text);
    if (ts.isBindingElement(node)) names.add((node.propertyName ?? node.name).getText(file));
  });
  return names;
}

/** An argument's name given to a check, which only says it: `requireAbove('density', density, 0, 'kg/m³')`. */
const isSaidOnly = (text: ts.Node) =>
  ts.isCallExpression(text.parent) &&
  text.parent.arguments[0] === text &&
  /^require[A-Z]/.test(text.parent.expression.getText());

/** Texts by which a member may be looked up. */
function textsOf(file: ts.SourceFile): Set<string> {
  const texts = new Set<string>();
  visitAll(file, (node) => {
    if (ts.isStringLiteralLike(node) && !isSaidOnly(node)) texts.add(node.text);
    if (ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node))
      for (const word of node.text.match(/\w+/g) ?? []) texts.add(word);
  });
  return texts;
}

/** Names within a type, however deep. */
function namesWithin(type: ts.Type, checker: ts.TypeChecker, seen: Set<ts.Type>, names: Set<string>): void {
  if (seen.has(type)) return;
  seen.add(type);
  if (type.isUnionOrIntersection()) for (const part of type.types) namesWithin(part, checker, seen, names);
  for (const argument of checker.getTypeArguments(type as ts.TypeReference) ?? [])
    namesWithin(argument, checker, seen, names);
  for (const property of checker.getPropertiesOfType(type)) {
    if (!property.declarations?.some((each) => each.getSourceFile().fileName.startsWith(join(root, 'src'))))
      continue;
    names.add(property.name);
    namesWithin(checker.getTypeOfSymbol(property), checker, seen, names);
  }
}

/** Names of what is written as JSON, and of what is read from it. */
function namesInJson(file: ts.SourceFile, checker: ts.TypeChecker): Set<string> {
  const names = new Set<string>();
  const add = (type: ts.Type) => namesWithin(type, checker, new Set(), names);
  visitAll(file, (node) => {
    if (!ts.isCallExpression(node)) return;
    const called = node.expression.getText(file);
    const [argument] = node.arguments;
    if (called === 'JSON.stringify' && argument) add(checker.getTypeAtLocation(argument));
    if (called === 'JSON.parse')
      add(checker.getContextualType(node) ?? checker.getTypeAtLocation(node.parent));
  });
  return names;
}

/** Names of what the script's actions take and give back. */
function namesInActions(file: ts.SourceFile, checker: ts.TypeChecker): Set<string> {
  const names = new Set<string>();
  const add = (type: ts.Type) => namesWithin(type, checker, new Set(), names);
  visitAll(file, (node) => {
    if (!ts.isVariableDeclaration(node) || node.name.getText(file) !== 'actions') return;
    for (const action of checker.getPropertiesOfType(checker.getTypeAtLocation(node))) {
      for (const signature of checker.getSignaturesOfType(
        checker.getTypeOfSymbol(action),
        ts.SignatureKind.Call,
      )) {
        add(signature.getReturnType());
        for (const parameter of signature.parameters) add(checker.getTypeOfSymbol(parameter));
      }
    }
  });
  return names;
}

/** Files that declare what the language and Google's services have. */
function platformFiles(): string[] {
  const library = dirname(ts.getDefaultLibFilePath({}));
  const google = join(root, 'node_modules/@types/google-apps-script');
  return [
    ...readdirSync(library)
      .filter((name) => /^lib\.es.*\.d\.ts$/.test(name))
      .map((name) => join(library, name)),
    ...readdirSync(google)
      .filter((name) => name.endsWith('.d.ts'))
      .map((name) => join(google, name)),
  ];
}

/** Every word of the panel, whose page and script are no part of this program. */
function wordsOfSidebar(): string[] {
  const folder = join(root, 'src/sidebar');
  if (!existsSync(folder)) return [];
  return readdirSync(folder).flatMap((name) => readFileSync(join(folder, name), 'utf8').match(/\w+/g) ?? []);
}

/** The names that may be shortened, in alphabetical order. */
export function shortNames(): string[] {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile);
  const parsed = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const program = ts.createProgram([...parsed.fileNames, ...platformFiles()], parsed.options);
  const checker = program.getTypeChecker();
  const declared = new Set<string>();
  const excluded = new Set<string>(wordsOfSidebar());
  const addAll = (to: Set<string>, names: Iterable<string>) => {
    for (const name of names) to.add(name);
  };
  for (const file of program.getSourceFiles()) {
    const path = file.fileName.slice(root.length);
    if (!path.startsWith('src/')) {
      addAll(excluded, memberNames(file));
      continue;
    }
    addAll(excluded, textsOf(file));
    addAll(excluded, namesInJson(file, checker));
    if (path === actionsPath) addAll(excluded, namesInActions(file, checker));
    if (own.test(path)) addAll(declared, memberNames(file));
    if (kept.test(path)) addAll(excluded, namesUsed(file));
  }
  return [...declared].filter((name) => name.length >= shortest && !excluded.has(name)).sort();
}
