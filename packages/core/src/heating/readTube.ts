import { DomainError } from '../errors/index.ts'
import { airProperties, stefanBoltzmannWPerM2K4, zeroCelsiusK } from '../heat/index.ts'
import { stillFilmWPerM2K } from './films.ts'
import type { HeatJointInput, HotAirTool } from './heatJointTypes.ts'
import { requireJointTemperature, requireWithin } from './heatLimits.ts'
import type { HeatTube, StreamFilm, TubeLayer, TubeOnLap, TubeOverWire } from './heatModel.ts'
import { airHighC, airLowC, clipTemperaturesC, readStream, requireAir } from './readTool.ts'
import { type SolderSleeveTube, solderSleeveDefaults } from './solderSleeveTube.ts'
import { filmAt, tabled } from './streamFilm.ts'

/** Margin in K of the air table beyond the extremes of tube and joint. */
const beyondK = 1

/** Surroundings of a tube. */
interface Surroundings {
  readonly pressurePa: number
  readonly streamFactor: number
  readonly filmFactor: number
}

/** A tube in SI units: over the lap and over a wire. */
export interface ReadTube {
  readonly source: HeatTube
  overWire(i: { readonly stubM: number; readonly diameterM: number; readonly outsideM: number; readonly insulationMKPerW: number }): TubeOverWire
}

/** Reads the tube over a joint, with factors on stream and still-air films. */
export function readTube(i: HeatJointInput, tube: SolderSleeveTube, { pressurePa, streamFactor, filmFactor }: Surroundings): ReadTube {
  const { joint, ambientC } = i
  // Callers in plain JavaScript may pass an iron.
  if (i.tool.kind !== 'hot-air') throw new DomainError('tool.kind', i.tool.kind, 'hot-air: a solder sleeve is shrunk in a stream', undefined, 'wrong-choice')
  const tool: HotAirTool = i.tool
  requireAir('tool.airC', tool.airC)
  requireAir('ambientC', ambientC)
  const defaults = solderSleeveDefaults
  const jointM = joint.diameterMm / 1000
  const lapM = joint.lapMm / 1000
  const insideM = requireWithin('tube.insideMm', tube?.insideMm, 'tubeMm') / 1000
  if (insideM <= jointM)
    throw new DomainError('tube.insideMm', tube.insideMm, `above joint.diameterMm, ${joint.diameterMm}: the tube slides over`, undefined, 'contradiction')
  const recoveredM = requireWithin('tube.recoveredInsideMm', tube.recoveredInsideMm, 'tubeMm') / 1000
  if (recoveredM > insideM)
    throw new DomainError('tube.recoveredInsideMm', tube.recoveredInsideMm, `insideMm, ${tube.insideMm}, or less: it shrinks`, undefined, 'contradiction')
  const wallM = requireWithin('tube.wallMm', tube.wallMm, 'tubeMm') / 1000
  const lengthM = requireWithin('tube.lengthMm', tube.lengthMm, 'lapMm') / 1000
  const recoveryC = requireJointTemperature('tube.recoveryC', tube.recoveryC)
  if (recoveryC <= ambientC)
    throw new DomainError('tube.recoveryC', tube.recoveryC, `above ambientC, ${ambientC}: the tube has not shrunk yet`, undefined, 'contradiction')
  const limit = (name: 'continuousC' | 'shortLimitC'): number => {
    const limitC = tube[name]
    return limitC === undefined ? Infinity : requireJointTemperature(`tube.${name}`, limitC) - ambientC
  }
  const k = requireWithin('tube.conductivityWPerMK', tube.conductivityWPerMK ?? defaults.conductivityWPerMK.value, 'conductivityWPerMK')
  const density = requireWithin('tube.densityKgPerM3', tube.densityKgPerM3 ?? defaults.densityKgPerM3.value, 'densityKgPerM3')
  const heat = requireWithin('tube.specificHeatJPerKgK', tube.specificHeatJPerKgK ?? defaults.specificHeatJPerKgK.value, 'specificHeatJPerKgK')
  const grip = requireWithin('tube.gripWPerM2K', tube.gripWPerM2K ?? defaults.gripWPerM2K.value, 'gripWPerM2K')
  const emissivity = requireWithin('tube.emissivity', tube.emissivity ?? defaults.emissivity.value, 'share')
  const sectionM2 = (insideM + wallM) * wallM
  const storeJPerMK = density * heat * Math.PI * sectionM2
  const meanC = (ambientC + recoveryC) / 2
  const gapK = airAt(meanC)
  const [hottestC, coldestC] = [Math.max(tool.airC, ambientC) + beyondK, Math.min(tool.airC, ambientC, ...clipTemperaturesC(i)) - beyondK]
  // The wall keeps its cross-section when it shrinks: its outside over a body of this diameter, and whether it grips.
  const around = (bodyM: number, freeM: number) => {
    const innerM = Math.max(bodyM, freeM)
    const outerM = Math.sqrt(innerM * innerM + 4 * sectionM2)
    const stillFilm = filmFactor * stillFilmWPerM2K({ surfaceC: meanC, ambientC, diameterM: outerM, emissivity: 0, pressurePa })
    const stream: StreamFilm = readStream(tool, i, outerM, streamFactor)
    return { grips: freeM <= bodyM, outerM, gapLog: Math.log(innerM / bodyM), wallMKPerW: Math.log(outerM / innerM) / (2 * Math.PI * k), stillFilm, stream }
  }
  const onLap = (freeM: number): TubeOnLap => {
    const { grips, outerM, gapLog, wallMKPerW, stillFilm, stream } = around(jointM, freeM)
    return {
      stream,
      stillFilmWPerM2K: stillFilm,
      outsideM2: Math.PI * outerM * lapM,
      halfWallKPerW: wallMKPerW / (2 * lapM),
      gripWPerK: grips ? grip * Math.PI * jointM * lapM : null,
      gapM: grips ? 0 : (2 * Math.PI * lapM) / gapLog,
      gapM2: Math.PI * jointM * lapM,
    }
  }
  const layer = (bodyM: number, freeM: number, coverMKPerW: number): TubeLayer => {
    const { grips, outerM, gapLog, wallMKPerW, stillFilm, stream } = around(bodyM, freeM)
    const gap = (2 * Math.PI * gapK) / gapLog + 4 * defaults.gapEmissivity.value * stefanBoltzmannWPerM2K4 * (meanC + zeroCelsiusK) ** 3 * Math.PI * bodyM
    const outwards = (film: number): number => (film === 0 ? 0 : 1 / (1 / (Math.PI * outerM * film) + wallMKPerW / 2))
    return {
      streamWPerMK: outwards(filmAt(stream, recoveryC - ambientC)),
      stillWPerMK: outwards(stillFilm),
      radiationWPerMK: Math.PI * outerM * emissivity * radiationWPerM2K(recoveryC, ambientC),
      innerWPerMK: 1 / (wallMKPerW / 2 + 1 / (grips ? Math.PI * bodyM * grip : gap) + coverMKPerW),
      halfWallMKPerW: wallMKPerW / 2,
      coverMKPerW,
    }
  }
  return {
    source: {
      kind: 'tube',
      airRiseK: tool.airC - ambientC,
      emissivity,
      capacityJPerK: storeJPerMK * lapM,
      recoveryRiseK: recoveryC - ambientC,
      onLapLoose: onLap(insideM),
      onLapRecovered: onLap(recoveredM),
      gapAir: tabled(ambientC, coldestC, hottestC, airAt),
      gapEmissivity: defaults.gapEmissivity.value,
      continuousRiseK: limit('continuousC'),
      shortRiseK: limit('shortLimitC'),
    },
    overWire: ({ stubM, diameterM, outsideM, insulationMKPerW }) => {
      const layers = (freeM: number) => ({ bare: layer(diameterM, freeM, 0), insulated: layer(outsideM, freeM, insulationMKPerW) })
      const toM = Math.max(stubM, (lengthM - lapM) / 2)
      return { toM, airRiseK: tool.airC - ambientC, storeJPerMK, loose: layers(insideM), recovered: layers(recoveredM) }
    },
  }
}

/** Conductivity of air, clamped to the ends of its law. */
function airAt(temperatureC: number): number {
  return airProperties(Math.min(Math.max(temperatureC, airLowC), airHighC)).conductivityWPerMK
}

function radiationWPerM2K(surfaceC: number, ambientC: number): number {
  const s = surfaceC + zeroCelsiusK
  const a = ambientC + zeroCelsiusK
  return stefanBoltzmannWPerM2K4 * (s * s + a * a) * (s + a)
}
