import { conductorDefaults, layFactorOfClass, resistanceOhmPerM } from '@strandwise/core/conductor'
import { knownNominal, metal, solder } from '@strandwise/core/materials'
import { lapLengthForStrengthMm } from '@strandwise/core/solder'
import { formatQuantity, type QuantityKind } from '@strandwise/working/quantity'
import type { LessonStep } from '../lesson/lesson.ts'
import { areaMm2, diameterMm, enoughMm, interfaceSPerM, lapOhm, layer, ohmPerM, overlapMm, pair, transferMm, wire } from './inCode.ts'
import { made } from './picture.ts'

const figures = 3
export const text = (value: number, kind: QuantityKind, significant = figures): string => formatQuantity(Number(value.toPrecision(significant)), kind)
const inDiameters = (lengthMm: number): string => `${(lengthMm / diameterMm).toPrecision(2)} wire diameters`

/** What the strip draws. */
export const currentA = 4
/** The same wire as a plan takes it over a run: strands longer than the wire. */
const twisted = { ...wire, layFactor: layFactorOfClass(5).nominal }
const copper = metal('annealed-copper')
const alloy = solder('Sn60Pb40')
/** Equal to the wire: the least that "as strong as the wire" could mean. */
const strengthInputs = {
  tensileMPa: knownNominal(copper, 'tensileMPa', copper.tensileMPa),
  areaMm2,
  shearMPa: knownNominal(alloy, 'shearMPa', alloy.shearMPa),
  safetyFactor: 1,
  bondWidthMm: layer.bondWidthMm,
}
export const strengthMm = lapLengthForStrengthMm(strengthInputs)
export const plainOhm = (ohmPerM * overlapMm) / 1000
export const enough = enoughMm ?? Number.NaN

/** The steps of the overlap lesson. */
export const steps: readonly LessonStep[] = [
  {
    id: 'wire',
    title: 'What the wire itself resists',
    asks: 'How many milliohms does one metre of this wire have at 20 °C?',
    working: { id: 'resistanceOhmPerM', inputs: wire },
    values: [{ name: 'one metre of wire', text: text(ohmPerM, 'resistanceOhmPerM') }],
    tells: [
      'Everything is compared with this: a joint is good when it resists no more than the wire that it replaces.',
      `Strands are taken as straight here, K = ${conductorDefaults.layFactor}. Over a run they wind about one another and are longer than the wire: the plan and the question of the wire’s size take K = ${twisted.layFactor} (from memory), ${text(resistanceOhmPerM(twisted), 'resistanceOhmPerM')}.`,
      'The 10⁶ in the formula turns square millimetres into square metres.',
    ],
  },
  {
    id: 'solder',
    title: 'What the solder between them lets through',
    asks: 'Solder resists about nine times as much as copper, yet the current has only a thin layer of it to cross. What does a metre of that layer conduct?',
    working: { id: 'interfaceConductanceSPerM', inputs: layer },
    values: [
      { name: 'width of the bond, half a wire diameter', text: text(layer.bondWidthMm, 'lengthMm') },
      { name: 'thickness of the layer', text: text(layer.layerMm, 'lengthMm', 1) },
    ],
    tells: [
      'The 1000 here and in the steps below turns millimetres into metres.',
      'Round wires side by side touch along a line; the fillet makes that line a strip. Half a diameter is a modest fillet.',
      `One millimetre of overlap alone would let the current across through ${text(1000 / interfaceSPerM, 'resistanceOhm')}.`,
    ],
  },
  {
    id: 'transfer',
    title: 'How soon the current has changed over',
    asks: 'Wire against solder: over what length does the current go from one conductor to the other?',
    working: { id: 'transferLengthMm', inputs: pair },
    values: [{ name: 'transfer length', text: text(transferMm, 'lengthMm') }],
    tells: [
      'The current does not use the whole overlap. Most of it crosses within a transfer length of either end; a middle that is longer adds little.',
      `Here that is ${inDiameters(transferMm)}. Below one wire diameter the current has no room to spread inside the wires, which this model of one dimension leaves out: its resistance is then a lower bound.`,
    ],
  },
  {
    id: 'enough',
    title: 'The overlap that equals plain wire',
    asks: 'How long must the overlap be, so that the lap resists no more than the same length of wire?',
    working: { id: 'breakEvenOverlapMm', inputs: pair },
    values: [{ name: 'enough for the current', text: `${text(enough, 'lengthMm')}, ${inDiameters(enough)}` }],
    tells: [
      `For two like wires this has a limit of its own: with u the overlap in transfer lengths it is the root of u/2 = coth(u/2), and u/2 = ${(enough / transferMm / 2).toFixed(4)} whatever the wire, the solder and the bond.`,
      'So the answer scales with the transfer length alone. A bond a quarter as wide needs twice the overlap, not four times.',
    ],
  },
  {
    id: 'made',
    picture: made,
    title: 'The lap you make',
    asks: `Workmanship rules ask for three to six wire diameters. You take four, ${text(overlapMm, 'lengthMm', 2)}. What does that lap resist?`,
    working: { id: 'lapJointResistanceOhm', inputs: { ...pair, overlapMm } },
    values: [
      { name: 'the lap', text: text(lapOhm, 'resistanceOhm') },
      { name: 'plain wire of that length', text: text(plainOhm, 'resistanceOhm') },
      { name: `drop over the lap at ${text(currentA, 'currentA')}`, text: text(lapOhm * currentA, 'voltageV') },
      { name: `heat in the lap at ${text(currentA, 'currentA')}`, text: text(lapOhm * currentA ** 2, 'powerW') },
    ],
    tells: [
      `The lap has ${Math.round((100 * lapOhm) / plainOhm)} % of the plain wire’s resistance: along the overlap two conductors share the current.`,
      'A reading of a good soldered lap is no more than that of the wire. A lap that reads higher is not wetted or cracked; the solder’s own resistivity never explains it.',
    ],
  },
  {
    id: 'strength',
    title: 'Strength is another matter',
    asks: 'How long would the overlap have to be, so that the solder holds as much as the wire when pulled once?',
    working: { id: 'lapLengthForStrengthMm', inputs: strengthInputs },
    values: [{ name: 'as strong as the wire, pulled once', text: `${text(strengthMm, 'lengthMm')}, ${inDiameters(strengthMm)}` }],
    tells: [
      `That is ${(strengthMm / overlapMm).toPrecision(2)} times the lap that you make, for one short pull. Under a load that stays, solder creeps: within months it gives way at a small part of that.`,
      'So no overlap is long enough to hang a wire on. A lap carries no sustained load at all: tie the wire down on both sides, so that the joint feels nothing.',
    ],
  },
]
