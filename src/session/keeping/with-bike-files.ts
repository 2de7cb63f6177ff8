/** Files of several bikes and tables of sheets: what opens and saves them is fetched only when they are asked for. */
import { errorMessage, type Message } from '../../words/kept/keeping-message.ts';

type BikeFiles = typeof import('./bike-files.ts');

/** What `use` says, or that there is nothing to use. */
export async function withBikeFiles<Said extends Message>(
  use: (files: BikeFiles) => Said | Promise<Said>,
): Promise<Said | Message> {
  const files = await import('./bike-files.ts').catch(() => null);
  if (files !== null) return await use(files);
  return errorMessage(
    'The part of the page that opens and saves several bikes could not be fetched. Connect again and try once more.',
  );
}
