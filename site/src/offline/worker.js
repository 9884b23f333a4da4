/**
 * Offline worker. The build prepends two constants: `kept`, the list of { url, revision } of every file, and `build`, the mark of this build.
 *
 * The network's answer always comes first, so that another program on the same address is never hidden. Only files named by a hash of their content are taken from the cache first.
 */
/* global kept, build */
const cacheName = 'strandwise'
const listName = 'strandwise-list'
const scope = new URL(self.registration.scope)

const addressOf = (url) => new URL(url, scope).href
/** A file of the site named by its content's hash: it never changes. */
const isHashed = (url) => url.pathname.startsWith(`${scope.pathname}_astro/`)
/** Timeout of the network, after which the kept copy is shown; none on the local machine, where slow answers still come. */
const patienceMs = ['127.0.0.1', 'localhost', '[::1]'].includes(scope.hostname) ? null : 4000

async function revisionsBefore() {
  const list = await (await caches.open(listName)).match(addressOf('list'))
  return list === undefined ? {} : await list.json()
}

async function keepAll() {
  const cache = await caches.open(cacheName)
  const before = await revisionsBefore()
  const wanted = []
  for (const { url, revision } of kept) {
    const known = before[url] === (revision ?? 'hashed') && (await cache.match(addressOf(url))) !== undefined
    if (!known) wanted.push(url)
  }
  const answers = await Promise.all(wanted.map(async (url) => [url, await fetch(addressOf(url), { cache: 'reload' })]))
  for (const [url, answer] of answers) if (!answer.ok) throw new Error(`${url} answered ${answer.status}`)
  for (const [url, answer] of answers) await cache.put(addressOf(url), answer)
  await self.skipWaiting()
}

/** Hashed parts of the previous build are kept until the next one, as its pages may still be open. */
async function forgetOld() {
  const cache = await caches.open(cacheName)
  const before = await revisionsBefore()
  const now = new Set([...kept.map(({ url }) => addressOf(url)), ...Object.keys(before).map(addressOf)])
  for (const request of await cache.keys()) if (!now.has(request.url)) await cache.delete(request)
  const list = Object.fromEntries(kept.map(({ url, revision }) => [url, revision ?? 'hashed']))
  await (await caches.open(listName)).put(addressOf('list'), new Response(JSON.stringify(list)))
  // Caches of earlier releases.
  for (const name of await caches.keys()) if (name.startsWith('workbox-')) await caches.delete(name)
  await self.clients.claim()
  for (const client of await self.clients.matchAll({ type: 'window' })) client.postMessage({ build })
}

/** The kept copy of an address, without its query; a folder stands for its index. */
async function keptCopy(url) {
  const cache = await caches.open(cacheName)
  const path = url.origin + url.pathname
  return (await cache.match(path)) ?? (await cache.match(path.endsWith('/') ? `${path}index.html` : `${path}/index.html`))
}

/** The network's answer, or an error if none comes. */
function fromNetwork(request) {
  if (patienceMs === null) return fetch(request)
  const silence = new Promise((_, reject) => setTimeout(() => reject(new Error('no answer')), patienceMs))
  return Promise.race([fetch(request), silence])
}

async function answerTo(request) {
  const url = new URL(request.url)
  if (isHashed(url)) return (await keptCopy(url)) ?? fetch(request)
  try {
    return await fromNetwork(request)
  } catch (error) {
    const copy = await keptCopy(url)
    if (copy !== undefined) return copy
    const missing = request.mode === 'navigate' ? await keptCopy(new URL('404.html', scope)) : undefined
    if (missing === undefined) throw error
    return missing
  }
}

self.addEventListener('install', (event) => event.waitUntil(keepAll()))
self.addEventListener('activate', (event) => event.waitUntil(forgetOld()))
self.addEventListener('fetch', (event) => {
  const { request } = event
  const url = new URL(request.url)
  if (request.method === 'GET' && url.origin === scope.origin && url.pathname.startsWith(scope.pathname)) event.respondWith(answerTo(request))
})
