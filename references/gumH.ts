import { propagate } from '../packages/working/src/uncertainty/index.ts'
import type { Reference } from './compare.ts'

/** H.1: length of a 50 mm end gauge against a standard, in nm; the three components of the difference are separate inputs. */
const endGauge = () =>
  propagate(
    ({ standard, difference, repeatability, random, systematic, expansion, expansionDifference, mean, cycle, temperatureDifference }) =>
      standard + difference + repeatability + random + systematic - standard * (expansionDifference * (mean + cycle) + expansion * temperatureDifference),
    {
      standard: { value: 50_000_623, standardUncertainty: 25, degreesOfFreedom: 18 },
      difference: { value: 215, standardUncertainty: 0 },
      repeatability: { value: 0, standardUncertainty: 5.8, degreesOfFreedom: 24 },
      random: { value: 0, standardUncertainty: 3.9, degreesOfFreedom: 5 },
      systematic: { value: 0, standardUncertainty: 6.7, degreesOfFreedom: 8 },
      expansion: { value: 11.5e-6, halfWidth: 2e-6, distribution: 'rectangular' },
      expansionDifference: { value: 0, standardUncertainty: 1e-6 / Math.sqrt(3), degreesOfFreedom: 50 },
      mean: { value: -0.1, standardUncertainty: 0.2 },
      cycle: { value: 0, halfWidth: 0.5, distribution: 'u-shaped' },
      temperatureDifference: { value: 0, standardUncertainty: 0.05 / Math.sqrt(3), degreesOfFreedom: 2 },
    },
  )
const component = (name: 'temperatureDifference' | 'expansionDifference' | 'standard' | 'systematic') => {
  const { standardUncertainty, shares } = endGauge()
  return standardUncertainty * Math.sqrt(shares[name])
}

/** H.2: resistance, reactance and impedance from volts, milliamperes and phase, observed together five times. */
const observed = {
  volts: [5.007, 4.994, 5.005, 4.99, 4.999],
  amperes: [0.019663, 0.019639, 0.01964, 0.019685, 0.019678],
  phase: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
} as const
type Observed = keyof typeof observed
const meanOf = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0) / list.length
const covarianceOfMeans = (first: readonly number[], second: readonly number[]) =>
  first.reduce((sum, value, at) => sum + (value - meanOf(first)) * ((second[at] ?? 0) - meanOf(second)), 0) / (first.length * (first.length - 1))
const deviation = (name: Observed) => Math.sqrt(covarianceOfMeans(observed[name], observed[name]))
const correlation = (first: Observed, second: Observed) => covarianceOfMeans(observed[first], observed[second]) / (deviation(first) * deviation(second))
const mean = (name: Observed) => ({ value: meanOf(observed[name]), standardUncertainty: deviation(name), degreesOfFreedom: 4 })

const together = (fn: (x: Readonly<Record<Observed, number>>) => number) =>
  propagate(
    fn,
    { volts: mean('volts'), amperes: mean('amperes'), phase: mean('phase') },
    {
      correlations: [
        ['volts', 'amperes', correlation('volts', 'amperes')],
        ['volts', 'phase', correlation('volts', 'phase')],
        ['amperes', 'phase', correlation('amperes', 'phase')],
      ],
    },
  )
const resistance = () => together(({ volts, amperes, phase }) => (volts / amperes) * Math.cos(phase))
const reactance = () => together(({ volts, amperes, phase }) => (volts / amperes) * Math.sin(phase))
const impedance = () => together(({ volts, amperes }) => volts / amperes)

export const reference: readonly Reference[] = [
  {
    source: 'JCGM 100:2008 (GUM)',
    clause: 'annex H.1, end-gauge calibration',
    status: 'published',
    notes: 'Read as a general uncertainty library quotes the document. The printed 16 effective degrees of freedom are cut down from 16.7 (G.4.1).',
    cases: [
      { title: 'length of the gauge: standard 50,000,623 nm and difference 215 nm', printed: '50000838', unit: 'nm', got: () => endGauge().value },
      { title: 'combined standard uncertainty, first order', printed: '32', unit: 'nm', got: () => endGauge().standardUncertainty },
      { title: 'effective degrees of freedom', printed: '16', unit: '1', got: () => Math.floor(endGauge().degreesOfFreedom ?? 0) },
      { title: 'component of the standard, 25 nm', printed: '25', unit: 'nm', got: () => component('standard') },
      { title: 'component of the systematic effect, 6.7 nm', printed: '6.7', unit: 'nm', got: () => component('systematic') },
      { title: 'component of the temperature difference, 0.05 K rectangular', printed: '16.599', unit: 'nm', got: () => component('temperatureDifference') },
      {
        title: 'component of the expansion difference, 1e-6/K rectangular',
        printed: '2.88679',
        unit: 'nm',
        got: () => component('expansionDifference'),
        allowed: { absolute: 6e-5, why: 'the printed figure takes the nominal 50 mm, ours the standard as calibrated, 12 parts in 10^6 longer' },
      },
    ],
  },
  {
    source: 'JCGM 100:2008 (GUM)',
    clause: 'annex H.2, simultaneous resistance and reactance',
    status: 'from memory',
    notes:
      'Observations and results are recalled; they agree with each other to the last digit. The recalled uncertainty of the reactance is cut, not rounded.',
    cases: [
      { title: 'resistance', printed: '127.732', unit: 'ohm', got: () => resistance().value },
      { title: 'reactance', printed: '219.847', unit: 'ohm', got: () => reactance().value },
      { title: 'impedance', printed: '254.260', unit: 'ohm', got: () => impedance().value },
      { title: 'uncertainty of the resistance, means correlated', printed: '0.071', unit: 'ohm', got: () => resistance().standardUncertainty },
      {
        title: 'uncertainty of the reactance, means correlated',
        printed: '0.295',
        unit: 'ohm',
        got: () => reactance().standardUncertainty,
        allowed: { absolute: 0.001, why: 'recalled as 0.295; the recalled observations give 0.29558' },
      },
      { title: 'uncertainty of the impedance, means correlated', printed: '0.236', unit: 'ohm', got: () => impedance().standardUncertainty },
      { title: 'degrees of freedom of means observed together', printed: '4', unit: '1', got: () => resistance().degreesOfFreedom ?? 0 },
    ],
  },
]
