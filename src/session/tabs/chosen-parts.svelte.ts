/** Which part of a tab was looked at last, so that a person who comes back to the tab finds it there. */
export class ChosenParts {
  #chosen = $state.raw<Readonly<Record<string, string>>>({});

  /** The part chosen last in a tab out of those that it has; `first` while none was chosen. */
  of<Part extends string>(tab: string, first: Part, parts: readonly { readonly key: Part }[]): Part {
    return parts.find(({ key }) => key === this.#chosen[tab])?.key ?? first;
  }

  choose(tab: string, part: string): void {
    this.#chosen = { ...this.#chosen, [tab]: part };
  }
}
