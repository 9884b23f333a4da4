import type { Place } from '../job/index.ts'

const feed: readonly Place[] = ['source+', 'fuse-in', 'fuse-out', 'joint-in', 'joint-out', 'terminal-wire', 'terminal-mate', 'load+']
const feedWhole: readonly Place[] = ['source+', 'fuse-in', 'fuse-out', 'terminal-wire', 'terminal-mate', 'load+']

/** The places in the order of the current. For damage in the return, joint-in and joint-out replace return-joint. */
export function placesInOrder(where: 'feed' | 'return'): readonly Place[] {
  return where === 'feed' ? [...feed, 'load-', 'return-joint', 'source-'] : [...feedWhole, 'load-', 'joint-in', 'joint-out', 'source-']
}
