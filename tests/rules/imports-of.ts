/** Reads every import out of a source file's text, type imports and the script blocks of components included. */
import ts from 'typescript';

export interface Import {
  readonly specifier: string;
  readonly typeOnly: boolean;
}

const SCRIPT_BLOCK = /<script\b[^>]*>([\s\S]*?)<\/script>/g;

/** The code of a file: the script blocks of a .svelte file, any other file as a whole. */
export function scriptsOf(file: string, text: string): string[] {
  return file.endsWith('.svelte') ? [...text.matchAll(SCRIPT_BLOCK)].map((match) => match[1] ?? '') : [text];
}

export function importsOf(file: string, text: string): Import[] {
  return scriptsOf(file, text).flatMap((script) => importsOfScript(script));
}

function importsOfScript(script: string): Import[] {
  const found: Import[] = [];
  const add = (literal: ts.Node | undefined, typeOnly: boolean) => {
    if (literal && ts.isStringLiteralLike(literal)) found.push({ specifier: literal.text, typeOnly });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) {
      add(node.moduleSpecifier, node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword);
    } else if (ts.isExportDeclaration(node)) {
      add(node.moduleSpecifier, node.isTypeOnly);
    } else if (ts.isImportTypeNode(node)) {
      add(ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined, true);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      add(node.arguments[0], false);
    } else if (ts.isNewExpression(node) && node.expression.getText() === 'URL') {
      // `new URL('./worker.ts', import.meta.url)` pulls a file into the build like an import does.
      const [address, base] = node.arguments ?? [];
      if (base?.getText() === 'import.meta.url' && /\.(ts|js)\W$/.test(address?.getText() ?? '')) {
        add(address, false);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('script.ts', script, ts.ScriptTarget.Latest, true));
  return found;
}
