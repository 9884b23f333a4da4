import { insulation } from '@strandwise/core'
import { quietly } from './assume.ts'
import type { AddIssue } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'
import { roundedDown, roundedUp } from './rounded.ts'
import { wireShape } from './wireShape.ts'
import { evenStrandMm, type WireSize } from './wireSize.ts'

/** Limits of the strands' metal area over the wire's area, allowing for rounded diameters and nominal areas. A limit of ours. */
const strandMetal = { least: 0.75, most: 4 / 3 }

/** Finest strand in wire. Common practice, no published source. */
const finestStrandMm = 0.02

/** Contradictory strands, metal, wall and bundle of a wire. */
export function wireContradictions({ wire, damage }: RepairJob, size: WireSize | null, add: AddIssue): void {
  const strands = size?.strandCount ?? wire.strandCount
  if (wire.strandDiameterMm !== undefined && strands === undefined)
    add('wire.strandCount', undefined, 'the number of strands with strandDiameterMm', '"strandCount": 19')
  if (damage.brokenStrands !== undefined && strands !== undefined && damage.brokenStrands > strands)
    add('damage.brokenStrands', damage.brokenStrands, `at most the wire's ${strands} strands`, `"brokenStrands": ${strands}`)
  else if (damage.kind === 'partly-broken' && damage.brokenStrands !== undefined && damage.brokenStrands === strands)
    add('damage.brokenStrands', damage.brokenStrands, `fewer than the wire's ${strands} strands, or the kind "broken"`, `"brokenStrands": ${strands - 1}`)
  gradeAgainstFamily(wire, add)
  if (size === null) return
  strandsAgainstArea(wire, size, add)
  outsideAgainstMetal(wire, size, add)
}

function gradeAgainstFamily({ insulation: name, insulationGradeC }: RepairJob['wire'], add: AddIssue): void {
  const { high } = insulation(name).continuousC
  if (insulationGradeC !== undefined && insulationGradeC > high)
    add('wire.insulationGradeC', insulationGradeC, `at most ${high} °C, the highest grade of ${name}`, `"insulationGradeC": ${high}`)
}

function strandsAgainstArea(wire: RepairJob['wire'], size: WireSize, add: AddIssue): void {
  const { areaMm2, printedStrands, strandCount } = size
  if (printedStrands !== undefined && strandCount !== printedStrands) {
    add('wire.strandCount', strandCount, `the ${printedStrands} strands of its size, ${size.text}`, `"strandCount": ${printedStrands}`)
    return
  }
  if (strandCount === undefined) return
  const evenMm = evenStrandMm(areaMm2, strandCount)
  if (evenMm < finestStrandMm) {
    const most = Math.floor((4 * areaMm2) / (Math.PI * finestStrandMm ** 2))
    const metal = `${Number(areaMm2.toPrecision(3))} mm²`
    if (printedStrands !== undefined) add('wire.size', wire.size, `strands of at least ${finestStrandMm} mm`, '"size": "7/0.3 mm"')
    else
      add(
        'wire.strandCount',
        strandCount,
        `at most ${most}: so many of the finest strands, ${finestStrandMm} mm, make ${metal}`,
        `"strandCount": ${Math.min(19, most)}`,
      )
    return
  }
  if (wire.strandDiameterMm === undefined) return
  const lowMm = Math.sqrt(strandMetal.least) * evenMm
  const highMm = Math.sqrt(strandMetal.most) * evenMm
  if (wire.strandDiameterMm < lowMm || wire.strandDiameterMm > highMm)
    add(
      'wire.strandDiameterMm',
      wire.strandDiameterMm,
      `from ${roundedUp(lowMm)} to ${roundedDown(highMm)} mm: so thick, ${strandCount} strands make the wire's ${Number(areaMm2.toPrecision(3))} mm²`,
      `"strandDiameterMm": ${Number(evenMm.toPrecision(3))}`,
    )
}

function outsideAgainstMetal(wire: RepairJob['wire'], size: WireSize, add: AddIssue): void {
  const { outsideMm, leastOutsideMm } = wireShape(wire, size, quietly)
  if (outsideMm < leastOutsideMm) {
    const told = roundedUp(leastOutsideMm)
    const wall = wire.insulationThicknessMm === undefined ? '' : ' and twice the insulation'
    add('wire.outsideDiameterMm', outsideMm, `at least ${told} mm: the metal${wall}`, `"outsideDiameterMm": ${roundedUp(leastOutsideMm + 0.2)}`)
    return
  }
  const loaded = wire.loadedInBundle ?? 1
  // For a single wire only a measured outside is checked: nothing is computed from its bundle.
  if (wire.bundleOutsideMm === undefined || (loaded === 1 && wire.outsideDiameterMm === undefined)) return
  const leastMm = outsideMm * Math.sqrt(loaded)
  if (wire.bundleOutsideMm >= leastMm) return
  const told = roundedUp(leastMm)
  const each = `${Number(outsideMm.toPrecision(3))} mm`
  const thinner = wire.outsideDiameterMm === undefined ? '; where the wires are thinner, give outsideDiameterMm' : ''
  add(
    'wire.bundleOutsideMm',
    wire.bundleOutsideMm,
    loaded === 1 ? `at least the wire's own ${each}` : `at least ${told} mm, the area of ${loaded} wires of ${each}${thinner}`,
    `"bundleOutsideMm": ${told}`,
  )
}
