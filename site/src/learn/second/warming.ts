import { heatFlowWPerM, insulationResistanceMKPerW } from '@strandwise/core/heat'
import { metal } from '@strandwise/core/materials'

/** Bisections, enough for a double. */
const halvings = 60

/** Seconds in which the copper of a wire warms from the air to a temperature: small equal steps, heat stored in the copper alone. An independent solution: it shares air properties and radiation with the library, but neither steps nor start. */
export function warmingS(i: {
  readonly areaMm2: number
  readonly insulationThicknessMm: number
  readonly insulationConductivityWPerMK: number
  readonly ambientC: number
  readonly currentA: number
  readonly wantedC: number
  readonly stepS: number
}): number {
  const copper = metal('annealed-copper')
  const ohm20 = (1e6 * copper.resistivity20OhmM.nominal) / i.areaMm2
  const perK = copper.temperatureCoefficient20PerK.nominal
  const heatJPerMK = 1e-6 * i.areaMm2 * copper.densityKgPerM3.nominal * copper.specificHeatJPerKgK.nominal
  const conductorDiameterMm = 2 * Math.sqrt(i.areaMm2 / Math.PI)
  const diameterMm = conductorDiameterMm + 2 * i.insulationThicknessMm
  const wall = insulationResistanceMKPerW({ conductorDiameterMm, outsideDiameterMm: diameterMm, conductivityWPerMK: i.insulationConductivityWPerMK })
  const lostWPerM = (copperC: number): number => {
    let [low, high] = [i.ambientC, copperC]
    for (let step = 0; step < halvings; step++) {
      const surfaceC = (low + high) / 2
      const flow = heatFlowWPerM({ surfaceC, ambientC: i.ambientC, diameterMm, emissivity: 0.9 }).totalWPerM
      if (flow < (copperC - surfaceC) / wall) low = surfaceC
      else high = surfaceC
    }
    return (copperC - (low + high) / 2) / wall
  }
  const rise = (copperC: number): number => (i.currentA ** 2 * ohm20 * (1 + perK * (copperC - 20)) - lostWPerM(copperC)) / heatJPerMK
  let copperC = i.ambientC
  for (let time = 0; ; time += i.stepS) {
    const next = copperC + i.stepS * rise(copperC + (i.stepS / 2) * rise(copperC))
    if (next >= i.wantedC) return time + (i.stepS * (i.wantedC - copperC)) / (next - copperC)
    copperC = next
  }
}
