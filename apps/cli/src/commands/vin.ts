import { readVin } from '@shearline/keywork'
import type { Command } from 'commander'
import { exit, paint, print, printJson } from '../output/answer.ts'

/** `shearline vin VIN`: what a VIN says by itself. Exit 1 when it is not well formed, with `--market na` also when its check digit is wrong. */
export function addVin(program: Command): void {
  program
    .command('vin')
    .description('Check a VIN: form, check digit, model year, region')
    .argument('<vin>', 'the VIN; spaces and hyphens are ignored')
    .option(
      '--market <market>',
      'na: the check digit decides (49 CFR 565.15); other: it is only a finding',
      'other',
    )
    .option('--json', 'one JSON object')
    .action((vin: string, options: { market: string; json?: boolean }) => {
      const market = options.market === 'na' ? 'na' : 'other'
      const reading = readVin(vin, { market })
      const no = !reading.wellFormed || (market === 'na' && reading.checkDigit?.ok !== true)
      if (options.json === true) printJson(reading)
      else {
        print(
          `${paint(reading.vin, 'bold')}  ${reading.wellFormed ? 'well formed' : paint('not well formed', 'red')}`,
        )
        const digit = reading.checkDigit
        if (digit !== null)
          print(
            `Check digit: ${digit.found} at position 9, ${digit.ok ? 'as computed' : `computed ${digit.expected}`}`,
          )
        print(`Model year: ${reading.modelYears.join(' or ') || 'not told by position 10'}`)
        print(
          `Region: ${[reading.country, reading.region].filter((part) => part !== null).join(', ') || 'not assigned'}`,
        )
        for (const finding of reading.findings) print(`- ${finding.what} ${finding.doNext}`)
      }
      process.exitCode = no ? exit.no : exit.answered
    })
}
