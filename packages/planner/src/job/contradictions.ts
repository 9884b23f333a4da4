import type { JobIssue } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'
import { WireSizeError, wireSize } from './wireSize.ts'

const solidRoundMm = (areaMm2: number) => Math.sqrt((4 * areaMm2) / Math.PI)

/** Fields that can't both be true, or of which one needs the other. Each names the field to mend. */
export function contradictions(job: RepairJob): readonly JobIssue[] {
  const issues: JobIssue[] = []
  const add = (path: string, value: unknown, allowed: string, example: string) => issues.push({ path, value, allowed, example })

  const loads = [job.load.currentA, job.load.powerW, job.load.resistanceOhm].filter((value) => value !== undefined).length
  if (loads !== 1) add('load', loads === 0 ? undefined : job.load, 'one of currentA, powerW and resistanceOhm', '"currentA": 4.2')
  if ((job.load.inrushA === undefined) !== (job.load.inrushS === undefined))
    add('load.inrushA', job.load.inrushA, 'inrushA and inrushS together', '"inrushA": 15, "inrushS": 0.2')
  if ((job.load.onS === undefined) !== (job.load.offS === undefined)) add('load.onS', job.load.onS, 'onS and offS together', '"onS": 30, "offS": 300')

  const { wire } = job
  if ((wire.areaMm2 === undefined) === (wire.size === undefined)) {
    add('wire.areaMm2', wire.areaMm2, 'one of areaMm2 and size', '"size": "18 AWG"')
  }
  if (wire.size !== undefined && wire.areaMm2 === undefined) {
    try {
      wireSize(wire)
    } catch (error) {
      if (!(error instanceof WireSizeError)) throw error
      add('wire.size', wire.size, error.allowed, '"size": "18 AWG"')
    }
  }
  if (wire.insulationThicknessMm !== undefined && wire.outsideDiameterMm !== undefined && wire.areaMm2 !== undefined) {
    const least = 2 * wire.insulationThicknessMm + 0.9 * solidRoundMm(wire.areaMm2)
    if (wire.outsideDiameterMm < least) {
      add(
        'wire.outsideDiameterMm',
        wire.outsideDiameterMm,
        `at least ${least.toFixed(2)} mm: the metal and twice the insulation`,
        `"outsideDiameterMm": ${(least + 0.2).toFixed(1)}`,
      )
    }
  }
  if (wire.strandDiameterMm !== undefined && wire.strandCount === undefined)
    add('wire.strandCount', undefined, 'the number of strands with strandDiameterMm', '"strandCount": 19')
  const strands = wire.strandCount
  const broken = job.damage.brokenStrands
  if (broken !== undefined && strands !== undefined && broken > strands)
    add('damage.brokenStrands', broken, `at most the wire's ${strands} strands`, `"brokenStrands": ${strands}`)
  if (wire.bundleOutsideMm !== undefined && wire.outsideDiameterMm !== undefined && wire.bundleOutsideMm < wire.outsideDiameterMm) {
    add('wire.bundleOutsideMm', wire.bundleOutsideMm, `at least the wire's own ${wire.outsideDiameterMm} mm`, `"bundleOutsideMm": ${wire.outsideDiameterMm}`)
  }

  const { ambientC, hottestC, coldestC } = job.surroundings
  if (hottestC !== undefined && hottestC < ambientC) add('surroundings.hottestC', hottestC, `at least ambientC, ${ambientC} °C`, `"hottestC": ${ambientC}`)
  if (coldestC !== undefined && coldestC > ambientC) add('surroundings.coldestC', coldestC, `at most ambientC, ${ambientC} °C`, `"coldestC": ${ambientC}`)
  const { ratedAmbientC, limitC } = job.terminal ?? {}
  if (ratedAmbientC !== undefined && limitC !== undefined && ratedAmbientC >= limitC)
    add('terminal.limitC', limitC, `above ratedAmbientC, ${ratedAmbientC} °C`, '"limitC": 105')

  if (job.circuit.fuseA === undefined && job.circuit.fuseSeries !== undefined) add('circuit.fuseA', undefined, 'the rating with fuseSeries', '"fuseA": 7.5')
  const sleeves = [
    ...(job.sleeves ?? []).map((sleeve, index) => [`sleeves.${index}`, sleeve] as const),
    ...(job.solderSleeve ? [['solderSleeve.tube', job.solderSleeve.tube] as const] : []),
  ]
  for (const [path, sleeve] of sleeves) {
    if (sleeve.recoveredInsideMm >= sleeve.suppliedInsideMm)
      add(
        `${path}.recoveredInsideMm`,
        sleeve.recoveredInsideMm,
        `below suppliedInsideMm, ${sleeve.suppliedInsideMm} mm`,
        `"recoveredInsideMm": ${sleeve.suppliedInsideMm / 2}`,
      )
    if (sleeve.adhesiveWallMm !== undefined && sleeve.adhesiveWallMm >= sleeve.recoveredWallMm)
      add(
        `${path}.adhesiveWallMm`,
        sleeve.adhesiveWallMm,
        `below recoveredWallMm, ${sleeve.recoveredWallMm} mm`,
        `"adhesiveWallMm": ${sleeve.recoveredWallMm / 2}`,
      )
  }
  for (const [index, reading] of (job.readings ?? []).entries()) {
    if (reading.from === reading.to) add(`readings.${index}.to`, reading.to, 'another place than from', '"to": "joint-out"')
    if (reading.kind === 'drop' && reading.load === 'off') add(`readings.${index}.load`, reading.load, 'on: a drop is read with the load on', '"load": "on"')
    if (reading.kind === 'resistance' && reading.load === 'on')
      add(`readings.${index}.load`, reading.load, 'off: ohms are read on a dead circuit', '"load": "off"')
  }
  return issues
}
