import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { jointFormulas } from './jointFormulas.ts'

const conductorsOhmPerM = fc.oneof({ weight: 9, arbitrary: fc.tuple(spread(1e-4, 1), spread(1e-4, 1)) }, { weight: 1, arbitrary: fc.constant([0, 0] as const) })
const resistivity = spread(1e-9, 1e-6)
const spots = { resistivity1OhmM: resistivity, resistivity2OhmM: resistivity, spots: fc.integer({ min: 1, max: 100 }), clusterRadiusMm: spread(0.01, 10) }
const member = record({ modulusMPa: spread(1e4, 2e5), areaMm2: spread(0.05, 100) })

const wound = {
  turns: between(1, 10),
  filletWidthMm: spread(0.1, 5),
  layerMm: spread(0.01, 0.5),
  layerOhmM: resistivity,
  filmOhmM2: spread(1e-13, 1e-8),
  conductorsOhmPerM: fc.tuple(spread(1e-4, 1), spread(1e-4, 1)),
}

everyFormulaAgrees(jointFormulas, {
  lapJointResistanceOhm: record({ overlapMm: spread(0.1, 500), conductorsOhmPerM, interfaceSPerM: spread(1, 1e8) }),
  transferLengthMm: record({ conductorsOhmPerM: fc.tuple(spread(1e-4, 1), spread(1e-4, 1)), interfaceSPerM: spread(1, 1e8) }),
  interfaceConductanceSPerM: record(
    { bondWidthMm: spread(0.1, 10), layerMm: spread(1e-3, 1), layerOhmM: resistivity, filmOhmM2: spread(1e-13, 1e-8) },
    'filmOhmM2',
  ),
  constrictionResistanceOhm: record({ ...spots, spotRadiusMm: spread(1e-3, 1) }, 'spots', 'clusterRadiusMm'),
  contactSpotRadiusMm: record({ forceN: spread(0.1, 1000), hardnessMPa: spread(50, 2000) }),
  crimpInterfaceResistanceOhm: record(
    { ...spots, forceN: spread(0.1, 1000), hardnessMPa: spread(50, 2000), filmOhmM2: spread(1e-13, 1e-8), realAreaFactor: between(1, 5) },
    'spots',
    'clusterRadiusMm',
    'filmOhmM2',
    'realAreaFactor',
  ),
  contactVoltageV: record({ peakC: between(300, 1500), bulkC: between(-40, 299) }),
  contactPeakC: record({ contactV: between(0, 1), bulkC: between(-40, 299) }),
  shearLagPeakRatio: record({ lengthMm: spread(0.1, 100), perMm: fc.oneof(spread(1e-3, 10), fc.constant(0)) }),
  shearLagPerMm: record({ shearModulusMPa: spread(100, 5e4), bondWidthMm: spread(0.1, 10), layerMm: spread(0.01, 1), conductors: fc.tuple(member, member) }),
  filmResistanceOhm: record({ filmOhmM2: spread(1e-13, 1e-8), areaMm2: spread(1e-4, 10) }),
  wrappedJointBondWidthMm: record({ coreDiameterMm: spread(0.3, 5), pitchMm: spread(0.3, 10), filletWidthMm: spread(0.1, 5) }),
  wrappedJointOverlap: spread(0.3, 5).chain((wrapDiameterMm) =>
    record(
      { ...wound, wrapDiameterMm: fc.constant(wrapDiameterMm), coreDiameterMm: spread(0.3, 5), pitchMm: between(1, 5).map((ratio) => ratio * wrapDiameterMm) },
      'filmOhmM2',
    ),
  ),
  twistedJointOverlap: record({ ...wound, diametersMm: fc.tuple(spread(0.3, 3), spread(0.3, 3)), pitchMm: spread(10, 50) }, 'filmOhmM2'),
})
