/**
 * @module Readiness of the monitors in PID 01 and 41 (SAE J1979): which self-tests the unit has, which have run.
 *
 * Layout for spark ignition: scapy `obd/pid/pids_00_1F.py`; that a set bit means "not complete", and the names for
 * compression ignition, are from memory of SAE J1979.
 */

import type { MonitorReadiness } from '../message/types.ts'

/** Monitors every engine has, from bit 0 of byte B on; four bits higher stands whether they have run. */
const CONTINUOUS = ['misfire', 'fuel system', 'components'] as const

/** Bits 0 to 7 of bytes C (supported) and D (not complete). */
const SPARK = [
  'catalyst',
  'heated catalyst',
  'evaporative system',
  'secondary air system',
  'A/C refrigerant or gasoline particulate filter',
  'oxygen sensor',
  'oxygen sensor heater',
  'EGR or VVT system',
] as const

const COMPRESSION = [
  'NMHC catalyst',
  'NOx aftertreatment',
  undefined,
  'boost pressure',
  undefined,
  'exhaust gas sensor',
  'particulate filter',
  'EGR or VVT system',
] as const

/** Whether bit 3 of byte B says that the engine runs by compression ignition. */
export function isCompressionIgnition(b: number): boolean {
  return (b & 0x08) !== 0
}

/** The supported monitors, and whether each is complete. */
export function monitorsOf(b: number, c: number, d: number): readonly MonitorReadiness[] {
  const monitors: MonitorReadiness[] = []
  CONTINUOUS.forEach((monitor, bit) => {
    if ((b >> bit) & 1) monitors.push({ monitor, complete: ((b >> (bit + 4)) & 1) === 0 })
  })
  const names = isCompressionIgnition(b) ? COMPRESSION : SPARK
  names.forEach((monitor, bit) => {
    if (monitor !== undefined && (c >> bit) & 1) monitors.push({ monitor, complete: ((d >> bit) & 1) === 0 })
  })
  return monitors
}
