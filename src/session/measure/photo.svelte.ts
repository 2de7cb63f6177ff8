/** Photo: the picture of the bike on the page, what is being clicked on it, and its clicks in the sheet of measurements. */
import { MEASURE_KINDS, type MeasureKindKey } from '../../core/measure/kinds/all-kinds.ts';
import type { MeasureKind } from '../../core/measure/held/measure-kind.ts';
import type { Pixel } from '../../core/measure/photo/camera.ts';
import {
  MEASURE_PARTS,
  MEASURE_PART_KEYS,
  type MeasurePartKey,
} from '../../core/measure/held/measure-parts.ts';
import type { NextMeasurement } from '../../core/measure/measured-bike.ts';
import { placesOn, type PhotoOutcome, type SprocketKey } from '../../core/measure/photo/photo.ts';
import { pitchRadius } from '../../core/drive/sprocket.ts';
import {
  focalOf,
  SPROCKET_RADIUS_SD,
  USUAL_BULGE_SD,
  USUAL_CLICK_SD_PX,
  usualDepth,
  usualRimDepth,
  usualRimRadius,
  type RimSide,
  type Usual,
} from '../../core/measure/photo/photo-usual.ts';
import { findRimEdge, rimWindow, type NoRimEdge, type RimEdge } from '../../core/measure/photo/rim-edge.ts';
import { keptPhotoJson, readKeptPhoto, type KeptPhoto } from '../../document/measure-photo.ts';
import { newId } from '../../storage/new-id.ts';
import { noPictureWords, oddityWords } from '../../words/measure/photo-words.ts';
import type { Keeping } from '../keeping/keeping.svelte.ts';
import { greyWindow, openPicture, type OpenPicture } from './open-picture.ts';
import { isSprocket, isWheel, type Wheel } from './clicked-parts.ts';
import { Tape } from './tape.svelte.ts';
import { knownPhoto } from './tape-rows.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** Clicks of one part; a further one takes the place of the oldest. */
export const MOST_CLICKS = 3;
/** Pins of the chain on one sprocket; a further one takes the place of the oldest. */
const MOST_PINS = 12;
/** Clicks near a rim from which its edge is looked for. */
const EDGE_CLICKS = 3;

/** What a photo needs beside it, each by the kind that is offered where no row gives it. */
const SIZES: readonly {
  readonly needs: NonNullable<MeasureKind['gives']>;
  readonly kind: MeasureKindKey;
  readonly parts: readonly MeasurePartKey[];
}[] = [
  { needs: 'wheelSize', kind: 'axleHeight', parts: ['frontWheel'] },
  { needs: 'wheelSize', kind: 'axleHeight', parts: ['rearWheel'] },
  { needs: 'axleOffset', kind: 'offset', parts: [] },
];

export class Photo {
  readonly #bench: Workbench;
  readonly #tape: Tape;
  #opened = $state.raw<(OpenPicture & { readonly keptAt: number }) | null>(null);
  /** Why a file was not taken. */
  trouble = $state<string | null>(null);
  /** Whether the picture was looked for in the browser and is not there. */
  isElsewhere = $state(false);
  /** What the next click is on. */
  chosen = $state<MeasurePartKey>('frontWheel');
  rimSide = $state<RimSide>('near');
  /** Of the picture, 0 to 1, and its contrast, 1 as taken. */
  opacity = $state(0.8);
  contrast = $state(1);
  /** Whether the picture lies under the side view too. */
  isUnder = $state(true);
  /** Clicks near the rim that is chosen, and the edge found from them, until it is taken. */
  near = $state.raw<readonly Pixel[]>([]);
  edge = $state.raw<RimEdge | NoRimEdge | null>(null);

  readonly kept: KeptPhoto | null = $derived.by(() => {
    const json = this.#tape.photos.at(0);
    return json === undefined ? null : readKeptPhoto(json);
  });
  readonly bitmap: ImageBitmap | null = $derived.by(() => {
    const opened = this.#opened;
    return opened !== null && opened.keptAt === this.kept?.keptAt ? opened.bitmap : null;
  });
  /** What is odd about the picture, in sentences. */
  readonly oddities: readonly string[] = $derived.by(() => {
    if (this.bitmap === null || this.#opened === null) return [];
    const { facts, isClear } = this.#opened;
    return oddityWords({ resized: facts.resized, animated: facts.animated, clear: isClear });
  });
  readonly outcome: PhotoOutcome | null = $derived.by(() => this.#tape.fit?.photos.at(0) ?? null);
  readonly places: number = $derived.by(() => {
    const known = this.kept === null ? null : knownPhoto(this.kept);
    return known === null ? 0 : placesOn(known);
  });
  /** What can be clicked on this bike: rims first, then points and marks. */
  readonly targets: readonly MeasurePartKey[] = $derived.by(() => {
    const { bike } = this.#bench.session.document;
    const points = MEASURE_PART_KEYS.filter((key) => {
      const { shape, applies } = MEASURE_PARTS[key];
      // A belt has no pins.
      const isRing = shape === 'sprocket' && bike.drive.kind === 'chain';
      return (shape === 'point' || shape === 'mark' || isRing) && applies(bike);
    });
    return ['frontWheel', 'rearWheel', ...points];
  });

  /** Sizes that no photo shows and no row has yet. */
  readonly missing: readonly NextMeasurement[] = $derived.by(() =>
    SIZES.filter(
      ({ needs, parts }) =>
        !this.#tape.rows.some(
          (row) =>
            MEASURE_KINDS.find(({ key }) => key === row.kind)?.gives === needs &&
            row.parts.join() === parts.join(),
        ),
    ).map(({ kind, parts }) => ({ kind, parts, state: 'onWheels', otherState: null, u: null })),
  );

  constructor(bench: Workbench) {
    this.#bench = bench;
    this.#tape = bench.stateOf(Tape);
    bench.session.listen({ opened: () => this.#forget() });
  }

  #forget(): void {
    this.trouble = null;
    this.isElsewhere = false;
    this.drop();
  }

  /** How often a part or rim was clicked. */
  count(part: MeasurePartKey): number {
    if (this.kept === null) return 0;
    return isWheel(part) || isSprocket(part)
      ? this.kept.rims.filter(({ wheel }) => wheel === part).length
      : this.kept.clicks.filter((click) => click.part === part).length;
  }

  choose(part: MeasurePartKey): void {
    this.chosen = part;
    this.drop();
  }

  /** Takes a file as the photo of the bike, beside which the browser keeps it as it is. */
  async open(file: File, keeping: Keeping): Promise<void> {
    const opened = await openPicture(file);
    if (!opened.ok) {
      this.trouble = noPictureWords(opened.reason, file.name);
      return;
    }
    this.#forget();
    const { kept } = this;
    const again = kept !== null && this.bitmap === null && sameSize(kept, opened.value);
    const keptAt = again ? kept.keptAt : keeping.now();
    this.#opened?.bitmap.close();
    this.#opened = { ...opened.value, keptAt };
    if (!again) this.#begin(keptAt, opened.value);
    const bikeId = await keeping.keepNow();
    if (bikeId === null || keeping.store === null) return;
    keeping.noted(await keeping.store.keepPicture({ id: newId(), bikeId, keptAt, blob: file }));
  }

  #begin(keptAt: number, { widthPx, heightPx, facts: { focal35 } }: OpenPicture): void {
    const photo: KeptPhoto = {
      keptAt,
      state: 'onWheels',
      side: 'right',
      widthPx,
      heightPx,
      ...focalOf(focal35, { widthPx, heightPx }),
      bulgeSd: USUAL_BULGE_SD,
      clicks: [],
      rims: [],
    };
    this.choose('frontWheel');
    this.#tape.keepPhotos([keptPhotoJson(photo), ...this.#tape.photos.slice(1)], 'Photo opened');
  }

  /** Looks for the picture of the photo that is kept with the bike. */
  async find(keeping: Keeping): Promise<void> {
    const { kept } = this;
    const { bikeId, store } = keeping;
    if (kept === null || this.bitmap !== null || bikeId === null || store === null) return;
    const pictures = keeping.noted(await store.pictures(bikeId)) ?? [];
    const picture = pictures.find(({ keptAt }) => keptAt === kept.keptAt);
    const opened = picture === undefined ? null : await openPicture(picture.blob);
    if (this.kept?.keptAt !== kept.keptAt || this.bitmap !== null) return;
    if (opened?.ok === true) {
      this.#opened?.bitmap.close();
      this.#opened = { ...opened.value, keptAt: kept.keptAt };
    }
    this.isElsewhere = opened?.ok !== true;
  }

  remove(): void {
    this.#forget();
    this.#tape.keepPhotos(this.#tape.photos.slice(1), 'Photo removed');
  }

  change(changes: Partial<KeptPhoto>, label: string): void {
    const { kept } = this;
    if (kept === null) return;
    this.#tape.keepPhotos([keptPhotoJson({ ...kept, ...changes }), ...this.#tape.photos.slice(1)], label);
  }

  /** A click on the upright picture, before mirroring. */
  click({ x, y }: Pixel): void {
    const { kept, chosen } = this;
    if (kept === null) return;
    const at = {
      x: rounded(Math.min(kept.widthPx, Math.max(0, x))),
      y: rounded(Math.min(kept.heightPx, Math.max(0, y))),
    };
    if (isWheel(chosen)) {
      this.near = [...this.near, at];
      this.#lookForEdge();
      return;
    }
    if (isSprocket(chosen)) {
      this.#clickPin(kept, chosen, at);
      return;
    }
    const before = kept.clicks.filter(({ part }) => part === chosen);
    const others = kept.clicks.filter(({ part }) => part !== chosen);
    const { value, sd } = this.depthOf(chosen);
    const click = { part: chosen, xPx: at.x, yPx: at.y, sdPx: USUAL_CLICK_SD_PX, depth: value, depthSd: sd };
    const { label } = MEASURE_PARTS[chosen];
    this.change({ clicks: [...others, ...before.slice(1 - MOST_CLICKS), click] }, `Photo: ${label}`);
  }

  #clickPin(kept: KeptPhoto, wheel: SprocketKey, { x, y }: Pixel): void {
    const { setup, bike } = this.#bench.session.document;
    const before = kept.rims.filter((pin) => pin.wheel === wheel);
    const others = kept.rims.filter((pin) => pin.wheel !== wheel);
    const { value: depth, sd: depthSd } = this.depthOf(wheel);
    const teeth = wheel === 'frontSprocket' ? setup.frontTeeth : setup.rearTeeth;
    const pin = {
      ...{ wheel, xPx: x, yPx: y, sdPx: USUAL_CLICK_SD_PX, depth, depthSd },
      radius: before.at(0)?.radius ?? pitchRadius(teeth, bike.drive.chainPitch),
      radiusSd: SPROCKET_RADIUS_SD,
    };
    this.change(
      { rims: [...others, ...before.slice(1 - MOST_PINS), pin] },
      `Photo: ${MEASURE_PARTS[wheel].label}`,
    );
  }

  /** Takes back the last click on what is chosen, or the whole edge of a rim. */
  takeBack(): void {
    const { kept, chosen } = this;
    if (kept === null) return;
    const { label } = MEASURE_PARTS[chosen];
    if (isWheel(chosen)) {
      if (this.near.length > 0) {
        this.near = this.near.slice(0, -1);
        this.#lookForEdge();
      } else
        this.change(
          { rims: kept.rims.filter(({ wheel }) => wheel !== chosen) },
          `Photo: ${label} taken back`,
        );
      return;
    }
    const last = kept.clicks.findLast(({ part }) => part === chosen);
    const pin = kept.rims.findLast(({ wheel }) => wheel === chosen);
    this.change(
      {
        clicks: kept.clicks.filter((click) => click !== last),
        rims: kept.rims.filter((point) => point !== pin),
      },
      `Photo: ${label} taken back`,
    );
  }

  /** Forgets the clicks near a rim that were not taken. */
  drop(): void {
    this.near = [];
    this.edge = null;
  }

  #lookForEdge(): void {
    const { bitmap, kept } = this;
    // In pixels of the copy that is held.
    const part = bitmap === null || kept === null ? 1 : bitmap.width / kept.widthPx;
    const near = this.near.map((at) => scaled(at, part));
    const window = near.length < EDGE_CLICKS ? null : rimWindow(near);
    const grey = window === null || bitmap === null ? null : greyWindow(bitmap, window);
    const found =
      near.length < EDGE_CLICKS
        ? null
        : findRimEdge(grey ?? { leftPx: 0, topPx: 0, widthPx: 0, heightPx: 0, light: [] }, near);
    this.edge =
      found?.ok === true
        ? { ...found, points: found.points.map((at) => scaled(at, 1 / part)), sdPx: found.sdPx / part }
        : found;
  }

  /** Takes the edge that was found. */
  acceptEdge(): void {
    const { kept, chosen, edge } = this;
    if (kept === null || edge?.ok !== true || !isWheel(chosen)) return;
    const [depth, radius] = [this.rimDepth(chosen), this.rimRadius(chosen)];
    const points = edge.points.map(({ x, y }) => ({
      wheel: chosen,
      xPx: rounded(x),
      yPx: rounded(y),
      sdPx: edge.sdPx,
      depth: depth.value,
      depthSd: depth.sd,
      radius: radius.value,
      radiusSd: radius.sd,
    }));
    const others = kept.rims.filter(({ wheel }) => wheel !== chosen);
    this.change({ rims: [...others, ...points] }, `Photo: ${MEASURE_PARTS[chosen].label}`);
    this.drop();
    this.chosen = chosen === 'frontWheel' && this.count('rearWheel') === 0 ? 'rearWheel' : chosen;
  }

  /** How far the chosen part stands out toward the camera, as stated with its clicks or as usual. */
  depthOf(part: MeasurePartKey): Usual {
    const click =
      this.kept?.clicks.find((each) => each.part === part) ??
      this.kept?.rims.find(({ wheel }) => wheel === part);
    return click === undefined ? usualDepth(part) : { value: click.depth, sd: click.depthSd };
  }

  setDepth(part: MeasurePartKey, { value: depth, sd: depthSd }: Usual): void {
    const clicks = (this.kept?.clicks ?? []).map((click) =>
      click.part === part ? { ...click, depth, depthSd } : click,
    );
    const rims = (this.kept?.rims ?? []).map((pin) =>
      pin.wheel === part ? { ...pin, depth, depthSd } : pin,
    );
    this.change({ clicks, rims }, `Photo: depth of ${MEASURE_PARTS[part].label}`);
  }

  #tyre(wheel: Wheel) {
    const { setup } = this.#bench.session.document;
    return wheel === 'frontWheel' ? setup.frontTyre : setup.rearTyre;
  }

  rimDepth(wheel: Wheel): Usual {
    return usualRimDepth(this.#tyre(wheel), this.rimSide);
  }

  /** Radius of the edge that is clicked, as stated with its points or as the tyre's size has it. */
  rimRadius(wheel: Wheel): Usual {
    const point = this.kept?.rims.find((each) => each.wheel === wheel);
    return point === undefined
      ? usualRimRadius(this.#tyre(wheel))
      : { value: point.radius, sd: point.radiusSd };
  }

  setRimRadius(wheel: Wheel, { value: radius, sd: radiusSd }: Usual): void {
    const rims = (this.kept?.rims ?? []).map((point) =>
      point.wheel === wheel ? { ...point, radius, radiusSd } : point,
    );
    this.change({ rims }, `Photo: rim of ${MEASURE_PARTS[wheel].label}`);
  }

  /** Which edge of the rims was clicked. */
  setRimSide(side: RimSide): void {
    this.rimSide = side;
    const rims = (this.kept?.rims ?? []).map((point) => {
      if (!isWheel(point.wheel)) return point;
      const { value: depth, sd: depthSd } = this.rimDepth(point.wheel);
      return { ...point, depth, depthSd };
    });
    if (rims.length > 0) this.change({ rims }, 'Photo: another edge of the rims');
  }

  /** Focal length on 35 mm film, mm, with its standard deviation. */
  readonly focal35: Usual | null = $derived.by(() => {
    if (this.kept === null) return null;
    const { focalPx, focalSd } = this.kept;
    const per = focalOf(1, this.kept).focalPx;
    return { value: focalPx / per, sd: focalSd / per };
  });

  setFocal35({ value, sd }: Usual): void {
    if (this.kept === null) return;
    const per = focalOf(1, this.kept).focalPx;
    this.change({ focalPx: value * per, focalSd: sd * per }, 'Photo: focal length');
  }
}

/** A hundredth of a pixel is finer than any hand. */
function rounded(px: number): number {
  return Math.round(px * 100) / 100;
}

function scaled({ x, y }: Pixel, part: number): Pixel {
  return { x: x * part, y: y * part };
}

function sameSize(kept: KeptPhoto, { widthPx, heightPx }: OpenPicture): boolean {
  return kept.widthPx === widthPx && kept.heightPx === heightPx;
}
