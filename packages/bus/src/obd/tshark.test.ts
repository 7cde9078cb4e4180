/**
 * @module Values of PIDs against another reading: wireshark's `packet-obd-ii.c`, run as tshark on a capture written
 * here. Skipped, and said so, where tshark is not installed.
 */

import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { interpret } from '../message/interpret.ts'
import { PIDS } from './pids.ts'

const present = spawnSync('tshark', ['--version']).error === undefined
if (!present) console.warn('skipped: tshark is not here, values of PIDs are not compared with it')

/** Wireshark's field (after `obd-ii.mode01_`) by our key. */
const FIELDS: Readonly<Record<string, string>> = {
  calculatedEngineLoadPercent: 'engine_load',
  engineCoolantCelsius: 'engine_coolant_temp',
  shortTermFuelTrimBank1Percent: 'short_term_fuel_bank1',
  shortTermFuelTrimBank2Percent: 'short_term_fuel_bank2',
  longTermFuelTrimBank1Percent: 'long_term_fuel_bank1',
  longTermFuelTrimBank2Percent: 'long_term_fuel_bank2',
  fuelPressureKilopascals: 'fuel_pressure',
  intakeManifoldAbsolutePressureKilopascals: 'intake_manifold_absolute_pressure',
  engineRevolutionsPerMinute: 'engine_rpm',
  vehicleKilometresPerHour: 'vehicle_speed',
  timingAdvanceDegrees: 'timing_advance',
  intakeAirCelsius: 'intake_air_temp',
  massAirFlowGramsPerSecond: 'maf_air_flow_rate',
  throttlePositionPercent: 'throttle_position',
  sinceEngineStartSeconds: 'engine_uptime',
  malfunctionIndicatorOnKilometres: 'distance_traveled_with_mil',
  fuelRailPressureKilopascals: 'fuel_rail_pressure',
  fuelRailGaugePressureKilopascals: 'fuel_rail_gauge_pressure',
  commandedEgrPercent: 'commanded_egr',
  egrErrorPercent: 'egr_error',
  commandedEvaporativePurgePercent: 'commanded_evap_purge',
  fuelTankLevelPercent: 'fuel_tank_level_input',
  warmUpsSinceCodesClearedCount: 'warm_ups',
  sinceCodesClearedKilometres: 'distance_traveled_since_code_clear',
  absoluteBarometricPressureKilopascals: 'absolute_barometric_pressure',
  catalystBank1Sensor1Celsius: 'catalyst_temp_11',
  catalystBank2Sensor1Celsius: 'catalyst_temp_21',
  catalystBank1Sensor2Celsius: 'catalyst_temp_12',
  catalystBank2Sensor2Celsius: 'catalyst_temp_22',
  controlModuleVolts: 'control_module_voltage',
  absoluteLoadPercent: 'absolute_load_value',
  commandedEquivalenceRatio: 'fuel_air_commanded_equiv_ratio',
  relativeThrottlePositionPercent: 'relative_throttle_position',
  ambientAirCelsius: 'ambient_air_temp',
  absoluteThrottlePositionBPercent: 'absolute_throttle_position_B',
  absoluteThrottlePositionCPercent: 'absolute_throttle_position_C',
  acceleratorPedalPositionDPercent: 'accelerator_pedal_position_D',
  acceleratorPedalPositionEPercent: 'accelerator_pedal_position_E',
  acceleratorPedalPositionFPercent: 'accelerator_pedal_position_F',
  commandedThrottleActuatorPercent: 'commanded_throttle_actuator',
  malfunctionIndicatorOnMinutes: 'time_run_with_mil',
  sinceCodesClearedMinutes: 'time_since_trouble_code_clear',
  ethanolFuelPercent: 'ethanol_fuel',
  absoluteEvapSystemVaporPressureKilopascals: 'absolute_evap_system_vapor_pressure',
  relativeAcceleratorPedalPositionPercent: 'relative_accelerator_pedal_position',
  hybridBatteryPackRemainingLifePercent: 'hybrid_battery_remaining_life',
  engineOilCelsius: 'engine_oil_temp',
  fuelInjectionTimingDegrees: 'fuel_injection_timing',
  engineFuelRateLitresPerHour: 'engine_fuel_rate',
  driversDemandEngineTorquePercent: 'torque_driver_demand_engine',
  actualEngineTorquePercent: 'torque_actual_engine',
  engineReferenceTorqueNewtonMetres: 'torque_reference_engine',
}

/** Bytes that differ from PID to PID and turn to turn. */
const byteAt = (pid: number, turn: number, index: number): number =>
  (pid * 37 + turn * 101 + index * 59) & 255

function answers(): Uint8Array[] {
  const all: Uint8Array[] = []
  for (const pid of PIDS.values()) {
    if (pid.pid > 0x63 || pid.bytes > 5 || !pid.fields.some((field) => field.key in FIELDS)) continue
    for (let turn = 0; turn < 4; turn++) {
      const data = Array.from({ length: pid.bytes }, (_, index) => byteAt(pid.pid, turn, index))
      all.push(Uint8Array.of(0x41, pid.pid, ...data))
    }
  }
  return all
}

/** A pcap (link type 227) with each message as a padded single frame of 7E8. */
function capture(messages: readonly Uint8Array[]): Uint8Array {
  const file = new DataView(new ArrayBuffer(24 + messages.length * 32))
  ;[0xa1b2c3d4, 0x00020004, 0, 0, 65535, 227].forEach((word, index) => {
    file.setUint32(index * 4, word)
  })
  messages.forEach((message, index) => {
    const at = 24 + index * 32
    ;[index, 0, 16, 16, 0x7e8, 0x08000000].forEach((word, place) => {
      file.setUint32(at + place * 4, word)
    })
    ;[message.length, ...message].forEach((byte, place) => {
      file.setUint8(at + 24 + place, byte)
    })
  })
  return new Uint8Array(file.buffer)
}

describe.skipIf(!present)('values of PIDs', () => {
  it('are those wireshark reads from the same frames', () => {
    const folder = mkdtempSync(join(tmpdir(), 'shearline-pids-'))
    const messages = answers()
    const keys = Object.keys(FIELDS)
    try {
      const file = join(folder, 'pids.pcap')
      writeFileSync(file, capture(messages))
      const columns = keys.flatMap((key) => ['-e', `obd-ii.mode01_${FIELDS[key]}`])
      const output = execFileSync(
        'tshark',
        [
          '-r',
          file,
          '-d',
          'can.subdissector,iso15765',
          '-d',
          'iso15765.subdissector,obd-ii',
          '-T',
          'fields',
          ...columns,
        ],
        { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] },
      )
      const rows = output.split('\n').slice(0, messages.length)
      const compared = new Set<string>()
      rows.forEach((row, index) => {
        const { values } = interpret('obd', 'response', 0x01, messages[index] as Uint8Array)
        row.split('\t').forEach((cell, column) => {
          if (cell === '') return
          const key = keys[column] as string
          // Wireshark prints doubles with six significant digits.
          const theirs = Number(cell)
          const far = Math.abs((values?.[key] ?? Number.NaN) - theirs)
          expect(far, `${key} ${cell} ${values?.[key]}`).toBeLessThan(Math.max(1e-3, Math.abs(theirs) * 1e-5))
          compared.add(key)
        })
      })
      expect(keys.filter((key) => !compared.has(key))).toEqual([])
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})
