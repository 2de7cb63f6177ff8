/** The icons' lines, drawn for a square of 20 by 20 with one pen. */

export const ICON_PATHS = {
  undo: 'M7.5 4 3.5 8l4 4M4 8h7.5a4.5 4.5 0 0 1 0 9H8',
  redo: 'M12.5 4l4 4-4 4M16 8H8.5a4.5 4.5 0 0 0 0 9H12',
  fit: 'M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4M7 10h6',
  open: 'M2.5 16V4.5H8L9.5 7h6v2M2.5 16 5 9h13l-2.5 7z',
  save: 'M10 3v9M6.5 8.5 10 12l3.5-3.5M3.5 13v4h13v-4',
  lock: 'M4.5 9h11v8h-11zM7 9V6.5a3 3 0 0 1 6 0V9M10 12.5v1.5',
  unlock: 'M4.5 9h11v8h-11zM7 9V5.5a3 3 0 0 1 5.8-1M10 12.5v1.5',
  help: 'M7.4 7.6a2.7 2.7 0 1 1 4 2.4c-.9.5-1.4 1-1.4 2.1M10 14.7v.3',
  minus: 'M5 10h10',
  plus: 'M5 10h10M10 5v10',
  reset: 'M4 4v4h4M4.3 8A6.3 6.3 0 1 1 3.8 11.5',
  ruler: 'M2.5 7h15v6h-15zM5.5 7v2.5M8.5 7v3.5M11.5 7v2.5M14.5 7v3.5',
  close: 'M5 5l10 10M15 5 5 15',
  check: 'M4 10.5 8 14.5 16 6',
  warning: 'M10 3 18 17H2zM10 8v4.5M10 14.7v.3',
  note: 'M10 2.5a7.5 7.5 0 1 0 .01 0zM10 9v5M10 6.2v.3',
  sliders: 'M3 6h6M13 6h4M9 6a2 2 0 1 0 4 0 2 2 0 1 0-4 0M3 14h2M9 14h8M5 14a2 2 0 1 0 4 0 2 2 0 1 0-4 0',
  eye: 'M2 10c2-3.3 4.7-5 8-5s6 1.7 8 5c-2 3.3-4.7 5-8 5s-6-1.7-8-5zM10 7.8a2.2 2.2 0 1 0 .01 0z',
  choose: 'M3 6l1.5 1.5L7 4.5M3 13l1.5 1.5L7 11.5M10 6h7M10 13h7',
  down: 'M5 8l5 5 5-5',
  unfold: 'M6 7l4-4 4 4M6 13l4 4 4-4',
  fold: 'M6 3.5l4 4 4-4M6 16.5l4-4 4 4',
  link: 'M8.5 11.5a3 3 0 0 0 4.3 0l3-3a3 3 0 0 0-4.3-4.3L10.5 5.2M11.5 8.5a3 3 0 0 0-4.3 0l-3 3a3 3 0 0 0 4.3 4.3l1-1',
  print: 'M6 7V3h8v4M6 14H3V7h14v7h-3M6 11.5h8V17H6z',
  play: 'M6 3.5v13l10-6.5z',
  stop: 'M5 5h10v10H5z',
  photo: 'M3 6h3.5L8 4h4l1.5 2H17v10H3zM10 8.2a2.7 2.7 0 1 0 .01 0z',
} as const;

export type IconName = keyof typeof ICON_PATHS;
