import { dtcStatusBits, type ScannedUnit, scansOf } from '@shearline/bus'
import type { Command } from 'commander'
import { paint, print, printJson } from '../output/answer.ts'
import { readRecording } from '../output/recording.ts'

/** `shearline scans FILE`: the fault scans in a recording, one entry per unit and answer. */
export function addScans(program: Command): void {
  program
    .command('scans')
    .description('List the fault scans in a recording')
    .argument('<file>', 'the recording; - for standard input')
    .option('--json', 'one JSON list')
    .action(async (file: string, flags: { json?: boolean }) => {
      const scans: ScannedUnit[] = []
      await readRecording(file, { message: (message) => scans.push(...scansOf([message])) })
      if (flags.json === true) {
        printJson(scans)
        return
      }
      for (const scan of scans) {
        print(
          `${scan.time}  ${paint(scan.unit, 'bold')}  report ${scan.report}: ${scan.faults.length === 0 ? 'no fault reported' : ''}`,
        )
        for (const fault of scan.faults) {
          const bits = fault.status === null ? [] : dtcStatusBits(fault.status)
          print(`    ${fault.code}  ${[fault.list, ...bits].filter((word) => word !== undefined).join(', ')}`)
        }
      }
      if (scans.length === 0) print('No fault scan in this recording.')
    })
}
