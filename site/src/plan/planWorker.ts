import { LinkError } from './checkedJob.ts'
import type { PlanRequest, PlanResult } from './planMessages.ts'
import { answersOf, jobOf, lastPlan, linkOf, planAnswers } from './planService.ts'

/** Runs reading and planning off the main thread, so that a slow plan does not delay typing. */
async function done(request: PlanRequest): Promise<unknown> {
  switch (request.ask) {
    case 'plan':
      return planAnswers(request.answers)
    case 'example':
      return answersOf.example(request.name)
    case 'fragment':
      return answersOf.fragment(request.fragment)
    case 'file':
      return answersOf.file(request.text)
    case 'job': {
      const job = jobOf(request.answers)
      return job === null ? null : { text: job.text, title: job.title }
    }
    case 'link':
      return linkOf(request.answers)
    case 'prove': {
      const job = jobOf(request.answers)
      const { proveRepair } = await import('./proveRepair.ts')
      return job === null ? null : proveRepair(job.job, request.found)
    }
    case 'section': {
      const parts = lastPlan()
      const { laterOf } = await import('./view/later.ts')
      return parts === null ? '' : laterOf(parts, request.id)
    }
    case 'working': {
      const { workingOf } = await import('./workingOf.ts')
      return workingOf(request.id, request.inputs)
    }
  }
}

self.addEventListener('message', ({ data }: MessageEvent<{ readonly id: number; readonly request: PlanRequest }>) => {
  const answer = (result: PlanResult) => self.postMessage({ id: data.id, result })
  done(data.request).then(
    (value) => answer({ value }),
    (error: unknown) => answer(error instanceof LinkError ? { refused: error.message } : { failed: error instanceof Error ? error.message : String(error) }),
  )
})
