import { describe, expect, test } from 'vitest'
import { lacks } from './complete.ts'
import { entries } from './entries.ts'
import { packages, roomsOnDisk } from './extract.ts'

const all = entries()

describe.each(packages)('docstrings of %s', (name) => {
  test.each(roomsOnDisk(name))('%s: every export says what it is, its equation, domain, errors, example and source', (room) => {
    const found = all
      .filter((entry) => entry.package === name && entry.room === room)
      .flatMap((entry) => lacks(entry).map((lack) => `${entry.place} ${entry.name}: ${lack}`))
    expect(found.length, found.join('\n')).toBe(0)
  })
})
