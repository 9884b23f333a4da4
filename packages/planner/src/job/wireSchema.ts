import * as z from 'zod/mini'
import { bare, choice, interval, quantity, text, yesNo } from './fields.ts'
import { damageKinds, insulationNames, metalNames, terminalKinds, wireStandards } from './words.ts'

/** Metal area of a wire, given or from its size: from 40 AWG to the thickest cable that one person joins. */
export const areaRange = { from: 0.005, to: 300 }

const area = () => z.exactOptional(quantity('areaMm2', areaRange, 'Wire area', 'Cross-section of the metal. Give this or the size.', 1.5))
const size = () => z.exactOptional(text('Wire size', 'As printed on the wire or its reel: "18 AWG", "1.5 mm²", "7/0.3 mm".', '18 AWG', 40))
const material = () =>
  z.exactOptional(
    choice(metalNames, 'Conductor', 'Scrape it: red is copper; silver over red, tinned copper; red over silver, copper-clad aluminium.', 'tinned-copper'),
  )
const insulationOf = () => choice(insulationNames, 'Insulation', 'If you do not know, choose PVC: of the common ones it stands the least heat.', 'PVC')
const outside = () => z.exactOptional(quantity('lengthMm', { from: 0.05, to: 100 }, 'Outside diameter', 'Across the insulated wire.', 2.9))

export const wireSchema = z.strictObject({
  areaMm2: area(),
  size: size(),
  standard: z.exactOptional(choice(wireStandards, 'Standard', 'Whose size it is: an SAE 18 has less copper than an AWG 18.', 'AWG')),
  material: material(),
  strandCount: z.exactOptional(bare({ from: 1, to: 10000 }, 'Strands', 'How many strands the wire has.', 19, true)),
  strandDiameterMm: z.exactOptional(quantity('lengthMm', { from: 0.01, to: 10 }, 'Strand diameter', 'Diameter of one strand.', 0.3)),
  insulation: insulationOf(),
  insulationThicknessMm: z.exactOptional(quantity('lengthMm', { from: 0, to: 20 }, 'Insulation thickness', 'Thickness of its wall.', 0.7)),
  outsideDiameterMm: outside(),
  outLengthM: quantity('lengthM', { from: 0.001, to: 500 }, 'Length out', 'Wire from the source to the load.', 5),
  returnLengthM: z.exactOptional(
    quantity('lengthM', { from: 0, to: 500 }, 'Length back', 'Wire from the load back to the source. Left open: as long as out.', 5),
  ),
  loadedInBundle: z.exactOptional(
    bare({ from: 1, to: 200 }, 'Loaded wires in the bundle', 'Wires in the bundle that carry current at the same time, this one included.', 3, true),
  ),
  bundleOutsideMm: z.exactOptional(quantity('lengthMm', { from: 0.05, to: 300 }, 'Bundle diameter', 'Across the whole bundle.', 9)),
  insulationGradeC: z.exactOptional(
    quantity('temperatureC', { from: 40, to: 300 }, 'Insulation grade', 'The temperature printed on the wire or its reel.', 105),
  ),
})

/** Only the fields that differ from the wire on this side. */
export const wireBeyondSchema = z.strictObject({
  areaMm2: area(),
  size: size(),
  material: material(),
  insulation: z.exactOptional(insulationOf()),
  outsideDiameterMm: outside(),
})

export const terminalSchema = z.strictObject({
  kind: z.exactOptional(
    choice(
      terminalKinds,
      'Terminal kind',
      'A contact in a housing, a push-on blade, a ring or fork on a stud, a clamp with a screw or spring, or a cable lug.',
      'contact-in-housing',
    ),
  ),
  studMm: z.exactOptional(quantity('lengthMm', { from: 1, to: 30 }, 'Stud', 'Thread diameter of the stud or screw that holds it.', 6)),
  ratedCurrentA: z.exactOptional(quantity('currentA', { from: 0.001, to: 2000 }, 'Rated current', 'Stated for the terminal or connector.', 16)),
  ratedAmbientC: z.exactOptional(quantity('temperatureC', { from: -40, to: 150 }, 'At air temperature', 'Air temperature that the rating is stated for.', 25)),
  limitC: z.exactOptional(quantity('temperatureC', { from: 0, to: 300 }, 'Limit temperature', 'The hottest the terminal or housing may get.', 105)),
  metal: z.exactOptional(choice(metalNames, 'Terminal metal', 'Base metal or plating that touches the wire.', 'tin')),
  matingMetal: z.exactOptional(choice(metalNames, 'Mating metal', 'What it plugs into.', 'tin')),
  acceptsMm2: z.exactOptional(interval('areaMm2', { above: 0, to: 300 }, 'Wire range', 'Wire areas that its barrel takes.', { low: 0.5, high: 1.5 })),
  housingHoleMm: z.exactOptional(quantity('lengthMm', { from: 0.05, to: 100 }, 'Housing hole', 'Hole that the finished lead must pass through.', 5.5)),
  sealInsideMm: z.exactOptional(
    interval('lengthMm', { above: 0, to: 100 }, 'Seal range', 'Outside diameters that the wire seal grips.', { low: 1.8, high: 3 }),
  ),
})

export const damageSchema = z.strictObject({
  kind: choice(damageKinds, 'What you see', 'Choose the word that fits best.', 'broken'),
  where: z.exactOptional(choice(['feed', 'return'], 'Feed or return', 'On the way to the load, or on the way back. Left open: to the load.', 'feed')),
  fromTerminationMm: quantity('lengthMm', { from: 0, to: 100000 }, 'Distance from the plug', 'From the break to the back of the plug or terminal.', 25),
  discolouredMm: z.exactOptional(quantity('lengthMm', { from: 0, to: 100000 }, 'Blackened length', 'How far from the break the copper is dark.', 60)),
  slackMm: z.exactOptional(
    quantity('lengthMm', { from: 0, to: 10000 }, 'Slack', 'How far the lead can be pulled forward without strain. Left open: none.', 40),
  ),
  brokenStrands: z.exactOptional(bare({ from: 0, to: 10000 }, 'Broken strands', 'How many, if the wire is not broken right through.', 2, true)),
})

export const surroundingsSchema = z.strictObject({
  ambientC: z.exactOptional(quantity('temperatureC', { from: -60, to: 200 }, 'Air now', 'While you work and measure.', 20)),
  hottestC: z.exactOptional(quantity('temperatureC', { from: -60, to: 200 }, 'Hottest air', 'Around the joint in service.', 45)),
  coldestC: z.exactOptional(quantity('temperatureC', { from: -60, to: 200 }, 'Coldest air', 'Around the joint in service.', -5)),
  location: z.exactOptional(choice(['dry', 'damp', 'splash', 'submerged'], 'Damp', 'How wet the joint gets at worst.', 'splash')),
  vibration: z.exactOptional(choice(['none', 'some', 'strong'], 'Vibration', 'Of the part that the lead is fixed to.', 'some')),
  flexes: z.exactOptional(yesNo('Moves in use', 'Whether the lead bends or travels at the joint while in service.')),
  bendRadiusMm: z.exactOptional(quantity('lengthMm', { from: 0.5, to: 10000 }, 'Bend radius', 'To the inside of the tightest bend in service.', 40)),
  bendCycles: z.exactOptional(bare({ from: 0, to: 1e10 }, 'Bends over its life', 'How many times it bends and straightens.', 100000, true)),
  flammableVapour: z.exactOptional(yesNo('Fuel, gas or solvent vapour', 'Whether vapour may stand where you work.')),
})
