/** Tests of strange values as sentences show them. */
import { describe, expect, it } from 'vitest';
import { quote, showJson, visible } from './json.ts';

describe('text in a sentence', () => {
  it('shows what nobody sees, and what turns the text around it, by its code', () => {
    expect(visible('a\u202Eb')).toBe('a‹U+202E›b');
    expect(visible('\u200Bx\uFEFF')).toBe('‹U+200B›x‹U+FEFF›');
    expect(visible('line\u2028break\u0007')).toBe('line‹U+2028›break‹U+0007›');
    expect(showJson('\u2066x')).toBe('"‹U+2066›x"');
  });

  it('leaves letters, marks and signs of any language as they are', () => {
    for (const text of ['Fork – 43 mm', 'Gabelhöhe', 'サイドスタンド', 'é']) expect(visible(text)).toBe(text);
  });

  it('is cut between characters, not within one', () => {
    expect(quote('🏍'.repeat(50))).toBe(`${'🏍'.repeat(40)}…`);
  });
});
