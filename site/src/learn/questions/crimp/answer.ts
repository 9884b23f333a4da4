import { areaMm2ToAwg } from '@strandwise/core/conductor'
import { barrelFill, crimpHeightMm, barrelFillLimits as fill } from '@strandwise/core/crimp'
import { UnknownEntryError } from '@strandwise/core/errors'
import { minimumPullForceN } from '@strandwise/core/tables'
import { levelDimension } from '../../../drawings/dimension.ts'
import { rect } from '../../../drawings/svg.ts'
import { answered, optionalNumber } from '../../question/answered.ts'
import { numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { besideRuler } from '../../question/ruler.ts'
import { writer } from '../../question/write.ts'

export interface CrimpFacts {
  /** Clearance between barrel and insulation. */
  readonly gapMm: number
}

const figures = 3

/** Pull force of the gauge at or just below the area; null if the standard has no such row. */
function pullN(standard: 'UL 486A-486B' | 'SAE AS7928', areaMm2: number): { readonly gauge: number; readonly forceN: number } | null {
  const gauge = Math.ceil(areaMm2ToAwg(areaMm2) - 0.1)
  for (const one of [gauge, gauge + 1]) {
    try {
      return { gauge: one, forceN: minimumPullForceN({ standard, gauge: one }) }
    } catch (error) {
      if (!(error instanceof UnknownEntryError)) throw error
    }
  }
  return null
}

/** Barrel, height, strip length and sample pull of a crimp. */
export const crimp: QuestionModel<CrimpFacts> = {
  answer: (inputs, { gapMm }) => {
    const [boreMm, outsideMm] = [numberOf(inputs, 'bore'), numberOf(inputs, 'outside')]
    if (outsideMm <= boreMm) return { field: 'outside', read: `${outsideMm} mm`, allowed: `above the bore, ${boreMm} mm`, example: `${2 * boreMm} mm` }
    return answered({ barrelInsideMm: 'bore', conductorAreasMm2: 'size', compressionFraction: 'compression', crimpWidthMm: 'width' }, 'size', () => {
      const write = writer(inputs, figures)
      const areas = [numberOf(inputs, 'size'), optionalNumber(inputs, 'second')].filter((area) => area !== undefined)
      const conductorAreaMm2 = areas.reduce((sum, area) => sum + area, 0)
      const filled = barrelFill({ conductorAreasMm2: areas, barrelInsideMm: boreMm })
      const height = {
        conductorAreaMm2,
        barrelMetalAreaMm2: (Math.PI / 4) * (outsideMm ** 2 - boreMm ** 2),
        compressionFraction: numberOf(inputs, 'compression') / 100,
        crimpWidthMm: numberOf(inputs, 'width'),
      }
      const heightMm = crimpHeightMm(height)
      const longMm = numberOf(inputs, 'long')
      const stripMm = longMm + gapMm
      const fits = filled >= fill.low && filled <= fill.high
      const pull = pullN(wordOf(inputs, 'standard') as 'UL 486A-486B' | 'SAE AS7928', areas[0] ?? 0)
      const diameterMm = Math.sqrt((4 * conductorAreaMm2) / Math.PI)
      return {
        parts: [
          {
            id: 'crimp',
            title: 'The crimp to make',
            verdict: fits ? 'sound' : 'unsound',
            sentence: fits
              ? `Strip ${write(stripMm, 'lengthMm')}, crimp to ${write(heightMm, 'lengthMm')} high; the barrel is filled to ${Math.round(100 * filled)} %.`
              : filled < fill.low
                ? `The barrel is too wide: the wire fills ${Math.round(100 * filled)} % of it. Take one step smaller.`
                : `The wire does not go in: its metal alone fills ${Math.round(100 * filled)} % of the bore. Take one step larger.`,
            drawing: besideRuler(stripMm + 12, Math.max(outsideMm, 4), `A wire stripped by ${write(stripMm, 'lengthMm')}`, (perMm, x0, axis) =>
              [
                rect(x0, axis - 0.75 * diameterMm * perMm, 12 * perMm, 1.5 * diameterMm * perMm, 'insulation'),
                rect(x0 + 12 * perMm, axis - (diameterMm / 2) * perMm, stripMm * perMm, diameterMm * perMm, 'metal'),
                levelDimension(
                  x0 + 12 * perMm,
                  x0 + (12 + stripMm) * perMm,
                  axis - diameterMm * perMm,
                  axis - (diameterMm / 2) * perMm,
                  write(stripMm, 'lengthMm'),
                ),
              ].join(''),
            ),
            values: [
              {
                name: `bore that this wire asks for, filled to ${Math.round(100 * fill.low)} to ${Math.round(100 * fill.high)} % (${fill.provenance.status})`,
                text: `${write(boreFor(conductorAreaMm2, fill.high), 'lengthMm')} to ${write(boreFor(conductorAreaMm2, fill.low), 'lengthMm')}`,
              },
              {
                name: 'height at 15 % and at 20 % squeezed out',
                text: [0.15, 0.2].map((compressionFraction) => write(crimpHeightMm({ ...height, compressionFraction }), 'lengthMm')).join(', '),
              },
              { name: 'pull of a sample', text: pull === null ? 'no row for this size' : `${Math.round(pull.forceN)} N, by the row of ${pull.gauge} AWG` },
            ],
            notes: [
              'Crimp a sample of the same wire first and pull it; then the joint.',
              'What the maker of the barrel prints, range and height, comes before these figures.',
            ],
          },
        ],
        workings: [
          { title: 'Fill of the barrel', id: 'barrelFill', inputs: { conductorAreasMm2: areas, barrelInsideMm: boreMm } },
          { title: 'Height of the crimp', id: 'crimpHeightMm', inputs: height },
        ],
      }
    })
  },
}

/** Bore diameter for a metal area and a fill factor. */
const boreFor = (areaMm2: number, share: number): number => Math.sqrt((4 * areaMm2) / (Math.PI * share))
