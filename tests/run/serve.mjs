import { createReadStream, existsSync, realpathSync, statSync } from 'node:fs'
import { createServer } from 'node:http'
import { extname, join, sep } from 'node:path'
import { pipeline } from 'node:stream'
import { createGzip } from 'node:zlib'

const types = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.md': 'text/markdown; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.avif': 'image/avif',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.pdf': 'application/pdf',
  '.zip': 'application/zip',
}

/** Types worth compressing. */
const isText = /^text\/|json|javascript|svg|xml/

/** Resolves a request path in `folder`: { file }, { redirect } to the folder's own address, or { status } if not found. */
export function resolveRequest(folder, address) {
  const cut = address.search(/[?#]/)
  const raw = cut === -1 ? address : address.slice(0, cut)
  let path
  try {
    path = decodeURIComponent(raw)
  } catch {
    return { status: 400 }
  }
  if (!path.startsWith('/') || path.includes('\0') || path.includes('\\') || path.split('/').includes('..')) return { status: 400 }
  const wanted = join(folder, path)
  if (!existsSync(wanted)) return { status: 404 }
  const real = realpathSync(wanted)
  const inside = realpathSync(folder)
  if (real !== inside && !real.startsWith(inside + sep)) return { status: 404 }
  if (!statSync(real).isDirectory()) return path.endsWith('/') ? { status: 404 } : { file: real }
  if (!path.endsWith('/')) return { redirect: `${raw.replace(/^\/+/, '/')}/${cut === -1 ? '' : address.slice(cut)}` }
  const index = join(real, 'index.html')
  return existsSync(index) ? { file: index } : { status: 404 }
}

function answer(folder, request, response) {
  const head = (status, headers) => response.writeHead(status, { 'x-content-type-options': 'nosniff', 'cache-control': 'no-cache', ...headers })
  const plain = (status, text, headers = {}) =>
    head(status, { 'content-type': types['.txt'], ...headers }).end(request.method === 'HEAD' ? undefined : `${text}\n`)
  const send = (status, file) => {
    const type = types[extname(file).toLowerCase()] ?? 'application/octet-stream'
    const packed = isText.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '')
    const size = packed ? { 'content-encoding': 'gzip' } : { 'content-length': statSync(file).size }
    head(status, { 'content-type': type, ...(isText.test(type) && { vary: 'accept-encoding' }), ...size })
    if (request.method === 'HEAD') response.end()
    else pipeline(createReadStream(file), ...(packed ? [createGzip()] : []), response, () => {})
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') return plain(405, 'only GET and HEAD', { allow: 'GET, HEAD' })
  const found = resolveRequest(folder, request.url ?? '/')
  if (found.redirect !== undefined) return plain(301, found.redirect, { location: found.redirect })
  if (found.file !== undefined) return send(200, found.file)
  const page = join(folder, '404.html')
  return found.status === 404 && existsSync(page) ? send(404, page) : plain(found.status, found.status === 404 ? 'not found' : 'bad request')
}

/** Serves a folder on loopback, on `port` or, if that is taken, a free one. */
export function serve(folder, port = 4173) {
  const server = createServer((request, response) => answer(folder, request, response))
  return new Promise((resolve, reject) => {
    server.once('error', (error) => {
      if (error.code === 'EADDRINUSE' && port !== 0) resolve(serve(folder, 0))
      else reject(error)
    })
    server.listen(port, '127.0.0.1', () => {
      const close = () =>
        new Promise((done) => {
          server.close(() => done(undefined))
          server.closeAllConnections()
        })
      resolve({ address: `http://127.0.0.1:${server.address().port}/`, close })
    })
  })
}
