import { handbook } from 'virtual:handbook'

const quoted = (cell: number | string): string => (/[",\n]/.test(String(cell)) ? `"${String(cell).replaceAll('"', '""')}"` : String(cell))

export function getStaticPaths() {
  return handbook.data.flatMap((one) =>
    one.tables.map((table, at) => {
      const head = table.columns.map(({ words, unit }) => (unit === '' ? words : `${words} (${unit})`))
      return { params: { file: `${one.name}-${at + 1}` }, props: { text: `${[head, ...table.rows].map((row) => row.map(quoted).join(',')).join('\r\n')}\r\n` } }
    }),
  )
}

/** The rows of one table as CSV, with numbers as in the code. */
export function GET({ props }: { readonly props: { readonly text: string } }): Response {
  return new Response(props.text)
}
