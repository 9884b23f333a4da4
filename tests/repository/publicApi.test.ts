import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { sourceProgram } from '../docs/extract.ts'
import { publicApi } from './publicApi.ts'
import { root } from './tree.ts'

const file = `${root}tests/public-api.md`

describe('the public API', () => {
  const now = publicApi(sourceProgram())

  test('is the one that was reviewed', () => {
    // Written on request only: a snapshot that updates itself checks nothing.
    if (process.env.STRANDWISE_UPDATE_API === '1') writeFileSync(file, now)
    const reviewed = existsSync(file) ? readFileSync(file, 'utf8') : ''
    expect(now, 'a name or a signature changed: if that is meant, run "npm test -- --update-api" and review the difference').toBe(reviewed)
  })

  test('names functions with their parameters, classes with their fields, types in full', () => {
    expect(now).toMatch(/^function awgToDiameterMm\(gauge: number\): number$/m)
    expect(now).toMatch(/^class DomainError \{.*parameter: string; .*\}$/m)
    expect(now).toMatch(/^type MetalName = /m)
    expect(now).toMatch(/^interface Provenance \{ readonly status: ProvenanceStatus; /m)
    expect(now).toMatch(/^const metals: /m)
  })
})
