import * as z from 'zod/mini'
import { choice, quantity, text } from './fields.ts'

/** What a job can say of a tool, from least to most. */
export const toolRanges = {
  powerW: { from: 1, to: 1000 },
  setC: { from: 100, to: 550 },
  airC: { from: 50, to: 800 },
  airSpeedMPerS: { from: 0.1, to: 60 },
  clipMm: { from: 0.5, to: 500 },
  stubMm: { from: 0, to: 100 },
} as const

const stubMm = () =>
  z.exactOptional(
    quantity('lengthMm', toolRanges.stubMm, 'Bare stub', 'Bare wire between solder and insulation; one outside diameter where you do not say.', 3),
  )

const ironSchema = z.strictObject({
  name: text('Name', 'What you call the tool.', 'bench iron', 80),
  kind: z.literal('iron'),
  powerW: quantity('powerW', toolRanges.powerW, 'Power', 'The most it draws, from its plate.', 60),
  setC: z.exactOptional(quantity('temperatureC', toolRanges.setC, 'Set temperature', 'Of the tip; 360 °C is assumed where you do not say.', 360)),
  tipWidthMm: z.exactOptional(quantity('lengthMm', { from: 0.1, to: 20 }, 'Tip width', 'Of the face that touches the joint.', 2.4)),
  contact: z.exactOptional(choice(['wetted', 'dry'], 'Contact', 'Wetted: a bead of solder bridges tip and joint. Dry: bare metal on metal.', 'wetted')),
  tipResistanceKPerW: z.exactOptional(
    quantity('thermalResistanceKPerW', { from: 0.01, to: 1000 }, 'Tip resistance', 'From the sensor to the working face, where it is known.', 1.5),
  ),
  contactResistanceKPerW: z.exactOptional(
    quantity('thermalResistanceKPerW', { from: 0.01, to: 1000 }, 'Contact resistance', 'From the working face into the joint, where it is known.', 3),
  ),
  clipMm: z.exactOptional(
    quantity('lengthMm', toolRanges.clipMm, 'Clip', 'Distance from the solder to a metal clip on the wire that takes heat off, where you use one.', 2),
  ),
  stubMm: stubMm(),
})

const hotAirSchema = z.strictObject({
  name: text('Name', 'What you call the tool.', 'small hot-air tool', 80),
  kind: z.literal('hot-air'),
  airC: quantity('temperatureC', toolRanges.airC, 'Air temperature', 'At the joint, not at the dial.', 260),
  airSpeedMPerS: z.exactOptional(quantity('speedMPerS', toolRanges.airSpeedMPerS, 'Air speed', 'At the joint; 5 m/s is assumed where you do not say.', 5)),
  nozzleMm: z.exactOptional(quantity('lengthMm', { from: 0.1, to: 100 }, 'Nozzle', 'Width of the stream at the joint.', 20)),
  stubMm: stubMm(),
})

export const toolSchema = z.discriminatedUnion('kind', [ironSchema, hotAirSchema])
