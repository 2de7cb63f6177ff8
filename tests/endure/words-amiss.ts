/** What is amiss with the words on a page as the browser lays them out: too faint, cut, beside their box, or one over another. */

/** Everything is found in the page itself, so the function brings along all that it needs. */
export interface Amiss {
  /** How many words in a row were looked at. */
  readonly words: number;
  readonly faint: readonly string[];
  readonly cut: readonly string[];
  readonly over: readonly string[];
}

/** WCAG 2.2, 1.4.3: words stand out by 4.5 to 1, large ones by 3; 1.4.11: the edges of fields by 3. */
export function wordsAmiss(): Amiss {
  const LEAST = 4.5;
  const LEAST_LARGE = 3;
  /** Rounding of a browser's layout, px. */
  const ROUNDING = 1;
  const faint = new Set<string>();
  const cut = new Set<string>();
  const over = new Set<string>();

  const rgba = (text: string): number[] => {
    const parts = (/rgba?\(([^)]+)\)/.exec(text)?.[1] ?? '0 0 0 0').split(/[ ,/]+/).map(Number);
    return [parts[0], parts[1], parts[2], parts[3] ?? 1];
  };
  const laid = ([r, g, b, a]: number[], under: number[]): number[] => [
    a * r + (1 - a) * under[0],
    a * g + (1 - a) * under[1],
    a * b + (1 - a) * under[2],
    1,
  ];
  const luminance = (colour: number[]): number => {
    const [r, g, b] = colour.map((part) => {
      const s = part / 255;
      return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (a: number[], b: number[]): number => {
    const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
    return (high + 0.05) / (low + 0.05);
  };
  const paper = rgba(getComputedStyle(document.documentElement).backgroundColor);
  const parents = (from: Element): Element[] => {
    const all: Element[] = [];
    for (let one: Element | null = from; one !== null && one !== document.body; one = one.parentElement)
      all.push(one);
    return all;
  };
  const behind = (from: Element): number[] =>
    parents(from)
      .map((one) => rgba(getComputedStyle(one).backgroundColor))
      .reverse()
      .reduce((under, colour) => laid(colour, under), paper);
  const isUnseen = (from: Element): boolean =>
    parents(from).some((one) => getComputedStyle(one).clipPath === 'inset(50%)');
  const scrolls = (one: Element): boolean => {
    const { overflowX, overflowY } = getComputedStyle(one);
    return /auto|scroll/.test(overflowX + overflowY);
  };

  const seen: { text: string; element: Element; box: DOMRect }[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  let words = 0;
  while (walker.nextNode()) {
    const node = walker.currentNode;
    const element = node.parentElement;
    const text = (node.textContent ?? '').replace(/\s+/g, ' ').trim();
    if (element === null || text === '' || ['SCRIPT', 'STYLE', 'OPTION'].includes(element.tagName)) continue;
    if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
    if (isUnseen(element)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const boxes = [...range.getClientRects()].filter(({ width, height }) => width > 0.5 && height > 0.5);
    if (boxes.length === 0) continue;
    words += 1;
    const told = text.slice(0, 40);
    const style = getComputedStyle(element);
    const sizePx = parseFloat(style.fontSize);
    const isLarge = sizePx >= 24 || (Number(style.fontWeight) >= 700 && sizePx >= 18.66);
    const isDisabled =
      element.closest(':disabled') !== null ||
      (element.closest('label')?.querySelector(':disabled') ?? null) !== null;
    const ground = behind(element);
    const drawn = rgba(element.closest('svg') === null ? style.color : style.fill);
    const opacity = parents(element).reduce((all, one) => all * Number(getComputedStyle(one).opacity), 1);
    const ratio = contrast(laid([drawn[0], drawn[1], drawn[2], drawn[3] * opacity], ground), ground);
    if (!isDisabled && ratio < (isLarge ? LEAST_LARGE : LEAST)) faint.add(`${told} (${ratio.toFixed(2)})`);

    for (const box of boxes) {
      seen.push({ text: told, element, box });
      for (const one of parents(element)) {
        if (scrolls(one)) break;
        const frame = one.getBoundingClientRect();
        const { overflowX, overflowY, borderLeftWidth, borderTopWidth, display, textOverflow } =
          getComputedStyle(one);
        // Long names of bikes end in dots by intent.
        if (textOverflow === 'ellipsis') break;
        const beside = box.left < frame.left - ROUNDING || box.right > frame.right + ROUNDING;
        const above = box.top < frame.top - 2 * ROUNDING || box.bottom > frame.bottom + 2 * ROUNDING;
        const isBoxed =
          display !== 'inline' &&
          (one.matches('button, td, th, label, summary') ||
            (parseFloat(borderLeftWidth) > 0 && parseFloat(borderTopWidth) > 0));
        const isCut =
          (overflowX !== 'visible' && beside) ||
          (overflowY !== 'visible' && above && !one.matches('.page, main')) ||
          (isBoxed && (beside || above));
        if (!isCut) continue;
        cut.add(`${told} (${one.tagName.toLowerCase()}.${one.classList[0] ?? ''})`);
        break;
      }
    }
  }

  for (const field of document.querySelectorAll<HTMLInputElement | HTMLSelectElement>(
    'input[type="text"], select',
  )) {
    if (!field.checkVisibility()) continue;
    const { paddingLeft, paddingRight, font } = getComputedStyle(field);
    const brush = document.createElement('canvas').getContext('2d');
    if (field instanceof HTMLInputElement) {
      if (field.scrollWidth > field.clientWidth + ROUNDING) cut.add(`field ${field.value}`);
    } else if (brush !== null) {
      brush.font = font;
      const chosen = field.selectedOptions[0]?.textContent?.trim() ?? '';
      const room = field.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight);
      if (brush.measureText(chosen).width > room + ROUNDING) cut.add(`list ${chosen}`);
    }
    const edge = parents(field)
      .slice(0, 4)
      .filter((one) => parseFloat(getComputedStyle(one).borderBottomWidth) > 0)
      .map((one) => {
        const under = one.parentElement === null ? paper : behind(one.parentElement);
        return contrast(laid(rgba(getComputedStyle(one).borderBottomColor), under), under);
      });
    if (!field.disabled && Math.max(0, ...edge) < LEAST_LARGE) faint.add(`edge of the field ${field.value}`);
  }

  // Only what is in the window can lie over something there; what is scrolled away is cut off by its panel.
  const shown = seen.filter(({ element, box }) => {
    const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
    const hit = document.elementFromPoint(x, y);
    if (hit === null || !(hit.contains(element) || element.contains(hit))) return false;
    return parents(element)
      .filter(scrolls)
      .every((one) => {
        const { left, top, right, bottom } = one.getBoundingClientRect();
        return x > left && x < right && y > top && y < bottom;
      });
  });
  for (const [i, a] of shown.entries())
    for (const b of shown.slice(i + 1)) {
      if (a.element === b.element) continue;
      const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      if (wide > 2 && high > 0.35 * Math.min(a.box.height, b.box.height)) over.add(`${a.text} / ${b.text}`);
    }
  return { words, faint: [...faint], cut: [...cut], over: [...over] };
}
