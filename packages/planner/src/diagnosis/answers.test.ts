import { expect, test } from 'vitest'
import { demoJobs } from '../demo/index.ts'
import { JobError, type JobReading, type RepairJob } from '../job/index.ts'
import { loadStates, places, readingKinds } from '../job/inner.ts'
import { diagnose } from './index.ts'
import { seeded } from './nodalCircuit.sample.ts'

const random = seeded(9)
const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T

function anyReading(): JobReading {
  const kind = pick(readingKinds)
  const dead = kind === 'resistance' || kind === 'four-wire' || kind === 'insulation'
  const value = random() < 0.1 ? 0 : dead ? 10 ** (-4 + 12 * random()) : kind === 'temperature' ? 100 * random() : 10 ** (-5 + 6.2 * random())
  const from = pick(places)
  return {
    kind,
    from,
    to: pick(places.filter((place) => place !== from)),
    load: dead ? 'unplugged' : kind === 'drop' ? 'on' : pick(loadStates),
    value,
    ...(random() < 0.3 ? { currentA: 10 ** (-3 + 4 * random()) } : {}),
    ...(random() < 0.3 ? { when: 'moved' as const } : {}),
    ...(random() < 0.2 ? { atC: 80 * random() - 20 } : {}),
  }
}

function anyJob(): RepairJob {
  const base = pick(Object.values(demoJobs))
  const where = random() < 0.4 ? ({ where: 'return' } as const) : {}
  return { ...base, damage: { ...base.damage, ...where }, readings: Array.from({ length: Math.floor(7 * random()) }, anyReading) }
}

function numbers(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbers) : []
}

const firstSentence = (text: string): string => text.split(/[.?](?=\s|$)/u)[0] as string
const words = (text: string): number => text.split(/\s+/u).length

test('whatever is read, each reading is answered in a short sentence, and every figure is finite', () => {
  let planned = 0
  for (let n = 0; n < 60; n += 1) {
    const job = anyJob()
    try {
      const found = diagnose(job)
      planned += 1
      expect(found.answered.map(({ reading }) => reading)).toEqual((job.readings ?? []).map((_, index) => index))
      expect(numbers(found).every(Number.isFinite)).toBe(true)
      for (const { healthyV, measuredV, allowedV, verdict } of found.stretches) {
        expect(healthyV.low).toBeLessThanOrEqual(healthyV.high)
        expect(allowedV).toBeGreaterThan(healthyV.high)
        if (measuredV !== null) expect(measuredV.low).toBeLessThanOrEqual(measuredV.high)
        if (measuredV !== null && verdict === 'passes') expect(measuredV.high).toBeLessThanOrEqual(allowedV)
      }
      for (const { finding } of [...found.answered, ...(found.next === null ? [] : [found.next])])
        expect(words(firstSentence(finding.text)), finding.text).toBeLessThanOrEqual(25)
    } catch (error) {
      if (!(error instanceof JobError)) throw error
    }
  }
  expect(planned).toBeGreaterThan(40)
}, 30_000)
