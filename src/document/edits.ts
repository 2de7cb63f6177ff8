/** The edits: each takes a document to the next one, or says why the new value cannot be saved. */
import type { Bike, Bodywork, Swingarm } from '../core/parts/bike.ts';
import type { LinkLayout, TravelRow } from '../core/parts/rear-layout.ts';
import type { OtherLeg, Support } from '../core/parts/support.ts';
import { adjusterOf, type Adjuster } from '../core/adjusters/all-adjusters.ts';
import type { AdjusterKey, Setup } from '../core/adjusters/setup.ts';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { BIKE_PART } from './fields/bike-fields.ts';
import type { BikeDocument, BikeWithSetup } from './document.ts';
import type { Part } from './fields/field.ts';
import { isJsonObject, type Json, type JsonObject } from './json/json.ts';
import { readPart } from './fields/read-part.ts';
import { SETUP_PART } from './fields/setup-fields.ts';

/** A value that no file may hold: not finite, of the wrong kind, or beyond all machines. */
export interface EditReason {
  readonly path: string;
  readonly sentence: string;
}

export type Edited = Result<BikeDocument, EditReason>;

/**
 * The part as a file would give it back, so that whatever can be edited can be saved and opened again. What it keeps
 * from the part before is not read again.
 */
function storable<T>(part: Part<T>, value: unknown, path: string, before: T): Result<T, EditReason> {
  const read = readPart(part, value, path, before);
  const [fault] = [...read.faults, ...read.repairs];
  if (fault === undefined) return succeed(read.value);
  return fail({ path: fault.path, sentence: fault.problem ?? fault.sentence });
}

function withBike(document: BikeDocument, bike: unknown): Edited {
  const checked = storable(BIKE_PART, bike, 'bike', document.bike);
  return checked.ok ? succeed({ ...document, bike: checked.value }) : checked;
}

function withSetup(document: BikeDocument, setup: unknown): Edited {
  const checked = storable(SETUP_PART, setup, 'setup', document.setup);
  return checked.ok ? succeed({ ...document, setup: checked.value }) : checked;
}

/** Sets one adjuster, in the adjuster's metric number. The adjuster's own range is the workshop's; it is not enforced here. */
export function setAdjuster<K extends AdjusterKey>(document: BikeDocument, key: K, value: Setup[K]): Edited {
  const adjuster: Adjuster = adjusterOf(key);
  // A chain no longer places an axle that a hand has moved.
  const takenOff =
    'placedBy' in adjuster && adjuster.placedBy !== undefined ? { [adjuster.placedBy]: null } : {};
  const edited = withSetup(document, { ...document.setup, ...takenOff, [key]: value });
  if (edited.ok || !('belowLeast' in adjuster) || adjuster.belowLeast === undefined) return edited;
  if (!(typeof value === 'number' && value < adjuster.saved.least)) return edited;
  const { path, sentence } = edited.reason;
  return fail({ path, sentence: `${sentence} ${adjuster.belowLeast}` });
}

/** Sets several adjusters at once, as one change. */
export function setAdjusters(document: BikeDocument, turned: Partial<Setup>): Edited {
  return withSetup(document, { ...document.setup, ...turned });
}

/** What is fitted together when the gearing changes. */
export interface FittedPair {
  readonly frontTeeth: number;
  readonly rearTeeth: number;
  readonly links: number;
  /** Where that chain leaves the axle, mm back from the slot's front. */
  readonly axlePosition: number;
}

/**
 * Fits two sprockets and puts the axle where their chain leaves it. A bike with a chain gets the new chain, with a
 * half link if its links are odd; a bike without one stays without.
 */
export function fitSprockets(document: BikeDocument, pair: FittedPair): Edited {
  const { frontTeeth, rearTeeth, axlePosition, links } = pair;
  const { bike, setup } = document;
  const onChain = setup.chainLinks !== null;
  const chainLinks = onChain ? links : null;
  const fitted = withSetup(document, { ...setup, frontTeeth, rearTeeth, axlePosition, chainLinks });
  return fitted.ok && onChain && bike.drive.kind === 'chain' && links % 2 === 1 && !bike.drive.halfLink
    ? withBike(fitted.value, { ...bike, drive: { ...bike.drive, halfLink: true } })
    : fitted;
}

/** The gearbox's ratios, first gear first; none when not known. */
export function setGearRatios(document: BikeDocument, gearRatios: readonly number[]): Edited {
  const { bike } = document;
  return withBike(document, { ...bike, drive: { ...bike.drive, gearRatios } });
}

/** Puts every adjuster back to where the baseline has it; the bike itself stays as it is. */
export function resetAdjusters(document: BikeDocument): BikeDocument {
  return { ...document, setup: document.baseline.setup };
}

/** Takes over the bike and setup that a moved point has made. */
export function replaceSketched(document: BikeDocument, bike: Bike, setup: Setup): Edited {
  const sketched = withBike(document, bike);
  return sketched.ok ? withSetup(sketched.value, setup) : sketched;
}

/** Makes another bike as set the baseline, by the name under which it is kept. */
export function setNamedBaseline(
  document: BikeDocument,
  { bike, setup }: BikeWithSetup,
  name: string,
): BikeDocument {
  return { ...document, baseline: { name, bike, setup } };
}

/** Puts bike and setup as they were kept on the page; the baseline stays. */
export function takeAsSet(document: BikeDocument, { bike, setup }: BikeWithSetup): BikeDocument {
  return { ...document, bike, setup };
}

/** Makes the present bike and setup the baseline. */
export function setBaseline(document: BikeDocument): BikeDocument {
  return { ...document, baseline: { bike: document.bike, setup: document.setup } };
}

export function renameBike(document: BikeDocument, name: string): Edited {
  const plain = name.trim();
  if (plain === '') return fail({ path: 'bike.name', sentence: 'A bike needs a name.' });
  return withBike(document, { ...document.bike, name: plain });
}

/** How the bike is drawn; no number depends on it. */
export function setBodywork(document: BikeDocument, bodywork: Bodywork): Edited {
  return withBike(document, { ...document.bike, bodywork });
}

/** Whether the figures are made up, which the page says beside the name. */
export function setInvented(document: BikeDocument, invented: boolean): Edited {
  return withBike(document, { ...document.bike, invented });
}

export function describeBike(document: BikeDocument, about: string): Edited {
  return withBike(document, { ...document.bike, about });
}

export function setTravelTable(document: BikeDocument, travelTable: readonly TravelRow[]): Edited {
  const { bike } = document;
  return withBike(document, { ...bike, swingarm: { ...bike.swingarm, travelTable } });
}

/** Replaces how the rear links lie; null goes back to the table. */
export function setLinks(document: BikeDocument, links: LinkLayout | null): Edited {
  const { bike } = document;
  return withBike(document, { ...bike, swingarm: { ...bike.swingarm, links } });
}

/** The swingarm as another way of describing its suspension has it. */
export function setSwingarm(document: BikeDocument, swingarm: Swingarm): Edited {
  return withBike(document, { ...document.bike, swingarm });
}

/** What holds an end up; null for a spring with one rate whose air is not counted. */
export function setSupport(document: BikeDocument, end: 'fork' | 'shock', support: Support | null): Edited {
  const { bike } = document;
  return withBike(document, { ...bike, [end]: { ...bike[end], support } });
}

/** What the other fork leg holds; null while both are alike. */
export function setOtherLeg(document: BikeDocument, otherLeg: OtherLeg | null): Edited {
  const { bike } = document;
  return withBike(document, { ...bike, fork: { ...bike.fork, otherLeg } });
}

/**
 * Puts on a chain of `chainLinks` links, which then places the axle; null leaves the axle where `axlePosition` says.
 */
export function setChain(document: BikeDocument, chainLinks: number | null, axlePosition: number): Edited {
  return withSetup(document, { ...document.setup, chainLinks, axlePosition });
}

/**
 * Sets one field of the bike by its path, such as `frame.steeringHead.x`, in mm, degrees or kg; null empties a field that may be empty. Every other number of the bike stays as it is. A path that
 * leads to no field is refused.
 */
export function setBikeField(document: BikeDocument, path: string, value: Json): Edited {
  const changed = replacedAt(document.bike, path.split('.'), value);
  if (changed === null) return fail({ path: `bike.${path}`, sentence: `A bike has no field ${path}.` });
  return withBike(document, changed);
}

/** The object with what lies at `keys` replaced, or null when nothing lies there. */
function replacedAt(object: unknown, keys: readonly string[], value: Json): JsonObject | null {
  const [key, ...deeper] = keys;
  if (!isJsonObject(object) || !Object.hasOwn(object, key)) return null;
  if (deeper.length === 0) return { ...object, [key]: value };
  const inner = replacedAt(object[key], deeper, value);
  return inner === null ? null : { ...object, [key]: inner };
}
