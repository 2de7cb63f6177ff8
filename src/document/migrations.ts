/** The migrations: for each older schema, what turns its files into those of the next. */
import { isJsonObject, ownValue, type Json, type JsonObject } from './json/json.ts';

export interface Migration {
  /** The schema it starts from; it ends at the next. */
  readonly from: number;
  /** What it changed, for the person who opens such a file; null when it only added fields. */
  readonly about: string | null;
  /** Takes whatever such a file holds, even a damaged one, and never throws; what is wrong is found later. */
  readonly migrate: (saved: JsonObject) => JsonObject;
}

/** The object with its own value under `key` changed; as it is when there is no object there. */
function within(saved: JsonObject, key: string, change: (inner: JsonObject) => JsonObject): JsonObject {
  const inner = ownValue(saved, key);
  return isJsonObject(inner) ? { ...saved, [key]: change(inner) } : saved;
}

function rename(saved: JsonObject, from: string, to: string): JsonObject {
  const moved = ownValue(saved, from);
  if (moved === undefined) return saved;
  const rest: Record<string, Json> = Object.fromEntries(
    Object.entries(saved).filter(([key]) => key !== from),
  );
  return { ...rest, [to]: moved };
}

/** Adjusters and one figure of the drive under the names of schema 3. */
function withNewNames(saved: JsonObject): JsonObject {
  const setup = within(saved, 'setup', (from) =>
    NAMES_OF_3.reduce((named, [old, present]) => rename(named, old, present), from),
  );
  return within(setup, 'bike', (bike) =>
    within(bike, 'drive', (drive) => rename(drive, 'leastPlay', 'leastSlack')),
  );
}

const NAMES_OF_3 = [
  ['forkHeight', 'forkTubes'],
  ['forkExtender', 'forkExtenders'],
  ['headInsertDeg', 'headAngleCupsDeg'],
  ['topShim', 'shockMountShim'],
  ['chainPlay', 'chainSlack'],
  ['gas', 'acceleration'],
  ['brake', 'braking'],
  ['cornerGas', 'cornerAcceleration'],
] as const;

/** Slowing in the corner as a figure of its own: what was acceleration below zero becomes braking of that size. */
function withCornerBraking(saved: JsonObject): JsonObject {
  return within(saved, 'setup', (setup) => {
    const acceleration = ownValue(setup, 'cornerAcceleration');
    return typeof acceleration === 'number' && acceleration < 0
      ? { ...setup, cornerAcceleration: 0, cornerBraking: -acceleration }
      : setup;
  });
}

/** In order; each starts where the one before it ends. */
export const MIGRATIONS: readonly Migration[] = [
  {
    from: 0,
    about: 'the swingarm’s angle was named anew, and the baseline is the bike as it was saved',
    migrate: (saved) =>
      within(saved, 'bike', (bike) =>
        within(bike, 'swingarm', (arm) => rename(arm, 'angleDeg', 'toppedOutAngleDeg')),
      ),
  },
  {
    // Rear links, springs, riding and the chain's length came in; a file without them means what it always did.
    from: 1,
    about: null,
    migrate: (saved) => saved,
  },
  {
    // Adjusters took the names that workshops use; every figure means what it meant.
    from: 2,
    about: null,
    migrate: (saved) => within(withNewNames(saved), 'baseline', withNewNames),
  },
  {
    // Gas, closed throttle and brakes are each zero or more; every figure acts as it did.
    from: 3,
    about: null,
    migrate: (saved) => within(withCornerBraking(saved), 'baseline', withCornerBraking),
  },
];

/** Brings a saved object up to `target`, and calls `ran` with each migration on the way. */
export function runMigrations(
  saved: JsonObject,
  schema: number,
  target: number,
  ran: (migration: Migration) => void,
): JsonObject {
  let current = saved;
  for (const migration of MIGRATIONS) {
    if (migration.from < schema || migration.from >= target) continue;
    current = { ...migration.migrate(current), schema: migration.from + 1 };
    ran(migration);
  }
  return current;
}
