/** Reads a source file's declarations out of its text: what each of them refers to, and from which file that comes. */
import ts from 'typescript';
import { scriptsOf } from './imports-of.ts';

/** Where a name comes from; `*` stands for everything the file exports. */
export interface Origin {
  readonly specifier: string;
  readonly name: string;
}

export interface FileNames {
  /** Each declaration at the top of the file, with the names it refers to. */
  readonly declared: ReadonlyMap<string, ReadonlySet<string>>;
  /** What others may take, by the name they take it by, with the name it has in the file. */
  readonly exported: ReadonlyMap<string, string>;
  /** The names taken from other files, by what they are called here. */
  readonly imported: ReadonlyMap<string, Origin>;
  /** Names in statements that run as soon as the file is loaded; a component is one such statement. */
  readonly run: ReadonlySet<string>;
  /** Files taken whole, by a dynamic import, for their effect, or as a worker. */
  readonly whole: readonly string[];
}

export function namesOf(file: string, text: string): FileNames {
  const declared = new Map<string, Set<string>>();
  const exported = new Map<string, string>();
  const imported = new Map<string, Origin>();
  const run = new Set<string>();
  const whole: string[] = [];
  const component = file.endsWith('.svelte');
  // What a component's markup uses it imports, so its scripts tell enough.
  for (const script of scriptsOf(file, text)) {
    const source = ts.createSourceFile('script.ts', script, ts.ScriptTarget.Latest, true);
    for (const statement of source.statements) {
      if (ts.isImportDeclaration(statement)) {
        const specifier = textOfLiteral(statement.moduleSpecifier);
        const names = namesImported(statement.importClause);
        if (names.length === 0) whole.push(specifier);
        for (const [local, name] of names) imported.set(local, { specifier, name });
        if (component) for (const [local] of names) run.add(local);
        continue;
      }
      const refers = namesReferred(statement, whole);
      const names = namesDeclared(statement);
      if (names.length === 0 || component) refers.forEach((name) => run.add(name));
      for (const name of names) declared.set(name, refers);
      for (const [outside, inside] of namesExported(statement, names, imported))
        exported.set(outside, inside);
    }
  }
  return { declared, exported, imported, run, whole };
}

/** Pairs of what a name is called here and in the file it comes from. */
function namesImported(clause: ts.ImportClause | undefined): [string, string][] {
  if (!clause) return [];
  const names: [string, string][] = clause.name ? [[clause.name.text, 'default']] : [];
  const bindings = clause.namedBindings;
  if (!bindings) return names;
  if (ts.isNamespaceImport(bindings)) return [...names, [bindings.name.text, '*']];
  return [
    ...names,
    ...bindings.elements.map((each): [string, string] => [
      each.name.text,
      (each.propertyName ?? each.name).text,
    ]),
  ];
}

/** What a statement declares at the top of its file, e.g. both of `const { a, b } = …`. */
function namesDeclared(statement: ts.Statement): string[] {
  if (ts.isExportAssignment(statement)) return ['default'];
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) => namesBound(name));
  if (
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement) ||
    ts.isEnumDeclaration(statement)
  )
    return [statement.name?.text ?? 'default'];
  return [];
}

function namesBound(name: ts.BindingName): string[] {
  if (ts.isIdentifier(name)) return [name.text];
  return name.elements.flatMap((each) => (ts.isBindingElement(each) ? namesBound(each.name) : []));
}

function namesExported(
  statement: ts.Statement,
  declared: readonly string[],
  imported: Map<string, Origin>,
): [string, string][] {
  if (ts.isExportAssignment(statement)) return [['default', 'default']];
  if (ts.isExportDeclaration(statement)) {
    const from = statement.moduleSpecifier && textOfLiteral(statement.moduleSpecifier);
    const clause = statement.exportClause;
    if (!clause || !ts.isNamedExports(clause)) return [];
    return clause.elements.map((each) => {
      const name = (each.propertyName ?? each.name).text;
      if (from === undefined) return [each.name.text, name];
      imported.set(`${from} ${name}`, { specifier: from, name });
      return [each.name.text, `${from} ${name}`];
    });
  }
  const modifiers = ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [];
  if (!modifiers.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) return [];
  const isDefault = modifiers.some(({ kind }) => kind === ts.SyntaxKind.DefaultKeyword);
  return declared.map((name) => [isDefault ? 'default' : name, name]);
}

/** Every name a statement mentions, members of things left out; files it takes whole are added to `whole`. */
function namesReferred(statement: ts.Statement, whole: string[]): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && !isMember(node)) names.add(node.text);
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      whole.push(textOfLiteral(node.arguments[0]));
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      whole.push(textOfLiteral(node.argument.literal));
    if (ts.isNewExpression(node) && node.expression.getText() === 'URL' && node.arguments)
      whole.push(textOfLiteral(node.arguments[0]));
    ts.forEachChild(node, visit);
  };
  visit(statement);
  return names;
}

/** `b` of `a.b`, of `{ b: 1 }` and of the type `A.b`. */
function isMember(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
    (ts.isQualifiedName(parent) && parent.right === node) ||
    ((ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isMethodSignature(parent)) &&
      parent.name === node)
  );
}

function textOfLiteral(node: ts.Node): string {
  return ts.isStringLiteralLike(node) ? node.text : '';
}
