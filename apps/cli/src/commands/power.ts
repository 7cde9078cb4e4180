import { type PowerAnswer, parsePowerFile, powerBudget } from '@shearline/keywork'
import type { Command } from 'commander'
import { examplePower } from '../examples/power.ts'
import { CouldNot, paint, print, printExample, printJson, say, sentence } from '../output/answer.ts'
import { jsonOf } from '../output/input.ts'

/** `shearline power FILE.json`: will the battery hold through the planned steps, and what supply is needed. */
export function addPower(program: Command): void {
  program
    .command('power')
    .description('Work out whether the supply will hold through a job')
    .argument('[file]', 'battery, steps and supply as JSON; - for standard input')
    .option('--json', 'one JSON object')
    .option('--example', 'print a file to start from')
    .action(async (file: string | undefined, flags: { json?: boolean; example?: boolean }) => {
      if (flags.example === true) return printExample(examplePower)
      if (file === undefined)
        throw new CouldNot('No file is named.', 'One to start from: shearline power --example > power.json.')
      const parsed = parsePowerFile(await jsonOf(file))
      if (!('input' in parsed))
        throw new CouldNot(
          `${file} is no power file at ${parsed.path || '(whole)'}: ${parsed.what}.`,
          'Mend it and run the command again.',
        )
      for (const name of parsed.ignored)
        say(`note: ${file}: "${name}" is not part of a power file and was ignored.`)
      const answer = powerBudget(parsed.input)
      if (flags.json === true) printJson(answer)
      else printBudget(answer)
    })
}

const verdicts = {
  go: 'It will hold.',
  'connect-supply': 'Connect a supply first.',
  stop: 'Stop: do not begin.',
} as const

function printBudget(answer: PowerAnswer): void {
  const { stateOfCharge, minimumVolts } = answer
  const percent = (share: number) => `${Math.round(share * 100)} %`
  print(paint(verdicts[answer.verdict], 'bold'))
  print(
    `Charge: ${percent(stateOfCharge.mid)} (${percent(stateOfCharge.low)} to ${percent(stateOfCharge.high)})`,
  )
  print(
    `Lowest: ${minimumVolts.mid.toFixed(1)} V (${minimumVolts.low.toFixed(1)} to ${minimumVolts.high.toFixed(1)} V)`,
  )
  if (answer.crossesFloorAt !== null)
    print(`Crosses the floor after ${Math.round(answer.crossesFloorAt)} min`)
  if (answer.supplyAmperes !== null && answer.supplyAmperes > 0)
    print(`Supply needed: at least ${answer.supplyAmperes} A`)
  for (const warning of answer.warnings)
    say(`${warning.severity}: ${sentence(warning.what)} ${warning.doNext}`)
}
