/** Tests of a value held and let go. */
import { describe, expect, it } from 'vitest';
import { ValueDraft } from './value-draft.svelte.ts';

function listened() {
  const heard: string[] = [];
  const draft = new ValueDraft({
    onpreview: (value) => heard.push(`preview ${value}`),
    oncommit: (value) => heard.push(`commit ${value}`),
    oncancel: () => heard.push('cancel'),
  });
  return { draft, heard };
}

describe('a value draft', () => {
  it('previews every move and commits once', () => {
    const { draft, heard } = listened();
    draft.move(5, 6);
    draft.move(6, 7);
    expect(draft.current).toBe(7);
    draft.commit();
    draft.commit();
    expect(heard).toEqual(['preview 6', 'preview 7', 'commit 7']);
    expect(draft.current).toBeNull();
  });

  it('commits nothing when it comes back to where it began', () => {
    const { draft, heard } = listened();
    draft.move(5, 6);
    draft.move(6, 5);
    draft.commit();
    expect(heard).toEqual(['preview 6', 'preview 5', 'cancel']);
  });

  it('says nothing about a move to the same place', () => {
    const { draft, heard } = listened();
    draft.move(5, 5);
    draft.commit();
    draft.move(5, 6);
    draft.move(6, 6);
    expect(heard).toEqual(['preview 6']);
  });

  it('tells whether there was anything to take back', () => {
    const { draft, heard } = listened();
    expect(draft.cancel()).toBe(false);
    draft.move(5, 6);
    expect(draft.cancel()).toBe(true);
    draft.commit();
    expect(heard).toEqual(['preview 6', 'cancel']);
  });
});
