import { Chart, type ChartDataset, Filler, Legend, LinearScale, LineController, LineElement, PointElement, Tooltip } from 'chart.js'
import type { ChartSpec } from './chartSpec.ts'

Chart.register(Filler, Legend, LinearScale, LineController, LineElement, PointElement, Tooltip)

type Point = { readonly x: number; readonly y: number }
type Line = ChartDataset<'line', Point[]>

const points = (x: readonly number[], y: readonly number[]): Point[] => x.map((value, index) => ({ x: value, y: y[index] ?? 0 }))

/** Replaces the drawing by a live chart; the drawing stays in the page for print and for screen readers. */
export function drawLive(drawing: SVGElement, spec: ChartSpec): { destroy(): void } {
  const style = getComputedStyle(drawing)
  const colour = (name: string) => style.getPropertyValue(`--${name}`).trim()
  const [copper, verdigris, ink, tin, rust, hairline] = ['copper', 'verdigris', 'ink', 'tin', 'rust', 'hairline'].map(colour)
  const strokes = { main: copper, edge: verdigris, other: ink }
  const dashes = { main: [], edge: [8, 4], other: [2, 3] }
  const xs = spec.series.flatMap((series) => [...series.x])
  const [first, last] = [Math.min(...xs), Math.max(...xs)]
  const plain = { pointRadius: 0, borderWidth: 2, tension: 0 }
  const datasets: Line[] = spec.series.flatMap((series): Line[] => {
    const own: Line = {
      ...plain,
      label: series.name,
      data: points(series.x, series.y),
      borderColor: strokes[series.kind] ?? '',
      borderDash: dashes[series.kind],
    }
    if (series.low === undefined || series.high === undefined) return [own]
    const edge = { ...plain, borderWidth: 0, borderColor: 'transparent' }
    return [
      own,
      { ...edge, label: `${series.name}, low`, data: points(series.x, series.low) },
      {
        ...edge,
        label: `${series.name}, high`,
        data: points(series.x, series.high),
        fill: '-1',
        backgroundColor: `color-mix(in srgb, ${copper} 18%, transparent)`,
      },
    ]
  })
  for (const limit of spec.limits)
    datasets.push({
      ...plain,
      label: limit.name,
      data: [
        { x: first, y: limit.y },
        { x: last, y: limit.y },
      ],
      borderColor: (limit.hot ? rust : tin) ?? '',
      borderDash: [5, 4],
    })
  const canvas = document.createElement('canvas')
  canvas.setAttribute('role', 'img')
  canvas.setAttribute('aria-label', spec.title)
  const holder = document.createElement('div')
  holder.className = 'live-chart-canvas'
  holder.append(canvas)
  drawing.after(holder)
  drawing.classList.add('asleep')
  const axis = (title: string) => ({
    type: 'linear' as const,
    title: { display: true, text: title, color: ink ?? '' },
    ticks: { color: ink ?? '' },
    grid: { color: hairline ?? '' },
  })
  const chart = new Chart(canvas, {
    type: 'line',
    data: { datasets },
    options: {
      animation: false,
      maintainAspectRatio: false,
      interaction: { mode: 'nearest', axis: 'x', intersect: false },
      scales: { x: axis(spec.xLabel), y: axis(spec.yLabel) },
      plugins: { legend: { labels: { color: ink ?? '', filter: (item) => !/, (low|high)$/.test(item.text) } } },
    },
  })
  return {
    destroy: () => {
      chart.destroy()
      holder.remove()
      drawing.classList.remove('asleep')
    },
  }
}
