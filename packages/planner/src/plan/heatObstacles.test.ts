import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, trailerTailLamp } from '../demo/index.ts'
import { solderedMethods } from '../facts/soldered.ts'
import type { JobTool, RepairJob } from '../job/repairJob.ts'
import { insulationNames, metalNames, methodNames, sleeveMaterialNames, solderNames } from '../job/words.ts'
import { currentCurve, heatingCurves, jointPicture } from '../picture/index.ts'
import { planRepair } from './planRepair.ts'
import type { PlanSection, SectionId } from './repairPlan.ts'

const tools: Readonly<Record<JobTool['kind'], JobTool>> = {
  iron: { name: 'iron', kind: 'iron', powerW: 60, setC: 360 },
  'hot-air': { name: 'air', kind: 'hot-air', airC: 320, airSpeedMPerS: 8, nozzleMm: 20 },
}
const sleeve = { ringAlloy: 'Sn42Bi58', tube: { ...bilgePumpFeed.solderSleeve?.tube } } as NonNullable<RepairJob['solderSleeve']>
const soldered = (change: Partial<RepairJob>): RepairJob => ({ ...trailerTailLamp, intendedMethod: 'soldered-lap', tools: Object.values(tools), ...change })
const section = (job: RepairJob, id: SectionId): PlanSection => planRepair(job).sections.find((one) => one.id === id) as PlanSection

describe('a solder sleeve that does not slide over the joint', () => {
  const job: RepairJob = { ...bilgePumpFeed, wire: { ...bilgePumpFeed.wire, size: '6 AWG' } }
  const heating = section(job, 'heating')

  test('is unsound, with both numbers and what to do; nothing of its heat is told', () => {
    expect(heating.verdict).toBe('unsound')
    expect(heating.reasons[0]).toBe(
      'The solder sleeve does not slide over the joint: 4.5 mm inside as supplied, against 9.4 mm across both wires. Take a wider one; how this one would heat is not reckoned.',
    )
    expect(heating.values).toEqual([])
    expect(planRepair(job).options.filter((option) => option.of === 'tool')).toEqual([])
  })

  test('the covering says so too, and no curve is drawn', () => {
    const covering = section(job, 'covering')
    expect(covering.verdict).toBe('unsound')
    expect(covering.reasons.join('\n')).toMatch(/does not slide over the joint \(4\.5 mm against/)
    expect(heatingCurves(job)).toBeNull()
    expect(jointPicture(job).layers).toEqual([])
  })

  test('an inside as wide as the joint does not slide, a hair more does', () => {
    const joint = 2 * jointPicture(bilgePumpFeed).conductorMm
    const verdict = (suppliedInsideMm: number) =>
      section({ ...bilgePumpFeed, solderSleeve: { ...sleeve, tube: { ...sleeve.tube, suppliedInsideMm } } }, 'heating').reasons.join('\n')
    expect(verdict(joint)).toMatch(/does not slide/)
    expect(verdict(joint + 0.001)).not.toMatch(/does not slide/)
  })
})

describe('an insulation of which too little is known', () => {
  const job = soldered({ wire: { ...trailerTailLamp.wire, insulation: 'TPE' } })

  test('cannot be told, with the reason and what to do; no curve', () => {
    const heating = section(job, 'heating')
    expect(heating.verdict).toBe('cannot tell')
    expect(heating.reasons).toEqual([
      'What the heat does to TPE cannot be computed: its specific heat is not known. Crimp instead, or try the same joint with the same tool on a scrap of the same wire, and look at its insulation.',
    ])
    expect(heatingCurves(job)).toBeNull()
  })

  test('does not keep a crimp from being planned', () => {
    expect(section({ ...job, intendedMethod: 'crimped-butt-splice' }, 'heating').verdict).toBe('sound')
  })
})

test('air that melts the solder, or shrinks the sleeve, before any tool does is unsound', () => {
  const at = (ambientC: number, ringAlloy: (typeof solderNames)[number]) => {
    const job: RepairJob = {
      ...bilgePumpFeed,
      solderSleeve: { ...sleeve, ringAlloy },
      surroundings: { ...bilgePumpFeed.surroundings, ambientC, hottestC: ambientC },
    }
    return { ...section(job, 'heating'), curves: heatingCurves(job) }
  }
  const melts = at(118, 'In52Sn48')
  expect(melts.verdict).toBe('unsound')
  expect(melts.reasons.join('\n')).toMatch(/In52Sn48 begins to melt at 118 °C, and the air there has 118 °C/)
  expect(melts.curves).toBeNull()
  expect(at(117, 'In52Sn48').reasons.join('\n')).not.toMatch(/begins to melt/)
  expect(at(180, 'SAC305').reasons.join('\n')).toMatch(/shrinks at \d+ °C, and the air there has 180 °C: it shrinks before it is in place/)
})

describe('every word that a job offers gives a plan and its pictures', () => {
  const whole = (job: RepairJob) => {
    expect(planRepair(job).sections).toHaveLength(9)
    heatingCurves(job)
    currentCurve(job)
    jointPicture(job)
  }

  test.each(insulationNames)('%s, soldered in every way with every tool', (insulation) => {
    for (const intendedMethod of methodNames.filter((name) => solderedMethods.includes(name)))
      for (const tool of Object.values(tools))
        whole(soldered({ wire: { ...trailerTailLamp.wire, insulation }, intendedMethod, solderSleeve: sleeve, tools: [tool] }))
  })

  test.each(metalNames)('a wire of %s', (material) => {
    const job = soldered({ wire: { ...trailerTailLamp.wire, material, insulation: 'PTFE' }, tools: [tools.iron] })
    expect(planRepair(job).sections).toHaveLength(9)
    currentCurve(job)
  })

  test.each(solderNames)('%s, as wire and as ring', (alloy) => {
    expect(heatingCurves(soldered({ solders: [alloy], tools: [tools.iron] }))?.alloy).toBe(alloy)
    const ring = soldered({ intendedMethod: 'solder-sleeve', solderSleeve: { ...sleeve, ringAlloy: alloy }, tools: [tools['hot-air']] })
    expect(planRepair(ring).sections).toHaveLength(9)
    expect(heatingCurves(ring)?.alloy).toBe(alloy)
  })

  test.each(sleeveMaterialNames)('a sleeve of %s', (material) => {
    const job = soldered({ intendedMethod: 'solder-sleeve', solderSleeve: { ...sleeve, tube: { ...sleeve.tube, material } }, tools: [tools['hot-air']] })
    expect(planRepair({ ...job, sleeves: [{ ...sleeve.tube, material }] }).sections).toHaveLength(9)
    expect(jointPicture(job).kind).toBe('lap')
  })

  test.each(methodNames)('%s', (intendedMethod) => whole(soldered({ intendedMethod })))
})

test('a wire of a metal that melts below what its insulation stands is held to the metal', () => {
  const job = { ...trailerTailLamp, wire: { ...trailerTailLamp.wire, material: 'tin' as const, insulation: 'PTFE' as const } }
  expect(currentCurve(job).limitC).toBe(231.93)
  expect(section(job, 'wire-and-protection').reasons.join('\n')).toMatch(/below the 232 °C of the metal itself/)
})
