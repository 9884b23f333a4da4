import { altitudeFactor, bundleCurrentA, deratedCurrentA, steadyCurrentA, steadyCurrentBandA } from '../packages/core/src/ampacity/index.ts'
import { coilResistanceAtOhm, voltageDropV } from '../packages/core/src/circuit/index.ts'
import { circularMilsToMm2 } from '../packages/core/src/conductor/index.ts'
import { type FaaWireRow, faaAc4313 } from '../packages/core/src/tables/index.ts'
import { halfLastDigit, type Reference, type ReferenceCase } from './compare.ts'

const row = (runFt: number, gauge: string, ohmPerFt: number, printed: string): ReferenceCase => ({
  title: `20 A through ${runFt} ft of AWG ${gauge} at ${ohmPerFt} ohm/ft`,
  printed,
  unit: 'V',
  got: () => voltageDropV({ currentA: 20, outResistanceOhm: runFt * ohmPerFt, returnResistanceOhm: 0 }),
})

const source = 'FAA AC 43.13-1B, Acceptable Methods, Techniques, and Practices, aircraft inspection and repair'
const edition = '8 September 1998 with change 1 of 27 September 2001'

/** A run of 39 ft at 20 C, shortened at another temperature to keep the drop. */
const shortened = (temperatureC: number, printed: string): ReferenceCase => ({
  title: `39 ft at 20 C, shortened for copper at ${temperatureC} C`,
  printed,
  unit: 'ft',
  got: () => 39 / coilResistanceAtOhm({ resistanceOhm: 1, atC: 20, wantedC: temperatureC }),
  allowed: { relative: 1.5e-4, why: 'the circular rounds the zero-resistance temperature of copper to -234.5 C; a coefficient of 0.00393 gives -234.45 C' },
})

/** Thinnest gauge of the circular's own wire within a drop. */
function gaugeFor(currentA: number, runFt: number, allowedV: number): number {
  const drops = faaAc4313.wires.map(({ gauge, tinnedOhmPer1000Ft }) => ({
    gauge,
    dropV: voltageDropV({ currentA, outResistanceOhm: (runFt * tinnedOhmPer1000Ft) / 1000, returnResistanceOhm: 0 }),
  }))
  return Math.max(...drops.filter(({ dropV }) => dropV <= allowedV).map(({ gauge }) => gauge))
}

const circular = { status: 'published', source: 'FAA AC 43.13-1B' } as const
const chain = (baseA: number, ...factors: readonly number[]) =>
  deratedCurrentA({ baseA, links: factors.map((factor) => ({ name: 'link', factor, source: circular })) }).currentA
const footM = 0.3048

/** The circular's example: 14 AWG of 3831 circular mils filling 0.75 of its circle, 0.25 mm wall, air at 50 C. */
const wire = {
  areaMm2: circularMilsToMm2(3831),
  conductorDiameterMm: Math.sqrt((4 * circularMilsToMm2(3831)) / Math.PI / 0.75),
  insulationThicknessMm: 0.25,
  insulationConductivityWPerMK: 0.24,
  ambientC: 50,
  limitC: 200,
}
/** Standard atmosphere at 20,000 and 60,000 ft. */
const pressureAt20000FtPa = 46563
const pressureAt60000FtPa = 7171

const resistivityOf = ({ circularMils, tinnedOhmPer1000Ft }: FaaWireRow): number =>
  (tinnedOhmPer1000Ft / (1000 * footM)) * circularMilsToMm2(circularMils) * 1e-6
const fourteen = faaAc4313.wires.find(({ gauge }) => gauge === 14) as FaaWireRow

/** A wire of table 11-9 in its harness: 33 wires for 24 to 10 and 9 for the thicker, a fifth of them loaded. */
function harness(row: FaaWireRow, limitC: number): number {
  const areaMm2 = circularMilsToMm2(row.circularMils)
  const conductorDiameterMm = Math.sqrt((4 * areaMm2) / Math.PI / 0.75)
  const wires = row.gauge >= 10 ? 33 : 9
  const bundleOutsideMm = Math.sqrt(wires / 0.8) * (conductorDiameterMm + 2 * wire.insulationThicknessMm)
  const loadedWires = Math.round(wires / 5)
  const resistivity20OhmM = resistivityOf(row)
  const current = bundleCurrentA({
    ...wire,
    areaMm2,
    conductorDiameterMm,
    resistivity20OhmM,
    ambientC: 70,
    pressurePa: pressureAt60000FtPa,
    limitC,
    loadedWires,
    bundleOutsideMm,
  })
  return current ?? Number.NaN
}

const harnessCases = faaAc4313.wires.flatMap((row) =>
  ([105, 150, 200] as const).map((limitC): ReferenceCase => {
    const printed = row[`limit${limitC}CA`]
    const ohm = String(row.tinnedOhmPer1000Ft)
    return {
      title: `AWG ${row.size}, ${limitC} C`,
      printed: String(printed),
      unit: 'A',
      got: () => harness(row, limitC),
      allowed: {
        absolute: 0.5 + 0.07 * printed + ((0.5 * halfLastDigit(ohm)) / row.tinnedOhmPer1000Ft) * printed,
        why: 'whole amperes; the resistance has two or three digits; 7 % for the walls, fillings and the number of wires, which the table gives as 33 or more',
      },
    }
  }),
)

export const reference: readonly Reference[] = [
  {
    source,
    edition,
    clause: 'table 11-7, drop of the run and gauge that the chart gives',
    status: 'published',
    cases: [row(107, '6', 0.00044, '0.942'), row(90, '4', 0.00028, '0.504'), row(88, '12', 0.00202, '3.6'), row(100, '14', 0.00306, '6.12')],
  },
  {
    source,
    edition,
    clause: 'table 11-8, drop of the longest run that the chart gives',
    status: 'published',
    notes: 'The row of 19.5 ft prints .366 where the product is 0.4914: a misprint, not used.',
    cases: [row(39, '10', 0.00126, '0.98'), row(156, '10', 0.00126, '3.93'), row(273, '10', 0.00126, '6.88')],
  },
  {
    source,
    edition,
    clause: 'paragraph 11-68, example 1',
    status: 'published',
    notes:
      "Its tin-plated AWG 10 has 26 % more resistance than solid pure copper of that gauge, which would keep 1 V by a hair: a size by pure copper is not the circular's.",
    cases: [{ title: '20 A, continuous, over 50 ft within 1 V of 28 V', printed: '8', unit: 'AWG', got: () => gaugeFor(20, 50, 1) }],
  },
  {
    source,
    edition,
    clause: 'paragraph 11-66 (4), rule of the shortened run; no figure is printed, these follow from the rule',
    status: 'derived',
    cases: [shortened(60, '33.703'), shortened(100, '29.673'), shortened(150, '25.814')],
  },

  {
    source,
    edition,
    clause: 'par. 11-68, example 2: 14 AWG, 47 A in free air, 20,000 ft, 8 wires at 60 %',
    status: 'published',
    cases: [
      { title: '47 A times the altitude factor 0.91', printed: '42.77', unit: 'A', got: () => chain(47, 0.91) },
      { title: 'and times the bundle factor 0.6', printed: '26', unit: 'A', got: () => chain(47, 0.91, 0.6) },
    ],
  },
  {
    source,
    edition,
    clause: 'figure 11-4 as its example reads it: 14 AWG in free air of 50 C, at 200 C',
    status: 'published',
    cases: [
      {
        title: 'middle of the band of two correlations, tinned wire of table 11-9',
        printed: '47',
        unit: 'A',
        got: () => {
          const band = steadyCurrentBandA({ ...wire, resistivity20OhmM: resistivityOf(fourteen) })
          return band === null ? Number.NaN : (band.low + band.high) / 2
        },
        allowed: { relative: 0.03, why: 'the two correlations lie 6 % apart, and the example reads a curve' },
      },
    ],
  },
  {
    source,
    edition,
    clause: 'table 11-9, currents of wires in a harness at 60,000 ft in 70 C, a fifth of the wires loaded',
    status: 'published',
    notes: "One heat balance for all gauges and ratings: walls of 0.25 mm and 0.24 W/(m K) are ours, areas and resistances the table's own.",
    cases: harnessCases,
  },
  {
    source,
    edition,
    clause: 'par. 11-69, harness example 1: 60,000 ft, 35 wires at 20 %',
    status: 'from memory',
    cases: [
      { title: '20 AWG, 21.5 A times the bundle factor 0.52', printed: '11.2', unit: 'A', got: () => chain(21.5, 0.52) },
      { title: '22 AWG, 16.2 A times the bundle factor 0.52', printed: '8.4', unit: 'A', got: () => chain(16.2, 0.52) },
      { title: '20 AWG, 11.2 A times the altitude factor 0.79', printed: '8.8', unit: 'A', got: () => chain(11.2, 0.79) },
      { title: '22 AWG, 8.4 A times the altitude factor 0.79', printed: '6.6', unit: 'A', got: () => chain(8.4, 0.79) },
      {
        title: 'harness of 10 and 25 wires, a fifth of it loaded',
        printed: '50.6',
        unit: 'A',
        got: () => chain(10 * chain(11.2, 0.79) + 25 * chain(8.4, 0.79), 0.2),
        allowed: { absolute: 0.3, why: 'the circular adds currents rounded to 0.1 A: half of that over 35 wires, a fifth loaded' },
      },
    ],
  },
  {
    source,
    edition,
    clause: 'figure 11-5 at 20,000 ft reads 0.91: what the library gives instead',
    status: 'recorded',
    notes:
      'Recorded difference: laminar convection alone gives 0.854 and over-derates. The heat balance with the pressure of that height gives 0.934, because radiation does not thin with the air; the curve, drawn for many wires, lies between.',
    cases: [
      { title: 'altitudeFactor at 6096 m', printed: '0.854', unit: '1', got: () => altitudeFactor({ altitudeM: 20000 * footM }) },
      {
        title: 'heat balance of the 14 AWG wire at 200 C in 50 C, 46.6 kPa over sea level',
        printed: '0.934',
        unit: '1',
        got: () => (steadyCurrentA({ ...wire, pressurePa: pressureAt20000FtPa }) ?? 0) / (steadyCurrentA(wire) ?? 1),
      },
    ],
  },
]
