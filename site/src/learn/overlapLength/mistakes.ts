import { interfaceConductanceSPerM, lapJointResistanceOhm, lapNetworkResistanceOhm } from '@strandwise/core/joint'
import { lapOverlapDiameters, lapStrengthN, solderVolumeMm3, strandVoidMm2, sustainedStrengthShares } from '@strandwise/core/solder'
import type { Mistake } from '../lesson/lesson.ts'
import { areaMm2, diameterMm, interfaceSPerM, lapOhm, layer, overlapMm, pair } from './inCode.ts'
import { currentA, enough, plainOhm, text } from './steps.ts'

const ohm = (value: number): string => text(value, 'resistanceOhm')
const mm = (value: number): string => text(value, 'lengthMm', 2)
const newton = (value: number): string => text(value, 'forceN', 2)
const timesPlain = (value: number): string => `${(value / plainOhm).toPrecision(2)} times plain wire of that length`

/** A tarnish film that solder or pressure has not broken, in ohm m²: from memory, films range over several powers of ten. */
const filmPower = 8
const filmOhmM2 = 10 ** -filmPower
const filmText = `10⁻${'⁰¹²³⁴⁵⁶⁷⁸⁹'[filmPower]} Ω m²`
const dryOhm = lapJointResistanceOhm({ ...pair, overlapMm, interfaceSPerM: interfaceConductanceSPerM({ ...layer, layerMm: 0, filmOhmM2 }) })

/** Of the overlap, the share that the solder reached. */
const wettedShare = 1 / 8
const partlyOhm = lapNetworkResistanceOhm({
  ...pair,
  stretches: [
    { lengthMm: wettedShare * overlapMm, interfaceSPerM },
    { lengthMm: (1 - wettedShare) * overlapMm, interfaceSPerM: 0 },
  ],
})

const shortMm = diameterMm
const shortOhm = lapJointResistanceOhm({ ...pair, overlapMm: shortMm })
const shortPlainOhm = (plainOhm * shortMm) / overlapMm

const longDiameters = 12
const longMm = longDiameters * diameterMm
const longOhm = lapJointResistanceOhm({ ...pair, overlapMm: longMm })
/** The gaps between the strands of both wires fill as well. */
const voidMm2 = 2 * strandVoidMm2({ areaMm2, diameterMm })
const solderMm3 = (length: number): number => solderVolumeMm3({ overlapMm: length, diametersMm: [diameterMm, diameterMm], strandVoidMm2: voidMm2 })

const pull = lapStrengthN({ alloy: 'Sn60Pb40', overlapMm, bondWidthMm: layer.bondWidthMm })

/** What goes wrong with a lap, with its numbers. */
export const mistakes: readonly Mistake[] = [
  {
    title: 'A dry lap',
    verdict: 'unsound',
    what: `The solder lay on a film and never wetted it. Over the same ${mm(overlapMm)} a film of ${filmText} (from memory; films range over several powers of ten) leaves ${ohm(dryOhm)}, ${timesPlain(dryOhm)}, and ${text(dryOhm * currentA ** 2, 'powerW', 2)} of heat at ${text(currentA, 'currentA', 1)}. It reads well while pressed and badly after a month.`,
    instead: 'Scrape to bright metal, flux, heat the wires until they melt the solder themselves.',
  },
  {
    title: 'Wetted at one end only',
    verdict: 'caution',
    what: `An eighth of the overlap wetted and the rest bare: ${ohm(partlyOhm)} instead of ${ohm(lapOhm)}, ${timesPlain(partlyOhm)}. No hand meter sees that; your eye does.`,
    instead: 'Look for a fillet along both sides over the whole overlap. Where it is missing, flux and heat again.',
  },
  {
    title: 'Too short',
    verdict: 'caution',
    what: `One wire diameter, ${mm(shortMm)}: ${ohm(shortOhm)}, ${(shortOhm / shortPlainOhm).toPrecision(2)} times plain wire of that length. It lies below the ${mm(enough)} that the current asks for and below the ${lapOverlapDiameters.low} diameters of the workmanship rule; a bad spot of a millimetre takes most of the joint.`,
    instead: `Make it ${lapOverlapDiameters.low} to ${lapOverlapDiameters.high} diameters, ${mm(lapOverlapDiameters.low * diameterMm)} to ${mm(lapOverlapDiameters.high * diameterMm)} here.`,
  },
  {
    title: 'Too long',
    verdict: 'caution',
    what: `${longDiameters} diameters, ${mm(longMm)}: ${ohm(longOhm)}, no better than two wires side by side, for ${text(solderMm3(longMm), 'volumeMm3', 2)} of solder, that between the strands counted, instead of ${text(solderMm3(overlapMm), 'volumeMm3', 2)}. Each millimetre more is stiff, has to be heated, and moves the bend to the edge of the insulation.`,
    instead: `Stop at ${lapOverlapDiameters.high} diameters.`,
  },
  {
    title: 'Counting on solder for pull',
    verdict: 'unsound',
    what: `Pulled once, this lap holds about ${newton(pull.shortTimeN)}. Under a load that stays, tests of soldered tube joints left one ${Math.round(1 / sustainedStrengthShares.tinLead.low)}th after ${sustainedStrengthShares.hours} h: ${newton(pull.sustainedN)} (half tin, half lead was tested; for this alloy it is an extrapolation).`,
    instead: 'Give the joint no load to carry: tie the wire on both sides of it, with slack between.',
  },
]
