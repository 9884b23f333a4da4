import { circle, drawing, line, path, rect, text } from './svg.ts'

export interface LeadAcross {
  readonly source: string
  readonly fuse: string | null
  readonly joint: string
  readonly plug: string
  readonly load: string
  readonly length: string
}

const strands = [-4, 0, 4]

/** The lead from source to load and back across the width, not to scale, each place with its value. */
export function leadAcross(lead: LeadAcross, width: number): string {
  const narrow = width < 600
  const out = narrow ? 84 : 76
  const back = out + 56
  const [source, load] = [28, width - 34]
  const at = (share: number) => source + share * (load - source)
  const [fuse, joint, plug] = [at(0.16), at(narrow ? 0.58 : 0.62), at(narrow ? 0.82 : 0.78)]
  const run = (x1: number, x2: number) => strands.map((dy) => line(x1, out + dy, x2, out + dy, 'strand')).join('')
  // On a narrow page labels alternate between two rows, so that they do not overlap.
  const rowOf = (index: number) => (narrow && index % 2 === 1 ? out - 54 : out - 24)
  const words = [
    { x: source - 14, text: lead.source, anchor: 'start' as const },
    ...(lead.fuse === null ? [] : [{ x: fuse, text: lead.fuse, anchor: 'middle' as const }]),
    { x: joint, text: lead.joint, anchor: 'middle' as const },
    { x: plug, text: lead.plug, anchor: 'middle' as const },
    { x: width - 4, text: lead.load, anchor: 'end' as const },
  ]
  return drawing(
    width,
    back + 26,
    `The lead, not to scale: ${[lead.source, lead.fuse, lead.joint, lead.plug, lead.load].filter((part) => part !== null).join(', ')}; ${lead.length}.`,
    run(source + 14, joint - 14),
    run(joint + 14, load - 16),
    ...strands.map(
      (dy, index) =>
        line(joint - 14, out + dy, joint - 6 - 2 * index, out + dy, 'strand') + line(joint + 10 - 2 * index, out + dy, joint + 14, out + dy, 'strand'),
    ),
    path(`M${load} ${out + 14}V${back}H${source}V${out + 14}`, 'return'),
    rect(source - 14, out - 14, 28, 28, 'housing'),
    lead.fuse === null ? '' : rect(fuse - 12, out - 8, 24, 16, 'housing', 3),
    rect(plug - 8, out - 11, 16, 22, 'housing', 2),
    circle(load, out, 16, 'housing'),
    ...words.map((word, index) => text(word.x, rowOf(index), word.text, word.anchor)),
    text((source + load) / 2, back + 18, lead.length),
  )
}
