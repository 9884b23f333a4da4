import type { SectionDraft } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import type { heatingWords } from './heatingWords.ts'
import type { ToolHeat } from './heatTool.ts'

/** Notes the nominal heating curve: with the tool lifted as the verdict has it. */
export function noteHeat(draft: SectionDraft<typeof heatingWords>, { inputs, heat }: ToolHeat, name: string): void {
  const { tipWidthMm: _width, tube, ...joint } = inputs
  const clip = inputs.conductors[0]?.clip
  if (clip) draft.value('from the clip into the air', clip.resistanceKPerW, 'K/W', assumed.clip.source)
  const lifted = { ...joint, toolOffS: heat.ends.nominal.toolOffS }
  if (tube === undefined) draft.working('heatJoint', lifted, name)
  else draft.working('heatSolderSleeve', { ...lifted, tube }, name)
}
