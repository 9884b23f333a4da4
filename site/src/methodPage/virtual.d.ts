declare module 'virtual:method-facts' {
  export const facts: import('./facts.ts').MethodFacts
}
