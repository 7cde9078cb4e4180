/**
 * A plan to start from (`shearline rehearse --example`): the invented hire van. Five entries are stored, two keys are
 * on the bench, one of them a clone that counts once, one key is away, and a new one is wanted.
 */
export const examplePlan = {
  rule: {
    kind: 'replace-all',
    capacity: 8,
    leastKeys: 1,
    mostKeys: 8,
    opensWith: 'equipment',
    erases: 'at-close',
    commits: 'at-close',
    sameKeyTwice: 'refused',
    onBreak: 'revert',
    accepts: ['known', 'blank', 'prepared'],
  },
  stored: ['A', 'B', 'C', 'X', 'Y'],
  keys: [
    { id: 'A', state: 'known', onBench: true },
    { id: 'A-clone', identity: 'A', state: 'known', onBench: true },
    { id: 'B', state: 'known', onBench: false },
    { id: 'N', state: 'prepared', onBench: true },
  ],
  means: { equipment: true, backup: true },
  teach: ['A', 'N'],
}
