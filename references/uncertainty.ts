import { propagate } from '../packages/working/src/uncertainty/index.ts'
import type { Reference } from './compare.ts'

const million = 1_000_000
const normal = (value: number, standardUncertainty: number, degreesOfFreedom?: number) =>
  degreesOfFreedom === undefined ? { value, standardUncertainty } : { value, standardUncertainty, degreesOfFreedom }

/** Caches a million draws for all figures of an example. */
function once<K extends string, T>(make: (key: K) => T): (key: K) => T {
  const made = new Map<K, T>()
  return (key) => {
    const result = made.get(key) ?? make(key)
    made.set(key, result)
    return result
  }
}

const four = once((method: 'linear' | 'monte-carlo') =>
  propagate(({ a, b, c, d }) => a + b + c + d, { a: normal(0, 1), b: normal(0, 1), c: normal(0, 1), d: normal(0, 1) }, { method, draws: million }),
)

const logarithm = once((method: 'linear' | 'monte-carlo') => propagate(({ x }) => Math.log(x), { x: { low: 0.1, high: 1.1 } }, { method, draws: million }))

const expansion = once((method: 'linear' | 'monte-carlo') =>
  propagate(
    ({ before, after, cold, hot }) => (after - before) / (before * (hot - cold)),
    { before: normal(1.4999, 0.0001, 3), after: normal(1.5021, 0.0002, 3), cold: normal(288.15, 0.02, 3), hot: normal(373.1, 0.05, 3) },
    { method, draws: million },
  ),
)

/** Stefan-Boltzmann constant from the Planck, molar gas and Rydberg constants, the electron's mass and the fine-structure constant (2010 values). */
const radiation = (coverage: number) =>
  propagate(
    ({ planck, gas, rydberg, electron, fine }) => {
      const light = 299_792_458
      const molar = 1e-3
      return ((32 * Math.PI ** 5 * planck) / (15 * light ** 6)) * ((gas * rydberg) / (molar * electron * fine ** 2)) ** 4
    },
    {
      planck: normal(6.62606957e-34, 0.00000029e-34),
      gas: normal(8.3144621, 7.5e-6),
      rydberg: normal(10_973_731.568539, 5.5e-5),
      electron: normal(0.00054857990946, 2.2e-13),
      fine: normal(0.0072973525698, 2.4e-12),
    },
    { coverage },
  )

const ratio = () =>
  propagate(({ x1, x2, yu }) => (x1 / x2) * yu, { x1: normal(0.182, 0.00093, 9), x2: normal(0.1823, 0.00058, 19), yu: normal(0.6978, 0.0026, 19) })

const noise = (what: string) => `half the last digit and three standard deviations of ${what} over 10^6 draws`

export const reference: readonly Reference[] = [
  {
    source: 'JCGM 101:2008 (GUM Supplement 1)',
    clause: '9.2.2, table 2: sum of four standard normal inputs',
    status: 'published',
    cases: [
      { title: 'standard uncertainty, linear', printed: '2.0', unit: '1', got: () => four('linear').standardUncertainty },
      { title: 'upper end of the 95 % interval, linear', printed: '3.92', unit: '1', got: () => four('linear').high },
      { title: 'standard uncertainty, 10^6 draws', printed: '2.0', unit: '1', got: () => four('monte-carlo').standardUncertainty },
      {
        title: 'upper end of the 95 % interval, 10^6 draws',
        printed: '3.92',
        unit: '1',
        got: () => four('monte-carlo').high,
        allowed: { absolute: 0.021, why: noise('a 97.5 % quantile (0.0053)') },
      },
      {
        title: 'lower end of the 95 % interval, 10^6 draws',
        printed: '-3.92',
        unit: '1',
        got: () => four('monte-carlo').low,
        allowed: { absolute: 0.021, why: noise('a 2.5 % quantile (0.0053)') },
      },
    ],
  },
  {
    source: 'NPL report DEM-ES-011',
    clause: '9.2, table 9.2: ln x, x rectangular from 0.1 to 1.1',
    status: 'published',
    notes: 'A bent model: the linear uncertainty is a fifth below the drawn one.',
    cases: [
      { title: 'value, linear', printed: '-0.511', unit: '1', got: () => logarithm('linear').value },
      { title: 'standard uncertainty, linear', printed: '0.481', unit: '1', got: () => logarithm('linear').standardUncertainty },
      { title: 'upper end of the 95 % interval, linear', printed: '0.432', unit: '1', got: () => logarithm('linear').high },
      {
        title: 'mean, 10^6 draws',
        printed: '-0.665',
        unit: '1',
        got: () => logarithm('monte-carlo').value,
        allowed: { absolute: 0.0024, why: noise('a mean (0.0006)') },
      },
      {
        title: 'standard uncertainty, 10^6 draws',
        printed: '0.606',
        unit: '1',
        got: () => logarithm('monte-carlo').standardUncertainty,
        allowed: { absolute: 0.0026, why: noise('a standard deviation (0.0007)') },
      },
      {
        title: 'lower end of the shortest 95 % interval, 10^6 draws',
        printed: '-1.895',
        unit: '1',
        got: () => logarithm('monte-carlo').low,
        allowed: { absolute: 0.008, why: 'the exact end is ln 0.15 = -1.8971, 0.002 from the printed one; and three standard deviations of 10^6 draws' },
      },
      { title: 'upper end of the shortest 95 % interval, 10^6 draws', printed: '0.095', unit: '1', got: () => logarithm('monte-carlo').high },
    ],
  },
  {
    source: 'NIST Technical Note 1900',
    clause: 'example E13: thermal expansion from two lengths and two temperatures, 3 degrees of freedom each',
    status: 'published',
    cases: [
      { title: 'coefficient', printed: '1.7266e-5', unit: '1/K', got: () => expansion('linear').value },
      { title: 'standard uncertainty, linear', printed: '1.76e-6', unit: '1/K', got: () => expansion('linear').standardUncertainty },
      {
        title: 'coefficient, 10^6 draws',
        printed: '1.7268e-5',
        unit: '1/K',
        got: () => expansion('monte-carlo').value,
        allowed: { absolute: 1.1e-8, why: noise('a mean (0.18e-8), in theirs as in ours') },
      },
      {
        title: 'standard uncertainty, 10^6 draws',
        printed: '1.74e-6',
        unit: '1/K',
        got: () => expansion('monte-carlo').standardUncertainty,
        allowed: { relative: 0.02, why: 't draws of 3 degrees of freedom have no fourth moment: their standard deviation settles slowly, theirs as ours' },
      },
    ],
  },
  {
    source: "NIST Uncertainty Machine user's manual",
    clause: 'example 10: Stefan-Boltzmann constant from five constants',
    status: 'published',
    cases: [
      { title: 'value', printed: '5.67037e-8', unit: 'W/(m2 K4)', got: () => radiation(0.95).value },
      { title: 'standard uncertainty', printed: '2.05e-13', unit: 'W/(m2 K4)', got: () => radiation(0.95).standardUncertainty },
      { title: 'lower end, 99 %', printed: '5.67032e-8', unit: 'W/(m2 K4)', got: () => radiation(0.99).low },
      {
        title: 'upper end, 99 %',
        printed: '5.67043e-8',
        unit: 'W/(m2 K4)',
        got: () => radiation(0.99).high,
        allowed: { absolute: 0.6e-13, why: 'half the last digit and the noise of their 10^6 draws: the exact end is 5.670425e-8' },
      },
      { title: 'lower end, 68 %', printed: '5.67035e-8', unit: 'W/(m2 K4)', got: () => radiation(0.68).low },
      { title: 'upper end, 68 %', printed: '5.67039e-8', unit: 'W/(m2 K4)', got: () => radiation(0.68).high },
    ],
  },
  {
    source: 'ENGR224, course notes on measurement uncertainty',
    clause: 'Welch-Satterthwaite examples',
    status: 'published',
    cases: [
      {
        title: 'degrees of freedom of 0.57 (9) with 0.25 (endless)',
        printed: '12.8',
        unit: '1',
        got: () => propagate(({ a, b }) => a + b, { a: normal(0, 0.57, 9), b: normal(0, 0.25) }).degreesOfFreedom ?? 0,
      },
      { title: '0.182/0.1823 x 0.6978', printed: '0.6967', unit: '1', got: () => ratio().value },
      {
        title: 'standard uncertainty of that ratio',
        printed: '0.00494',
        unit: '1',
        got: () => ratio().standardUncertainty,
        allowed: { absolute: 1e-5, why: 'the notes add rounded components: unrounded they give 0.004932' },
      },
      {
        title: 'degrees of freedom of that ratio',
        printed: '27.7',
        unit: '1',
        got: () => ratio().degreesOfFreedom ?? 0,
        allowed: { absolute: 0.3, why: 'from the same rounded components: unrounded they give 27.51' },
      },
      { title: 'half of the 95 % interval of that ratio', printed: '0.0101', unit: '1', got: () => ratio().high - ratio().value },
    ],
  },
  {
    source: 'Sawhney, A Course in Mechanical Measurements and Instrumentation',
    clause: 'Examples 3.34 and 3.35, p. 123 to 125',
    status: 'derived',
    notes: 'The answers were read in a public companion that works the examples; the printed pages were not seen.',
    cases: [
      {
        title: 'sum of 200 A within 2 and 100 A within 5, root-sum-square',
        printed: '5.38516',
        unit: 'A',
        got: () => propagate(({ a, b }) => a + b, { a: normal(200, 2), b: normal(100, 5) }).standardUncertainty,
      },
      {
        title: '100 V within 12 over 10 A within 2',
        printed: '2.33238',
        unit: 'ohm',
        got: () => propagate(({ volts, amperes }) => volts / amperes, { volts: normal(100, 12), amperes: normal(10, 2) }).standardUncertainty,
      },
    ],
  },
]
