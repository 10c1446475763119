// Keeps the whole build for offline use. The build fills in the two constants below.
const VERSION = 'unbuilt'
const FILES = ['./']
const PREFIX = `ridewright ${registration.scope} `
const CACHE = PREFIX + VERSION
const PATIENCE_MS = 3000

// All or nothing. A page that belongs to another build than these files is refused, so a cache is never a mixture.
const install = async () => {
  const cache = await caches.open(CACHE)
  await cache.addAll(FILES.map((file) => new Request(file, { cache: 'no-cache' })))
  const page = await (await cache.match('./')).text()
  if (FILES.some((file) => /^assets\/index-.*\.js$/.test(file) && !page.includes(file))) throw await caches.delete(CACHE)
}

// Runs once no open page is left on the former build, so none loses its files.
const activate = async () => {
  for (const name of await caches.keys()) if (name.startsWith(PREFIX) && name !== CACHE) await caches.delete(name)
  await clients.claim()
}

const kept = async (request) => (await caches.open(CACHE)).match(request.mode === 'navigate' ? './' : request, { ignoreSearch: true })
const wait = () => new Promise((done) => setTimeout(done, PATIENCE_MS))

// A hashed file never changes: any cache's copy will do. All else is asked for first, and taken from the cache when
// the network fails, fails to answer, or answers with an error.
const answer = async (request) => {
  if (request.url.startsWith(`${registration.scope}assets/`)) return (await caches.match(request)) ?? fetch(request)
  const fresh = fetch(request).catch(() => undefined)
  const first = await Promise.race([fresh, wait()])
  return first?.ok ? first : ((await kept(request)) ?? (await fresh) ?? Response.error())
}

addEventListener('install', (event) => event.waitUntil(install()))
addEventListener('activate', (event) => event.waitUntil(activate()))
addEventListener('fetch', (event) => {
  const { method, url } = event.request
  if (method === 'GET' && url.startsWith(registration.scope)) event.respondWith(answer(event.request))
})
