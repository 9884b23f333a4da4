import { dropTestVerdict, readingInterval, resistanceOhmPerM, twoWireProof } from '@strandwise/core'

const workingA = 0.5
const allowedDropV = 0.05
const allowedOhm = allowedDropV / workingA

const readingOhm = 0.4
const meter = { percentOfReading: 0.8, counts: 3, resolution: 0.1 }
const leads = { leadOhm: 0.2, leadUncertaintyOhm: 0.1 }

const shown = readingInterval({ reading: readingOhm, ...meter })
const left = readingInterval({ reading: readingOhm, ...meter, ...leads })
const { resolution: resolutionOhm, ...accuracy } = meter
const twoWire = { readingOhm, meter: { ...accuracy, resolutionOhm, ...leads }, currentA: workingA, allowedDropV }
const byOhms = twoWireProof(twoWire)

const testA = 1
const measuredV = 0.0068
const millivolts = readingInterval({ reading: measuredV, percentOfReading: 0.5, counts: 3, resolution: 0.0001 })
const uncertaintyV = (millivolts.high - millivolts.low) / 2
const dropTest = { measuredV, uncertaintyV, testA, workingA, allowedDropV }
const byDrop = dropTestVerdict(dropTest)

const leftLowOhm = left.low
const leftHighOhm = left.high
const shownHighOhm = shown.high
const byDropHighV = byDrop.dropHighV
const metreOhm = resistanceOhmPerM({ areaMm2: 0.5, material: 'annealed-copper', temperatureC: 20 })

export {
  allowedDropV,
  allowedOhm,
  byDrop,
  byDropHighV,
  byOhms,
  dropTest,
  leads,
  left,
  leftHighOhm,
  leftLowOhm,
  measuredV,
  meter,
  metreOhm,
  readingOhm,
  shown,
  shownHighOhm,
  testA,
  twoWire,
  uncertaintyV,
  workingA,
}
