/** Reads which port the page is to be served on. */

/** Free of any well-known service. */
const USUAL_PORT = 4780;

/**
 * `--port N` or `--port=N` wins over the environment's PORT, and that over the usual one.
 * @param {string[]} args
 * @param {string | undefined} fromEnvironment
 * @returns {number | undefined} undefined when what was given is no port
 */
export function readPort(args, fromEnvironment) {
  const at = args.indexOf('--port');
  const joined = args.find((each) => each.startsWith('--port='))?.slice('--port='.length);
  const given = at >= 0 ? (args[at + 1] ?? '') : (joined ?? (fromEnvironment || String(USUAL_PORT)));
  const port = Number(given);
  return /^\d+$/.test(given) && port >= 1 && port <= 65535 ? port : undefined;
}
