import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, demoJobs } from '../demo/index.ts'
import { repairJobJsonSchema } from './jsonSchema.ts'
import { parseRepairJob } from './parseRepairJob.ts'

// Strict: an unknown keyword or format is an error.
const validator = new Ajv2020({ strict: true })
const valid = validator.compile(repairJobJsonSchema)
const { load: _load, wire: _wire, ...rest } = bilgePumpFeed
const with_ = (change: object) => ({ ...bilgePumpFeed, ...change })
const read = (job: unknown): boolean => {
  try {
    parseRepairJob(job)
    return true
  } catch {
    return false
  }
}

test.each(Object.entries(demoJobs))('the demo job %s is valid', (_name, job) => {
  expect(valid(job), JSON.stringify(valid.errors)).toBe(true)
})

describe('what the command takes is valid, and what it refuses by itself is not', () => {
  test.each<readonly [string, unknown]>([
    ['a current as text', with_({ load: { current: '4.2 A' } })],
    ['a power as text', with_({ load: { power: '50 W' } })],
    ['a fraction of an inch', with_({ damage: { kind: 'broken', fromTermination: '½ in' } })],
    ['feet and inches', with_({ wire: { size: '16 AWG', insulation: 'XLPE', outLength: '10 ft 6 in' } })],
    ['a unit in front', with_({ wire: { area: 'AWG 18', insulation: 'XLPE', outLengthM: 3 } })],
    ['a decimal comma', with_({ load: { current: '4,2 A' } })],
    ['below zero', with_({ surroundings: { ambient: '−5 °C' } })],
    ['an interval of texts', with_({ terminal: { accepts: { low: '0.5 mm²', high: '1.5 mm²' } } })],
    ['an interval of numbers under its written name', with_({ terminal: { accepts: { low: 0.5, high: 1.5 } } })],
    ['a reading as text', with_({ readings: [{ kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'on', value: '350 mV', resolution: '1 mV' }] })],
    ['megohms as text', with_({ readings: [{ kind: 'insulation', from: 'load+', to: 'source-', load: 'unplugged', value: '2 MΩ' }] })],
    ['a temperature as text', with_({ readings: [{ kind: 'temperature', from: 'joint-in', to: 'joint-out', load: 'on', value: '140 °F' }] })],
    ['a tool as text', with_({ tools: [{ name: 'iron', kind: 'iron', power: '60 W', set: '360 °C', stub: '4 mm' }] })],
    ['the eight answers', { version: 1, circuit: rest.circuit, load: { currentA: 4 }, wire: _wire, damage: { kind: 'broken', fromTerminationMm: 25 } }],
  ])('%s', (_title, job) => {
    expect(read(job)).toBe(true)
    expect(valid(job), JSON.stringify(valid.errors)).toBe(true)
  })

  test.each<readonly [string, unknown]>([
    ['both spellings', with_({ load: { current: '4.2 A', currentA: 4.2 } })],
    ['both spellings of a needed field', with_({ damage: { kind: 'broken', fromTermination: '25 mm', fromTerminationMm: 25 } })],
    ['a text without a unit', with_({ load: { current: '4.2' } })],
    ['a number under the written name', with_({ load: { current: 4.2 } })],
    ['a text under the fixed name', with_({ load: { currentA: '4.2 A' } })],
    ['two loads', with_({ load: { currentA: 4.2, powerW: 50 } })],
    ['no load', with_({ load: {} })],
    ['area and size', with_({ wire: { areaMm2: 1, size: '18 AWG', insulation: 'PVC', outLengthM: 3 } })],
    ['no length', with_({ wire: { size: '18 AWG', insulation: 'PVC' } })],
    ['an unknown field', with_({ colour: 'red' })],
    ['an unknown field of a tool', with_({ tools: [{ name: 'iron', kind: 'iron', powerW: 60, airC: 300 }] })],
    ['half a strand', with_({ wire: { ..._wire, strandCount: 7.5 } })],
    ['no version', { ...bilgePumpFeed, version: undefined }],
  ])('refused: %s', (_title, job) => {
    const plain = JSON.parse(JSON.stringify(job))
    expect(read(plain)).toBe(false)
    expect(valid(plain)).toBe(false)
  })
})
