/** @module Writes `docs/faults.md`. */

import { say } from '@shearline/jobfile'
import { EXPLANATION_RULES } from '@shearline/keywork'
import { type Judged, scoreOf } from './judge.ts'

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`

/** The page: what the classes mean, how well they are given, which mistakes there are, and the rules. */
export function faultsPage(judged: readonly Judged[], of: { visits: number; firstSeed: number }): string {
  const scores = Object.entries(scoreOf(judged)).map(
    ([name, score]) =>
      `| ${name} | ${score.actual} | ${score.given} | ${score.right} | ${percent(score.precision)} | ${percent(score.recall)} |`,
  )
  const rules = EXPLANATION_RULES.map(
    (rule) =>
      `| \`${rule.id}\` | ${rule.causes.join(', ')} | ${codesOf(rule.codes)} | ${rule.confidence} | ${say('en', `explanation-source.${rule.id}`)} |`,
  )
  return `# Whose faults are they?

Written by \`SHEARLINE_WRITE_DOCS=1 npx vitest run tests/faults\`; do not edit. The test of that name fails when these figures are no longer true.

Every fault of a visit gets one class: there before (still, gone, or back), raised by the work, new and unexplained, permanent, or not comparable. "Raised by the work" needs a reason: something the recording or the technician's notes show, at the right time, that fits the code. Unsure rather than wrong: what fits no rule well enough is "new and unexplained" and waits for a person.

## How well

${of.visits} visits at the practice car (seeds ${of.firstSeed} to ${of.firstSeed + of.visits - 1}, none of them looked at while the rules were written), ${judged.length} faults. The simulation knows who made each test fail; the comparison sees only the recording, the scans in it, and the notes. Batteries sag, units restart or are muted, keys are refused, the battery is taken off; meanwhile parts of the car fail and wires come loose by themselves, memories were cleared the same morning, and some units are forgotten in the first scan.

| class | true faults | given | right | precision | recall |
| --- | --- | --- | --- | --- | --- |
${scores.join('\n')}

Precision: of the faults that were given the class, the share that has it. Recall: of the faults that have it, the share that was given it. A fault whose unit was not read before the work is "not comparable" and counts against recall.

## Where it is wrong or unsure

| given | true | what happened | faults |
| --- | --- | --- | --- |
${mistakes(judged).join('\n')}

- A wire that comes loose in the same visit in which its unit was restarted or the battery was off looks the same as the work's doing: these are the faults that are called ours and are not.
- Simulated cars are simpler than real ones. The figures compare rules with each other; they promise nothing for a real car.

## The rules

| rule | what the work did | codes | confidence | source |
| --- | --- | --- | --- | --- |
${rules.join('\n')}

Numbered rules of the comparison itself: \`packages/keywork/src/faults/SPEC.md\`.
`
}

function codesOf(codes: (typeof EXPLANATION_RULES)[number]['codes']): string {
  if (codes instanceof RegExp) return `\`${codes.source.replace(/^\^|\$$/g, '').replaceAll('|', '\\|')}\``
  return codes.replaceAll('-', ' ')
}

function mistakes(judged: readonly Judged[]): string[] {
  const counts = new Map<string, number>()
  for (const { line, truth, what } of judged) {
    const right =
      truth === 'raised-by-car'
        ? line.class === 'new-unexplained'
        : line.class.startsWith(truth) || (truth === 'there-before' && line.class === 'permanent')
    if (right) continue
    const row = `| ${line.class} | ${truth} | ${what || 'before the visit'} |`
    counts.set(row, (counts.get(row) ?? 0) + 1)
  }
  return [...counts].sort((one, other) => other[1] - one[1]).map(([row, count]) => `${row} ${count} |`)
}
