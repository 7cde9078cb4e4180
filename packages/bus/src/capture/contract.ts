/**
 * @module The one contract every reader of a recording implements, whatever its format.
 *
 * A reader is fed chunks cut at any byte and tells a sink what it found. It never throws on malformed
 * input: it reports a finding with a line or a byte offset and goes on with the next thing it can read.
 * Its memory is bounded by the longest record it accepts, never by the length of the recording.
 * Readers are listed in `readers.ts`; a new format is one folder and one row there.
 */

import type { Finding, Where } from '../finding/index.ts'
import type { CanFrame, RecordedTime } from '../frame/index.ts'
import type { ScanStore } from './scan-store.ts'

/** A diagnostic message that arrived over DoIP (ISO 13400-2 payload type 8001), already out of its TCP stream. */
export interface DoipMessage {
  /** Time of the packet that carried the message's last byte. */
  readonly time: RecordedTime
  /** Time of the packet that carried the message's first byte. */
  readonly startTime: RecordedTime
  readonly channel: string
  /** Logical address of the sender: four upper-case hex digits. */
  readonly source: string
  /** Logical address of the target: four upper-case hex digits. */
  readonly target: string
  /** The user data: service byte first, without the two addresses. */
  readonly payload: Uint8Array
  /** False when the message was cut (lost segments, end of the recording); `payload` is then what arrived. */
  readonly complete: boolean
  readonly where: Where
}

/** A vehicle announcement or vehicle identification response (ISO 13400-2 payload type 0004). */
export interface DoipAnnouncement {
  readonly time: RecordedTime
  readonly channel: string
  /** The VIN as 17 ASCII characters as sent, not validated; empty when the field holds only 00 or FF. */
  readonly vin: string
  /** Logical address of the announcing entity: four upper-case hex digits. */
  readonly source: string
  /** Entity identification: twelve upper-case hex digits. */
  readonly eid: string
  /** Group identification: twelve upper-case hex digits. */
  readonly gid: string
  readonly where: Where
}

/** What a reader tells. Calls come in the order of the recording. */
export interface CaptureSink {
  /**
   * One CAN frame. The object, its time and its data bytes may be reused by the reader for the next frame:
   * they are valid during the call only. `keepFrame` (../frame) makes a copy that may be kept.
   */
  frame(frame: CanFrame): void
  /**
   * Whether an identifier carries plain traffic, so that its data frames need only be counted. Once true it stays
   * true. A sink without this is told every frame.
   */
  isPlain?(channel: string, id: number, extended: boolean): boolean
  /**
   * `count` sound data frames of plain identifiers were read on a channel, none earlier than the frame before it on
   * that channel and all in the same whole second; the last stood at `last` (valid during the call only). Told before
   * the channel's next frame.
   */
  plainFrames?(channel: string, count: number, last: RecordedTime): void
  /** One network packet that is no CAN frame was read: for counting. */
  networkPacket?(): void
  /** One DoIP diagnostic message. The object and its bytes belong to the sink from then on. */
  doip(message: DoipMessage): void
  /** One DoIP vehicle announcement. */
  announcement(announcement: DoipAnnouncement): void
  /** Something worth saying. `error` means that data was left out. */
  finding(finding: Finding): void
}

/** A reader at work. `end` is called once, after the last chunk; nothing is called after it. */
export interface CaptureReader {
  /** Takes the next bytes. The chunk may be reused by the caller as soon as this returns. */
  push(chunk: Uint8Array): void
  /** The recording is over: report what was cut and let go. */
  end(): void
}

/** Choices a reader may need that the bytes do not answer. */
export interface ReaderOptions {
  /** For CSV whose header is not understood by itself: our field name -> the file's column name. */
  readonly columns?: Readonly<Record<string, string>>
}

/** The formats Shearline reads, by the names shown to people and used in JSON. */
export type CaptureFormatName = 'candump' | 'pcap' | 'pcapng' | 'mdf' | 'csv' | 'gzip'

/** One row of the table of readers: how to tell the format by its first bytes, and how to open it. */
export interface CaptureFormat {
  readonly name: CaptureFormatName
  /**
   * Says in words why these first bytes are this format (`undefined` when they are not).
   * `head` holds the first bytes of the recording, at least `HEAD_BYTES` unless the recording is shorter.
   */
  recognise(head: Uint8Array): string | undefined
  /** `store` is for the bytes being read; one per recording, made anew when left out. */
  open(sink: CaptureSink, options: ReaderOptions, store?: ScanStore): CaptureReader
}

/** How many first bytes a recogniser is given when the recording has that many. */
export const HEAD_BYTES: number = 4096

/**
 * One packet of a capture that is not a CAN frame, handed to the module `ethernet`.
 * `linkType` is the registered LINKTYPE value: 1 Ethernet, 101 raw IP, 113 Linux cooked (SLL), 276 SLL2.
 * (Cooked packets whose protocol is CAN or CAN FD are read as frames and never arrive here.)
 */
export interface LinkPacket {
  readonly time: RecordedTime
  readonly channel: string
  readonly linkType: number
  /** The captured bytes from the link-layer header on. Valid during the call only: copy what is kept. */
  readonly data: Uint8Array
  /** Length on the wire; greater than `data.length` when the recorder cut the packet. */
  readonly originalLength: number
  readonly where: Where
}

/**
 * What `../ethernet/index.ts` provides: `export function createPacketReader(sink: CaptureSink): PacketReader`.
 * It finds IPv4/IPv6, UDP and TCP port 13400, reassembles TCP, and tells the sink DoIP messages and findings.
 */
export interface PacketReader {
  packet(packet: LinkPacket): void
  /** The recording is over: report streams and messages that stay unfinished. */
  end(): void
}
