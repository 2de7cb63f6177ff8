/** A theme for a picture that is seen from further away. */
import type { Theme } from './theme.ts';

/** The same theme with lines and their dashes so many times as broad. */
export function broader(theme: Theme, times: number): Theme {
  const roles = Object.entries(theme.roles).map(([role, style]) => [
    role,
    {
      ...style,
      widthPx: times * style.widthPx,
      dashPx: style.dashPx.map((length) => times * length),
    },
  ]);
  return { ...theme, roles: Object.fromEntries(roles) as Theme['roles'] };
}
