/** Giving data to the browser's downloads. */

/** Browsers have read a download's data this long after the click, ms. */
const KEEP_DATA_MS = 30_000;

/** Offers `data` as a file of the name given. */
export function download(name: string, data: Blob, page: Document = document): void {
  const address = URL.createObjectURL(data);
  const link = page.createElement('a');
  link.href = address;
  link.download = name;
  link.hidden = true;
  page.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), KEEP_DATA_MS);
}
