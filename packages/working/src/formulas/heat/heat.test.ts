import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { heatFormulas } from './heatFormulas.ts'

const prandtl = spread(0.5, 1)
const correlation = fc.constantFrom('churchill-chu', 'morgan')
const flow = { reynolds: spread(1, 1e6), prandtl }

everyFormulaAgrees(heatFormulas, {
  airProperties: record({ temperatureC: between(-100, 1000), pressurePa: spread(1e3, 1e6) }, 'pressurePa'),
  naturalConvectionNusselt: record({ rayleigh: spread(1e-9, 1e12), prandtl, correlation }, 'correlation'),
  forcedConvectionNusselt: record(flow),
  churchillBernsteinNusselt: record({ ...flow, reynolds: spread(1e-3, 1e6) }),
  criticalRadiusMm: record({ insulationConductivityWPerMK: spread(0.01, 10), filmWPerM2K: spread(1, 1000) }),
  insulationResistanceMKPerW: spread(0.1, 10).chain((conductorDiameterMm) =>
    record({
      conductorDiameterMm: fc.constant(conductorDiameterMm),
      outsideDiameterMm: between(1, 10).map((ratio) => ratio * conductorDiameterMm),
      conductivityWPerMK: spread(0.01, 10),
    }),
  ),
  finConductanceWPerK: record(
    {
      conductivityWPerMK: spread(1, 500),
      areaMm2: spread(0.05, 100),
      lossWPerMK: fc.oneof(spread(1e-3, 10), fc.constant(0)),
      lengthMm: spread(0.1, 1e4),
      end: fc.constantFrom('insulated', 'held'),
    },
    'lengthMm',
    'end',
  ),
  rayleighNumber: record({ surfaceC: between(-50, 400), ambientC: between(-50, 100), diameterM: spread(1e-4, 0.1), pressurePa: spread(1e4, 1e6) }),
  heatFlowWPerM: record(
    {
      surfaceC: between(-50, 400),
      ambientC: between(-50, 100),
      diameterMm: spread(0.1, 50),
      emissivity: between(0, 1),
      airSpeedMPerS: fc.oneof(fc.constant(0), spread(1e-3, 30)),
      pressurePa: spread(2e4, 2e5),
      solarAbsorbedWPerM: between(0, 20),
      correlation,
    },
    'airSpeedMPerS',
    'pressurePa',
    'solarAbsorbedWPerM',
    'correlation',
  ),
})
