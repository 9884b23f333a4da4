import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../errors/index.ts'
import { bismuthLead, rosinFluxWindow, solderOverCoating, strandSurfaces, strandsMayWet } from './onTheWire.ts'

const fine = { verdict: 'compatible', mixtureMeltsC: null }
const never = { verdict: 'forbidden', mixtureMeltsC: 96 }
const unsure = { verdict: 'cannot tell', mixtureMeltsC: 96 }

describe('a solder over what is on the wire', () => {
  test.each([
    ['Sn42Bi58', 'tin-lead', never],
    ['Sn42Bi58', 'unknown', unsure],
    ['Sn42Bi58', 'tin', fine],
    ['Sn42Bi58', 'bare', fine],
    ['Sn42Bi58', 'bismuth', fine],
    ['Sn63Pb37', 'bismuth', never],
    ['Sn60Pb40', 'bismuth', never],
    ['Sn63Pb37', 'unknown', unsure],
    ['Sn63Pb37', 'tin-lead', fine],
    ['SAC305', 'tin-lead', fine],
    ['SAC305', 'bismuth', fine],
    ['SAC305', 'unknown', fine],
    ['In52Sn48', 'indium', fine],
  ] as const)('%s over %s', (alloy, coating, wanted) => {
    expect(solderOverCoating({ alloy, coating })).toEqual(wanted)
  })

  test('refusals', () => {
    expect(() => solderOverCoating({ alloy: 'Sn1' as 'SAC305', coating: 'tin' })).toThrow(UnknownEntryError)
    expect(() => solderOverCoating({ alloy: 'SAC305', coating: 'paint' as 'tin' })).toThrow(DomainError)
  })
})

describe('strands and flux', () => {
  test('bright and lightly tarnished strands may wet; oxide and green salts do not', () => {
    expect((['bright', 'light-tarnish', 'oxidised', 'green-salts'] as const).map(strandsMayWet)).toEqual([true, true, false, false])
    expect(() => strandsMayWet('shiny' as 'bright')).toThrow(DomainError)
  })

  test('each limit says where it comes from', () => {
    for (const { provenance } of Object.values(strandSurfaces)) expect(provenance.source.length).toBeGreaterThan(20)
    expect(bismuthLead.provenance.status).toBe('published')
    expect(rosinFluxWindow.activeFromC).toBeLessThan(rosinFluxWindow.bestC.low)
    expect(rosinFluxWindow.bestC.high).toBeLessThan(rosinFluxWindow.charsAboveC)
  })
})
