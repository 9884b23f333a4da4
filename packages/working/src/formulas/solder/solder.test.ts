import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { solderFormulas } from './solderFormulas.ts'

const diameter = spread(0.2, 10)
const lap = { overlapMm: spread(1, 50), diametersMm: fc.tuple(diameter, diameter), valleyFill: between(0, 1), strandVoidMm2: between(0, 2) }

everyFormulaAgrees(solderFormulas, {
  lapLengthForStrengthMm: record({
    tensileMPa: spread(100, 500),
    areaMm2: spread(0.05, 50),
    shearMPa: spread(10, 60),
    safetyFactor: spread(0.5, 5),
    bondWidthMm: spread(0.2, 10),
  }),
  lapStrengthN: record({
    alloy: fc.constantFrom('Sn63Pb37', 'Sn60Pb40', 'Sn50Pb50'),
    overlapMm: spread(1, 50),
    bondWidthMm: spread(0.2, 10),
    shearMPa: spread(10, 60),
  }),
  solderVolumeMm3: record(lap, 'valleyFill', 'strandVoidMm2'),
  solderPartsMm3: record({ ...lap, coatingMm: between(0, 0.2) }, 'valleyFill', 'strandVoidMm2', 'coatingMm'),
  solderWireLengthMm: record({ volumeMm3: spread(0.1, 500), wireDiameterMm: spread(0.2, 3), fluxVolumeFraction: between(0, 0.3) }, 'fluxVolumeFraction'),
  strandVoidMm2: spread(0.2, 10).chain((diameterMm) =>
    record({ diameterMm: fc.constant(diameterMm), areaMm2: between(0.5, 0.99).map((fill) => (fill * Math.PI * diameterMm ** 2) / 4) }),
  ),
  capillaryRiseMm: record(
    {
      gapMm: spread(0.005, 1),
      densityKgPerM3: spread(7000, 9000),
      surfaceTensionNPerM: between(0.4, 0.55),
      contactAngleRad: between(0, Math.PI),
      shape: fc.constantFrom('round', 'slit'),
    },
    'surfaceTensionNPerM',
    'contactAngleRad',
    'shape',
  ),
})
