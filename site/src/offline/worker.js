/*
 * The worker that keeps the site for use without a network. The build writes two constants in front of this file:
 * `kept`, the list of { url, revision } of every file, and `build`, the mark of this build.
 *
 * What answers on the network is always shown as it is, so that another program on the same address is never hidden.
 * Only files whose name carries a hash of their content are taken from the kept copy first.
 */
/* global kept, build */
const cacheName = 'strandwise'
const listName = 'strandwise-list'
const scope = new URL(self.registration.scope)

const addressOf = (url) => new URL(url, scope).href
/** A file of the page's own, named after its content: it never changes. */
const isHashed = (url) => url.pathname.startsWith(`${scope.pathname}_astro/`)
/** On the machine itself whatever is slow is still an answer; over a radio link, seconds of silence are none. */
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

/** Pages of the build before this one may still be open: their hashed parts stay until the next build. */
async function forgetOld() {
  const cache = await caches.open(cacheName)
  const before = await revisionsBefore()
  const now = new Set([...kept.map(({ url }) => addressOf(url)), ...Object.keys(before).map(addressOf)])
  for (const request of await cache.keys()) if (!now.has(request.url)) await cache.delete(request)
  const list = Object.fromEntries(kept.map(({ url, revision }) => [url, revision ?? 'hashed']))
  await (await caches.open(listName)).put(addressOf('list'), new Response(JSON.stringify(list)))
  // Copies made by workers of earlier releases.
  for (const name of await caches.keys()) if (name.startsWith('workbox-')) await caches.delete(name)
  await self.clients.claim()
  for (const client of await self.clients.matchAll({ type: 'window' })) client.postMessage({ build })
}

/** The kept copy of an address: a page is the same whatever follows the question mark, and a folder is its index. */
async function keptCopy(url) {
  const cache = await caches.open(cacheName)
  const path = url.origin + url.pathname
  return (await cache.match(path)) ?? (await cache.match(path.endsWith('/') ? `${path}index.html` : `${path}/index.html`))
}

/** The network's answer, or an error where none comes; the kept copy is not waited for in vain. */
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
