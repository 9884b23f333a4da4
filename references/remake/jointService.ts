import type { JointSide, JointSite } from '../../packages/core/src/joint/index.ts'
import { root } from '../numerics.ts'
import { lossWPerM } from './air.ts'

type Site = JointSite & { readonly jointResistanceOhm: number; readonly jointResistanceCoefficientPerK: number }
const given = (value: number | undefined): number => value as number

/** Heat loss per metre of wire at a copper temperature, through insulation and surface. */
function outflow(coreM: number, outsideM: number, conductivity: number, around: Parameters<typeof lossWPerM>[2]): (copperC: number) => number {
  const wall = Math.log(outsideM / coreM) / (2 * Math.PI * conductivity)
  if (around.filmWPerM2K !== undefined) {
    const perK = 1 / (wall + 1 / (Math.PI * outsideM * around.filmWPerM2K))
    return (c) => perK * (c - around.ambientC)
  }
  return (c) => {
    const [from, to] = [Math.min(c, around.ambientC) - 1e-9, Math.max(c, around.ambientC) + 1e-9]
    return lossWPerM(
      root((s) => s + lossWPerM(s, outsideM, around) * wall - c, from, to),
      outsideM,
      around,
    )
  }
}

/** Heat flow into one wire at an end temperature, by integrating outwards: solves for the initial slope that levels off far away. */
function wire(side: JointSide, site: Site) {
  const area = side.areaMm2 * 1e-6
  const kA = given(side.conductivityWPerMK) * area
  const d = given(side.conductorDiameterMm) / 1000
  const outside = d + (2 * side.insulationThicknessMm) / 1000
  const around = (film: number | undefined, emissivity: number | undefined) => ({
    ambientC: site.ambientC,
    ...(film === undefined ? {} : { filmWPerM2K: film }),
    ...(emissivity === undefined ? {} : { emissivity }),
    ...(site.pressurePa === undefined ? {} : { pressurePa: site.pressurePa }),
    ...(site.correlation === undefined ? {} : { correlation: site.correlation }),
  })
  const made = (c: number) => site.currentA ** 2 * (given(side.resistivity20OhmM) / area) * (1 + given(side.temperatureCoefficient20PerK) * (c - 20))
  const open = outflow(d, outside, side.insulationConductivityWPerMK, around(side.filmWPerM2K, side.emissivity))
  const { sleeve } = site
  const covered = sleeve
    ? outflow(sleeve.coreDiameterMm / 1000, sleeve.outsideDiameterMm / 1000, sleeve.conductivityWPerMK, around(sleeve.filmWPerM2K, sleeve.emissivity))
    : open
  const farC = root((c) => open(c) - made(c), site.ambientC - 1, 2500)
  const sleeveM = sleeve ? sleeve.lengthMm / 2000 : 0
  /** Flow into the open part by its end temperature, by the first integral between that and the far temperature (midpoint sums extrapolated). */
  const openFlow = (endC: number): number => {
    const sum = (n: number) => {
      let total = 0
      const h = (endC - farC) / n
      for (let k = 0; k < n; k += 1) {
        const c = farC + (k + 0.5) * h
        total += (open(c) - made(c)) * h
      }
      return total
    }
    const integral = (4 * sum(400) - sum(200)) / 3
    return Math.sign(endC - farC) * Math.sqrt(Math.max(0, 2 * kA * integral))
  }
  /** From the sleeve's end inwards in fourth-order steps: temperature and flow at the joint. */
  const inwards = (endC: number): readonly [number, number] => {
    let [c, q] = [endC, openFlow(endC)]
    const n = 200
    const h = sleeveM / n
    const rate = (at: number, flow: number) => [flow / kA, covered(at) - made(at)] as const
    for (let k = 0; k < n; k += 1) {
      const a = rate(c, q)
      const b = rate(c + (h / 2) * a[0], q + (h / 2) * a[1])
      const e = rate(c + (h / 2) * b[0], q + (h / 2) * b[1])
      const f = rate(c + h * e[0], q + h * e[1])
      c += (h / 6) * (a[0] + 2 * b[0] + 2 * e[0] + f[0])
      q += (h / 6) * (a[1] + 2 * b[1] + 2 * e[1] + f[1])
    }
    return [c, q]
  }
  const flow = (jointC: number): number => {
    if (sleeveM === 0) return openFlow(jointC)
    const [low, high] = [Math.min(site.ambientC, farC) - 5, Math.max(jointC, farC) + 50]
    return inwards(root((endC) => inwards(endC)[0] - jointC, low, high))[1]
  }
  return { farC, flow }
}

/** Joint and far temperatures and flows of a steady joint in service. */
export function remadeJointService(site: Site): { readonly jointC: number; readonly farC: readonly number[]; readonly wireFlowW: readonly number[] } {
  const wires = site.conductors.map((side) => wire(side, site))
  const made = (c: number) => site.currentA ** 2 * site.jointResistanceOhm * (1 + site.jointResistanceCoefficientPerK * (c - 20))
  const from = Math.min(...wires.map(({ farC }) => farC))
  const excess = (c: number) => wires.reduce((sum, { flow }) => sum + flow(c), 0) - made(c)
  let to = from + 1
  while (excess(to) < 0) to += Math.max(5, to - from)
  let [low, high] = [from, to]
  for (let n = 0; n < 60; n += 1) {
    const middle = 0.5 * (low + high)
    if (excess(middle) > 0) high = middle
    else low = middle
  }
  const jointC = 0.5 * (low + high)
  return { jointC, farC: wires.map(({ farC }) => farC), wireFlowW: wires.map(({ flow }) => flow(jointC)) }
}
