/** Moves every bolt of a link layout by one rule; each stays on the part that carries it. */
import type { FramePoint } from '../parts/frame-point.ts';
import type { ArmPoint, LinkLayout, ShockFarEnd } from '../parts/rear-layout.ts';

/** How bolts of the frame and bolts of the swingarm move; a rocker's go with the part that the rocker turns on. */
export interface BoltRule {
  readonly onFrame: (p: FramePoint) => FramePoint;
  readonly onArm: (p: ArmPoint) => ArmPoint;
}

/** The layout with the rule applied to every bolt; posture and shock stay as they are. */
export function mapBolts(layout: LinkLayout, { onFrame, onArm }: BoltRule): LinkLayout {
  const farEnd = (end: ShockFarEnd): ShockFarEnd =>
    end.on === 'frame' ? { on: 'frame', at: onFrame(end.at) } : { on: 'arm', at: onArm(end.at) };
  switch (layout.kind) {
    case 'direct':
      return { ...layout, shockOnFrame: onFrame(layout.shockOnFrame), shockOnArm: onArm(layout.shockOnArm) };
    case 'rockerOnFrame':
      return {
        ...layout,
        rockerPivot: onFrame(layout.rockerPivot),
        rodOnRocker: onFrame(layout.rodOnRocker),
        shockOnRocker: onFrame(layout.shockOnRocker),
        rodOnArm: onArm(layout.rodOnArm),
        shockFarEnd: farEnd(layout.shockFarEnd),
      };
    case 'rockerOnArm':
      return {
        ...layout,
        rockerPivot: onArm(layout.rockerPivot),
        rodOnRocker: onArm(layout.rodOnRocker),
        shockOnRocker: onArm(layout.shockOnRocker),
        rodOnFrame: onFrame(layout.rodOnFrame),
        shockFarEnd: farEnd(layout.shockFarEnd),
      };
  }
}
