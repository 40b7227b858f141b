/**
 * The service worker of the page as static files: keeps them where the page is opened, so that it works from then on
 * without a network. A page that was built anew has files of another name for what is kept, and takes over when it comes.
 */
declare const KEPT: { name: string; files: string[] };

/** What of a service worker's scope is used; its types cannot stand beside those of a page. */
interface Scope {
  addEventListener<E extends Event>(type: "install" | "activate" | "fetch", react: (event: E) => void): void;
  skipWaiting(): Promise<void>;
  readonly clients: { claim(): Promise<void> };
  readonly registration: { readonly scope: string };
}

interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface Asked extends Event {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

const scope = globalThis as unknown as Scope;

scope.addEventListener<Lasting>("install", (event) => event.waitUntil(keepAll()));
scope.addEventListener<Lasting>("activate", (event) => event.waitUntil(takeOver()));
scope.addEventListener<Asked>("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(scope.registration.scope)) event.respondWith(answer(request));
});

async function keepAll(): Promise<void> {
  const kept = await caches.open(KEPT.name);
  await kept.addAll(KEPT.files);
  await scope.skipWaiting();
}

async function takeOver(): Promise<void> {
  const ours = KEPT.name.replace(/ .*/, " ");
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(ours) && name !== KEPT.name).map((name) => caches.delete(name)),
  );
  await scope.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const kept = await caches.open(KEPT.name);
  const asked = request.url === scope.registration.scope ? "index.html" : request;
  const found = await kept.match(asked, { ignoreSearch: true });
  if (found) return found;
  const fetched = await fetch(request);
  if (fetched.ok) await kept.put(request, fetched.clone());
  return fetched;
}
