/** Tests of what is said where the page cannot be built or served. */
import { expect, it } from 'vitest';
import { serve } from './serve.js';
import { buildTrouble, serveTrouble } from './start-trouble.js';

it('a busy port, really met, is named with what to do', async () => {
  const folder = new URL('../../static', import.meta.url).pathname;
  const first = await serve(folder, 0);
  const error: unknown = await serve(folder, first.portTaken, { strict: true }).catch(
    (caught: unknown) => caught,
  );
  expect(serveTrouble(error, first.portTaken)).toBe(
    `Port ${first.portTaken} is busy; free it or name another, as in: npm start -- --port 4790`,
  );
  first.close();
});

it('each cause is one sentence', () => {
  const withCode = (code: string) => Object.assign(new Error(`${code}: a long story`), { code });
  expect(serveTrouble(withCode('EACCES'), 80)).toBe(
    'Port 80 may not be opened by this user; name one above 1023, as in: npm start -- --port 4790',
  );
  for (const code of ['EACCES', 'EPERM', 'EROFS'])
    expect(buildTrouble(withCode(code), '/bikes/')).toBe(
      'The page cannot be built: this user may not write in /bikes/',
    );
  expect(buildTrouble(withCode('ENOSPC'), '/bikes/')).toMatch(/no room is left on the disk/);
  expect(buildTrouble(new Error('Line 3 is wrong'), '/bikes/')).toBe(
    'The page cannot be built: Line 3 is wrong',
  );
});
