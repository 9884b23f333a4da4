import { conductorTemperatureBandC, type HeatJointInput, heatJoint, lapJointResistanceOhm } from '@strandwise/core'
import { demoJobs, planRepair } from '@strandwise/planner'
import { parseQuantity } from '@strandwise/working/quantity'
import { literal } from './literal.ts'

export interface CodeBlock {
  readonly title: string
  readonly code: string
}

const asImport = (name: string, from: string): string => `import { ${name} } from '@strandwise/${from}'`

/** Prints a call with the inputs it was made with, so that shown and made call are the same. */
function shownCall<I>(title: string, from: string, name: string, call: (input: I) => unknown, input: I, told: (result: unknown) => string): CodeBlock {
  return { title, code: `${asImport(name, from)}\n\n${name}(${literal(input)})\n// ${told(call(input))}` }
}

const side = { areaMm2: 1, stubMm: 5, insulation: 'PVC', insulationOutsideMm: 2.4 } as const
const heating: HeatJointInput = {
  ambientC: 20,
  tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 6 },
  joint: { lapMm: 6, diameterMm: 2.4, solderMm3: 4 },
  conductors: [side, side],
  alloy: 'Sn60Pb40',
  toolOffS: 3,
}

function toldHeat(result: unknown): string {
  const { wettedAtS, insulationPeakC } = result as ReturnType<typeof heatJoint>
  return `wetted ${wettedAtS === null ? 'never' : `after ${wettedAtS.toFixed(2)} s`}; insulation edges peak at ${insulationPeakC.map((peak) => `${peak.toFixed(0)} °C`).join(' and ')}`
}

const lines = (from: string, name: string, calls: readonly (readonly [string, unknown])[]): string =>
  `${asImport(name, from)}\n\n${calls.map(([call, result]) => `${call} // ${literal(result)}`).join('\n')}`

/** Code of the embed page; every result was computed by the packages during the build. */
export function codeBlocks(): readonly CodeBlock[] {
  const [name, job] = Object.entries(demoJobs)[0] ?? []
  if (name === undefined || job === undefined) throw new Error('there is no demo job')
  const quantities = [
    ['12 ft 6 in', 'lengthM'],
    ['18 AWG', 'areaMm2'],
    ['3,5 mm', 'lengthMm'],
  ] as const
  return [
    shownCall(
      'How hot a wire settles, as a band',
      'core/ampacity',
      'conductorTemperatureBandC',
      conductorTemperatureBandC,
      { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 10 },
      (result) => {
        const { low, high } = result as ReturnType<typeof conductorTemperatureBandC>
        return `low ${low.toFixed(2)}, high ${high.toFixed(2)}: two correlations of still air, and the truth between them`
      },
    ),
    shownCall(
      'How good a soldered overlap is',
      'core/joint',
      'lapJointResistanceOhm',
      lapJointResistanceOhm,
      { overlapMm: 6, conductorsOhmPerM: [0.0137, 0.0137], interfaceSPerM: 5e6 },
      (result) => literal(result),
    ),
    shownCall('Whether it flows before the insulation gives up', 'core/heating', 'heatJoint', heatJoint, heating, toldHeat),
    {
      title: 'Units as people write them',
      code: lines(
        'working/quantity',
        'parseQuantity',
        quantities.map(([text, kind]) => [`parseQuantity('${text}', '${kind}')`, parseQuantity(text, kind)]),
      ),
    },
    {
      title: 'A whole repair',
      code: `${asImport('demoJobs, parseRepairJob, planRepair, reportMarkdown', 'planner')}\n\nconst plan = planRepair(demoJobs['${name}'])\nplan.verdict // ${literal(planRepair(job).verdict)}\n\nreportMarkdown(planRepair(parseRepairJob(yourJson)))`,
    },
  ]
}
