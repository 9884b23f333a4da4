import { describe, expect, test } from 'vitest'
import { lacks } from './complete.ts'
import { entriesOf, packages, roomsOnDisk, sourceProgram } from './extract.ts'

const entries = entriesOf(sourceProgram())

describe.each(packages)('docstrings of %s', (name) => {
  test.each(roomsOnDisk(name))('%s: every export says what it is, its equation, domain, errors, example and source', (room) => {
    const found = entries
      .filter((entry) => entry.package === name && entry.room === room)
      .flatMap((entry) => lacks(entry).map((lack) => `${entry.place} ${entry.name}: ${lack}`))
    expect(found.length, found.join('\n')).toBe(0)
  })
})
