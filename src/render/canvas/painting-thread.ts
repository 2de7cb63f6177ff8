/** A canvas of the page that another thread paints, so that the page is free for the hand meanwhile. */
import type { DrawingList } from './drawing-list.ts';
import type { CanvasSize } from './paint-list.ts';
import { SHOWN, type ToPainter } from './painter-messages.ts';

export interface PaintingThread {
  /** Hands a drawing over, and its numbers with it. Of several that wait for the thread it paints the last. */
  paint(list: DrawingList, background: string, size: CanvasSize): void;
  end(): void;
}

/** Null where the browser lends no canvas to another thread. `onended`: the thread did not start or has ended; its canvas is gone. */
export function startPainting(container: HTMLElement, onended: () => void): PaintingThread | null {
  const canvas = document.createElement('canvas');
  if (typeof Worker === 'undefined' || !('transferControlToOffscreen' in canvas)) return null;
  canvas.style.cssText = 'position: absolute; top: 0; left: 0; display: none';
  container.append(canvas);
  const worker = new Worker(new URL('./painter.worker.ts', import.meta.url), { type: 'module' });
  const lent = canvas.transferControlToOffscreen();
  send({ kind: 'canvas', canvas: lent }, [lent]);

  function send(message: ToPainter, handedOver: Transferable[]): void {
    worker.postMessage(message, handedOver);
  }

  function end(): void {
    worker.terminate();
    canvas.remove();
  }

  worker.addEventListener('message', ({ data }) => {
    if (data !== SHOWN) return;
    canvas.style.display = 'block';
  });
  worker.addEventListener('error', () => {
    end();
    onended();
  });

  return {
    paint(list, background, size) {
      canvas.style.width = `${size.widthPx}px`;
      canvas.style.height = `${size.heightPx}px`;
      send({ kind: 'drawing', list, background, size }, [list.numbers.buffer]);
    },
    end,
  };
}
