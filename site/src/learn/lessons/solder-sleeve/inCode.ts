import { heatSolderSleeve, solder } from '@strandwise/core'

const liquidusC = solder('Sn42Bi58').liquidusC.nominal
const heldS = 60
const weakC = 240
const strongC = 400
const side = { areaMm2: 1, stubMm: 5, insulation: 'ETFE', insulationOutsideMm: 1.9 } as const
const sleeve = {
  ambientC: 20,
  joint: { lapMm: 8, diameterMm: 2.2, solderMm3: 12 },
  conductors: [side, side],
  alloy: 'Sn42Bi58',
  tube: { insideMm: 5, recoveredInsideMm: 2, wallMm: 0.4, lengthMm: 28, recoveryC: 120 },
} as const

const sampleTimesS = Array.from({ length: 31 }, (_, index) => 2 * index)
const held = (airC: number, airSpeedMPerS = 8) =>
  heatSolderSleeve({ ...sleeve, tool: { kind: 'hot-air', airC, airSpeedMPerS }, toolOffS: heldS, observeS: heldS + 30, sampleTimesS })

const weak = held(weakC)
const strong = held(strongC)

const ringMeltsS = weak.ringMeltsAtS ?? Number.NaN
const tubeShrinksS = weak.tubeRecoversAtS ?? Number.NaN
const wireC = weak.jointAtToolOffC
const endlessC = weak.steadyC
const wettedS = strong.wettedAtS ?? Number.NaN
const ringMeltsStrongS = strong.ringMeltsAtS ?? Number.NaN

export { endlessC, held, heldS, liquidusC, ringMeltsS, ringMeltsStrongS, sampleTimesS, sleeve, strong, strongC, tubeShrinksS, weak, weakC, wettedS, wireC }
