import { describe, expect, test } from 'vitest'
import { wire as free, stream } from '../heatModel.sample.ts'
import { finAdmittance } from './finAdmittance.ts'
import { finMatrix } from './finMatrix.ts'
import { finMesh } from './finMesh.ts'
import { breaksM, finZones, type Wire } from './finZones.ts'
import { lobattoRule } from './lobatto.ts'
import { wireModes } from './wireModes.ts'

const wire: Wire = { ...free, swept: stream, clip: { atM: 0.004, resistanceKPerW: 8, riseK: 5 } }
const settings = { firstM: 2e-3, growth: 0.6, degree: 5, lengthM: 0.6 }

describe('points of an element', () => {
  test.each([1, 2, 3, 4, 5])('degree %s: weights integrate, stiffness tells slopes', (degree) => {
    const { points, weights, stiffness } = lobattoRule(degree)
    const n = degree + 1
    expect([points[0], points[degree], points.length]).toEqual([0, 1, n])
    // Exact for polynomials up to twice the degree less one.
    for (let power = 0; power <= 2 * degree - 1; power++) {
      let sum = 0
      for (let k = 0; k < n; k++) sum += (weights[k] ?? 0) * (points[k] ?? 0) ** power
      expect(sum).toBeCloseTo(1 / (power + 1), 13)
    }
    // u = x^a, v = x^b: the integral of a x^(a-1) b x^(b-1).
    for (let a = 0; a <= degree; a++) {
      for (let b = 0; b <= degree; b++) {
        let sum = 0
        for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) sum += (points[i] ?? 0) ** a * (stiffness[i * n + j] ?? 0) * (points[j] ?? 0) ** b
        expect(sum).toBeCloseTo(a === 0 || b === 0 ? 0 : (a * b) / (a + b - 1), 11)
      }
    }
  })

  test('no other degree', () => {
    expect(() => lobattoRule(6)).toThrow(RangeError)
    expect(() => lobattoRule(0)).toThrow(RangeError)
  })
})

describe('zones and elements', () => {
  test('breaks stand in order, without double ones', () => {
    expect(breaksM(wire)).toEqual([0.004, 0.006, 0.01])
    expect(breaksM({ ...wire, stubM: 0, clip: null, swept: null })).toEqual([])
    expect(breaksM({ ...wire, stubM: 0.01, clip: null })).toEqual([0.01])
  })

  test('zones know store, loss and surroundings, with the tool and without', () => {
    const facts = (on: boolean) =>
      finZones(wire, on).map(({ fromM, storeJPerMK, lossWPerMK, surroundingsRiseK }) => [fromM, storeJPerMK, lossWPerMK, surroundingsRiseK])
    expect(facts(true)).toEqual([
      [0, 3.4, 0.7, 300],
      [0.004, 3.4, 0.7, 300],
      [0.006, 5.9, 0.5, 300],
      [0.01, 5.9, 0.1, 0],
    ])
    expect(facts(false).map((zone) => zone.slice(2))).toEqual([
      [0.06, 0],
      [0.06, 0],
      [0.1, 0],
      [0.1, 0],
    ])
  })

  test('elements end on every break, grow outwards and fill the wire', () => {
    const mesh = finMesh(wire, settings)
    for (const at of [0, 0.004, 0.006, 0.01, 0.6]) expect([...mesh.atM]).toContain(at)
    expect(mesh.atM[mesh.stubNode]).toBe(0.006)
    expect(mesh.atM[mesh.clipNode]).toBe(0.004)
    const lengths = mesh.firstNode.map((node, e) => (mesh.atM[node + (mesh.degree[e] ?? 0)] ?? 0) - (mesh.atM[node] ?? 0))
    expect(lengths.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0.6, 12)
    expect(lengths.at(-1)).toBeGreaterThan(0.1)
    expect(Math.max(...lengths.slice(0, 2))).toBeLessThan(5e-3)
    for (let i = 1; i < mesh.atM.length; i++) expect(mesh.atM[i] ?? 0).toBeGreaterThan(mesh.atM[i - 1] ?? 0)
  })

  test('breaks that nearly meet are one; a short stretch between two takes fewer points', () => {
    const clip = (atM: number) => ({ ...wire, swept: null, clip: { atM, resistanceKPerW: 8, riseK: 5 } })
    const one = finMesh({ ...wire, swept: null, clip: null }, settings)
    const met = finMesh(clip(0.006_001), settings)
    expect(met.atM).toEqual(one.atM)
    expect(met.clipNode).toBe(met.stubNode)
    const apart = finMesh(clip(0.006_003), settings)
    expect(apart.clipNode).toBe(apart.stubNode + 1)
    expect(apart.degree[apart.firstNode.indexOf(apart.stubNode)]).toBe(1)
    const short = finMesh(clip(0.0062), settings)
    expect(short.degree[short.firstNode.indexOf(short.stubNode)]).toBe(2)
  })

  test.each([0.005, 0.006])('a wire cut at %s m has no break beyond, and none twice', (lengthM) => {
    const { atM } = finMesh({ ...wire, swept: null, clip: null }, { ...settings, lengthM })
    expect(atM.at(-1)).toBe(lengthM)
    for (let i = 1; i < atM.length; i++) expect(atM[i] ?? 0).toBeGreaterThan(atM[i - 1] ?? 0)
  })

  test('a sliver of a stub is one with the joint, a short one takes fewer points', () => {
    const bare = { ...wire, clip: null, swept: null }
    expect(finMesh({ ...bare, stubM: 1e-7 }, settings).stubNode).toBe(0)
    const short = finMesh({ ...bare, stubM: 5e-5 }, settings)
    expect(short.degree[0]).toBe(1)
    expect(short.atM[short.stubNode]).toBe(5e-5)
    expect(finMesh({ ...bare, stubM: 1.5e-4 }, settings).degree[0]).toBe(2)
    expect(finMesh({ ...bare, stubM: 5e-4 }, settings).degree[0]).toBe(3)
    expect(finMesh(bare, settings).clipNode).toBe(-1)
  })
})

describe.each([true, false])('nodes and modes with the tool on: %s', (on) => {
  const held = { ...wire, clip: { atM: 0.004, resistanceKPerW: 0, riseK: 5 } }
  test.each([
    ['a clip with resistance', wire],
    ['a clip without', held],
    ['no clip', { ...wire, clip: null }],
  ] as const)('%s: the steady flow and edge of the modes are those of the closed fin', (_name, one) => {
    const mesh = finMesh(one, settings)
    const modes = wireModes(finMatrix(one, mesh, on), mesh.stubNode, true)
    const closed = finAdmittance(one, on)
    for (const rise of [0, 200]) {
      let flow = modes.admittanceWPerK * rise - modes.drivenW
      let edge = modes.edgeOffsetK + modes.edgeJoint * rise
      let lost = modes.lossOffsetW + modes.lossJointWPerK * rise
      for (let k = 0; k < modes.count; k++) {
        const y = ((modes.coupling[k] ?? 0) * rise + (modes.drive[k] ?? 0)) / (modes.ratesPerS[k] ?? 1)
        flow -= (modes.coupling[k] ?? 0) * y
        edge += (modes.edge[k] ?? 0) * y
        lost += (modes.loss[k] ?? 0) * y
      }
      const wanted = closed.admittanceWPerK * rise - closed.offsetW
      expect(Math.abs(flow - wanted)).toBeLessThan(1e-4 * (Math.abs(wanted) + 0.1))
      expect(Math.abs(edge - closed.edgeOffsetK - closed.edgeSlope * rise)).toBeLessThan(0.02)
      // In the steady state what goes in is lost.
      expect(Math.abs(lost - flow)).toBeLessThan(1e-9)
    }
    for (const rate of modes.ratesPerS) expect(rate).toBeGreaterThan(0)
  })

  test('what leaves it: its losses, its clip, and at the cut an endless wire and a little more', () => {
    for (const lengthM of [0.05, 0.6]) {
      const { conductanceWPerK, nodes } = finMatrix(wire, finMesh(wire, { ...settings, lengthM }), on)
      // An even rise passes no heat from node to node: the sum of all entries is what leaves.
      const left = conductanceWPerK.reduce((sum, part) => sum + part, 0)
      const stub = on ? 0.006 * 0.7 + 0.004 * 0.5 + (lengthM - 0.01) * 0.1 : 0.006 * 0.06 + (lengthM - 0.006) * 0.1
      expect(left).toBeCloseTo(stub + 1 / 8 + Math.sqrt(391e-6 * 0.1) + 391e-6 / lengthM, 9)
      const cut = Array.from({ length: nodes }, (_, k) => conductanceWPerK[(nodes - 1) * nodes + k] ?? 0).reduce((sum, part) => sum + part, 0)
      expect(cut).toBeGreaterThan(Math.sqrt(391e-6 * 0.1) + 391e-6 / lengthM)
    }
  })

  test('all of the wire stores, and the base is whole', () => {
    const one = { ...wire, clip: null }
    const mesh = finMesh(one, settings)
    const matrix = finMatrix(one, mesh, on)
    const modes = wireModes(matrix, mesh.stubNode, true)
    const total = matrix.storeJPerK.reduce((sum, part) => sum + part, 0)
    expect(total).toBeCloseTo(0.006 * 3.4 + 0.594 * 5.9, 9)
    // The store of an even profile: the row against the modes of root stores.
    let sum = 0
    for (let k = 0; k < modes.count; k++) {
      let y = 0
      for (let i = 0; i < modes.count; i++) y += Math.sqrt(matrix.storeJPerK[i + 1] ?? 0) * (modes.base?.[i]?.[k] ?? 0)
      sum += (modes.store[k] ?? 0) * y
    }
    expect(sum + modes.jointStoreJPerK).toBeCloseTo(total, 9)
    expect(wireModes(matrix, mesh.stubNode, false).base).toBeNull()
  })
})
