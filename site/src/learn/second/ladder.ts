/**
 * The lap cut into slices and solved as a ladder of resistors: mesh currents by elimination, no formula of the lap in it.
 * It checks the closed form on the lesson's page.
 */
export function ladderOhm(i: {
  readonly overlapMm: number
  readonly conductorsOhmPerM: readonly [number, number]
  readonly interfaceSPerM: number
  readonly slices: number
}): number {
  const dx = i.overlapMm / 1000 / i.slices
  const a = i.conductorsOhmPerM[0] * dx
  const b = i.conductorsOhmPerM[1] * dx
  const rung = 1 / (i.interfaceSPerM * dx)
  const meshes = i.slices - 1
  // -rung left + (a + b + 2 rung) own - rung right = b; before the first mesh flows 1, behind the last 0.
  const factor = new Float64Array(meshes)
  const rest = new Float64Array(meshes)
  for (let k = 0; k < meshes; k++) {
    const known = k === 0 ? b + rung : b + rung * (rest[k - 1] ?? 0)
    const pivot = a + b + 2 * rung - (k === 0 ? 0 : rung * (factor[k - 1] ?? 0))
    factor[k] = rung / pivot
    rest[k] = known / pivot
  }
  let current = 0
  let along = 0
  let last = 0
  for (let k = meshes - 1; k >= 0; k--) {
    current = (rest[k] ?? 0) + (factor[k] ?? 0) * current
    if (k === meshes - 1) last = current
    along += current
  }
  // Along the first conductor, over the last rung, and half a slice at either end that carries everything.
  return a / 2 + a * along + rung * last + b / 2
}
