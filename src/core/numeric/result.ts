/** A computation's outcome: a value, or a failure that carries its reason, which is a refusal where the reason is a string. */

export type Result<T, R> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: R };

export function succeed<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function fail<R>(reason: R): { readonly ok: false; readonly reason: R } {
  return { ok: false, reason };
}
