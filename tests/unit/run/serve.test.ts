import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { type IncomingHttpHeaders, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { resolveRequest, serve } from '../../run/serve.mjs'

let outside: string
let folder: string

beforeAll(() => {
  outside = mkdtempSync(join(tmpdir(), 'strandwise-serve-'))
  folder = join(outside, 'dist')
  mkdirSync(join(folder, 'plan'), { recursive: true })
  mkdirSync(join(folder, 'empty'))
  writeFileSync(join(folder, 'index.html'), '<p>home</p>')
  writeFileSync(join(folder, '404.html'), '<p>no such page</p>')
  writeFileSync(join(folder, 'plan', 'index.html'), '<p>plan</p>')
  writeFileSync(join(folder, 'a b.js'), 'export {}')
  writeFileSync(join(folder, 'dot.png'), 'x')
  writeFileSync(join(outside, 'secret.txt'), 'secret')
  symlinkSync(join(outside, 'secret.txt'), join(folder, 'link.txt'))
})

afterAll(() => rmSync(outside, { recursive: true }))

interface Answer {
  readonly status: number | undefined
  readonly headers: IncomingHttpHeaders
  readonly body: string
}

/** Sends the path as written; an ordinary client would normalise it. */
function ask(address: string, path: string, method = 'GET'): Promise<Answer> {
  const { hostname, port } = new URL(address)
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path, method }, (response) => {
      let body = ''
      response.on('data', (chunk) => {
        body += chunk
      })
      response.on('end', () => resolve({ status: response.statusCode, headers: response.headers, body }))
    })
    sent.on('error', reject).end()
  })
}

describe('paths', () => {
  test.each(['/../secret.txt', '/plan/../../secret.txt', '/%2e%2e/secret.txt', '/%2e%2e%2fsecret.txt', '/..\\secret.txt', '/%00', '/%', 'index.html'])(
    '%s is refused',
    (path) => {
      expect(resolveRequest(folder, path)).toEqual({ status: 400 })
    },
  )

  test.each(['/nothing', '/empty/', '/a%20b.js/', '/link.txt', '/%25'])('%s is not there', (path) => {
    expect(resolveRequest(folder, path)).toEqual({ status: 404 })
  })

  test('a folder answers with its index, under an address that ends in a slash', () => {
    expect(resolveRequest(folder, '/plan/?a=/../b')).toMatchObject({ file: expect.stringMatching(/plan.index\.html$/) })
    expect(resolveRequest(folder, '/plan?a=1')).toEqual({ redirect: '/plan/?a=1' })
    expect(resolveRequest(folder, '//plan')).toEqual({ redirect: '/plan/' })
  })
})

describe('the server', () => {
  test('types, the page for what is not there, methods', async () => {
    const { address, close } = await serve(folder, 0)
    try {
      const home = await ask(address, '/')
      expect([home.status, home.headers['content-type'], home.body]).toEqual([200, 'text/html; charset=utf-8', '<p>home</p>'])
      expect((await ask(address, '/a%20b.js')).headers['content-type']).toBe('text/javascript; charset=utf-8')
      const missing = await ask(address, '/nothing')
      expect([missing.status, missing.body]).toEqual([404, '<p>no such page</p>'])
      expect((await ask(address, '/../secret.txt')).status).toBe(400)
      const head = await ask(address, '/', 'HEAD')
      expect([head.status, head.body, head.headers['content-length']]).toEqual([200, '', '11'])
      expect((await ask(address, '/', 'POST')).status).toBe(405)
      expect((await ask(address, '/plan')).headers.location).toBe('/plan/')
    } finally {
      await close()
    }
  })

  test('text is packed for who takes it so, and only then', async () => {
    const { address, close } = await serve(folder, 0)
    try {
      const packed = await fetch(address, { headers: { 'accept-encoding': 'br, gzip' } })
      expect([packed.headers.get('content-encoding'), packed.headers.get('vary'), await packed.text()]).toEqual(['gzip', 'accept-encoding', '<p>home</p>'])
      const plain = await ask(address, '/')
      expect([plain.headers['content-encoding'], plain.headers.vary, plain.headers['content-length']]).toEqual([undefined, 'accept-encoding', '11'])
      const picture = await fetch(`${address}dot.png`, { headers: { 'accept-encoding': 'gzip' } })
      expect([picture.headers.get('content-encoding'), picture.headers.get('content-length')]).toEqual([null, '1'])
    } finally {
      await close()
    }
  })

  test('takes a free port where its own is taken, on loopback alone', async () => {
    const first = await serve(folder, 0)
    const second = await serve(folder, Number(new URL(first.address).port))
    try {
      expect(new URL(second.address).hostname).toBe('127.0.0.1')
      expect(second.address).not.toBe(first.address)
      expect((await ask(second.address, '/')).status).toBe(200)
    } finally {
      await first.close()
      await second.close()
    }
  })
})
