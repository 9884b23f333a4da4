import { describe, expect, test } from 'vitest'
import * as tables from './index.ts'

const statuses = ['published', 'common practice', 'from memory', 'derived']

/** Every record of provenance and every status anywhere inside a table, with its path. */
function walk(value: unknown, path: string, found: { path: string; provenance?: Record<string, unknown>; status?: unknown }[]): typeof found {
  if (typeof value !== 'object' || value === null) return found
  for (const [key, inner] of Object.entries(value)) {
    const here = `${path}.${key}`
    if (/provenance$/i.test(key)) found.push({ path: here, provenance: inner as Record<string, unknown> })
    else if (/status$/i.test(key)) found.push({ path: here, status: inner })
    walk(inner, here, found)
  }
  return found
}

const named = Object.entries(tables).filter(([, value]) => typeof value === 'object')

describe('provenance of tables', () => {
  test.each(named)('%s: every record names its source and a known status', (name, table) => {
    const found = walk(table, name, [])
    expect(found.some((entry) => entry.provenance !== undefined)).toBe(true)
    for (const { path, provenance, status } of found) {
      if (provenance !== undefined) {
        expect(statuses, path).toContain(provenance.status)
        expect(String(provenance.source).length, path).toBeGreaterThan(8)
      } else expect(statuses, path).toContain(status)
    }
  })

  test('no source is an address', () => {
    expect(JSON.stringify(tables)).not.toMatch(/https?:|www\.|\.(?:com|org|net|edu|gov)\b/)
  })

  test('no number in a table is NaN or infinite', () => {
    for (const [name, table] of named) expect(JSON.parse(JSON.stringify(table)), name).toEqual(table)
  })
})
