/** Whether this machine and this folder can run the commands at all. */

/** The oldest Node that runs them, as package.json asks. */
const OLDEST = [20, 19];

/**
 * Why the commands cannot run here, in one sentence; undefined when they can.
 * @param {string} version Node's own, such as 20.19.0
 * @param {string} folder where the project lies
 * @returns {string | undefined}
 */
export function unfitness(version, folder) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major < OLDEST[0] || (major === OLDEST[0] && minor < OLDEST[1]))
    return `Sidestance needs Node ${OLDEST.join('.')} or newer, and this is ${version}.`;
  // The tools that build the page take either sign for the end of a path.
  const sign = ['#', '?'].find((each) => folder.includes(each));
  return (
    sign && `Move the project: the path ${folder} has a “${sign}” in it, and the page cannot be built there.`
  );
}
