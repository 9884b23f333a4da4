import { heatJointDefaults } from '@strandwise/core/heating'
import { type SolderName, solder } from '@strandwise/core/materials'
import type { Sheets } from '../../lesson/sheets.ts'
import { oneOf } from '../../random.ts'

const alloys = ['Sn42Bi58', 'Sn63Pb37'] as const satisfies readonly SolderName[]
const airs = [260, 300, 340, 380] as const
const shares = [0.62, 0.67, 0.72] as const
const roomsC = [15, 20, 25] as const
const superheatK = heatJointDefaults.wettingSuperheatK.value

export const sheets: Sheets = {
  title: 'Solder sleeve in hot air',
  problem(stream, form) {
    const name = oneOf(alloys, stream)
    const airC = oneOf(airs, stream)
    const share = oneOf(shares, stream)
    const roomC = oneOf(roomsC, stream)
    const liquidusC = solder(name).liquidusC.nominal
    const neededC = liquidusC + superheatK
    const wireC = roomC + share * (airC - roomC)
    const air = form === 'C' ? `${((airC * 9) / 5 + 32).toFixed(0)} °F` : `${airC} °C`
    return {
      given: `The ring is ${name}, liquid at ${liquidusC} °C; it wets wire that is ${superheatK} K hotter still. The air has ${air}, the room ${roomC} °C. Held on, the wire levels off ${share} of the way from room to air.`,
      tasks: [
        {
          ask: 'How hot must the wire become for the solder to wet it?',
          unit: '°C',
          answer: neededC,
          box: 'needed = liquid + extra for wetting',
          usual: [
            { value: liquidusC, says: 'took the melting of the ring for the joint', marks: 1 },
            { value: liquidusC - superheatK, says: 'took the extra for wetting off', marks: 0 },
          ],
        },
        {
          ask: 'At which temperature does the wire level off?',
          unit: '°C',
          answer: wireC,
          box: 'wire = room + share × (air − room)',
          usual: [
            { value: share * (airC - roomC), says: 'forgot the room', marks: 1 },
            { value: airC, says: 'took the air for the wire', marks: 0 },
          ],
        },
        {
          ask: 'How hot must the air be at least?',
          unit: '°C',
          answer: roomC + (neededC - roomC) / share,
          box: 'air = room + (needed − room) ÷ share',
          usual: [
            { value: neededC, says: 'took the wire for the air', marks: 0 },
            { value: roomC + (liquidusC - roomC) / share, says: 'left out the extra for wetting', marks: 1 },
            { value: roomC + (neededC - roomC) * share, says: 'multiplied by the share', marks: 1 },
          ],
        },
      ],
    }
  },
  trap: 'the air stands in degrees Fahrenheit',
  why: {
    ask: 'the ring of a solder sleeve has melted and the tube is tight. Why may the wires still not be joined?',
    points: [
      'ring and tube are thin and lie in the stream: they warm in seconds',
      'the wire lies inside and leads its heat away along the copper',
      'solder only takes on wire that is itself hotter than the melting solder',
    ],
  },
}
