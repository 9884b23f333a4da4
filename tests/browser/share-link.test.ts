import { demoJobs, jobForm, parseRepairJob } from '@strandwise/planner'
import { deflateSync, strFromU8, strToU8 } from 'fflate'
import { describe, expect, it } from 'vitest'
import { answersFrom } from '../../site/src/plan/answersFrom.ts'
import { LinkError } from '../../site/src/plan/checkedJob.ts'
import { isJobFragment } from '../../site/src/plan/jobFragment.ts'
import { jobFromFragment, jobToFragment } from '../../site/src/plan/jobLink.ts'
import { readJob } from '../../site/src/plan/readJob.ts'
import { brokenFragments } from './brokenFragments.ts'

const bilge = demoJobs['bilge-pump-feed']

describe('a job in a link', () => {
  it.each(Object.entries(demoJobs))('%s comes back as it was', (_, job) => {
    const fragment = jobToFragment(job)
    expect(isJobFragment(fragment)).toBe(true)
    expect(fragment).toMatch(/^job1\.[a-z0-9]{7}\.[\w-]+$/)
    expect(jobFromFragment(fragment)).toEqual(job)
  })

  it.each(Object.entries(demoJobs))('%s goes through the form unchanged', (_, job) => {
    const read = readJob(answersFrom(job))
    expect(read.problems).toEqual([])
    expect(read.missing).toEqual([])
    expect(read.job).toEqual(job)
    expect(parseRepairJob(read.typed)).toEqual(job)
  })

  it('carries each quantity as it was typed', () => {
    const answers = { ...answersFrom(bilge), 'damage.fromTerminationMm': '1 in', 'damage.slackMm': '1 3/4 in', 'terminal.sealInsideMm.low': '90 mil' }
    const read = readJob(answers)
    expect(read.typed).toMatchObject({ damage: { fromTermination: '1 in', slack: '1 3/4 in' }, terminal: { sealInside: { low: '90 mil' } } })
    const back = jobFromFragment(jobToFragment(read.typed))
    expect(answersFrom(back)).toMatchObject({ 'damage.fromTerminationMm': '1 in', 'terminal.sealInsideMm.low': '90 mil', 'terminal.sealInsideMm.high': '3.1' })
    expect(parseRepairJob(back)).toEqual(read.job)
    expect(read.job?.damage.fromTerminationMm).toBe(25.4)
  })

  it('fills a bare number where the unit typed is the one beside the field, and the job stays the same', () => {
    const { slackMm: _, fromTerminationMm: __, ...damage } = { ...bilge?.damage }
    const reading = bilge?.readings?.find((one) => one.kind === 'drop')
    const written = { ...bilge, damage: { ...damage, slack: '45 mm', fromTermination: '1 in' }, readings: [{ ...reading, value: '1.9 V' }] }
    const answers = answersFrom(written)
    expect(answers).toMatchObject({ 'damage.slackMm': '45', 'damage.fromTerminationMm': '1 in', 'readings.0.value': '1.9', 'wire.size': '16 AWG' })
    const { typed, job } = readJob(answers)
    expect(job).toEqual(parseRepairJob(written))
    expect(typed).toMatchObject({ damage: { slackMm: 45, fromTermination: '1 in' }, readings: [{ value: 1.9 }] })
    expect(readJob(answersFrom(jobFromFragment(jobToFragment(typed)))).typed).toEqual(typed)
  })

  it('holds the largest job that the form takes', () => {
    const sleeve = bilge?.solderSleeve?.tube
    const many = { ...bilge, title: 'x'.repeat(120), sleeves: Array.from({ length: 60 }, (_, index) => ({ ...sleeve, name: `sleeve ${index}` })) }
    expect(jobFromFragment(jobToFragment(many))).toEqual(many)
    expect(jobForm.find((group) => group.at === 'sleeves')?.most).toBe(60)
  })

  it('is not made where a text holds markup', () => {
    expect(() => jobToFragment({ ...bilge, title: '<b>pump</b>' })).toThrow(LinkError)
  })

  it('leaves other anchors of the page alone', () => {
    for (const anchor of ['', 'main', 'section-heating', 'jobs', 'job-card']) expect(isJobFragment(anchor), anchor).toBe(false)
  })
})

describe('a broken link', () => {
  const cases = brokenFragments(jobToFragment(bilge), (text) => strFromU8(deflateSync(strToU8(text), { level: 9 }), true))

  it('comes in at least 30 kinds', () => {
    expect(cases.length).toBeGreaterThanOrEqual(30)
    expect(new Set(cases.map((item) => item.fragment)).size).toBe(cases.length)
  })

  it.each(cases)('$name is refused', ({ fragment, fault }) => {
    expect(isJobFragment(fragment)).toBe(true)
    let error: unknown
    try {
      jobFromFragment(fragment)
    } catch (thrown) {
      error = thrown
    }
    expect(error).toBeInstanceOf(LinkError)
    expect((error as LinkError).fault).toBe(fault)
    expect((error as LinkError).message).toMatch(/^[A-Z].{20,}\.$/s)
  })

  it('that unpacks to a hundred megabytes is stopped early', () => {
    const bomb = deflateSync(new Uint8Array(100_000_000), { level: 9 }).subarray(0, 16_000)
    const letters = btoa(strFromU8(bomb, true)).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
    const before = performance.now()
    expect(() => jobFromFragment(`job1.0000000.${letters}`)).toThrow(/longer than any job/)
    expect(performance.now() - before).toBeLessThan(500)
  })

  it('with any one character changed is refused', () => {
    const whole = jobToFragment(bilge)
    for (let at = 0; at < whole.length; at += 3) {
      const other = whole[at] === 'A' ? 'B' : 'A'
      const changed = `${whole.slice(0, at)}${other}${whole.slice(at + 1)}`
      if (isJobFragment(changed)) expect(() => jobFromFragment(changed), `character ${at}`).toThrow(LinkError)
    }
  })
})
