/** @module Packet captures: pcap and pcapng. */

export { pcapFormat } from './pcap.ts'
export { pcapngFormat } from './pcapng.ts'
