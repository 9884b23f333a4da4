import { describe, expect, test } from 'vitest'
import { isMet, missedBy, type Reference } from './compare.ts'

const modules = import.meta.glob<{ readonly reference?: Reference | readonly Reference[] }>(['./*.ts', '!./*.test.ts', '!./compare.ts'], { eager: true })
const all = Object.entries(modules).flatMap(([file, module]) => [module.reference ?? []].flat().map((reference) => ({ file, reference })))

for (const { file, reference } of all) {
  describe(`${reference.source}${reference.edition ? `, ${reference.edition}` : ''}, ${reference.clause} [${file}]`, () => {
    test.each(reference.cases.map((item) => [`${item.title}: ${item.printed} ${item.unit}`, item] as const))('%s', (_title, item) => {
      const got = item.got()
      expect(isMet(item, got), missedBy(reference, item, got)).toBe(true)
    })
  })
}

test('every reference names its source, and every case of one source has its own title', () => {
  for (const { file, reference } of all) {
    expect(reference.source.length * reference.clause.length, file).toBeGreaterThan(0)
    expect(new Set(reference.cases.map((item) => item.title)).size, `${file}: two cases share a title`).toBe(reference.cases.length)
  }
})
