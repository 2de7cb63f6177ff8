/** What keys and leaving do in a field that is being typed in. */

/** Enter takes what was typed, Escape gives it up where there is something to give up; neither key goes any further then. */
export function typingKey(event: KeyboardEvent, settle: () => void, giveUp: (() => void) | null): void {
  if (event.key === 'Enter') settle();
  else if (event.key === 'Escape' && giveUp !== null) {
    giveUp();
    event.preventDefault();
  } else return;
  event.stopPropagation();
}

/** Takes what was typed when the focus leaves. A field that is taken off the page loses the focus too; what was half typed there is dropped. */
export function afterLeaving(input: HTMLInputElement, settle: () => void): void {
  queueMicrotask(() => {
    if (input.isConnected) settle();
  });
}
