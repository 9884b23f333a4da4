import { referenceC } from './jointModel.ts'
import type { Zone } from './sleeveZone.ts'
import { spreadLoss } from './spreadJump.ts'
import { slopeStepK, wireEnd } from './wireFlow.ts'

/** Linearises the side about its present state and eliminates it from the sleeve's end to the joint. */
export function sweep(zone: Zone): void {
  const { model, side, h, P, Q, slope, constant } = zone
  const kA = side.kA
  zone.wire = wireEnd(model, side, zone.far, zone.wireSurfaceC)
  const W = zone.wire.flowWPerK
  const V = zone.wire.flowW - W * (zone.wire.coreC - model.ambientC)
  const n = slope.length - 1
  if (n === 0) {
    zone.Y = W
    zone.J = -V
    return
  }
  for (let k = 0; k <= n; k++) linearise(zone, k)
  const twelfth = (h * h) / 12
  const at = (list: Float64Array, k: number): number => list[k] as number
  // At the ends the flow has a Hermite form of the same order, T1 - T0 - h T0' (1 + h^2 f'/12) = h^2 (5 f0 + f1)/12.
  const endScale = (h / kA) * (1 + twelfth * at(slope, 0))
  const first = 1 + endScale * W + 5 * twelfth * at(slope, 0)
  P[0] = (1 - twelfth * at(slope, 1)) / first
  Q[0] = -(endScale * V + twelfth * (5 * at(constant, 0) + at(constant, 1))) / first
  for (let k = 1; k < n; k++) {
    const lower = 1 - twelfth * at(slope, k - 1)
    const pivot = -2 - 10 * twelfth * at(slope, k) + lower * at(P, k - 1)
    P[k] = -(1 - twelfth * at(slope, k + 1)) / pivot
    Q[k] = (twelfth * (at(constant, k - 1) + 10 * at(constant, k) + at(constant, k + 1)) - lower * at(Q, k - 1)) / pivot
  }
  const lower = 1 - twelfth * at(slope, n - 1)
  const jointScale = kA / (h * (1 + twelfth * at(slope, n)))
  zone.Y = jointScale * (1 + 5 * twelfth * at(slope, n) - lower * at(P, n - 1))
  zone.J = jointScale * (lower * at(Q, n - 1) - twelfth * (5 * at(constant, n) + at(constant, n - 1)))
}

/** Back substitution for a rise of the joint; returns the largest distance from the state of linearisation. */
export function moveTo(zone: Zone, jointRise: number): number {
  const { model, surface, core, corePerSurface, P, Q } = zone
  const n = surface.length - 1
  let rise = jointRise
  let moved = 0
  for (let k = n; k >= 0; k--) {
    if (k < n) rise = (P[k] as number) * rise + (Q[k] as number)
    if (n > 0) {
      const step = rise - (core[k] as number)
      moved = Math.max(moved, Math.abs(step))
      // Nothing is below ambient.
      surface[k] = Math.max(0, (surface[k] as number) + step / (corePerSurface[k] as number))
    }
  }
  const step = rise - (zone.wire.coreC - model.ambientC)
  zone.wireSurfaceC = Math.max(model.ambientC, zone.wireSurfaceC + step / zone.wire.corePerSurface)
  zone.endRise = rise
  return Math.max(moved, Math.abs(step))
}

/** Loss through the sleeve less own heating at one node, linearised about the present surface temperature. */
function linearise(zone: Zone, k: number): void {
  const { model, side } = zone
  const way = side.sleeve ?? side.wire
  const R = way.wallMKPerW
  const heating = model.currentA * model.currentA * side.r20
  const surface = zone.surface[k] as number
  const step = slopeStepK(surface)
  const loss = spreadLoss(model, way, zone.jumps, surface)
  const lossPerK = (spreadLoss(model, way, zone.jumps, surface + step) - loss) / step
  const core = surface + R * loss
  const perK = lossPerK / (1 + R * lossPerK)
  zone.core[k] = core
  zone.corePerSurface[k] = 1 + R * lossPerK
  zone.slope[k] = (perK - heating * side.alpha) / side.kA
  zone.constant[k] = (loss - perK * core - heating * (1 + side.alpha * (model.ambientC - referenceC))) / side.kA
}
