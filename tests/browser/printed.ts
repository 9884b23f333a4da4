/** Pages of a printed document. */
export const pagesOf = (pdf: Uint8Array): number =>
  (
    Buffer.from(pdf)
      .toString('latin1')
      .match(/\/Type\s*\/Page(?![a-zA-Z])/g) ?? []
  ).length
