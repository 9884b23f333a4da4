/** Work arrays of a fit, so that steps allocate nothing. */
export class Space {
  readonly here: Float64Array
  readonly there: Float64Array
  readonly slopes: Float64Array
  readonly normal: Float64Array
  readonly damped: Float64Array
  readonly gradient: Float64Array
  readonly move: Float64Array
  readonly next: Float64Array

  constructor(rows: number, free: number, size: number) {
    this.here = new Float64Array(rows)
    this.there = new Float64Array(rows)
    this.slopes = new Float64Array(rows * free)
    this.normal = new Float64Array(free * free)
    this.damped = new Float64Array(free * free)
    this.gradient = new Float64Array(free)
    this.move = new Float64Array(free)
    this.next = new Float64Array(size)
  }
}
