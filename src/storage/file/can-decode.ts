/** Whether this browser can show a file as a picture. */

/** Only decoding it tells: a file's name and type may say anything. */
export async function canDecode(file: Blob): Promise<boolean> {
  try {
    const picture = await createImageBitmap(file);
    picture.close();
    return true;
  } catch {
    // A browser rejects whatever it cannot decode.
    return false;
  }
}
