/** How large a picture is saved: as on the screen, or so many pixels wide. */

/** Pixels of a picture to each px of the screen, where no width is chosen. */
const SCREEN_RATIO = 2;

export type PictureWidth = 'screen' | '1280' | '1920' | '3840';

export const PICTURE_WIDTHS: readonly { readonly key: PictureWidth; readonly label: string }[] = [
  { key: 'screen', label: 'Twice the screen' },
  { key: '1280', label: '1280 pixels wide' },
  { key: '1920', label: '1920 pixels wide' },
  { key: '3840', label: '3840 pixels wide' },
];

export class Pictures {
  width = $state<PictureWidth>('screen');

  /** Pixels to each px of a picture that is `widthPx` wide. */
  ratio(widthPx: number): number {
    return this.width === 'screen' ? SCREEN_RATIO : Number(this.width) / widthPx;
  }
}
