/** What a build adds so that the page opens without a network, and a policy that lets it ask nobody else for anything. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { transformWithOxc } from 'vite';
import { CONTENT_POLICY } from './content-policy.js';

/** Of what is served as it is: what an installed page shows. */
const STATIC_PARTS = ['sidestance.webmanifest', 'icon.svg', 'icon-192.png', 'icon-512.png'];

/**
 * @param {URL} worker the worker's source
 * @param {URL} served the folder that is served as it is
 * @returns {import('vite').Plugin}
 */
export function offlineBuild(worker, served) {
  return {
    name: 'offline',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_POLICY },
        injectTo: 'head-prepend',
      },
    ],
    generateBundle: {
      order: 'post',
      async handler(_options, bundle) {
        const hash = createHash('sha256');
        const files = Object.keys(bundle).filter(
          (name) => name !== 'index.html' && !name.startsWith('.vite/'),
        );
        for (const name of files.sort()) hash.update(name);
        const page = bundle['index.html'];
        if (page !== undefined && page.type === 'asset') hash.update(page.source);
        for (const name of STATIC_PARTS) hash.update(readFileSync(new URL(name, served)));
        const { code } = await transformWithOxc(readFileSync(worker, 'utf8'), 'offline-worker.ts');
        const parts = ['./', ...files, ...STATIC_PARTS].join(' ');
        this.emitFile({
          type: 'asset',
          fileName: 'offline-worker.js',
          source: code.replace('__PARTS__', parts).replace('__BUILD__', hash.digest('hex').slice(0, 16)),
        });
      },
    },
  };
}
