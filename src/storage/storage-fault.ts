/** Why the browser did not keep something, as a kind for programs and a sentence for people. */

export type StorageFaultKind = 'missing' | 'blocked' | 'newer' | 'full' | 'silent' | 'failed';

export interface StorageFault {
  readonly kind: StorageFaultKind;
  readonly sentence: string;
}

const WHY: Readonly<Record<StorageFaultKind, string>> = {
  missing: 'This browser has no storage for pages',
  blocked: 'The browser does not let this page store anything',
  newer:
    'A newer Sidestance has taken over the browser’s storage, so reload this page once your work is saved',
  full: 'The browser’s storage is full',
  silent: 'The browser’s storage does not answer',
  failed: 'The browser’s storage failed',
};

export function storageFault(kind: StorageFaultKind, detail = ''): StorageFault {
  const why = detail === '' ? WHY[kind] : `${WHY[kind]} (${detail})`;
  return {
    kind,
    sentence: `${why}. Changes last only while this page is open; save the bike to a file to keep them.`,
  };
}

/** What a browser throws, by the names of the Indexed Database and Web IDL standards. */
const KINDS: Readonly<Record<string, StorageFaultKind>> = {
  QuotaExceededError: 'full',
  SecurityError: 'blocked',
  NotAllowedError: 'blocked',
  VersionError: 'newer',
};

/** The fault behind anything thrown by the browser's storage. */
export function faultOf(error: unknown): StorageFault {
  if (!(error instanceof Error)) return storageFault('failed', String(error));
  if (Object.hasOwn(KINDS, error.name)) return storageFault(KINDS[error.name]);
  return storageFault('failed', error.message === '' ? error.name : error.message);
}
