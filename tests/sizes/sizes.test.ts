import { describe, expect, test } from 'vitest'
import { bundled } from './bundle.ts'
import { ceilings } from './ceilings.ts'

describe('what a user ships', () => {
  test.each(ceilings)('$what: at most $atMost bytes', async ({ code, leftOut, atMost, why, without }) => {
    const { gzipBytes, code: text } = await bundled(code, leftOut)
    expect(gzipBytes, `the ceiling is ${atMost} bytes (${why}): find what came along, or raise it with a reason`).toBeLessThanOrEqual(atMost)
    // A ceiling far above the size guards nothing.
    expect(gzipBytes, `lower the ceiling of ${atMost} bytes`).toBeGreaterThan(atMost / 2)
    if (without !== undefined) expect(text).not.toMatch(without)
  })

  test('core brings no schema, no mathematics parser and no word of the rules that nobody asked for', async () => {
    const { modules } = await bundled("export * from '@strandwise/core'")
    expect(modules.length).toBeGreaterThan(50)
    expect(modules.filter((path) => !path.startsWith('packages/core/src/'))).toEqual([])
  })

  test('one function brings no room that it does not need', async () => {
    const { modules } = await bundled("export { awgToAreaMm2 } from '@strandwise/core'")
    expect(modules.every((path) => /^packages\/core\/src\/(errors|conductor)\//.test(path))).toBe(true)
  })

  test('a bundle that is too large, and one with a stranger in it, are seen', async () => {
    const whole = await bundled("export * from '@strandwise/core/tables'")
    const single = await bundled("export { awgToAreaMm2 } from '@strandwise/core'")
    expect(whole.gzipBytes).toBeGreaterThan(4 * single.gzipBytes)
    const stranger = await bundled("import { parse } from 'csv-parse/sync'; export { parse }")
    expect(stranger.modules.some((path) => !path.startsWith('packages/'))).toBe(true)
  })
})
