/** Printing one part of the page alone: a copy of it stands beside the page, unseen on the screen, for as long as it may be printed. */

/** Everything else is hidden on paper by the style of this name. */
const ROOT_CLASS = 'print-root';

/** Puts a copy down beside the page, in place of an earlier one; whatever the browser prints from then on is the copy. */
export function putCopyDown(node: Element | null): void {
  takeCopyAway();
  if (node === null) return;
  const root = document.createElement('div');
  root.className = ROOT_CLASS;
  root.append(node.cloneNode(true));
  document.body.append(root);
}

/** Takes the copy away. Not before the pages are closed: a phone lays out anew while its own print dialog is open. */
export function takeCopyAway(): void {
  document.querySelector(`.${ROOT_CLASS}`)?.remove();
}
