/** The ESLint plugin that holds every import against the table of folders. */
import { relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { judgeImport } from './judge-import.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * What the parsers of TypeScript and Svelte both give for a statement or expression that names another file.
 * @typedef {import('eslint').Rule.Node & { source?: { value?: unknown } | null, importKind?: string,
 *   exportKind?: string }} Naming
 */

/** @type {import('eslint').Rule.RuleModule} */
const allowedImports = {
  meta: { type: 'problem', schema: [], messages: { refused: '{{reason}}' } },
  create(context) {
    const file = relative(root, context.filename).split(sep).join('/');
    const check = (/** @type {Naming} */ node, typeOnly = false) => {
      const specifier = node.source?.value;
      if (typeof specifier !== 'string') return;
      const reason = judgeImport(file, specifier, typeOnly);
      if (reason) context.report({ node, messageId: 'refused', data: { reason } });
    };
    const statement = (/** @type {Naming} */ node) =>
      check(node, node.importKind === 'type' || node.exportKind === 'type');
    return {
      ImportDeclaration: statement,
      ExportNamedDeclaration: statement,
      ExportAllDeclaration: statement,
      ImportExpression: (/** @type {Naming} */ node) => check(node),
      TSImportType: (/** @type {Naming} */ node) => check(node, true),
    };
  },
};

export default { rules: { allowed: allowedImports } };
