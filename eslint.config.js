/** The lint rules; which folder may import what comes from tests/rules/folders.js. */
import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import importRules from './tests/rules/eslint-imports.js';
import { folders } from './tests/rules/folders.js';
import svelteConfig from './svelte.config.js';

const filesOf = (/** @type {string} */ folder) => `src/${folder}/*.{ts,js,svelte}`;
const ofNeither = (/** @type {import('./tests/rules/folder-row.js').Folder} */ each) =>
  !each.browser && !each.node;

// Names that the language itself has are free everywhere, even where the browser's list repeats them.
const browserOnly = Object.keys(globals.browser).filter((name) => !(name in globals.es2025));

export default ts.config(
  { ignores: ['dist/', 'test-results/', 'playwright-report/', 'fixtures/'] },
  js.configs.recommended,
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  {
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      // The type checker knows what is defined, and knows it better.
      'no-undef': 'off',
      eqeqeq: 'error',
      'no-console': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/consistent-type-imports': ['error', { disallowTypeAnnotations: false }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, extraFileExtensions: ['.svelte'], svelteConfig } },
  },
  {
    files: ['src/**/*.{ts,js,svelte}'],
    plugins: { imports: importRules },
    rules: { 'imports/allowed': 'error' },
  },
  {
    files: folders.filter(ofNeither).map((each) => filesOf(each.folder)),
    rules: {
      'no-restricted-globals': [
        'error',
        ...browserOnly.map((name) => ({
          name,
          message:
            'This folder must run in a worker, a test and a command alike; take what the browser has as an argument.',
        })),
        ...Object.keys(globals.node)
          .filter((name) => !(name in globals.es2025) && !browserOnly.includes(name))
          .map((name) => ({ name, message: 'This folder must run in a browser; node is not there.' })),
      ],
    },
  },
  {
    files: folders.filter((each) => each.folder.startsWith('core/')).map((each) => filesOf(each.folder)),
    rules: {
      'no-restricted-properties': [
        'error',
        {
          object: 'Math',
          property: 'random',
          message: 'The core has no random source: the same bike gives the same numbers. Pass one in.',
        },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'Identifier[name="Date"]',
          message: 'The core has no clock: the same bike gives the same numbers. Pass the time in.',
        },
      ],
    },
  },
  {
    files: ['src/commands/**', 'tests/**', '*.{ts,js}'],
    rules: { 'no-console': 'off' },
  },
);
