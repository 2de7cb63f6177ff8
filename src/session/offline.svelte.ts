/** Whether the page opens without a network on this device, and a newer build that waits to be taken. */

/** The worker's file, beside the page. */
const WORKER = './offline-worker.js';

export class Offline {
  /** Whether the whole page lies on this device. */
  ready = $state(false);
  /** A newer build that lies ready; taken only when asked for. */
  newer = $state.raw<ServiceWorker | null>(null);
  /** Whether another tab has taken a newer build: what this one has not fetched yet is gone. */
  replaced = $state(false);
  #takes = false;

  /** Puts the page down on the device, where the browser can: from https or from this machine. */
  async begin(): Promise<void> {
    if (!('serviceWorker' in navigator)) return;
    // Held on to, because a page that is left while this waits no longer has it.
    const { serviceWorker } = navigator;
    let registration: ServiceWorkerRegistration | undefined;
    try {
      await serviceWorker.register(WORKER);
      registration = await serviceWorker.getRegistration();
    } catch {
      // Forbidden, full, or cut off: the page goes on as before, and the next visit tries again.
      return;
    }
    // A browser may take it back at once, as some do with storage switched off.
    if (registration === undefined) return;
    this.#watch(registration);
    // The first worker takes charge of the page that installed it; a later one does only because somebody took the newer build.
    let isFirst = serviceWorker.controller === null;
    serviceWorker.addEventListener('controllerchange', () => {
      if (this.#takes) this.reload();
      else if (!isFirst) this.replaced = true;
      isFirst = false;
    });
  }

  #watch(registration: ServiceWorkerRegistration): void {
    this.#look(registration);
    registration.addEventListener('updatefound', () => this.#follow(registration));
    this.#follow(registration);
  }

  /** Changes to the newer build and loads the page anew. */
  take(): void {
    if (this.newer === null) return;
    this.#takes = true;
    // Where another tab took it meanwhile, it answers no more.
    if (this.newer.state === 'installed') this.newer.postMessage('take');
    else this.reload();
  }

  reload(): void {
    location.reload();
  }

  #follow(registration: ServiceWorkerRegistration): void {
    registration.installing?.addEventListener('statechange', () => this.#look(registration));
  }

  #look({ active, waiting }: ServiceWorkerRegistration): void {
    this.ready = active !== null;
    this.newer = active === null ? null : waiting;
  }
}
