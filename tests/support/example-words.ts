/** The numbers of a worked example by their names, each read in its unit. */
import { radians } from '../../src/core/units/convert.ts';
import type { Given } from './worked-example.ts';

export class ExampleWords {
  readonly #given: ReadonlyMap<string, Given['is']>;
  readonly #used = new Set<string>();

  constructor(given: readonly Given[]) {
    this.#given = new Map(given.map(({ name, is }) => [name, is]));
    if (this.#given.size < given.length) throw new Error('an example gives a name twice');
  }

  has(name: string): boolean {
    return this.#given.has(name);
  }

  /** Each is undefined where the example does not give that name, and throws where it gives it in another unit. */
  mm(name: string): number | undefined {
    return this.#number(name, 'mm');
  }

  kg(name: string): number | undefined {
    return this.#number(name, 'kg');
  }

  rate(name: string): number | undefined {
    return this.#number(name, 'N/mm');
  }

  g(name: string): number | undefined {
    return this.#number(name, 'g');
  }

  plain(name: string): number | undefined {
    return this.#number(name, '');
  }

  /** In radians; written in degrees. */
  angle(name: string): number | undefined {
    const degrees = this.#number(name, '°');
    return degrees === undefined ? undefined : radians(degrees);
  }

  tyre(name: string): { readonly code: string } | undefined {
    const is = this.#take(name);
    if (typeof is === 'object') throw new Error(`${name} is the code of a tyre`);
    return is === undefined ? undefined : { code: is };
  }

  /** A word that nobody has read is one that the builder of bikes does not know. */
  expectAllUsed(): void {
    const unknown = [...this.#given.keys()].filter((name) => !this.#used.has(name));
    if (unknown.length > 0) throw new Error(`words that no example bike knows: ${unknown.join(', ')}`);
  }

  #number(name: string, unit: string): number | undefined {
    const is = this.#take(name);
    if (is === undefined) return undefined;
    if (typeof is === 'string' || is.unit !== unit) throw new Error(`${name} is counted in "${unit}"`);
    return is.value;
  }

  #take(name: string): Given['is'] | undefined {
    this.#used.add(name);
    return this.#given.get(name);
  }
}
