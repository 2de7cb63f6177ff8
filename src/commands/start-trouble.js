/** Why the page could not be built or served, in one sentence each. */

const NO_RIGHT = ['EACCES', 'EPERM', 'EROFS'];

/**
 * @param {unknown} error what the server threw
 * @param {number} port
 * @returns {string}
 */
export function serveTrouble(error, port) {
  const { code, message } = /** @type {NodeJS.ErrnoException} */ (error);
  if (code === 'EADDRINUSE')
    return `Port ${port} is busy; free it or name another, as in: npm start -- --port 4790`;
  if (NO_RIGHT.includes(String(code)))
    return `Port ${port} may not be opened by this user; name one above 1023, as in: npm start -- --port 4790`;
  return `The page cannot be served on port ${port}: ${message}`;
}

/**
 * @param {unknown} error what the build threw
 * @param {string} folder where the project lies
 * @returns {string}
 */
export function buildTrouble(error, folder) {
  const { code, message } = /** @type {NodeJS.ErrnoException} */ (error);
  if (NO_RIGHT.includes(String(code)))
    return `The page cannot be built: this user may not write in ${folder}`;
  if (code === 'ENOSPC') return `The page cannot be built: no room is left on the disk that holds ${folder}`;
  return `The page cannot be built: ${message}`;
}
