import { isExtended, parsePlan, type Rehearsal, rehearse, rehearseSession } from '@shearline/keywork'
import { type Command, Option } from 'commander'
import { examplePlan } from '../examples/plan.ts'
import { CouldNot, print, printExample, printJson, say } from '../output/answer.ts'
import { jsonOf } from '../output/input.ts'
import { printInterruptions, printPoint } from './rehearse-lines.ts'

interface Flags {
  readonly order: 'best' | 'given'
  readonly full?: boolean
  readonly json?: boolean
  readonly example?: boolean
}

/** `shearline rehearse PLAN.json`: the best order, and for every point what the car is left with if it stops there. */
export function addRehearse(program: Command): void {
  program
    .command('rehearse')
    .description('Work out a teaching session: the best order, and what holds if it stops at any point')
    .argument('[plan]', 'the plan as JSON; - for standard input')
    .addOption(
      new Option('--order <order>', 'best: search it; given: keep the plan\u2019s')
        .choices(['best', 'given'])
        .default('best'),
    )
    .option(
      '--full',
      'everything that can go otherwise at each step, ways back in seconds, conditions, reasons (always so for plans with times, codes, slots and the like)',
    )
    .option('--json', 'one JSON object')
    .option('--example', 'print a plan to start from')
    .action(async (file: string | undefined, flags: Flags) => {
      if (flags.example === true) return printExample(examplePlan)
      if (file === undefined)
        throw new CouldNot(
          'No plan is named.',
          'One to start from: shearline rehearse --example > plan.json.',
        )
      const parsed = parsePlan(await jsonOf(file))
      if (!('plan' in parsed))
        throw new CouldNot(
          `${file} is no plan at ${parsed.path || '(whole)'}: ${parsed.what}.`,
          'Mend it and run the command again.',
        )
      for (const name of parsed.ignored)
        say(`note: ${file}: "${name}" is not part of a plan and was ignored.`)
      const { plan } = parsed
      if (flags.full === true || isExtended(plan)) {
        const result = rehearseSession(plan, { order: flags.order })
        if (flags.json === true) printJson(result)
        else {
          printRehearsal(result)
          printInterruptions(result)
        }
        return
      }
      const result = rehearse(plan, { order: flags.order })
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
