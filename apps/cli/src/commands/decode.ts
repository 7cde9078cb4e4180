import type { Command } from 'commander'
import { type DecodeFlags, decodeRecording } from '../decode/recording.ts'

/** `shearline decode FILE`: every diagnostic message of a recording, security payloads redacted unless `--raw`. */
export function addDecode(program: Command): void {
  program
    .command('decode')
    .description('List every diagnostic message of a recording')
    .argument('<file>', 'the recording; - for standard input')
    .option('--json', 'one JSON object per message, or one for --summary')
    .option('--summary', 'only counts')
    .option('--fields <list>', 'a table of these fields parted by tabs, as time,id,service,did,nrc')
    .option('--raw', 'do not hide the payloads of security services')
    .option('--ids <list>', 'identifiers that carry diagnostics, hex, comma separated (29-bit: eight digits)')
    .option(
      '--addressing <kind>',
      'of the --ids: normal, extended or mixed; auto (as without it) finds address bytes of 11-bit identifiers from what is answered',
    )
    .option(
      '--columns <list>',
      'for a table: which column holds what, as time=Time,id=ID,data=D0..D7 (also timeUnit=ms, idBase=dec, dataBase=hex; #3 is the third column)',
    )
    .action((file: string, flags: DecodeFlags) => decodeRecording(file, flags))
}
