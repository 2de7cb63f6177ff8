/** WebKitGTK as the system has it: where its driver and its small browser lie, and both started on a screen that nobody sees. */
import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { createServer } from 'node:net';
import { delimiter, join } from 'node:path';
import { DrivenPage } from './web-driver.ts';

export interface WebKit {
  readonly driver: string;
  readonly browser: string;
  /** Makes the screen that nobody sees; null where the machine has a screen. */
  readonly screen: string | null;
}

const LIBRARIES = ['/usr/lib', '/usr/lib64', '/usr/libexec'];

function onPath(name: string): string | null {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, name)).find((path) => existsSync(path)) ?? null;
}

/** The small browser lies below a folder of the library's, whose name has version and processor in it. */
function smallBrowser(): string | null {
  const folders = LIBRARIES.filter((folder) => existsSync(folder));
  const below = (folder: string): string[] => readdirSync(folder).map((name) => join(folder, name));
  const near = [...folders, ...folders.flatMap(below).filter((path) => /linux-gnu/.test(path))];
  return (
    near
      .flatMap((folder) => below(folder).filter((path) => /webkit2?gtk/.test(path)))
      .map((folder) => join(folder, 'MiniBrowser'))
      .find((path) => existsSync(path)) ?? null
  );
}

/** Null where anything of it is missing. WEBKIT_DRIVER in the environment names the driver; empty, it leaves WebKitGTK out. */
export function findWebKit(): WebKit | null {
  const driver = process.env.WEBKIT_DRIVER ?? onPath('WebKitWebDriver');
  const browser = smallBrowser();
  const screen = process.env.DISPLAY === undefined ? onPath('Xvfb') : null;
  const seen = process.env.DISPLAY !== undefined || screen !== null;
  return driver && existsSync(driver) && browser && seen ? { driver, browser, screen } : null;
}

/** Gets it onto the machine where that is possible. */
export function installWebKit(): void {
  if (process.env.WEBKIT_DRIVER !== undefined) return;
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0) return;
  for (const args of [
    ['update', '-qq'],
    ['install', '--yes', '-qq', '--no-install-recommends', 'webkit2gtk-driver', 'xvfb'],
  ])
    spawnSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'], timeout: 240_000 });
}

function freePort(): Promise<number> {
  return new Promise((fulfil, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => {
        if (address && typeof address === 'object') fulfil(address.port);
        else reject(new Error('the probe has no port'));
      });
    });
  });
}

/** Starts the screen; gives its name back, such as `:3`. */
function startScreen(path: string, { width, height }: Size): Promise<{ name: string; ends: () => void }> {
  const size = `${width + 100}x${height + 100}x24`;
  const screen = spawn(path, ['-displayfd', '3', '-screen', '0', size, '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  return new Promise((fulfil, reject) => {
    screen.on('error', reject);
    screen.on('exit', () => reject(new Error('Xvfb ended before it had a screen')));
    screen.stdio[3]?.once('data', (bytes: Buffer) =>
      fulfil({ name: `:${bytes.toString().trim()}`, ends: () => screen.kill() }),
    );
  });
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The driver at work, ready to open windows of that size. */
export interface StartedWebKit {
  open(): Promise<DrivenPage>;
  end(): void;
}

export async function startWebKit({ driver, browser, screen }: WebKit, size: Size): Promise<StartedWebKit> {
  const shown = screen === null ? null : await startScreen(screen, size);
  const port = await freePort();
  const started: ChildProcess = spawn(driver, [`--port=${port}`, '--host=127.0.0.1'], {
    stdio: ['ignore', 'ignore', 'ignore'],
    env: {
      ...process.env,
      ...(shown === null ? {} : { DISPLAY: shown.name }),
      // Nothing here has a graphics card, and the superuser may not start WebKit's sandbox.
      LIBGL_ALWAYS_SOFTWARE: '1',
      WEBKIT_DISABLE_DMABUF_RENDERER: '1',
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
    },
  });
  const address = `http://127.0.0.1:${port}`;
  const options = { 'webkitgtk:browserOptions': { binary: browser, args: ['--automation'] } };
  await listening(`${address}/status`);
  return {
    open: () => DrivenPage.open(address, options, size),
    end() {
      started.kill();
      shown?.ends();
    },
  };
}

/** Waits until something answers there. */
async function listening(address: string): Promise<void> {
  const end = performance.now() + 30_000;
  for (;;)
    try {
      await fetch(address);
      return;
    } catch (error) {
      if (performance.now() > end) throw error;
      await new Promise((done) => setTimeout(done, 50));
    }
}
