import { codeByName } from 'virtual:handbook-code'

export function getStaticPaths() {
  return Object.entries(codeByName).map(([name, code]) => ({ params: { name }, props: { code } }))
}

/** One function as a module, fetched by its page on the first touch of the form. */
export function GET({ props }: { readonly props: { readonly code: string } }): Response {
  return new Response(props.code)
}
