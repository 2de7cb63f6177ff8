/** The cautions that go with every change and every print, in the project's words. */

/** The shortest form, always in sight: it opens the rest. */
export const CAUTION_IN_SHORT = 'A model, not a test ride. One change at a time; ride gently first.';

export const CAUTION_REASON =
  'Changed geometry alters how a motorcycle steers and stops, and can make it unsafe.';

export const CAUTION_CHECKS: readonly string[] = [
  'Check the clearance of tyre, fork, brake lines, chain or belt and bodywork through full travel and from lock to lock.',
  'Keep the fork tubes’ minimum engagement in both clamps.',
  'Follow the maker’s service manual and its torque figures.',
  'Road law and race rules apply to what you change.',
  'Leave work that affects steering, brakes or suspension to a qualified technician.',
  'Ask whether the bike has to be inspected or approved again after such a change where you live.',
];

/** Written under every saved picture. */
export const CAUTION_ON_PICTURES =
  'A model, not a test ride. Check all clearances, follow the maker’s manual, change one thing at a time and ride gently first.';

/** In Edit, where a bike is measured with its springs unhooked or a wheel raised. */
export const CAUTION_EDIT =
  'A spring under load can throw its parts: leave unhooking it to who has the tool and the training. A bike with a wheel off the ground can fall: use a stand that cannot slip and a second person.';

/** Beside the chain. */
export const CAUTION_CHAIN =
  'Set the slack as the maker’s manual measures it: on the stand it names, at the place and with the load it names. What is shown here comes from geometry alone. Engine off and keys out before a hand goes near the sprockets.';

export const CAUTION_HALF_LINK =
  'A half link is weaker than the rest of the chain, and many makers forbid it: ask the makers of chain and bike first.';

/** Beside the sprockets. */
export const CAUTION_SPROCKETS =
  'Check the room for the sprockets and the tyre, and that pitch and strength fit, before you fit a pair. Speedometer and road papers may need a change with the gearing.';

/** Beside the weigh-in, where a bike is lifted off one wheel. */
export const CAUTION_WEIGHING =
  'A bike with an axle raised can fall. Have a second person hold it on firm, level ground, on a stand that cannot slip, the other wheel chocked.';
