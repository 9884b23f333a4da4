/** The rooms in the order in which they build on each other, with the question that each answers. */
const questions: Readonly<Record<string, readonly [title: string, question: string]>> = {
  'core/materials': ['Materials', 'What is this alloy’s liquidus, this insulation’s limit?'],
  'core/tables': ['Tables', 'What does the standard say?'],
  'core/rules': ['Trade rules', 'What does the trade say here?'],
  'core/heat': ['Heat', 'How does heat leave?'],
  'core/conductor': ['Conductor', 'How big, how many ohms?'],
  'core/ampacity': ['Ampacity', 'How many amperes, how hot, how long?'],
  'core/circuit': ['Circuit', 'Does the load get its volts?'],
  'core/protection': ['Protection', 'Which fuse, and will the terminal carry it?'],
  'core/meter': ['Meter', 'What does the meter really say?'],
  'core/joint': ['Joint', 'How good is the splice?'],
  'core/solder': ['Solder and heat', 'Will it flow before the insulation gives up?'],
  'core/crimp': ['Crimp', 'Is the crimp right?'],
  'core/sleeve': ['Heat-shrink sleeve', 'Which tube, how long, how thick afterwards?'],
  'core/routing': ['Routing', 'Will it break again?'],
  'core/suitability': ['Suitability', 'Which way to make this joint?'],
  'working/quantity': ['Quantities', 'What does “12 ft 6 in” mean?'],
  'working/uncertainty': ['Uncertainty', 'How sure is the number?'],
  'working/formulas': ['Working', 'How was it worked out?'],
}

export const roomOrder: readonly string[] = Object.keys(questions)

export function roomTitle(room: string): { readonly title: string; readonly question: string } {
  const [title, question] = questions[room] ?? [room, '']
  return { title, question }
}
