/** The cautions of single panels, which come with them after the first sight. */

/** Where a bike is measured by hand. */
export const CAUTION_TAPE =
  'Engine off, keys out and out of gear before a hand goes near chain, sprocket or wheel. Where a wheel is raised, a second person holds the bike and the wheel on the floor is chocked; keep your face clear of straps.';

/** In Edit, where a bike is measured with its springs unhooked or a wheel raised. */
export const CAUTION_LOADED_SPRING =
  'A loaded spring can injure: use a spring compressor, or leave it to a workshop.';
export const CAUTION_EDIT = `${CAUTION_LOADED_SPRING} A bike with a wheel off the ground can fall: use a stand that cannot slip and a second person.`;

/** Beside the chain. */
export const CAUTION_CHAIN =
  'Set the slack as the maker’s manual measures it: on the stand it names, at the place and with the load it names. What is shown here comes from geometry alone. Engine off, keys out and out of gear before a hand goes near it: turn the wheel by hand and keep fingers off the sprocket.';

export const CAUTION_HALF_LINK =
  'A half link is weaker, and many makers forbid it. Use one only if the chain’s maker allows it for this bike.';

/** Beside the sprockets. */
export const CAUTION_SPROCKETS =
  'Check the room for the sprockets and the tyre, and that pitch and strength fit, before you fit a pair. Engine off, keys out; nuts and lock washers by the manual; set the slack again. Speedometer and registration may need a change with the gearing.';

/** Beside the weigh-in, where a bike is lifted off one wheel. */
export const CAUTION_WEIGHING =
  'A bike with an axle raised can fall. Have a second person hold it on firm, level ground, on a stand that cannot slip, the other wheel chocked. Move fuel outdoors only, with the engine cold.';

/** Beside the travel table, which is measured with the spring out. */
export const CAUTION_TRAVEL_TABLE =
  'A loaded spring can injure. Use a spring compressor, or leave it to a workshop. Support frame and wheel; keep hands out of the links; a second person holds the bike.';

/** Where a chain or a slack moves the axle. */
export const CAUTION_AXLE =
  'Set both sides alike, tighten the axle nut to the manual’s torque, check the brake stay and its bolts, and measure the slack again.';

/** Beside the springs. */
export const CAUTION_SPRINGS =
  'Fitting a spring is a workshop job: a loaded spring can injure. Unload it first and follow the maker’s manual.';

/** Beside a shaft's housing that a torque arm holds. */
export const CAUTION_TORQUE_ARM =
  'A torque arm carries the whole drive. Use only the maker’s parts, tightened to the maker’s torque.';

/** Beside a rear caliper that a stay holds. */
export const CAUTION_STAY =
  'A stay carries the whole rear brake. Use only the maker’s parts, tightened to the maker’s torque.';

/** Beside plans. */
export const CAUTION_PLAN =
  'A plan comes from a model, not from a test ride. Where the axle moves, set the chain slack again and check the axle nut’s torque. Take one step at a time, rear first, and ride gently before the next; where a step says together, do both before you ride. Check tyre, fork, brake-line, chain and bodywork clearance through full travel and steering lock, and follow the maker’s manual and torque figures.';
