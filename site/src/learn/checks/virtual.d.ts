declare module 'virtual:published-figures' {
  export const figures: readonly import('./integration.ts').PublishedFigure[]
}
