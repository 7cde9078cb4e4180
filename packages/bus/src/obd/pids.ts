/**
 * @module The PIDs of SAE J1979-DA service 01 with their formulas, as data.
 *
 * Facts (names, byte counts, scaling) as listed in the public files of scapy (`obd/pid/`), python-OBD
 * (`obd/commands.py`) and wireshark (`packet-obd-ii.c`); no code of theirs. Two of them agree on the byte counts of
 * 00-5F; those of 64-7F stand in scapy alone, so they are read only where a message has exactly that length.
 */

/** One scaled number in the data of a PID: `raw * multiply / divide + add`, big-endian. */
export interface PidField {
  /** What it is, the unit at its end; unique among all PIDs. */
  readonly key: string
  /** Place of its first byte in the data. */
  readonly at: number
  readonly bytes: 1 | 2 | 8
  readonly signed: boolean
  readonly multiply: number
  readonly divide: number
  readonly add: number
}

/** What the data of a PID is when it is no scaled number. */
export type PidForm = 'numbers' | 'supported' | 'monitors' | 'code' | 'choice' | 'bits'

/** One PID. */
export interface Pid {
  readonly pid: number
  readonly name: string
  /** Bytes of its data. */
  readonly bytes: number
  readonly form: PidForm
  readonly fields: readonly PidField[]
  /** Bit i of the first byte says whether field i is supported. */
  readonly gated: boolean
}

type Scale = readonly [
  unit: string,
  bytes: 1 | 2 | 8,
  multiply: number,
  divide: number,
  add: number,
  signed?: true,
]

const PERCENT: Scale = ['Percent', 1, 100, 255, 0]
const TRIM: Scale = ['Percent', 1, 100, 128, -100]
const TORQUE: Scale = ['Percent', 1, 1, 1, -125]
const CELSIUS: Scale = ['Celsius', 1, 1, 1, -40]
const TENTHS: Scale = ['Celsius', 2, 1, 10, -40]
const RATIO: Scale = ['Ratio', 2, 2, 65_536, 0]
const FLOW: Scale = ['GramsPerSecond', 2, 1, 32, 0]
const BOOST: Scale = ['Kilopascals', 2, 1, 32, 0]
const HUNDREDTHS: Scale = ['Kilopascals', 2, 1, 100, 0]
const KPA: Scale = ['Kilopascals', 1, 1, 1, 0]
const TEN_KPA: Scale = ['Kilopascals', 2, 10, 1, 0]
const KILOMETRES: Scale = ['Kilometres', 2, 1, 1, 0]
const MINUTES: Scale = ['Minutes', 2, 1, 1, 0]
const LONG_SECONDS: Scale = ['Seconds', 8, 1, 1, 0]

type Part = readonly [key: string, scale: Scale]

/** Fields one behind the other, the first at `at`. */
function fields(at: number, parts: readonly Part[]): readonly PidField[] {
  let place = at
  return parts.map(([key, [unit, bytes, multiply, divide, add, signed = false]]) => {
    const field = { key: key + unit, at: place, bytes, signed, multiply, divide, add }
    place += bytes
    return field
  })
}

/** A PID of scaled numbers that fill its data. */
function numbers(pid: number, name: string, ...parts: readonly Part[]): Pid {
  const bytes = parts.reduce((sum, [, scale]) => sum + scale[1], 0)
  return { pid, name, bytes, form: 'numbers', fields: fields(0, parts), gated: false }
}

/** A PID whose first byte says which of its numbers are supported. */
function gated(pid: number, name: string, ...parts: readonly Part[]): Pid {
  const bytes = parts.reduce((sum, [, scale]) => sum + scale[1], 1)
  return { pid, name, bytes, form: 'numbers', fields: fields(1, parts), gated: true }
}

function other(pid: number, name: string, bytes: number, form: PidForm): Pid {
  return { pid, name, bytes, form, fields: [], gated: false }
}

const EIGHT = [1, 2, 3, 4, 5, 6, 7, 8] as const

const ROWS: readonly Pid[] = [
  ...[0x00, 0x20, 0x40, 0x60, 0x80, 0xa0, 0xc0].map((pid) => other(pid, 'PIDs supported', 4, 'supported')),
  other(0x01, 'monitor status since DTCs cleared', 4, 'monitors'),
  other(0x02, 'freeze DTC', 2, 'code'),
  other(0x03, 'fuel system status', 2, 'choice'),
  numbers(0x04, 'calculated engine load', ['calculatedEngineLoad', PERCENT]),
  numbers(0x05, 'engine coolant temperature', ['engineCoolant', CELSIUS]),
  numbers(0x06, 'short term fuel trim bank 1', ['shortTermFuelTrimBank1', TRIM]),
  numbers(0x07, 'long term fuel trim bank 1', ['longTermFuelTrimBank1', TRIM]),
  numbers(0x08, 'short term fuel trim bank 2', ['shortTermFuelTrimBank2', TRIM]),
  numbers(0x09, 'long term fuel trim bank 2', ['longTermFuelTrimBank2', TRIM]),
  numbers(0x0a, 'fuel pressure', ['fuelPressure', ['Kilopascals', 1, 3, 1, 0]]),
  numbers(0x0b, 'intake manifold absolute pressure', ['intakeManifoldAbsolutePressure', KPA]),
  numbers(0x0c, 'engine RPM', ['engine', ['RevolutionsPerMinute', 2, 1, 4, 0]]),
  numbers(0x0d, 'vehicle speed', ['vehicle', ['KilometresPerHour', 1, 1, 1, 0]]),
  numbers(0x0e, 'timing advance', ['timingAdvance', ['Degrees', 1, 1, 2, -64]]),
  numbers(0x0f, 'intake air temperature', ['intakeAir', CELSIUS]),
  numbers(0x10, 'MAF air flow rate', ['massAirFlow', ['GramsPerSecond', 2, 1, 100, 0]]),
  numbers(0x11, 'throttle position', ['throttlePosition', PERCENT]),
  other(0x12, 'commanded secondary air status', 1, 'choice'),
  other(0x13, 'oxygen sensors present', 1, 'bits'),
  ...EIGHT.map((n) =>
    numbers(
      0x13 + n,
      `oxygen sensor ${n}`,
      [`oxygenSensor${n}`, ['Volts', 1, 1, 200, 0]],
      [`oxygenSensor${n}Trim`, TRIM],
    ),
  ),
  other(0x1c, 'OBD standards this vehicle conforms to', 1, 'choice'),
  other(0x1d, 'oxygen sensors present', 1, 'bits'),
  other(0x1e, 'auxiliary input status', 1, 'bits'),
  numbers(0x1f, 'run time since engine start', ['sinceEngineStart', ['Seconds', 2, 1, 1, 0]]),
  numbers(0x21, 'distance traveled with malfunction indicator lamp on', [
    'malfunctionIndicatorOn',
    KILOMETRES,
  ]),
  numbers(0x22, 'fuel rail pressure', ['fuelRailPressure', ['Kilopascals', 2, 79, 1000, 0]]),
  numbers(0x23, 'fuel rail gauge pressure', ['fuelRailGaugePressure', TEN_KPA]),
  ...EIGHT.map((n) =>
    numbers(
      0x23 + n,
      `oxygen sensor ${n}`,
      [`oxygenSensor${n}Equivalence`, RATIO],
      [`oxygenSensor${n}WideRange`, ['Volts', 2, 8, 65_536, 0]],
    ),
  ),
  numbers(0x2c, 'commanded EGR', ['commandedEgr', PERCENT]),
  numbers(0x2d, 'EGR error', ['egrError', TRIM]),
  numbers(0x2e, 'commanded evaporative purge', ['commandedEvaporativePurge', PERCENT]),
  numbers(0x2f, 'fuel tank level input', ['fuelTankLevel', PERCENT]),
  numbers(0x30, 'warm-ups since codes cleared', ['warmUpsSinceCodesCleared', ['Count', 1, 1, 1, 0]]),
  numbers(0x31, 'distance traveled since codes cleared', ['sinceCodesCleared', KILOMETRES]),
  numbers(0x32, 'evap system vapor pressure', ['evapSystemVaporPressure', ['Pascals', 2, 1, 4, 0, true]]),
  numbers(0x33, 'absolute barometric pressure', ['absoluteBarometricPressure', KPA]),
  ...EIGHT.map((n) =>
    numbers(
      0x33 + n,
      `oxygen sensor ${n}`,
      [`oxygenSensor${n}PumpEquivalence`, RATIO],
      [`oxygenSensor${n}Pump`, ['Milliamperes', 2, 1, 256, -128]],
    ),
  ),
  numbers(0x3c, 'catalyst temperature bank 1 sensor 1', ['catalystBank1Sensor1', TENTHS]),
  numbers(0x3d, 'catalyst temperature bank 2 sensor 1', ['catalystBank2Sensor1', TENTHS]),
  numbers(0x3e, 'catalyst temperature bank 1 sensor 2', ['catalystBank1Sensor2', TENTHS]),
  numbers(0x3f, 'catalyst temperature bank 2 sensor 2', ['catalystBank2Sensor2', TENTHS]),
  other(0x41, 'monitor status this drive cycle', 4, 'monitors'),
  numbers(0x42, 'control module voltage', ['controlModule', ['Volts', 2, 1, 1000, 0]]),
  numbers(0x43, 'absolute load value', ['absoluteLoad', ['Percent', 2, 100, 255, 0]]),
  numbers(0x44, 'fuel-air commanded equivalence ratio', ['commandedEquivalence', RATIO]),
  numbers(0x45, 'relative throttle position', ['relativeThrottlePosition', PERCENT]),
  numbers(0x46, 'ambient air temperature', ['ambientAir', CELSIUS]),
  numbers(0x47, 'absolute throttle position B', ['absoluteThrottlePositionB', PERCENT]),
  numbers(0x48, 'absolute throttle position C', ['absoluteThrottlePositionC', PERCENT]),
  numbers(0x49, 'accelerator pedal position D', ['acceleratorPedalPositionD', PERCENT]),
  numbers(0x4a, 'accelerator pedal position E', ['acceleratorPedalPositionE', PERCENT]),
  numbers(0x4b, 'accelerator pedal position F', ['acceleratorPedalPositionF', PERCENT]),
  numbers(0x4c, 'commanded throttle actuator', ['commandedThrottleActuator', PERCENT]),
  numbers(0x4d, 'time run with MIL on', ['malfunctionIndicatorOn', MINUTES]),
  numbers(0x4e, 'time since trouble codes cleared', ['sinceCodesCleared', MINUTES]),
  numbers(
    0x4f,
    'various max values',
    ['maximumEquivalence', ['Ratio', 1, 1, 1, 0]],
    ['maximumOxygenSensor', ['Volts', 1, 1, 1, 0]],
    ['maximumOxygenSensor', ['Milliamperes', 1, 1, 1, 0]],
    ['maximumIntakeManifoldAbsolutePressure', ['Kilopascals', 1, 10, 1, 0]],
  ),
  {
    ...numbers(0x50, 'maximum value for air flow rate from mass air flow sensor', [
      'maximumMassAirFlow',
      ['GramsPerSecond', 1, 10, 1, 0],
    ]),
    // Three more bytes are reserved.
    bytes: 4,
  },
  other(0x51, 'fuel type', 1, 'choice'),
  numbers(0x52, 'ethanol fuel', ['ethanolFuel', PERCENT]),
  numbers(0x53, 'absolute evap system vapor pressure', [
    'absoluteEvapSystemVaporPressure',
    ['Kilopascals', 2, 1, 200, 0],
  ]),
  numbers(0x54, 'evap system vapor pressure', ['evapSystemVaporPressureWide', ['Pascals', 2, 1, 1, 0, true]]),
  ...[1, 2].flatMap((bank) => [
    numbers(
      0x53 + 2 * bank,
      'short term secondary oxygen sensor trim',
      [`shortTermSecondaryTrimBank${bank}`, TRIM],
      [`shortTermSecondaryTrimBank${bank + 2}`, TRIM],
    ),
    numbers(
      0x54 + 2 * bank,
      'long term secondary oxygen sensor trim',
      [`longTermSecondaryTrimBank${bank}`, TRIM],
      [`longTermSecondaryTrimBank${bank + 2}`, TRIM],
    ),
  ]),
  numbers(0x59, 'fuel rail absolute pressure', ['fuelRailAbsolutePressure', TEN_KPA]),
  numbers(0x5a, 'relative accelerator pedal position', ['relativeAcceleratorPedalPosition', PERCENT]),
  numbers(0x5b, 'hybrid battery pack remaining life', ['hybridBatteryPackRemainingLife', PERCENT]),
  numbers(0x5c, 'engine oil temperature', ['engineOil', CELSIUS]),
  numbers(0x5d, 'fuel injection timing', ['fuelInjectionTiming', ['Degrees', 2, 1, 128, -210]]),
  numbers(0x5e, 'engine fuel rate', ['engineFuelRate', ['LitresPerHour', 2, 1, 20, 0]]),
  other(0x5f, 'emission requirements to which vehicle is designed', 1, 'choice'),
  numbers(0x61, "driver's demand engine percent torque", ['driversDemandEngineTorque', TORQUE]),
  numbers(0x62, 'actual engine percent torque', ['actualEngineTorque', TORQUE]),
  numbers(0x63, 'engine reference torque', ['engineReferenceTorque', ['NewtonMetres', 2, 1, 1, 0]]),
  numbers(
    0x64,
    'engine percent torque data',
    ...[1, 2, 3, 4, 5].map((n): Part => [`engineTorqueAtPoint${n}`, TORQUE]),
  ),
  other(0x65, 'auxiliary input output supported', 2, 'bits'),
  gated(0x66, 'mass air flow sensor', ['massAirFlowSensorA', FLOW], ['massAirFlowSensorB', FLOW]),
  gated(
    0x67,
    'engine coolant temperature',
    ['engineCoolantSensor1', CELSIUS],
    ['engineCoolantSensor2', CELSIUS],
  ),
  gated(
    0x68,
    'intake air temperature sensor',
    ...[1, 2].flatMap((bank) => [1, 2, 3].map((n): Part => [`intakeAirBank${bank}Sensor${n}`, CELSIUS])),
  ),
  gated(
    0x69,
    'commanded EGR and EGR error',
    ...['A', 'B'].flatMap((valve): Part[] => [
      [`commandedEgr${valve}`, PERCENT],
      [`actualEgr${valve}`, PERCENT],
      [`egr${valve}Error`, TRIM],
    ]),
  ),
  gated(
    0x6a,
    'commanded diesel intake air flow control',
    ...['A', 'B'].flatMap((valve): Part[] => [
      [`commandedIntakeAirFlow${valve}`, PERCENT],
      [`relativeIntakeAirFlow${valve}Position`, PERCENT],
    ]),
  ),
  gated(
    0x6b,
    'exhaust gas recirculation temperature',
    ...[1, 2].flatMap((bank) => [1, 2].map((n): Part => [`egrBank${bank}Sensor${n}`, CELSIUS])),
  ),
  gated(
    0x6c,
    'commanded throttle actuator control and relative throttle position',
    ...['A', 'B'].flatMap((valve): Part[] => [
      [`commandedThrottleActuator${valve}`, PERCENT],
      [`relativeThrottle${valve}Position`, PERCENT],
    ]),
  ),
  gated(
    0x6d,
    'fuel pressure control system',
    ['commandedFuelRailPressureA', TEN_KPA],
    ['fuelRailPressureA', TEN_KPA],
    ['fuelRailA', CELSIUS],
  ),
  gated(
    0x6e,
    'injection pressure control system',
    ['commandedInjectionControlPressure', TEN_KPA],
    ['injectionControlPressure', TEN_KPA],
  ),
  gated(
    0x6f,
    'turbocharger compressor inlet pressure',
    ['turbochargerACompressorInletPressure', KPA],
    ['turbochargerBCompressorInletPressure', KPA],
  ),
  gated(
    0x70,
    'boost pressure control',
    ...['A', 'B'].flatMap((turbo): Part[] => [
      [`commandedBoostPressure${turbo}`, BOOST],
      [`boostPressureSensor${turbo}`, BOOST],
    ]),
  ),
  gated(
    0x71,
    'variable geometry turbo control',
    ...['A', 'B'].flatMap((turbo): Part[] => [
      [`commandedVariableGeometryTurbo${turbo}Position`, PERCENT],
      [`variableGeometryTurbo${turbo}Position`, PERCENT],
    ]),
  ),
  gated(
    0x72,
    'wastegate control',
    ...['A', 'B'].flatMap((gate): Part[] => [
      [`commandedWastegate${gate}Position`, PERCENT],
      [`wastegate${gate}Position`, PERCENT],
    ]),
  ),
  gated(0x73, 'exhaust pressure', ['exhaustPressureBank1', HUNDREDTHS], ['exhaustPressureBank2', HUNDREDTHS]),
  gated(
    0x74,
    'turbocharger RPM',
    ['turbochargerA', ['RevolutionsPerMinute', 2, 1, 1, 0]],
    ['turbochargerB', ['RevolutionsPerMinute', 2, 1, 1, 0]],
  ),
  ...['A', 'B'].map((turbo, index) =>
    gated(
      0x75 + index,
      `turbocharger ${turbo} temperature`,
      [`turbocharger${turbo}CompressorInlet`, CELSIUS],
      [`turbocharger${turbo}CompressorOutlet`, CELSIUS],
      [`turbocharger${turbo}TurbineInlet`, TENTHS],
      [`turbocharger${turbo}TurbineOutlet`, TENTHS],
    ),
  ),
  gated(
    0x77,
    'charge air cooler temperature',
    ...[1, 2].flatMap((bank) => [1, 2].map((n): Part => [`chargeAirCoolerBank${bank}Sensor${n}`, CELSIUS])),
  ),
  ...[1, 2].map((bank) =>
    gated(
      0x77 + bank,
      `exhaust gas temperature bank ${bank}`,
      ...[1, 2, 3, 4].map((n): Part => [`exhaustGasBank${bank}Sensor${n}`, TENTHS]),
    ),
  ),
  ...[1, 2].map((bank) =>
    gated(
      0x79 + bank,
      `diesel particulate filter ${bank}`,
      [`particulateFilter${bank}DeltaPressure`, ['Kilopascals', 2, 1, 100, -327.68]],
      [`particulateFilter${bank}InletPressure`, HUNDREDTHS],
      [`particulateFilter${bank}OutletPressure`, HUNDREDTHS],
    ),
  ),
  gated(
    0x7c,
    'diesel particulate filter temperature',
    ...[1, 2].flatMap((bank): Part[] => [
      [`particulateFilterBank${bank}Inlet`, TENTHS],
      [`particulateFilterBank${bank}Outlet`, TENTHS],
    ]),
  ),
  other(0x7d, 'NOx NTE control area status', 1, 'bits'),
  other(0x7e, 'PM NTE control area status', 1, 'bits'),
  gated(
    0x7f,
    'engine run time',
    ['engineRunTotal', LONG_SECONDS],
    ['engineRunIdle', LONG_SECONDS],
    ['engineRunWithPowerTakeOff', LONG_SECONDS],
  ),
]

/** PIDs by number. */
export const PIDS: ReadonlyMap<number, Pid> = new Map(ROWS.map((row) => [row.pid, row]))

/** Name of a PID. */
export function nameOfPid(pid: number): string {
  return PIDS.get(pid)?.name ?? 'PID'
}

/** Bytes of a PID's data where two sources agree on them (00-5F, and the maps of supported PIDs). */
export function certainPidBytes(pid: number): number | undefined {
  const row = PIDS.get(pid)
  return row !== undefined && (pid <= 0x5f || row.form === 'supported') ? row.bytes : undefined
}
