import { describeWhere } from '@shearline/bus'
import { type JobState, sayNeed, sayNext, type Tumbler, say as words } from '@shearline/jobfile'
import { countOf, paint, print } from '../output/answer.ts'

const marks: Readonly<Record<Tumbler['state'], string>> = {
  low: '↓ low',
  'in-line': '= in line',
  high: '↑ high',
}

/** Prints a job for a person: what it is, its seven tumblers with what they want, the next step. */
export function printJob(state: JobState): void {
  const { opened } = state
  print(paint(`${opened?.title ?? state.job}${opened?.demo === true ? '  (invented data)' : ''}`, 'bold'))
  print(
    `${state.job} · ${opened?.place ?? ''} · ${opened?.vehicle ?? ''} · VIN ${state.vin ?? 'not agreed'} · ${countOf(state.factCount, 'fact')}`,
  )
  print()
  for (const tumbler of state.tumblers) {
    const colour = tumbler.state === 'in-line' ? 'green' : tumbler.state === 'high' ? 'red' : 'yellow'
    print(
      `${words('en', `tumbler.${tumbler.name}`).padEnd(11)} ${paint(marks[tumbler.state].padEnd(10), colour)} ${tumbler.done} of ${tumbler.of}`,
    )
    for (const need of tumbler.needs) print(`    - ${sayNeed('en', need)}`)
  }
  for (const { where, what } of state.clocks)
    print(`${paint('clock', 'yellow')} ${describeWhere(where)}: ${what}`)
  for (const hold of state.custody.holds) print(`${paint('held', 'yellow')} since ${hold.at}: ${hold.reason}`)
  for (const gone of state.custody.deletions)
    print(
      `deleted ${gone.at} by ${gone.by}: ${words('en', `retention.${gone.class}`)}, ${gone.items} (${gone.why})`,
    )
  for (const fact of state.unknown) print(`kept, not understood: ${fact.kind}; update Shearline to read it`)
  print()
  print(`Next: ${paint(sayNext('en', state.next), 'bold')}`)
}
