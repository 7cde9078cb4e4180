/** @module The table of formats. A new format is one row here; the first row that recognises the bytes wins. */

import { candump } from '../candump/index.ts'
import { CSV_FORMAT } from '../csv/index.ts'
import { createPacketReader } from '../ethernet/index.ts'
import { MDF_FORMAT } from '../mdf/index.ts'
import { pcapFormat, pcapngFormat } from '../pcap/index.ts'
import type { CaptureFormat } from './contract.ts'
import { gzipFormat } from './gzip.ts'

/** The formats that are not packed. Binary ones with a magic number stand before text; CSV takes any table, so it is last. */
export const PLAIN: readonly CaptureFormat[] = [
  pcapFormat(createPacketReader),
  pcapngFormat(createPacketReader),
  MDF_FORMAT,
  candump,
  CSV_FORMAT,
]

/** Every format Shearline reads. */
export const READERS: readonly CaptureFormat[] = [gzipFormat(PLAIN), ...PLAIN]
