/** The groups of adjusters on the page, in order. */

/** `large` groups show their figures largest: what is adjusted first. */
const ROWS = [
  { key: 'rideHeight', label: 'Ride height', large: true },
  { key: 'gearing', label: 'Gearing and axle', large: false },
  { key: 'steering', label: 'Steering head', large: false },
  { key: 'links', label: 'Rear links', large: false },
  { key: 'springs', label: 'Springs', large: false },
  { key: 'wheels', label: 'Tyres', large: false },
  { key: 'forkLength', label: 'Fork length', large: false },
  { key: 'travel', label: 'Travel used', large: false },
  { key: 'load', label: 'Rider and load', large: false },
  { key: 'riding', label: 'Riding', large: false },
] as const;

export type AdjusterGroup = (typeof ROWS)[number]['key'];

export const ADJUSTER_GROUPS: readonly {
  readonly key: AdjusterGroup;
  readonly label: string;
  readonly large: boolean;
}[] = ROWS;
