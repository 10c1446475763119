// Keeps the whole build for offline use. The build fills in the next line: its version, its entry script, all its files.
const BUILD = { version: 'unbuilt', entry: '', files: ['./'] }
const PREFIX = `ridewright ${registration.scope} `
const CACHE = PREFIX + BUILD.version
const PATIENCE_MS = 3000

// All or nothing, and a page of another build than these files is refused: what is kept is never a mixture.
const install = async () => {
  const cache = await caches.open(CACHE)
  await cache.addAll(BUILD.files.map((file) => new Request(file, { cache: 'no-cache' })))
  const page = await (await cache.match('./')).text()
  if (page.includes(BUILD.entry)) return
  await caches.delete(CACHE)
  throw new Error('The page and its files are of two builds; trying again at the next visit.')
}

// Runs once no open page is left on the former build, so none loses its files.
const activate = async () => {
  for (const name of await caches.keys()) if (name.startsWith(PREFIX) && name !== CACHE) await caches.delete(name)
  await clients.claim()
}

const kept = async (request) => (await caches.open(CACHE)).match(request.mode === 'navigate' ? './' : request, { ignoreSearch: true })
const wait = () => new Promise((done) => setTimeout(done, PATIENCE_MS))

// A hashed file never changes, so any build's copy will do. All else is asked for first, and taken from what is kept
// when the network fails, is slow, or answers with an error.
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
