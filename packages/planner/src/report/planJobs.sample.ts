import { demoJobs, trailerTailLamp } from '../demo/index.ts'
import type { RepairJob } from '../job/index.ts'

type Parts = {
  readonly [Key in 'circuit' | 'load' | 'wire' | 'damage' | 'surroundings']?: Readonly<Record<string, unknown>>
} & Omit<Partial<RepairJob>, 'circuit' | 'load' | 'wire' | 'damage' | 'surroundings'>

/** The trailer's lamp with some fields replaced; null removes one. */
export function lampWith({ circuit, load, wire, damage, surroundings, ...rest }: Parts): RepairJob {
  const merged = (one: object | undefined, more: Readonly<Record<string, unknown>> | undefined) =>
    Object.fromEntries(Object.entries({ ...one, ...more }).filter(([, value]) => value !== null && value !== undefined))
  return {
    ...trailerTailLamp,
    circuit: merged(trailerTailLamp.circuit, circuit),
    load: load ?? trailerTailLamp.load,
    wire: merged(trailerTailLamp.wire, wire),
    damage: merged(trailerTailLamp.damage, damage),
    surroundings: merged(trailerTailLamp.surroundings, surroundings),
    ...rest,
  } as RepairJob
}

const lined = {
  name: 'lined tube',
  material: 'polyolefin-adhesive-lined',
  suppliedInsideMm: 8,
  recoveredInsideMm: 2,
  recoveredWallMm: 1,
  longitudinalChange: { low: -0.1, high: 0 },
} as const
const tube = { ...lined, name: 'tube', material: 'polyolefin' } as const
export const iron = { name: 'iron', kind: 'iron', powerW: 70, setC: 360, tipWidthMm: 3 } as const
export const hotAir = { name: 'hot-air tool', kind: 'hot-air', airC: 350, airSpeedMPerS: 10, nozzleMm: 20 } as const
const byIron = { hasCrimpTool: false, hasTerminalDie: false, tools: [iron], sleeves: [lined, tube] } as const
const sleeveAlone = {
  hasCrimpTool: false,
  hasTerminalDie: false,
  // A sleeve's own tube keeps most of the heat: it takes a strong stream.
  tools: [{ ...hotAir, airC: 450, airSpeedMPerS: 20 }],
  methods: ['solder-sleeve'],
  solderSleeve: { ringAlloy: 'Sn42Bi58', tube: { ...lined, suppliedInsideMm: 5, recoveredInsideMm: 1.5 } },
  wire: { insulation: 'ETFE' },
} as const

export const read = (
  kind: NonNullable<RepairJob['readings']>[number]['kind'],
  from: NonNullable<RepairJob['readings']>[number]['from'],
  to: NonNullable<RepairJob['readings']>[number]['to'],
  value: number,
  more: Partial<NonNullable<RepairJob['readings']>[number]> = {},
): NonNullable<RepairJob['readings']>[number] => ({
  kind,
  from,
  to,
  load: kind === 'resistance' || kind === 'four-wire' || kind === 'insulation' ? 'unplugged' : 'on',
  value,
  ...more,
})

const everyReading = [
  read('drop', 'joint-in', 'joint-out', 1, { currentA: 1.5, when: 'moved' }),
  read('voltage', 'load+', 'source-', 10),
  read('four-wire', 'joint-in', 'joint-out', 0.1),
  read('resistance', 'joint-in', 'joint-out', 0.1),
]

/** Jobs of every kind by name: together they cover every decision, step and rule. */
export const planJobs: Readonly<Record<string, RepairJob>> = {
  ...demoJobs,
  ...Object.fromEntries(
    (['small-craft', 'aircraft', 'road-vehicle', 'space'] as const).flatMap((body) =>
      (['dry', 'splash', 'submerged'] as const).flatMap((location) => {
        const place = { circuit: { rules: [body] }, surroundings: { location, vibration: 'strong', hottestC: 70, coldestC: -10 }, readings: everyReading }
        const rotten = { kind: 'corroded', discolouredMm: 10 }
        return [
          [`${body}, ${location}, crimped`, lampWith({ ...place, wire: { insulationGradeC: 105 }, damage: rotten })],
          [
            `${body}, ${location}, at a ring`,
            lampWith({ ...place, wire: { insulationGradeC: 105 }, damage: { ...rotten, fromTerminationMm: 20 }, terminal: { kind: 'ring', studMm: 8 } }),
          ],
          [`${body}, ${location}, soldered`, lampWith({ ...place, ...byIron, wire: { insulation: 'XLPE' }, damage: { ...rotten, slackMm: 300 } })],
          [`${body}, ${location}, by sleeve`, lampWith({ ...place, ...sleeveAlone, damage: { slackMm: 300 } })],
        ] as const
      }),
    ),
  ),
  signal: lampWith({ circuit: { kind: 'signal', fuseA: null, fuseSeries: null }, load: { currentA: 0.1 }, readings: everyReading.slice(2) }),
  thermocouple: lampWith({ circuit: { kind: 'thermocouple', supplyV: 1, fuseA: null, fuseSeries: null }, load: { currentA: 0.0001 }, readings: [] }),
  'data pair': lampWith({ circuit: { kind: 'data-pair' }, load: { currentA: 0.05 }, readings: [] }),
  'eight ampere': lampWith({ circuit: { kind: 'power' }, load: { currentA: 8 } }),
  motor: lampWith({ circuit: { kind: 'motor' }, load: { currentA: 2, stallA: 9, inrushA: 6, inrushS: 0.1 } }),
  ...Object.fromEntries((['airbag', 'high-voltage', 'mains', 'safety', 'fuel-or-explosive'] as const).map((kind) => [kind, lampWith({ circuit: { kind } })])),
  '72 V': lampWith({ circuit: { supplyV: 72 } }),
  'boat bundle of 55 V': lampWith({ circuit: { supplyV: 55, rules: ['small-craft'] }, wire: { loadedInBundle: 6, bundleOutsideMm: 14 } }),
  'aircraft of 28 V': lampWith({ circuit: { supplyV: 28, rules: ['aircraft'] } }),
  aluminium: lampWith({
    wire: { material: 'aluminium-1350', areaMm2: 25, strandCount: null },
    terminal: { kind: 'cable-lug', studMm: 10, metal: 'tin' },
    damage: { fromTerminationMm: 20, slackMm: 300 },
  }),
  'aluminium in a clamp': lampWith({
    wire: { material: 'aluminium-1350', areaMm2: 25, strandCount: null },
    terminal: { kind: 'screw-clamp' },
    damage: { fromTerminationMm: 20, slackMm: 300 },
  }),
  'winch on thin wire': lampWith({
    circuit: { kind: 'motor', fuseA: 80, allowedDropV: null },
    load: { currentA: 45, onS: 30, offS: 600 },
    wire: { areaMm2: 2.5, strandCount: null, outLengthM: 1.5, returnLengthM: 1.5 },
    terminal: { kind: 'ring', studMm: 8 },
  }),
  'copper-clad': lampWith({ wire: { material: 'copper-clad-aluminium' } }),
  bismuth: lampWith({ ...byIron, wire: { insulation: 'PTFE' }, solders: ['Sn42Bi58'], surroundings: { location: 'splash' }, damage: { slackMm: 300 } }),
  silicone: lampWith({ ...byIron, wire: { insulation: 'silicone' }, surroundings: { location: 'splash' }, damage: { slackMm: 300 } }),
  'thick, by iron': lampWith({
    ...byIron,
    tools: [{ ...iron, powerW: 150, tipWidthMm: 5, setC: 400 }],
    wire: { areaMm2: 2.5, insulation: 'silicone', strandCount: null },
    solders: ['Sn63Pb37'],
    damage: { slackMm: 400 },
    surroundings: { vibration: 'none' },
  }),
  'very hot': lampWith({ ...byIron, wire: { insulation: 'PTFE' }, surroundings: { hottestC: 170 }, solders: ['Sn95Ag5'], damage: { slackMm: 300 } }),
  'by lap alone': lampWith({ ...byIron, methods: ['soldered-lap'], damage: { slackMm: 300 }, wire: { insulation: 'silicone' } }),
  'boat, by sleeve, temporary': lampWith({ ...sleeveAlone, repair: 'temporary', circuit: { rules: ['small-craft'] }, damage: { slackMm: 300 } }),
  'strands broken': lampWith({ damage: { kind: 'partly-broken', brokenStrands: 10 } }),
  'nothing read': lampWith({ damage: { kind: 'unknown' }, readings: [] }),
  'vapour, moving': lampWith({ surroundings: { flexes: true, flammableVapour: true }, damage: { slackMm: 300 } }),
  'vapour, sleeved': lampWith({ surroundings: { flammableVapour: true, location: 'splash' }, circuit: { rules: ['small-craft'] } }),
  moving: lampWith({ surroundings: { flexes: true }, wire: { outLengthM: 8 } }),
  'fuse far off': lampWith({ circuit: { fuseDistanceM: 3, rules: ['small-craft'] } }),
  'no fuse': lampWith({ circuit: { fuseA: null, fuseSeries: null } }),
  'fuse too large, by its curve': lampWith({ circuit: { fuseA: 125, fuseSeries: null, fuseKind: 'bolt-down' } }),
  'fuse too large': lampWith({ circuit: { fuseA: 40 } }),
  'at a plug': lampWith({ damage: { fromTerminationMm: 10, slackMm: 200 }, terminal: { kind: 'contact-in-housing', sealInsideMm: { low: 2, high: 4 } } }),
  'at a push-on': lampWith({ damage: { fromTerminationMm: 10, slackMm: 200 }, terminal: { kind: 'push-on' } }),
  'at a screw clamp': lampWith({ damage: { fromTerminationMm: 10, slackMm: 200 }, terminal: { kind: 'screw-clamp' } }),
  'at a spring clamp': lampWith({ damage: { fromTerminationMm: 10, slackMm: 0 }, terminal: { kind: 'spring-clamp' } }),
  'new run, clamped': lampWith({ load: { currentA: 40 }, terminal: { kind: 'screw-clamp' } }),
  'huge wire': lampWith({
    wire: { areaMm2: 120, strandCount: null },
    terminal: { kind: 'cable-lug', studMm: 12 },
    damage: { fromTerminationMm: 10, slackMm: 400 },
  }),
  'short burst': lampWith({ circuit: { kind: 'motor' }, load: { currentA: 4, onS: 20, offS: 200 } }),
  temporary: lampWith({ repair: 'temporary' }),
  'fuse contact': lampWith({ damage: { kind: 'unknown' }, readings: [read('drop', 'fuse-in', 'fuse-out', 1.2, { currentA: 1.6 })] }),
  'bad pin': lampWith({ damage: { kind: 'unknown' }, readings: [read('drop', 'terminal-wire', 'terminal-mate', 1.2, { currentA: 1.6 })] }),
  'bad return': lampWith({ damage: { kind: 'unknown' }, readings: [read('drop', 'load-', 'source-', 1.5, { currentA: 1.6 })] }),
  'flat supply': lampWith({ damage: { kind: 'unknown' }, readings: [read('voltage', 'source+', 'source-', 8)] }),
  'open load': lampWith({
    damage: { kind: 'unknown' },
    readings: [read('voltage', 'load+', 'load-', 12.3), read('current', 'joint-in', 'joint-in', 0), read('resistance', 'load+', 'load-', 1e7)],
  }),
  leak: lampWith({ damage: { kind: 'unknown' }, readings: [read('insulation', 'load+', 'source-', 20_000)] }),
  short: lampWith({ damage: { kind: 'unknown' }, readings: [read('resistance', 'load+', 'source-', 0.2)] }),
  worn: lampWith({ damage: { kind: 'unknown' }, readings: [read('drop', 'joint-in', 'joint-out', 0.03, { currentA: 1.8, resolution: 0.0001 })] }),
}
