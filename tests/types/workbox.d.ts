/** What the service worker finds as globals: the vendored Workbox scripts, and the list that the server fills in. */
interface WorkerGlobalScope {
  /** The files of the shell with their hashes. */
  __WB_MANIFEST: { url: string; revision: string | null; language?: string }[];
}

type Answer = (options: { request: Request; event: ExtendableEvent }) => Promise<Response>;

declare const workbox: {
  core: {
    setCacheNameDetails(details: { prefix: string }): void;
    clientsClaim(): void;
  };
  routing: {
    registerRoute(
      route: string | object | ((about: { url: URL }) => boolean),
      answer?: (about: { request: Request }) => Promise<Response>,
      method?: "POST",
    ): void;
    NavigationRoute: new (answer: Answer, options: { denylist: RegExp[] }) => object;
  };
  precaching: {
    precacheAndRoute(files: WorkerGlobalScope["__WB_MANIFEST"]): void;
    cleanupOutdatedCaches(): void;
    createHandlerBoundToURL(url: string): Answer;
  };
};
