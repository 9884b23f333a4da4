import type { InsulationName, Interval, MetalName } from '@strandwise/core/materials'
import { wireSections } from '../../draw/sections.ts'
import { type AnswerPart, type AskedWorking, type Inputs, numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { type Write, writer } from '../../question/write.ts'
import type { WireSizeFacts } from './facts.ts'
import { bundleOf, currentBand, heatOf, type Place, type Run, type SizeFound, sizesFor, temperatureBand } from './model.ts'

const figures = 3
/** Rounds a limit down, so that it is never printed too large. */
function down(value: number): number {
  const unit = 10 ** (Math.floor(Math.log10(value)) + 1 - figures)
  return Number((Math.floor(value / unit) * unit).toPrecision(figures))
}

function degrees(band: Interval, write: Write): string {
  const ends = [band.low, band.high].map((end) => write(Math.round(end), 'temperatureC'))
  return ends[0] === ends[1] ? `${ends[0]}` : ends.join(' to ')
}

function where(place: Place, write: Write): string {
  const among = place.loadedWires === 1 ? 'alone in still air' : `in a bundle of ${place.loadedWires} loaded wires in still air`
  return `${among} of ${write(place.ambientC, 'temperatureC')}`
}

function thisWire(inputs: Inputs, place: Place, facts: WireSizeFacts, write: Write): AnswerPart {
  const areaMm2 = numberOf(inputs, 'size')
  const band = currentBand(areaMm2, place, facts)
  const area = write(areaMm2, 'areaMm2')
  const shared = { id: 'this-wire', title: 'What this wire carries' }
  if (band === null)
    return {
      ...shared,
      verdict: 'unsound',
      sentence: `None: air of ${write(place.ambientC, 'temperatureC')} leaves this insulation, good for ${write(place.limitC, 'temperatureC')}, nothing for the current.`,
      values: [],
      notes: ['Take an insulation that stands more, or move the wire out of the heat.'],
    }
  const lowA = down(band.low)
  const at = temperatureBand(areaMm2, lowA, place, facts)
  return {
    ...shared,
    verdict: 'sound',
    sentence: `${area} carries ${write(lowA, 'currentA')} continuously, ${where(place, write)}.`,
    values: [
      { name: 'limit of the insulation, its lowest grade', text: write(place.limitC, 'temperatureC') },
      { name: 'current at that limit, by two models of still air', text: `${write(lowA, 'currentA')} to ${write(band.high, 'currentA')}` },
      ...(at === null ? [] : [{ name: 'conductor at the lower current', text: degrees(at, write) }]),
    ],
    notes: ['Count on the lower figure. The fuse must open before the wire gets there: the wire stands 1.35 times the fuse’s rating.'],
  }
}

const named = (found: SizeFound, series: string, write: Write): string =>
  series === 'AWG' ? `${found.size} AWG, ${write(found.areaMm2, 'areaMm2')}` : write(found.areaMm2, 'areaMm2')

/** Both wires across, on one scale. */
function sections(areaMm2: number, taken: SizeFound, place: Place, series: string, write: Write): string {
  const wire = (area: number, name: string) => {
    const coreMm = 2 * Math.sqrt(area / Math.PI)
    return { name, coreMm, outsideMm: coreMm + 2 * place.insulationThicknessMm }
  }
  const two = [wire(areaMm2, `at hand: ${write(areaMm2, 'areaMm2')}`), wire(taken.areaMm2, `to take: ${named(taken, series, write)}`)]
  return wireSections(`Both wires across, to scale: ${two.map(({ name }) => name).join('; ')}`, two).svg
}

function whichWire(
  areaMm2: number,
  run: Run,
  place: Place,
  facts: WireSizeFacts,
  series: string,
  write: Write,
): { readonly part: AnswerPart; readonly best: SizeFound | null } {
  const { heat, drop, both } = sizesFor(run, place, facts, series)
  const shared = { id: 'which-wire', title: 'Which wire for this current' }
  const size = (found: SizeFound | null): string => (found === null ? 'none of the series' : named(found, series, write))
  const alone = [
    { name: 'thinnest that stays cool enough', text: size(heat) },
    { name: 'thinnest that loses little enough', text: size(drop) },
  ]
  if (both === null)
    return {
      best: null,
      part: {
        ...shared,
        verdict: 'unsound',
        sentence: `No size of this series carries ${write(run.currentA, 'currentA')} ${where(place, write)} with ${write(run.allowedDropV, 'voltageV')} to lose.`,
        values: alone,
        notes: ['Shorten the run, allow more drop, or raise the voltage and step down at the load.'],
      },
    }
  const governs = heat?.areaMm2 === both.areaMm2 ? (drop?.areaMm2 === both.areaMm2 ? 'heat and drop ask for the same' : 'heat decides') : 'drop decides'
  return {
    best: both,
    part: {
      ...shared,
      verdict: 'sound',
      drawing: sections(areaMm2, both, place, series, write),
      sentence: `Take ${named(both, series, write)} or thicker for ${write(run.currentA, 'currentA')}: ${governs}.`,
      values: [
        ...alone,
        {
          name: `drop over ${write(run.lengthM, 'lengthM')} out and back, ${write(run.allowedDropV, 'voltageV')} allowed`,
          text: write(both.dropV, 'voltageV'),
        },
        { name: `conductor, ${write(place.limitC, 'temperatureC')} allowed`, text: degrees(both.temperature, write) },
      ],
      notes: ['The drop is that of the wire as hot as it gets, joints and terminals not counted.'],
    },
  }
}

function workingsFor(areaMm2: number, run: Run, place: Place, facts: WireSizeFacts, best: SizeFound | null): readonly AskedWorking[] {
  const single = place.loadedWires === 1
  const workings: AskedWorking[] = []
  const band = currentBand(areaMm2, place, facts)
  if (band !== null && single)
    workings.push({ title: 'Current of this wire at its limit', id: 'steadyCurrentA', inputs: { ...heatOf(areaMm2, place, facts), limitC: place.limitC } })
  if (band !== null && !single)
    workings.push({
      title: 'This wire at its current, in the bundle',
      id: 'bundleTemperatureC',
      inputs: { ...bundleOf(areaMm2, place, facts), currentA: down(band.low) },
    })
  if (best !== null) {
    const { material } = place
    const { currentA, allowedDropV } = run
    workings.push(
      single
        ? { title: 'The wire taken, at its current', id: 'conductorTemperatureC', inputs: { ...heatOf(best.areaMm2, place, facts), currentA } }
        : { title: 'The wire taken, in the bundle', id: 'bundleTemperatureC', inputs: { ...bundleOf(best.areaMm2, place, facts), currentA } },
      {
        title: 'Area that the drop asks for, lay of the strands not counted',
        id: 'areaForDropMm2',
        inputs: { currentA, outLengthM: run.lengthM / 2, returnLengthM: run.lengthM / 2, allowedDropV, material, temperatureC: best.temperature.high },
      },
    )
  }
  return workings
}

/** Wire size both ways: the current of a wire, and the wire for a current and a drop. */
export const wireSize: QuestionModel<WireSizeFacts> = {
  answer: (inputs, facts) => {
    const write = writer(inputs, figures)
    const insulation = facts.insulations[wordOf(inputs, 'insulation') as InsulationName]
    if (insulation === undefined) throw new Error('the form has an insulation that the page has no row for')
    const place: Place = {
      material: wordOf(inputs, 'metal') as MetalName,
      limitC: insulation.limitC,
      insulationConductivityWPerMK: insulation.conductivityWPerMK,
      insulationThicknessMm: numberOf(inputs, 'wall'),
      ambientC: numberOf(inputs, 'air'),
      loadedWires: numberOf(inputs, 'loaded'),
    }
    const run: Run = {
      currentA: numberOf(inputs, 'current'),
      lengthM: numberOf(inputs, 'out') + numberOf(inputs, 'back'),
      allowedDropV: numberOf(inputs, 'drop'),
    }
    const areaMm2 = numberOf(inputs, 'size')
    const { part, best } = whichWire(areaMm2, run, place, facts, wordOf(inputs, 'series'), write)
    return { parts: [thisWire(inputs, place, facts, write), part], workings: workingsFor(areaMm2, run, place, facts, best) }
  },
}
