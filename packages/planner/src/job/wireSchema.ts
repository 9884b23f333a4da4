import * as z from 'zod/mini'
import { bare, choice, interval, quantity, text, yesNo } from './fields.ts'
import { damageKinds, insulationNames, metalNames, terminalKinds, wireStandards } from './words.ts'

/** Metal area of a wire, given or from its size: from 40 AWG to the thickest cable that one person joins. */
export const areaRange = { from: 0.005, to: 300 }

const area = () => z.exactOptional(quantity('areaMm2', areaRange, 'Wire area', 'Metal section. Give this or the size.', 1.5))
const size = () => z.exactOptional(text('Wire size', 'As printed on the wire or its reel: "18 AWG", "1.5 mm²", "7/0.3 mm".', '18 AWG', 40))
const material = () => z.exactOptional(choice(metalNames, 'Conductor', 'Bright copper, tinned copper, or light and silvery where scraped.', 'tinned-copper'))
const insulationOf = () => choice(insulationNames, 'Insulation', 'PVC where you do not know: it is the tenderest of the common ones.', 'PVC')
const outside = () => z.exactOptional(quantity('lengthMm', { from: 0.05, to: 100 }, 'Outside diameter', 'Over the insulation.', 2.9))

export const wireSchema = z.strictObject({
  areaMm2: area(),
  size: size(),
  standard: z.exactOptional(choice(wireStandards, 'Standard', 'Whose size it is: an SAE 18 has less metal than an AWG 18.', 'AWG')),
  material: material(),
  strandCount: z.exactOptional(bare({ from: 1, to: 10000 }, 'Strands', 'How many.', 19, true)),
  strandDiameterMm: z.exactOptional(quantity('lengthMm', { from: 0.01, to: 10 }, 'Strand diameter', 'Of one strand.', 0.3)),
  insulation: insulationOf(),
  insulationThicknessMm: z.exactOptional(quantity('lengthMm', { from: 0, to: 20 }, 'Insulation thickness', 'Of the wall.', 0.7)),
  outsideDiameterMm: outside(),
  outLengthM: quantity('lengthM', { from: 0.001, to: 500 }, 'Length out', 'From the source to the load.', 5),
  returnLengthM: z.exactOptional(
    quantity('lengthM', { from: 0, to: 500 }, 'Length back', 'From the load to the source; the same as out where you do not say.', 5),
  ),
  loadedInBundle: z.exactOptional(bare({ from: 1, to: 200 }, 'Loaded wires in the bundle', 'That carry current together, this one included.', 3, true)),
  bundleOutsideMm: z.exactOptional(quantity('lengthMm', { from: 0.05, to: 300 }, 'Bundle diameter', 'Over all.', 9)),
  insulationGradeC: z.exactOptional(
    quantity('temperatureC', { from: 40, to: 300 }, 'Insulation grade', 'The continuous temperature that is printed on the wire or its reel.', 105),
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
  ratedCurrentA: z.exactOptional(quantity('currentA', { from: 0.001, to: 2000 }, 'Rated current', 'Of the terminal or connector.', 16)),
  ratedAmbientC: z.exactOptional(quantity('temperatureC', { from: -40, to: 150 }, 'At air temperature', 'For which that rating holds.', 25)),
  limitC: z.exactOptional(quantity('temperatureC', { from: 0, to: 300 }, 'Limit temperature', 'The most the terminal or housing stands.', 105)),
  metal: z.exactOptional(choice(metalNames, 'Terminal metal', 'Base metal or plating that touches the wire.', 'tin')),
  matingMetal: z.exactOptional(choice(metalNames, 'Mating metal', 'What it plugs into.', 'tin')),
  acceptsMm2: z.exactOptional(interval('areaMm2', { above: 0, to: 300 }, 'Wire range', 'Areas that its barrel accepts.', { low: 0.5, high: 1.5 })),
  housingHoleMm: z.exactOptional(quantity('lengthMm', { from: 0.05, to: 100 }, 'Housing hole', 'That the finished lead must pass.', 5.5)),
  sealInsideMm: z.exactOptional(
    interval('lengthMm', { above: 0, to: 100 }, 'Seal range', 'Outside diameters that the wire seal grips.', { low: 1.8, high: 3 }),
  ),
})

export const damageSchema = z.strictObject({
  kind: choice(damageKinds, 'What you see', 'The plainest word for the damage.', 'broken'),
  where: z.exactOptional(choice(['feed', 'return'], 'Which way', 'On the way to the load, or on the way back; the feed where you do not say.', 'feed')),
  fromTerminationMm: quantity('lengthMm', { from: 0, to: 100000 }, 'Distance from the plug', 'From the break to the back of the plug or terminal.', 25),
  discolouredMm: z.exactOptional(
    quantity('lengthMm', { from: 0, to: 100000 }, 'Blackened length', 'How far along the wire the copper is dark, from the break.', 60),
  ),
  slackMm: z.exactOptional(
    quantity('lengthMm', { from: 0, to: 10000 }, 'Slack', 'How far the lead can be pulled forward without strain; none where you do not say.', 40),
  ),
  brokenStrands: z.exactOptional(bare({ from: 0, to: 10000 }, 'Broken strands', 'Where not all are through.', 2, true)),
})

export const surroundingsSchema = z.strictObject({
  ambientC: z.exactOptional(quantity('temperatureC', { from: -60, to: 200 }, 'Air now', 'While you work and measure.', 20)),
  hottestC: z.exactOptional(quantity('temperatureC', { from: -60, to: 200 }, 'Hottest air', 'Round the joint in service.', 45)),
  coldestC: z.exactOptional(quantity('temperatureC', { from: -60, to: 200 }, 'Coldest air', 'Round the joint in service.', -5)),
  location: z.exactOptional(choice(['dry', 'damp', 'splash', 'submerged'], 'Damp', 'The wettest it gets.', 'splash')),
  vibration: z.exactOptional(choice(['none', 'some', 'strong'], 'Vibration', 'Of what the lead is fixed to.', 'some')),
  flexes: z.exactOptional(yesNo('Moves in use', 'Whether the lead bends or travels at the joint while in service.')),
  bendRadiusMm: z.exactOptional(quantity('lengthMm', { from: 0.5, to: 10000 }, 'Bend radius', 'To the inside of the tightest bend in service.', 40)),
  bendCycles: z.exactOptional(bare({ from: 0, to: 1e10 }, 'Bends over its life', 'How many times it bends and straightens.', 100000, true)),
  flammableVapour: z.exactOptional(yesNo('Fuel, gas or solvent vapour', 'Whether vapour may stand where you work.')),
})
