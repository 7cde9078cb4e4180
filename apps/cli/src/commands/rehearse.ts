import { parsePlan, type Rehearsal, rehearse } from '@shearline/keywork'
import { type Command, Option } from 'commander'
import { CouldNot, paint, print, printJson, say } from '../output/answer.ts'
import { jsonOf } from '../output/input.ts'

/** `shearline rehearse PLAN.json`: the best order, and for every point what the car is left with if it stops there. */
export function addRehearse(program: Command): void {
  program
    .command('rehearse')
    .description('Work out a teaching session: the best order, and what holds if it stops at any point')
    .argument('<plan>', 'the plan as JSON; - for standard input')
    .addOption(
      new Option('--order <order>', 'best: search it; given: keep the plan\u2019s')
        .choices(['best', 'given'])
        .default('best'),
    )
    .option('--json', 'one JSON object')
    .action(async (file: string, flags: { order: 'best' | 'given'; json?: boolean }) => {
      const parsed = parsePlan(await jsonOf(file))
      if (!('plan' in parsed))
        throw new CouldNot(
          `${file} is no plan at ${parsed.path || '(whole)'}: ${parsed.what}.`,
          'Mend it and run the command again.',
        )
      for (const name of parsed.ignored)
        say(`note: ${file}: "${name}" is not part of a plan and was ignored.`)
      const result = rehearse(parsed.plan, { order: flags.order })
      if (flags.json === true) printJson(result)
      else printRehearsal(result)
    })
}

function printRehearsal(result: Rehearsal): void {
  if (!result.opened) {
    print('The session cannot be opened with what is on hand.')
    return
  }
  print(
    `Order: ${result.order.join(', ') || 'no key'}${result.provenBest ? '' : ' (not proven the best: the search was stopped)'}`,
  )
  for (const point of result.breaks)
    printPoint(point.after === 'open' ? 'stops after opening' : `stops after ${point.after}`, point)
  printPoint('closed', result.end)
}

function printPoint(when: string, state: Rehearsal['end']): void {
  const starts =
    state.starts.length === 0
      ? paint('no key here starts the car', 'red')
      : `${state.starts.join(', ')} start the car`
  const dropped = state.dropped.length === 0 ? '' : `; dropped: ${state.dropped.join(', ')}`
  print(`${when.padEnd(20)} ${starts}${dropped}; way back: ${state.wayBack}`)
}
