import type { HeatJointInput } from '../../packages/core/src/heating/index.ts'
import { air, churchillBernstein, stefanBoltzmann } from './air.ts'

/** Independent solution of heatJoint's model by finite volumes and implicit steps. Each wire is a graded grid, eliminated in each step to one line q = a T - b; bisection then finds the joint's heat, so plateau, power limit and radiation need no special cases. Two step counts are extrapolated. */

export type Golden = Required<Pick<HeatJointInput, 'ambientC' | 'tool' | 'joint' | 'conductors' | 'toolOffS'>> & HeatJointInput
type Side = Golden['conductors'][number]
interface Alloy {
  readonly solidusC: number
  readonly liquidusC: number
  readonly densityKgPerM3: number
  readonly specificHeatJPerKgK: number
  readonly latentHeatJPerKg: number
}

interface Boxes {
  readonly count: number
  /** Per box: heat capacity, loss and drive with the tool on and off, conductance to the previous box. */
  readonly store: Float64Array
  readonly loss: readonly [Float64Array, Float64Array]
  readonly drive: readonly [Float64Array, Float64Array]
  readonly link: Float64Array
  readonly t: Float64Array
  /** Boxes on either side of the insulation's edge, and the interpolation weight of the second. */
  readonly edge: readonly [number, number]
  readonly fixed: { readonly at: number; readonly c: number } | null
}

const all = <T>(value: T | undefined): T => value as T

function boxesOf(side: Side, input: Golden, fineness: number): Boxes {
  const tool = input.tool
  const d = all(side.diameterMm) / 1000
  const outside = all(side.insulationOutsideMm) / 1000
  const area = side.areaMm2 / 1e6
  const stub = side.stubMm / 1000
  const swept = tool.kind === 'hot-air' ? (tool.sweptMm ?? 0) / 1000 : 0
  const clip = side.clip === undefined || side.clip === null ? null : side.clip
  const kA = all(side.conductivityWPerMK) * area
  const metal = area * all(side.densityKgPerM3) * all(side.specificHeatJPerKgK)
  const wall =
    (all(side.insulationShare) * all(side.insulationDensityKgPerM3) * all(side.insulationSpecificHeatJPerKgK) * Math.PI * (outside ** 2 - d ** 2)) / 4
  const wallR = Math.log(outside / d) / (2 * Math.PI * all(side.insulationConductivityWPerMK))
  const breaks = [...new Set([0, stub, swept, clip === null ? 0 : clip.distanceMm / 1000].filter((x) => x >= 0))].sort((a, b) => a - b)
  const far = Math.max(...breaks) + 9 * Math.sqrt(kA * (wallR + 1 / (Math.PI * outside * 12)))
  // Box ends: geometric between breaks, fine near the joint and behind each break.
  const ends = [0]
  const places = [...breaks.filter((x) => x > 0), far]
  for (const place of places) {
    let x = ends.at(-1) as number
    const from = x
    const parts: number[] = []
    while (x < place) {
      x += 0.00012 / fineness + (0.045 / fineness) * x
      parts.push(x)
    }
    const scale = (place - from) / (x - from)
    for (const end of parts) ends.push(from + (end - from) * scale)
  }
  const count = ends.length
  // Nodes are on the box ends; each owns half of both neighbours, so that discontinuities are nodes.
  const store = new Float64Array(count)
  const loss = [new Float64Array(count), new Float64Array(count)] as const
  const drive = [new Float64Array(count), new Float64Array(count)] as const
  const link = new Float64Array(count)
  for (let k = 1; k < count; k += 1) {
    const [from, to] = [ends[k - 1] as number, ends[k] as number]
    const h = to - from
    const middle = (from + to) / 2
    const bare = middle < stub
    link[k] = kA / h
    for (const off of [0, 1] as const) {
      const inStream = off === 0 && middle < swept
      const film = inStream
        ? (all(tool.kind === 'hot-air' ? tool.sweptFilmWPerM2K : undefined) as number)
        : bare
          ? all(side.stubFilmWPerM2K)
          : all(side.insulationFilmWPerM2K)
      const g = bare ? Math.PI * d * film : 1 / (wallR + 1 / (Math.PI * outside * film))
      const envC = inStream && tool.kind === 'hot-air' ? tool.airC : input.ambientC
      for (const node of [k - 1, k]) {
        loss[off][node] = (loss[off][node] as number) + (g * h) / 2
        drive[off][node] = (drive[off][node] as number) + ((g * h) / 2) * envC
      }
    }
    for (const node of [k - 1, k]) store[node] = (store[node] as number) + ((metal + (bare ? 0 : wall)) * h) / 2
  }
  const at = (x: number) => ends.findIndex((end) => Math.abs(end - x) < 1e-9)
  let fixed: Boxes['fixed'] = null
  if (clip !== null) {
    const node = at(clip.distanceMm / 1000)
    if (clip.resistanceKPerW === 0) fixed = { at: node, c: clip.temperatureC }
    else
      for (const off of [0, 1] as const) {
        loss[off][node] = (loss[off][node] as number) + 1 / clip.resistanceKPerW
        drive[off][node] = (drive[off][node] as number) + clip.temperatureC / clip.resistanceKPerW
      }
  }
  const t = new Float64Array(count).fill(input.ambientC)
  const edge = at(stub)
  return { count, store, loss, drive, link, t, edge: [edge, edge], fixed }
}

export interface Remade {
  readonly solidusAtS: number | null
  readonly liquidusAtS: number | null
  readonly wettedAtS: number | null
  readonly jointAtToolOffC: number
  readonly jointC: readonly number[]
  readonly edgeC: readonly (readonly number[])[]
  readonly insulationPeakC: readonly number[]
}

/** One run, with a number of steps before and after the tool is removed. */
export function remadeRun(input: Golden, steps: number, fineness: number): Remade {
  const alloy = input.alloy as unknown as Alloy
  const { tool, joint, ambientC, toolOffS } = input
  const solder = (all(joint.solderMm3) / 1e9) * alloy.densityKgPerM3
  const stored =
    (joint.lapMm / 1000) * input.conductors.reduce((sum, side) => sum + (side.areaMm2 / 1e6) * all(side.densityKgPerM3) * all(side.specificHeatJPerKgK), 0) +
    solder * alloy.specificHeatJPerKgK
  const latent = solder * alloy.latentHeatJPerKg
  const span = alloy.liquidusC - alloy.solidusC
  const heatAt = (c: number, molten: number) => stored * c + latent * molten
  const heatOf = (c: number) => heatAt(c, span === 0 ? (c > alloy.solidusC ? 1 : 0) : Math.min(1, Math.max(0, (c - alloy.solidusC) / span)))
  const temperatureOf = (heat: number) => {
    if (heat <= stored * alloy.solidusC) return heat / stored
    if (heat >= stored * alloy.liquidusC + latent) return (heat - latent) / stored
    return alloy.solidusC + ((heat - stored * alloy.solidusC) * span) / (stored * span + latent)
  }
  const surface = all(joint.surfaceMm2) / 1e6
  const wires = input.conductors.map((side) => ({ tails: side.tails ?? 1, ...boxesOf(side, input, fineness) }))
  const lineA = wires.map(({ count }) => new Float64Array(count))
  const lineB = wires.map(({ count }) => new Float64Array(count))

  const stream = (jointC: number): number => {
    if (tool.kind !== 'hot-air') return 0
    if (tool.filmWPerM2K !== undefined) return tool.filmWPerM2K
    const { density, viscosity, conductivity, prandtl } = air((tool.airC + jointC) / 2, tool.pressurePa ?? 101325)
    const dM = joint.diameterMm / 1000
    return (churchillBernstein((density * all(tool.airSpeedMPerS) * dM) / viscosity, prandtl) * conductivity) / dM
  }
  let heat = heatOf(ambientC)
  let tipC = tool.kind === 'iron' ? tool.setC : 0
  const tipStore = tool.kind === 'iron' ? (tool.tipHeatCapacityJPerK ?? 0) : 0

  /** Tip temperature at the end of a step for joint temperature c: an implicit balance of two straight lines. */
  const tipAfter = (c: number, h: number): number => {
    if (tool.kind !== 'iron') return 0
    const limit = tool.maximumW ?? Number.POSITIVE_INFINITY
    const free =
      (tipStore * tipC + h * (tool.setC / tool.tipResistanceKPerW + c / tool.contactResistanceKPerW)) /
      (tipStore + h / tool.tipResistanceKPerW + h / tool.contactResistanceKPerW)
    return (tool.setC - free) / tool.tipResistanceKPerW <= limit
      ? free
      : (tipStore * tipC + h * (limit + c / tool.contactResistanceKPerW)) / (tipStore + h / tool.contactResistanceKPerW)
  }
  const power = (c: number, h: number): number => {
    if (tool.kind === 'hot-air') return stream(c) * surface * (tool.airC - c)
    if (tipStore > 0) return (tipAfter(c, h) - c) / tool.contactResistanceKPerW
    return Math.min(tool.maximumW ?? Number.POSITIVE_INFINITY, (tool.setC - c) / (tool.tipResistanceKPerW + tool.contactResistanceKPerW))
  }
  const surfaceLoss = (c: number, on: boolean): number =>
    all(joint.emissivity) * stefanBoltzmann * surface * ((c + 273.15) ** 4 - (ambientC + 273.15) ** 4) +
    (on && tool.kind === 'hot-air' ? 0 : all(joint.filmWPerM2K) * surface * (c - ambientC))

  const samples = input.sampleTimesS ?? []
  const jointC: number[] = []
  const edgeC: number[][] = wires.map(() => [])
  const peak = wires.map(() => ambientC)
  const first: Record<'solidus' | 'liquidus' | 'wetted', number | null> = { solidus: null, liquidus: null, wetted: null }
  const bounds = {
    solidus: heatAt(alloy.solidusC, 0),
    liquidus: heatAt(alloy.liquidusC, 1),
    wetted: heatAt(alloy.liquidusC + (input.wettingSuperheatK ?? 30), 1),
  }
  let nextSample = 0
  let jointAtToolOffC = ambientC

  function step(from: number, h: number, on: boolean): void {
    const off = on ? 0 : 1
    let slope = 0
    let offset = 0
    wires.forEach((wire, w) => {
      // Elimination from the far end: T[k] = A[k] T[k-1] + B[k].
      const [A, B] = [lineA[w] as Float64Array, lineB[w] as Float64Array]
      for (let k = wire.count - 1; k >= 1; k -= 1) {
        const beyond = k === wire.count - 1 ? 0 : (wire.link[k + 1] as number)
        const [nextA, nextB] = k === wire.count - 1 ? [0, 0] : [A[k + 1] as number, B[k + 1] as number]
        if (wire.fixed?.at === k) {
          A[k] = 0
          B[k] = wire.fixed.c
          continue
        }
        const own = (wire.store[k] as number) / h + (wire.loss[off][k] as number) + (wire.link[k] as number) + beyond * (1 - nextA)
        A[k] = (wire.link[k] as number) / own
        B[k] = (((wire.store[k] as number) / h) * (wire.t[k] as number) + (wire.drive[off][k] as number) + beyond * nextB) / own
      }
      // Node 0 is the joint; its half box has loss and heat capacity too.
      slope += wire.tails * ((wire.link[1] as number) * (1 - (A[1] as number)) + (wire.loss[off][0] as number) + (wire.store[0] as number) / h)
      offset +=
        wire.tails * ((wire.link[1] as number) * (B[1] as number) + (wire.drive[off][0] as number) + ((wire.store[0] as number) / h) * (wire.t[0] as number))
    })
    const balance = (trial: number) => {
      const c = temperatureOf(trial)
      return trial - heat - h * ((on ? power(c, h) : 0) - surfaceLoss(c, on) - slope * c + offset)
    }
    let [low, high] = [heatOf(-100), heatOf(1500)]
    for (let n = 0; n < 100; n += 1) {
      const middle = 0.5 * (low + high)
      if (balance(middle) > 0) high = middle
      else low = middle
    }
    const before = heat
    heat = 0.5 * (low + high)
    const c = temperatureOf(heat)
    if (on && tipStore > 0) tipC = tipAfter(c, h)
    const edgesBefore = wires.map((wire) => wire.t[wire.edge[0]] as number)
    wires.forEach((wire, w) => {
      wire.t[0] = c
      for (let k = 1; k < wire.count; k += 1) wire.t[k] = (lineA[w]?.[k] as number) * (wire.t[k - 1] as number) + (lineB[w]?.[k] as number)
      peak[w] = Math.max(peak[w] as number, wire.t[wire.edge[0]] as number)
    })
    for (const name of ['solidus', 'liquidus', 'wetted'] as const)
      if (first[name] === null && before < bounds[name] && heat >= bounds[name]) first[name] = from + (h * (bounds[name] - before)) / (heat - before)
    while (nextSample < samples.length && (samples[nextSample] as number) <= from + h + 1e-12) {
      const share = ((samples[nextSample] as number) - from) / h
      jointC.push(temperatureOf(before + share * (heat - before)))
      wires.forEach((wire, w) => {
        const old = edgesBefore[w] as number
        edgeC[w]?.push(old + share * ((wire.t[wire.edge[0]] as number) - old))
      })
      nextSample += 1
    }
  }

  // Steps grow from the start of each stretch: x^3 spacing.
  const stretch = (from: number, to: number, on: boolean) => {
    for (let k = 0; k < steps; k += 1) {
      const [a, b] = [from + (to - from) * (k / steps) ** 3, from + (to - from) * ((k + 1) / steps) ** 3]
      step(a, b - a, on)
    }
  }
  stretch(0, toolOffS, true)
  jointAtToolOffC = temperatureOf(heat)
  stretch(toolOffS, input.observeS ?? toolOffS + 30, false)
  return { solidusAtS: first.solidus, liquidusAtS: first.liquidus, wettedAtS: first.wetted, jointAtToolOffC, jointC, edgeC, insulationPeakC: peak }
}

/** Richardson extrapolation of two step counts: implicit Euler is of first order. */
export function remadeHeatJoint(input: Golden, steps = 3000): Remade {
  const [coarse, fine] = [remadeRun(input, steps, 2), remadeRun(input, 2 * steps, 2)]
  const one = (a: number | null, b: number | null) => (a === null || b === null ? null : 2 * b - a)
  const list = (a: readonly number[], b: readonly number[]) => b.map((value, k) => 2 * value - (a[k] as number))
  return {
    solidusAtS: one(coarse.solidusAtS, fine.solidusAtS),
    liquidusAtS: one(coarse.liquidusAtS, fine.liquidusAtS),
    wettedAtS: one(coarse.wettedAtS, fine.wettedAtS),
    jointAtToolOffC: 2 * fine.jointAtToolOffC - coarse.jointAtToolOffC,
    jointC: list(coarse.jointC, fine.jointC),
    edgeC: fine.edgeC.map((row, w) => list(coarse.edgeC[w] as readonly number[], row)),
    insulationPeakC: list(coarse.insulationPeakC, fine.insulationPeakC),
  }
}
