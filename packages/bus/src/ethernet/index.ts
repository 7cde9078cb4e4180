/**
 * @module DoIP traffic out of captured network packets: Ethernet II with VLAN tags, Linux cooked and raw IP,
 * IPv4 and IPv6, UDP, and TCP put back in order. What the messages mean is in `../doip`.
 */

export {
  createPacketReader,
  type EthernetFindingCode,
  type PacketReaderOptions,
} from './packet-reader.ts'
