/** The cautions that go with every change and every print, in the project's words. */

/** The shortest form, always in sight: it opens the rest. */
export const CAUTION_IN_SHORT = 'A model, not a test ride. One change at a time; ride gently first.';

/** What opens the rest where the shortest form stands on the page already. */
export const CAUTION_FOLDED = 'What to check after each change';

export const CAUTION_REASON =
  'Changed geometry alters how a motorcycle steers and stops, and can make it unsafe.';

export const CAUTION_CHECKS: readonly string[] = [
  'Check the clearance of tyre, fork, brake lines, chain or belt and bodywork through full travel and from lock to lock.',
  'Keep the fork tubes’ minimum engagement in both clamps.',
  'Follow the maker’s service manual and its torque figures.',
  'Road law and race rules apply to what you change.',
  'Support frame and wheels so that nothing tips or drops. Unload springs first; engine off before a hand goes near the chain.',
  'Leave work that affects steering, brakes or suspension to a qualified technician.',
  'Ask whether the bike has to be inspected or approved again after such a change where you live.',
];

/** Written under every saved picture. */
export const CAUTION_ON_PICTURES =
  'A model, not a test ride. Check all clearances, follow the maker’s manual, change one thing at a time and ride gently first.';
