/** Printing one part of the page alone: a copy of it stands beside the page while the browser prints. */

/** Everything else is hidden on paper by the style of this name. */
const ROOT_CLASS = 'print-root';

/** Hands a part of the page to the browser's own print dialog. */
export function printNode(node: Element | null): void {
  if (node === null) return;
  document.querySelector(`.${ROOT_CLASS}`)?.remove();
  const root = document.createElement('div');
  root.className = ROOT_CLASS;
  root.append(node.cloneNode(true));
  document.body.append(root);
  window.addEventListener('afterprint', () => root.remove(), { once: true });
  window.print();
}
