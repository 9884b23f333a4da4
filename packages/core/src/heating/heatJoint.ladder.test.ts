import { describe, expect, test } from 'vitest'
import { heatJoint } from './heatJoint.ts'
import type { HeatJointInput, HeatSide } from './heatJointTypes.ts'

// Independent model of the same joint: uniform slices of 0.5 mm, Heun's method with steps short enough to be stable.

const sliceM = 0.5e-3
const slices = 500
const stepS = 0.4e-3

interface Slices {
  readonly tails: number
  readonly kA: number
  readonly store: Float64Array
  readonly onLoss: Float64Array
  readonly onDrive: Float64Array
  readonly offLoss: Float64Array
  readonly edge: number
  readonly held: number
  readonly heldRise: number
}

function slice(input: HeatJointInput, side: HeatSide): Slices {
  const n = slices
  const store = new Float64Array(n)
  const onLoss = new Float64Array(n)
  const onDrive = new Float64Array(n)
  const offLoss = new Float64Array(n)
  const d = (side.diameterMm ?? 0) / 1000
  const D = side.insulationOutsideMm / 1000
  const A = side.areaMm2 / 1e6
  const wall = Math.log(D / d) / (2 * Math.PI * (side.insulationConductivityWPerMK ?? 0))
  const { tool } = input
  const swept = tool.kind === 'hot-air' ? (tool.sweptMm ?? 0) / 1000 : 0
  const over = (film: number, bare: boolean): number => (bare ? Math.PI * d * film : 1 / (wall + 1 / (Math.PI * D * film)))
  for (let k = 0; k < n; k++) {
    const x = (k + 0.5) * sliceM
    const bare = x < side.stubMm / 1000
    const wallStore = ((side.insulationDensityKgPerM3 ?? 0) * (side.insulationSpecificHeatJPerKgK ?? 0) * Math.PI * (D * D - d * d)) / 8
    store[k] = sliceM * (A * (side.densityKgPerM3 ?? 0) * (side.specificHeatJPerKgK ?? 0) + (bare ? 0 : wallStore))
    const still = sliceM * over(bare ? 15 : 14, bare)
    offLoss[k] = still
    onLoss[k] = tool.kind === 'hot-air' && x < swept ? sliceM * over(tool.sweptFilmWPerM2K ?? 0, bare) : still
    onDrive[k] = tool.kind === 'hot-air' && x < swept ? (onLoss[k] ?? 0) * (tool.airC - input.ambientC) : 0
  }
  const clip = side.clip ?? null
  return {
    tails: side.tails ?? 1,
    kA: A * (side.conductivityWPerMK ?? 0),
    store,
    onLoss,
    onDrive,
    offLoss,
    edge: Math.round(side.stubMm / 1000 / sliceM),
    held: clip === null ? -1 : Math.round(clip.distanceMm / 1000 / sliceM),
    heldRise: clip === null ? 0 : clip.temperatureC - input.ambientC,
  }
}

/** Joint and edge temperatures at the sample times, which are multiples of the step. */
function ladder(input: HeatJointInput): { readonly jointC: number[]; readonly edgeC: number[][] } {
  const wires = input.conductors.map((side) => slice(input, side))
  const alloy = input.alloy as Exclude<HeatJointInput['alloy'], string>
  const mass = input.joint.solderMm3 * 1e-9 * alloy.densityKgPerM3
  const lap = input.joint.lapMm / 1000
  const copper = input.conductors.reduce((sum, side) => sum + (side.areaMm2 / 1e6) * (side.densityKgPerM3 ?? 0) * (side.specificHeatJPerKgK ?? 0), 0)
  const C = lap * copper + mass * alloy.specificHeatJPerKgK
  const surface = (input.joint.surfaceMm2 ?? 0) / 1e6
  const { tool, ambientC } = input
  const K = ambientC + 273.15
  const melt = alloy.latentHeatJPerKg * mass
  const [s, l] = [alloy.solidusC - ambientC, alloy.liquidusC - ambientC]
  const riseOf = (H: number): number => (H < C * s ? H / C : H > C * l + melt ? (H - melt) / C : s + ((H - C * s) * (l - s)) / (C * (l - s) + melt))
  const state = [new Float64Array(1), ...wires.map(() => new Float64Array(slices))]
  const changeOf = (y: readonly Float64Array[], on: boolean, out: readonly Float64Array[]): void => {
    const T = riseOf((y[0] as Float64Array)[0] ?? 0)
    const streamed = on && tool.kind === 'hot-air'
    let flow = 0
    if (on && tool.kind === 'iron')
      flow += Math.min(tool.maximumW ?? Infinity, (tool.setC - ambientC - T) / (tool.tipResistanceKPerW + tool.contactResistanceKPerW))
    if (streamed && tool.kind === 'hot-air') flow += (tool.filmWPerM2K ?? 0) * surface * (tool.airC - ambientC - T)
    flow -= (input.joint.emissivity ?? 0) * 5.670374419e-8 * surface * ((T + K) ** 4 - K ** 4) + (streamed ? 0 : (input.joint.filmWPerM2K ?? 0) * surface * T)
    wires.forEach((wire, w) => {
      const u = y[w + 1] as Float64Array
      const du = out[w + 1] as Float64Array
      const g = wire.kA / sliceM
      let inwards = 2 * g * (T - (u[0] ?? 0))
      flow -= wire.tails * inwards
      const loss = on ? wire.onLoss : wire.offLoss
      for (let k = 0; k < slices; k++) {
        const held = k + 1 === wire.held
        const onwards = k === slices - 1 ? 0 : held ? 2 * g * ((u[k] ?? 0) - wire.heldRise) : g * ((u[k] ?? 0) - (u[k + 1] ?? 0))
        du[k] = (inwards - onwards - (loss[k] ?? 0) * (u[k] ?? 0) + (on ? (wire.onDrive[k] ?? 0) : 0)) / (wire.store[k] ?? 1)
        inwards = held ? 2 * g * (wire.heldRise - (u[k + 1] ?? 0)) : onwards
      }
    })
    ;(out[0] as Float64Array)[0] = flow
  }
  const first = state.map((list) => new Float64Array(list.length))
  const second = state.map((list) => new Float64Array(list.length))
  const middle = state.map((list) => new Float64Array(list.length))
  const jointC: number[] = []
  const edgeC: number[][] = wires.map(() => [])
  const samples = input.sampleTimesS ?? []
  const last = Math.round((samples[samples.length - 1] ?? 0) / stepS)
  const off = Math.round(input.toolOffS / stepS)
  for (let n = 1; n <= last; n++) {
    const on = n <= off
    changeOf(state, on, first)
    state.forEach((list, j) => {
      for (let k = 0; k < list.length; k++) (middle[j] as Float64Array)[k] = (list[k] ?? 0) + stepS * ((first[j] as Float64Array)[k] ?? 0)
    })
    changeOf(middle, on, second)
    state.forEach((list, j) => {
      for (let k = 0; k < list.length; k++)
        list[k] = (list[k] ?? 0) + (stepS / 2) * (((first[j] as Float64Array)[k] ?? 0) + ((second[j] as Float64Array)[k] ?? 0))
    })
    if (!samples.some((at) => Math.round(at / stepS) === n)) continue
    jointC.push(ambientC + riseOf((state[0] as Float64Array)[0] ?? 0))
    wires.forEach((wire, w) => {
      const u = state[w + 1] as Float64Array
      edgeC[w]?.push(ambientC + ((u[wire.edge - 1] ?? 0) + (u[wire.edge] ?? 0)) / 2)
    })
  }
  return { jointC, edgeC }
}

const metal = { densityKgPerM3: 8890, specificHeatJPerKgK: 385, conductivityWPerMK: 391, insulationLimitC: 105 }
const films = { stubFilmWPerM2K: 15, insulationFilmWPerM2K: 14 }
const pvc = { ...metal, ...films, insulationConductivityWPerMK: 0.17, insulationDensityKgPerM3: 1350, insulationSpecificHeatJPerKgK: 1050 }
const thin = { areaMm2: 0.5, diameterMm: 0.92, stubMm: 8, insulationOutsideMm: 1.82, ...pvc }
const thick = { areaMm2: 1.5, diameterMm: 1.58, stubMm: 4, insulationOutsideMm: 2.98, ...pvc }
const base = {
  ambientC: 20,
  joint: { lapMm: 8, diameterMm: 2.8, surfaceMm2: 70, solderMm3: 6, filmWPerM2K: 15, emissivity: 0.3 },
  alloy: { solidusC: 183, liquidusC: 200, densityKgPerM3: 8500, specificHeatJPerKgK: 176, latentHeatJPerKg: 45_000 },
}

describe('against even slices and short steps', () => {
  test.each([
    [
      'an iron on four unlike conductors, one held by a clip, one that runs through',
      {
        ...base,
        tool: { kind: 'iron', setC: 380, maximumW: 40, tipResistanceKPerW: 1, contactResistanceKPerW: 2 },
        conductors: [
          thin,
          { ...thick, tails: 2 },
          { ...thick, stubMm: 10, clip: { distanceMm: 6, resistanceKPerW: 0, temperatureC: 28 } },
          { ...thin, stubMm: 12 },
        ],
        toolOffS: 2,
        sampleTimesS: [0.2, 0.6, 1, 2, 2.4, 4],
      },
    ],
    [
      'hot air on two unlike conductors, swept past one edge and short of the other',
      {
        ...base,
        tool: { kind: 'hot-air', airC: 420, filmWPerM2K: 220, sweptMm: 6, sweptFilmWPerM2K: 190 },
        conductors: [thin, thick],
        toolOffS: 6,
        sampleTimesS: [0.6, 2, 4, 6, 6.4, 8],
      },
    ],
  ] satisfies readonly (readonly [string, HeatJointInput])[])('%s', (_name, input) => {
    const wanted = ladder(input)
    const got = heatJoint(input)
    wanted.jointC.forEach((c, k) => {
      expect(Math.abs((got.jointC[k] ?? 0) - c), `joint, sample ${k}: ${got.jointC[k]} against ${c}`).toBeLessThan(0.3)
    })
    wanted.edgeC.forEach((list, w) => {
      list.forEach((c, k) => {
        expect(Math.abs((got.edgeC[w]?.[k] ?? 0) - c), `edge ${w}, sample ${k}: ${got.edgeC[w]?.[k]} against ${c}`).toBeLessThan(0.3)
      })
    })
    expect(got.energyResidual).toBeLessThan(1e-3)
  })
})
