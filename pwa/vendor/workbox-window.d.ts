/** What app.js uses of workbox-window; the package's own types are not vendored. */
export class Workbox {
  constructor(path: string);
  addEventListener(name: "waiting" | "controlling", listener: () => void): void;
  register(): Promise<ServiceWorkerRegistration | undefined>;
  messageSkipWaiting(): void;
}
