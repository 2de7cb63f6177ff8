/** What the page may ask for, as its own head and the server say it. */

/**
 * Only the page's own files are asked for; styles may stand on elements, scripts may not. Pictures may be a person's own.
 * A header adds that no other page may frame this one, which a page cannot say of itself.
 */
export const CONTENT_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');
