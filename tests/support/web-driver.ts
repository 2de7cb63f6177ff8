/** A browser driven over http in the words of the W3C's WebDriver standard. */

/** The name under which the standard hands an element to and fro. */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';
/** How long a state may take to come about on a slow machine, and how often it is looked for, ms. */
const PATIENCE_MS = 60_000;
const LOOK_EVERY_MS = 50;
/** How long one answer of the browser may take, ms. */
const LONGEST_ANSWER_MS = 120_000;

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

async function ask(address: string, method: 'GET' | 'POST' | 'DELETE', body?: Json): Promise<Json> {
  const response = await fetch(address, {
    method,
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    signal: AbortSignal.timeout(LONGEST_ANSWER_MS),
  });
  const { value } = (await response.json()) as { value: Json };
  if (!response.ok) throw new Error(`${method} ${new URL(address).pathname}: ${JSON.stringify(value)}`);
  return value;
}

/** One window of the browser, with a store of its own. */
export class DrivenPage {
  readonly #session: string;

  private constructor(session: string) {
    this.#session = session;
  }

  /** Opens a window of that size; `driver` is the address at which the driver listens. */
  static async open(
    driver: string,
    options: Json,
    size: { readonly width: number; readonly height: number },
  ): Promise<DrivenPage> {
    const made = await ask(`${driver}/session`, 'POST', { capabilities: { alwaysMatch: options } });
    const { sessionId } = made as { sessionId: string };
    const page = new DrivenPage(`${driver}/session/${sessionId}`);
    await page.#post('/window/rect', size);
    return page;
  }

  #post(path: string, body: Json): Promise<Json> {
    return ask(this.#session + path, 'POST', body);
  }

  async goTo(address: string): Promise<void> {
    await this.#post('/url', { url: address });
  }

  async reload(): Promise<void> {
    await this.#post('/refresh', {});
  }

  async close(): Promise<void> {
    await ask(this.#session, 'DELETE');
  }

  /** Runs a function in the page. It knows what it is given and nothing else of this file. */
  async run<Given extends readonly Json[], Found>(
    task: (...given: Given) => Found | Promise<Found>,
    ...given: Given
  ): Promise<Found> {
    const script = `const done = arguments[arguments.length - 1];
      Promise.resolve((${task.toString()})(...[...arguments].slice(0, -1)))
        .then((found) => done({ found: found ?? null }), (error) => done({ error: String(error) }));`;
    const told = (await this.#post('/execute/async', { script, args: given })) as {
      readonly found?: Json;
      readonly error?: string;
    };
    if (told.error !== undefined) throw new Error(told.error);
    return told.found as Found;
  }

  /** Asks the page again and again until the answer is as it should be. */
  async until<Found>(
    what: string,
    look: () => Promise<Found>,
    isSo: (found: Found) => boolean,
  ): Promise<Found> {
    const end = performance.now() + PATIENCE_MS;
    let found = await look();
    while (!isSo(found)) {
      if (performance.now() > end) throw new Error(`${what}: still ${JSON.stringify(found)}`);
      await new Promise((done) => setTimeout(done, LOOK_EVERY_MS));
      found = await look();
    }
    return found;
  }

  /** The first element of a style selector, once it is there. */
  async #element(selector: string): Promise<string> {
    const found = await this.until(
      selector,
      () => this.#post('/elements', { using: 'css selector', value: selector }),
      (elements) => (elements as readonly Json[]).length > 0,
    );
    const [first] = found as readonly { readonly [ELEMENT]: string }[];
    return first[ELEMENT];
  }

  /** Clicks in the middle of an element, in the middle of what scrolls: the driver would scroll it just into sight, below what stays put. */
  async click(selector: string): Promise<void> {
    const element = await this.#element(selector);
    await this.run((of) => {
      document.querySelector(of)?.scrollIntoView({ block: 'center', inline: 'center' });
    }, selector);
    await this.#post(`/element/${element}/click`, {});
  }

  /** Types into a field, in place of what stands there. */
  async type(selector: string, text: string): Promise<void> {
    const element = await this.#element(selector);
    await this.#post(`/element/${element}/clear`, {});
    await this.#post(`/element/${element}/value`, { text });
  }

  /** Presses at a place of the window, moves to another in steps and lets go. */
  async drag(from: Place, to: Place, steps: number): Promise<void> {
    const along = (part: number): Json => ({
      type: 'pointerMove',
      duration: 20,
      origin: 'viewport',
      x: Math.round(from.x + (to.x - from.x) * part),
      y: Math.round(from.y + (to.y - from.y) * part),
    });
    const moves = Array.from({ length: steps }, (_, step) => along((step + 1) / steps));
    await this.#act('pointer', 'mouse', { parameters: { pointerType: 'mouse' } }, [
      along(0),
      { type: 'pointerDown', button: 0 },
      ...moves,
      { type: 'pointerUp', button: 0 },
    ]);
  }

  /** Holds keys down one after another and lets them go. */
  async press(...keys: readonly string[]): Promise<void> {
    await this.#act('key', 'keyboard', {}, [
      ...keys.map((value) => ({ type: 'keyDown', value })),
      ...keys.toReversed().map((value) => ({ type: 'keyUp', value })),
    ]);
  }

  async #act(type: string, id: string, more: { readonly [key: string]: Json }, actions: readonly Json[]) {
    await this.#post('/actions', { actions: [{ type, id, ...more, actions }] });
  }
}

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Keys by the standard's own signs. */
export const KEYS = { enter: '\uE007', control: '\uE009' } as const;
