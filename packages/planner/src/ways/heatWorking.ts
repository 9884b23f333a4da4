import type { SectionDraft } from '../facts/inner.ts'
import type { heatingWords } from './heatingWords.ts'
import type { ToolHeat } from './heatTool.ts'

/** Notes the nominal heating curve: with the tool lifted as the verdict has it. */
export function noteHeat(draft: SectionDraft<typeof heatingWords>, { inputs, heat }: ToolHeat, name: string): void {
  const { tipWidthMm: _width, tube, ...joint } = inputs
  const lifted = { ...joint, toolOffS: heat.ends.nominal.toolOffS }
  if (tube === undefined) draft.working('heatJoint', lifted, name)
  else draft.working('heatSolderSleeve', { ...lifted, tube }, name)
}
