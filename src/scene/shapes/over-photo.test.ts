/** Tests of the theme for a drawing that lies over a photo. */
import { expect, it } from 'vitest';
import { overPhoto } from './over-photo.ts';
import { findTheme, THEMES } from './theme.ts';

it.each(THEMES)('lets the photo through all but lines and words, in the theme $key', ({ key }) => {
  const theme = findTheme(key);
  const over = overPhoto(theme);
  expect(over.background).toBe('transparent');
  expect(Object.keys(over.roles)).toEqual(Object.keys(theme.roles));
  for (const [role, style] of Object.entries(over.roles)) {
    expect([role, style.fill]).toEqual([role, null]);
    const { stroke } = theme.roles[role as keyof typeof theme.roles];
    expect([role, style.stroke]).toEqual([role, role === 'rider' || role === 'riderEdge' ? null : stroke]);
  }
  expect(over.labelBacking).toBe(theme.labelBacking);
});
