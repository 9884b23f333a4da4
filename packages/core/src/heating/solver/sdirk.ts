// Singly diagonally implicit Runge-Kutta method of five stages and order 4, L-stable, its last stage the step's end: Hairer and Wanner, Solving Ordinary
// Differential Equations II, table IV.6.5. Written without slopes: as a stage's slope is (Y - z)/(gamma h), each z is a fixed mixture of earlier states.

export const stages = 5
/** Each stage is an implicit step of this share. */
export const gamma = 1 / 4

/** z of stages 1 to 5, of the start and the stages before it. */
const mixtures: readonly Float64Array[] = [
  Float64Array.of(1, 0, 0, 0, 0),
  Float64Array.of(-1, 2, 0, 0, 0),
  Float64Array.of(-13 / 25, 42 / 25, -4 / 25, 0, 0),
  Float64Array.of(-4 / 17, 89 / 68, -25 / 136, 15 / 136, 0),
  Float64Array.of(7 / 3, -37 / 12, -103 / 24, 275 / 8, -85 / 3),
]
/** The estimate of the step's error, of the start and all stages. */
const errorMixture = Float64Array.of(-10 / 3, 23 / 6, 17 / 12, -125 / 4, 85 / 3, 1)
/** Weights of the stages' slopes over the step. */
export const weights = Float64Array.of(25 / 24, -49 / 48, 125 / 16, -85 / 12, 1 / 4)

/** Writes z of a stage into the stage's own list. */
export function mix(states: readonly Float64Array[], stage: number, length: number): void {
  const c = mixtures[stage - 1] as Float64Array
  const into = states[stage] as Float64Array
  const y0 = states[0] as Float64Array
  const y1 = states[1] as Float64Array
  const y2 = states[2] as Float64Array
  const y3 = states[3] as Float64Array
  const y4 = states[4] as Float64Array
  const c0 = c[0] as number
  const c1 = c[1] as number
  const c2 = c[2] as number
  const c3 = c[3] as number
  const c4 = c[4] as number
  switch (stage) {
    case 1:
      for (let i = 0; i < length; i++) into[i] = c0 * (y0[i] as number)
      return
    case 2:
      for (let i = 0; i < length; i++) into[i] = c0 * (y0[i] as number) + c1 * (y1[i] as number)
      return
    case 3:
      for (let i = 0; i < length; i++) into[i] = c0 * (y0[i] as number) + c1 * (y1[i] as number) + c2 * (y2[i] as number)
      return
    case 4:
      for (let i = 0; i < length; i++) into[i] = c0 * (y0[i] as number) + c1 * (y1[i] as number) + c2 * (y2[i] as number) + c3 * (y3[i] as number)
      return
    default:
      for (let i = 0; i < length; i++)
        into[i] = c0 * (y0[i] as number) + c1 * (y1[i] as number) + c2 * (y2[i] as number) + c3 * (y3[i] as number) + c4 * (y4[i] as number)
  }
}

/** The error of one entry over the step. */
export function errorOf(states: readonly Float64Array[], i: number): number {
  let sum = 0
  for (let s = 0; s <= stages; s++) sum += (errorMixture[s] as number) * ((states[s] as Float64Array)[i] as number)
  return sum
}
