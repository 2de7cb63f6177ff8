/** The drawing as plain data: what lies where on the ground frame, in which role, in which layer. */
import type { Point } from '../../core/plane/point.ts';

/**
 * One step of an outline, ground frame: mm, x forward, y up, angles in radians counter-clockwise.
 * An arc runs from angle `from` to angle `to`; counter-clockwise when `to` is the greater.
 */
export type PathStep =
  | { readonly op: 'move'; readonly x: number; readonly y: number }
  | { readonly op: 'line'; readonly x: number; readonly y: number }
  | {
      readonly op: 'curve';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | {
      readonly op: 'arc';
      readonly cx: number;
      readonly cy: number;
      readonly radius: number;
      readonly from: number;
      readonly to: number;
    }
  | { readonly op: 'close' };

/** What a shape stands for; the theme gives each role its colour, weight and dash. */
export type Role =
  | 'ground'
  | 'tyre'
  | 'rim'
  | 'spoke'
  | 'disc'
  | 'frame'
  | 'tube'
  | 'tubeEdge'
  | 'bar'
  | 'crease'
  | 'bodywork'
  | 'seat'
  | 'rider'
  | 'riderEdge'
  | 'riderHead'
  | 'engine'
  | 'fork'
  | 'forkTube'
  | 'clamp'
  | 'swingarm'
  | 'shock'
  | 'spring'
  | 'sprocket'
  | 'chain'
  | 'belt'
  | 'stay'
  | 'guide'
  | 'rubbing'
  | 'reach'
  | 'axle'
  | 'shadow'
  | 'shadowBody'
  | 'ghost'
  | 'squatZone'
  | 'neutralZone'
  | 'liftZone'
  | 'proSquatZone'
  | 'zoneEdge'
  | 'zoneHatch'
  | 'zoneName'
  | 'chainLine'
  | 'swingarmLine'
  | 'squatLine'
  | 'loadTransferLine'
  | 'engineBrakingLine'
  | 'brakeLine'
  | 'stayLine'
  | 'brakeCrossing'
  | 'steeringAxis'
  | 'trailTriangle'
  | 'trailLine'
  | 'wheelbaseLine'
  | 'heightLine'
  | 'instantCentre'
  | 'centreOfGravity'
  | 'dimension'
  | 'snapGuide'
  | 'closeUp'
  | 'grid'
  | 'axisLine'
  | 'axisName'
  | 'curveNow'
  | 'curveBaseline'
  | 'curveBeside1'
  | 'curveBeside2'
  | 'curveBeside3'
  | 'curveBeside4'
  | 'curveBeside5'
  | 'curveBeside6'
  | 'compared1'
  | 'compared2'
  | 'curveCursor'
  | 'curveMark'
  | 'curveFloor'
  | 'spread'
  | 'curveBand'
  | 'highlight';

/** An outline, filled and stroked as its role says. */
export interface PathShape {
  readonly kind: 'path';
  readonly role: Role;
  readonly steps: readonly PathStep[];
  /** Stroke width in mm of the bike instead of the role's width in px of the screen. */
  readonly widthMm?: number;
  /** An arrowhead at the end, at the beginning, or at both, of a size in px. */
  readonly arrows?: 'end' | 'both';
}

/** A small sign that keeps its size on the screen; a wedge is a triangle that stands on its point. */
export interface MarkShape {
  readonly kind: 'mark';
  readonly role: Role;
  readonly at: Point;
  readonly sign: 'dot' | 'ring' | 'cross' | 'quartered' | 'diamond' | 'square' | 'triangle' | 'wedge';
  readonly radiusPx: number;
}

/** Words at a place. Size in px of the screen; `spot` is where the words stand about the place. */
export interface LabelShape {
  readonly kind: 'label';
  readonly role: Role;
  readonly text: string;
  readonly at: Point;
  readonly spot: LabelSpot;
  /** Where the words stand, px right and down of the place, after labels were kept apart. */
  readonly shiftPx: Point;
  readonly sizePx: number;
  /** For the name of an area that may lie over the bike: the words get a backing. */
  readonly backed?: boolean;
  /** A thin line back to the place when the words had to move away from it. */
  readonly leader: boolean;
}

export type LabelSpot = 'right' | 'left' | 'above' | 'below' | 'centre';

export type Shape = PathShape | MarkShape | LabelShape;

/** Layers from back to front. */
export type LayerName =
  'zones' | 'shadow' | 'bike' | 'ghosts' | 'construction' | 'spreads' | 'labels' | 'closeUps';

export interface SceneLayer {
  readonly name: LayerName;
  /** 1 for full ink, less to dim what is not current. */
  readonly ink: number;
  readonly shapes: readonly Shape[];
}

/** One SceneLayer for each layer name, in that order. */
export type Scene = readonly SceneLayer[];
