import { lapJointResistanceOhm } from '@strandwise/core'
import { describe, expect, test } from 'vitest'
import { call } from './call.sample.ts'

const lap = ['explain', 'lapJointResistanceOhm', 'overlapMm=6 mm', 'conductorsOhmPerM.0=13.7 mΩ/m', 'conductorsOhmPerM.1=0.0137', 'interfaceSPerM=5e6']
const ohm = lapJointResistanceOhm({ overlapMm: 6, conductorsOhmPerM: [0.0137, 0.0137], interfaceSPerM: 5e6 })

describe('strandwise explain', () => {
  test('JSON holds the very number that the function gives', async () => {
    const { code, out } = await call([...lap, '--format', 'json'])
    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject({ id: 'lapJointResistanceOhm', value: ohm, unit: 'Ω' })
  })

  test('text shows the formula, each name with its value, each step, where it holds and its source', async () => {
    const { out } = await call(lap)
    expect(out.split('\n')[0]).toBe(`lapJointResistanceOhm = ${Number(ohm.toPrecision(6))} Ω`)
    for (const part of ['R = r_1 * r_2', '  L    6 mm         length of the overlap', '\nSteps\n', '\nHolds where\n', '(derived)']) expect(out).toContain(part)
  })

  test('Markdown shows the formula in TeX', async () => {
    const { out } = await call(['explain', 'awgToAreaMm2', 'gauge=18', '--format', 'markdown'])
    expect(out).toMatch(/^# awgToAreaMm2 = 0\.823047 mm²\n\n\$\$A = /)
    expect(out).toContain('| $n$ | 18 |')
  })

  test('a quantity takes any unit of its kind, a choice is a word, a list and an object go by dots', async () => {
    const value = async (...args: string[]) => JSON.parse((await call(['explain', ...args, '--format', 'json'])).out).value as number
    expect(await value('resistanceOhm', 'areaMm2=18 AWG', 'lengthM=3 ft', 'material=annealed-copper', 'temperatureC=68 °F')).toBeCloseTo(0.01915, 5)
    expect(await value('criticalRadiusMm', 'insulationConductivityWPerMK=0.17', 'filmWPerM2K=3')).toBeCloseTo(56.67, 2)
    const iron = ['tool.kind=iron', 'tool.setC=360', 'tool.tipResistanceKPerW=1.5', 'tool.contactResistanceKPerW=3']
    const joint = ['joint.lapMm=8', 'joint.diameterMm=2.4', 'joint.solderMm3=5.5', 'alloy=Sn63Pb37', 'ambientC=20', 'toolOffS=3']
    const wire = ['conductors.0.areaMm2=0.75', 'conductors.0.stubMm=6', 'conductors.0.insulation=PVC', 'conductors.0.insulationOutsideMm=2']
    expect(await value('heatJoint', ...iron, ...joint, ...wire)).toBeGreaterThan(0)
  })

  test('without a formula all of them are listed', async () => {
    const { code, out } = await call(['explain'])
    expect(code).toBe(0)
    expect(out.split('\n')).toEqual(expect.arrayContaining(['awgToAreaMm2', 'lapJointResistanceOhm']))
  })
})

describe('what explain can’t use is refused by name, with what is allowed and the closest', () => {
  test.each([
    [['lapJointResistance'], /no formula "lapJointResistance"; the closest is lapJointResistanceOhm/],
    [['awgToAreaMm2', 'gauge=18', 'areaMm2=1'], /^areaMm2: awgToAreaMm2 takes no such input; it takes gauge/],
    [['lapJointResistanceOhm', 'overlapMM=6'], /^overlapMm: missing; .*; you gave overlapMM$/],
    [['lapJointResistanceOhm', 'overlapMm=6 lux'], /^overlapMm: is "6 lux"; allowed: /],
    [['lapJointResistanceOhm', 'overlapMm=-6', 'interfaceSPerM=1', 'conductorsOhmPerM.0=1', 'conductorsOhmPerM.1=1'], /^overlapMm: is -6; allowed: /],
    [['lapJointResistanceOhm', 'interfaceSPerM=5 S'], /^interfaceSPerM: is "5 S"; allowed: a bare number in S\/m$/],
    [['awgToAreaMm2', '18'], /^"18": allowed: name="quantity"/],
    [['awgToAreaMm2', 'gauge=18', 'gauge=20'], /^gauge: is given twice/],
    [['heatJoint', 'tool=iron', 'tool.setC=360'], /^tool\.setC: stands inside tool/],
    [['lapJointResistanceOhm', 'conductorsOhmPerM.0=1', 'conductorsOhmPerM.x=1'], /^conductorsOhmPerM\.x: allowed: a place in a list is a number/],
    [['resistanceOhm', 'areaMm2=1', 'lengthM=1', 'temperatureC=20', 'material=coper'], /"coper".*the closest is /],
    [['awgToAreaMm2', 'gauge=18', '--strict'], /^--strict: explain does not take it; allowed: --format/],
    [
      ['conductorTemperatureC', 'areaMm2=1', 'insulationThicknessMm=0.6', 'insulationConductivityWPerMK=0.17', 'ambientC=30', 'currentA=1000'],
      /^conductorTemperatureC: /,
    ],
  ])('%j', async (args, words) => {
    const { code, out, err } = await call(['explain', ...args])
    expect([code, out]).toEqual([2, ''])
    expect(err.trimEnd()).toMatch(words)
    expect(err).not.toMatch(/\n\s+at /)
  })

  test('names from outside reach no prototype', async () => {
    const { code } = await call(['explain', 'awgToAreaMm2', '__proto__.polluted=1', 'gauge=18'])
    expect(code).toBe(2)
    expect(({} as { polluted?: number }).polluted).toBeUndefined()
  })
})
