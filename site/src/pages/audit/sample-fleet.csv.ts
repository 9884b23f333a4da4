import { fleet } from '../../audit/fleet.ts'

/** The invented list, to look at and to change. */
export function GET(): Response {
  return new Response(fleet)
}
