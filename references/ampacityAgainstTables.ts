import { bundleTemperatureC, groupingFactor, steadyCurrentA, steadyCurrentBandA, type WireHeat } from '../packages/core/src/ampacity/index.ts'
import { awgToAreaMm2 } from '../packages/core/src/conductor/index.ts'
import { cfr183425, nec31016 } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

/** Where a table and the heat balance of one wire in free air differ: the share of the balance's lower answer that the table allows, recorded to two digits. */

/** Strands fill 0.78 of the conductor's circle; PVC of 0.17 W/(m K); still air. */
const wire = (areaMm2: number, insulationThicknessMm: number, ambientC: number): WireHeat => ({
  areaMm2,
  conductorDiameterMm: Math.sqrt((4 * areaMm2) / Math.PI / 0.78),
  insulationThicknessMm,
  insulationConductivityWPerMK: 0.17,
  ambientC,
})
const share = (tableA: number, it: WireHeat, limitC: number) => () => tableA / (steadyCurrentBandA({ ...it, limitC })?.low ?? Number.NaN)
const wall = (gauge: number) => (gauge > 9 ? 0.8 : gauge > 3 ? 1.2 : 1.5)

function boat(gauge: number, printed: string): ReferenceCase {
  const row = cfr183425.rowsA.find((one) => one.gauge === gauge)
  const tableA = row?.limit105C ?? Number.NaN
  return {
    title: `${row?.size} AWG, 105 C in 30 C, table ${tableA} A`,
    printed,
    unit: '1',
    got: share(tableA, wire(awgToAreaMm2(gauge), wall(gauge), 30), 105),
  }
}

function building(gauge: number, printed: string): ReferenceCase {
  const row = nec31016.rowsA.find((one) => one.gauge === gauge)
  const tableA = row?.limit90C ?? Number.NaN
  return { title: `${row?.size} AWG, 90 C in 30 C, table ${tableA} A`, printed, unit: '1', got: share(tableA, wire(awgToAreaMm2(gauge), wall(gauge), 30), 90) }
}

/** Fraction of the free-air current of each of n equal loaded wires in a round bundle, modelled as one cylinder. */
function bundled(loadedWires: number, packing: number): number {
  const one = { areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.4, insulationConductivityWPerMK: 0.2, ambientC: 20 }
  const freeA = steadyCurrentA({ ...one, limitC: 100 }) ?? Number.NaN
  let [low, high] = [0, freeA]
  for (let n = 0; n < 50; n += 1) {
    const middle = 0.5 * (low + high)
    if (bundleTemperatureC({ ...one, currentA: middle, loadedWires, bundleOutsideMm: packing * 2.08 }).centreC > 100) high = middle
    else low = middle
  }
  return low / freeA
}

const source = 'tables of allowable currents against the heat balance of one wire in free air'

export const reference: readonly Reference[] = [
  {
    source,
    clause: '33 CFR 183.425 table 5, insulation of 105 C',
    status: 'recorded',
    notes:
      'The table allows 9 to 14 % less: one rounded table for every make of wire up to two together, in a boat that is not still free air. Walls of 0.8, 1.2 and 1.5 mm are ours.',
    cases: [boat(18, '0.91'), boat(14, '0.91'), boat(10, '0.88'), boat(8, '0.86'), boat(0, '0.91')],
  },
  {
    source,
    clause: 'NFPA 70 table 310.16, insulation of 90 C',
    status: 'recorded',
    notes: 'The table allows a third less: it is for three loaded conductors together in a raceway, cable or earth, not for one in free air.',
    cases: [building(10, '0.66'), building(8, '0.66'), building(2, '0.63')],
  },
  {
    source: 'bundle curve and factors by count against the heat balance of one cylinder',
    clause: '7 and 19 equal wires of 1 mm2, all loaded, 100 C in 20 C',
    status: 'recorded',
    notes:
      'The curve of SAE AS50881 has 0.54 and 0.34 where the cylinder of the packed wires gives 0.53 and 0.38; the building code keeps 0.70 and 0.50 because its wires are never all fully loaded at the same time; boats 0.50 and 0.50.',
    cases: [
      { title: '7 wires, cylinder', printed: '0.53', unit: '1', got: () => bundled(7, 3) },
      { title: '19 wires, cylinder', printed: '0.38', unit: '1', got: () => bundled(19, 4.8637) },
      {
        title: '7 wires, cylinder over curve',
        printed: '0.98',
        unit: '1',
        got: () => bundled(7, 3) / groupingFactor({ loadedConductors: 7, table: 'as50881' }),
      },
      {
        title: '19 wires, cylinder over curve',
        printed: '1.10',
        unit: '1',
        got: () => bundled(19, 4.8637) / groupingFactor({ loadedConductors: 19, table: 'as50881' }),
      },
    ],
  },
]
