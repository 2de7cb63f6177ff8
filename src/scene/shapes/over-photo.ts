/** A theme for a drawing that lies over a photo: lines and words without paper and without filled areas. */
import type { Theme } from './theme.ts';

const CLEAR = 'transparent';
/** Drawn as lines as wide as limbs, which would hide what lies behind. */
const WIDE: readonly string[] = ['rider', 'riderEdge'];

/** The same lines; what is filled lets the photo through, and areas without a line are left out. */
export function overPhoto(theme: Theme): Theme {
  const roles = Object.fromEntries(
    Object.entries(theme.roles).map(([role, style]) => [
      role,
      { ...style, fill: null, stroke: WIDE.includes(role) ? null : style.stroke },
    ]),
  ) as Theme['roles'];
  return { ...theme, background: CLEAR, roles };
}
