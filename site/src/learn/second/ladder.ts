/** Independent check of the lap's closed form: slices solved as a ladder of resistors by mesh currents. */
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
  // -rung left + (a + b + 2 rung) own - rung right = b; the current is 1 before the first mesh and 0 behind the last.
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
  // Along the first conductor, over the last rung, plus half a slice with the full current at either end.
  return a / 2 + a * along + rung * last + b / 2
}
