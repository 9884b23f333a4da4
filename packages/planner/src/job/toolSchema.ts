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
  z.exactOptional(quantity('lengthMm', toolRanges.stubMm, 'Bare stub', 'Bare wire between solder and insulation. Left open: one outside diameter.', 3))

const ironSchema = z.strictObject({
  name: text('Name', 'Your name for the tool.', 'bench iron', 80),
  kind: z.literal('iron'),
  powerW: quantity('powerW', toolRanges.powerW, 'Power', 'The most it draws, from its plate.', 60),
  setC: z.exactOptional(quantity('temperatureC', toolRanges.setC, 'Set temperature', 'Of the tip. Left open: 360 °C.', 360)),
  tipWidthMm: z.exactOptional(quantity('lengthMm', { from: 0.1, to: 20 }, 'Tip width', 'Of the face that touches the joint.', 2.4)),
  contact: z.exactOptional(choice(['wetted', 'dry'], 'Contact', 'Wetted: a bead of solder bridges tip and joint. Dry: bare metal on metal.', 'wetted')),
  tipResistanceKPerW: z.exactOptional(
    quantity('thermalResistanceKPerW', { from: 0.01, to: 1000 }, 'Tip resistance', 'From the sensor to the working face, if you know it.', 1.5),
  ),
  contactResistanceKPerW: z.exactOptional(
    quantity('thermalResistanceKPerW', { from: 0.01, to: 1000 }, 'Contact resistance', 'From the working face into the joint, if you know it.', 3),
  ),
  clipMm: z.exactOptional(
    quantity('lengthMm', toolRanges.clipMm, 'Clip', 'Distance from the solder to a metal clip that draws heat off the wire, if you use one.', 2),
  ),
  stubMm: stubMm(),
})

const hotAirSchema = z.strictObject({
  name: text('Name', 'Your name for the tool.', 'small hot-air tool', 80),
  kind: z.literal('hot-air'),
  airC: quantity('temperatureC', toolRanges.airC, 'Air temperature', 'At the joint, not at the dial.', 260),
  airSpeedMPerS: z.exactOptional(quantity('speedMPerS', toolRanges.airSpeedMPerS, 'Air speed', 'At the joint. Left open: 5 m/s.', 5)),
  nozzleMm: z.exactOptional(quantity('lengthMm', { from: 0.1, to: 100 }, 'Nozzle', 'Width of the stream at the joint.', 20)),
  stubMm: stubMm(),
})

export const toolSchema = z.discriminatedUnion('kind', [ironSchema, hotAirSchema])
