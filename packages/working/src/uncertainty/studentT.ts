/** Term limit of the series and the fraction below; both converge long before. */
const mostTerms = 500
const lastBit = 1e-16

/** Share of a normal distribution within k standard deviations either side: erf(k/sqrt 2), by its series of positive terms. */
export function normalWithin(k: number): number {
  if (k > 8.5) return 1
  const half = (k * k) / 2
  let term = k
  let sum = term
  for (let n = 1; n < mostTerms && term > lastBit * sum; n++) {
    term *= (k * k) / (2 * n + 1)
    sum += term
  }
  return Math.sqrt(2 / Math.PI) * Math.exp(-half) * sum
}

/** Share of Student's distribution outside t either side: I(nu/2, 1/2) at nu/(nu + t^2). */
function studentOutside(t: number, degreesOfFreedom: number): number {
  const x = degreesOfFreedom / (degreesOfFreedom + t * t)
  return incompleteBeta(x, degreesOfFreedom / 2, 0.5)
}

/** Regularised incomplete beta function, by its continued fraction (Lentz's algorithm). */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0
  if (x >= 1) return 1
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a)
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x)) / a
  let d = 1 / (1 - ((a + b) * x) / (a + 1))
  let c = 1
  let fraction = d
  for (let m = 1; m < mostTerms; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / (1 + even * d)
    c = 1 + even / c
    fraction *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / (1 + odd * d)
    c = 1 + odd / c
    fraction *= d * c
    if (Math.abs(d * c - 1) < lastBit) break
  }
  return front * fraction
}

/** ln Gamma by Stirling's series, with the argument shifted to where five terms suffice. */
function logGamma(x: number): number {
  let shift = 0
  let z = x
  for (; z < 15; z++) shift += Math.log(z)
  const inverse = 1 / z
  const square = inverse * inverse
  const series = inverse * (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square * (1 / 1680 - square / 1188))))
  return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series - shift
}

/** From this many degrees of freedom, Student's distribution is normal within 1e-8. */
const asGoodAsNormal = 1e8

/** The coverage factor k: this share of the distribution is within k standard deviations; null degrees of freedom means infinite. */
export function coverageFactor(coverage: number, degreesOfFreedom: number | null): number {
  const normal = degreesOfFreedom === null || degreesOfFreedom >= asGoodAsNormal
  const outside = (k: number): number => (normal ? 1 - normalWithin(k) : studentOutside(k, degreesOfFreedom))
  const wanted = 1 - coverage
  let low = 0
  let high = 1
  while (outside(high) > wanted && high < 1e12) high *= 2
  // Bisection gains a bit a step: 80 steps are enough for a double.
  for (let step = 0; step < 80 && high - low > lastBit * high; step++) {
    const middle = (low + high) / 2
    if (outside(middle) > wanted) low = middle
    else high = middle
  }
  return (low + high) / 2
}
