/**
 * @module Our own short words for codes the standard controls and that matter to key work.
 *
 * Which number stands for which unit and condition is a fact of SAE J2012 / ISO 15031-6; the titles of its list are
 * not copied, the words are ours. Codes that are not here have no words: their structure still tells who controls
 * them. Immobiliser and key codes below U3000 are few because body codes of that kind (B1xxx) belong to the makers.
 */

/** What a code is about. */
export type DtcTopic =
  | 'lost-communication'
  | 'invalid-data'
  | 'software-mismatch'
  | 'bus'
  | 'supply'
  | 'ignition-and-start'
  | 'immobiliser-and-key'
  | 'restraint'
  | 'control-unit'

/** Words for one code. */
export interface DtcWords {
  readonly topic: DtcTopic
  readonly text: string
}

/** Units, by the code that tells of their silence. */
const SILENT: Readonly<Record<string, string>> = {
  U0100: 'engine control unit A',
  U0101: 'gearbox control unit',
  U0102: 'transfer case control unit',
  U0103: 'gear selector A',
  U0104: 'cruise control unit',
  U0107: 'throttle actuator unit',
  U0109: 'fuel pump control unit A',
  U010F: 'air conditioning unit',
  U0110: 'drive motor control unit A',
  U0111: 'traction battery control unit A',
  U0114: 'four-wheel clutch control unit',
  U0115: 'engine control unit B',
  U0120: 'starter-generator control unit',
  U0121: 'ABS control unit A',
  U0122: 'vehicle dynamics control unit',
  U0123: 'yaw rate sensor',
  U0124: 'lateral acceleration sensor',
  U0125: 'multi-axis acceleration sensor A',
  U0126: 'steering angle sensor',
  U0127: 'tyre pressure unit',
  U0128: 'parking brake control unit',
  U0129: 'brake system control unit A',
  U012A: 'chassis control unit A',
  U012D: 'generator A',
  U0131: 'power steering control unit A',
  U0132: 'suspension control unit A',
  U0134: 'rear steering control unit',
  U0137: 'trailer brake control unit',
  U013C: 'accelerator pedal unit',
  U0140: 'body control unit',
  U0141: 'body control unit A',
  U0142: 'body control unit B',
  U0143: 'body control unit C',
  U0144: 'body control unit D',
  U0145: 'body control unit E',
  U0146: 'gateway A',
  U0147: 'gateway B',
  U0148: 'gateway C',
  U0149: 'gateway D',
  U0150: 'gateway E',
  U0151: 'airbag control unit',
  U0152: 'left side airbag unit',
  U0153: 'right side airbag unit',
  U0154: 'seat occupancy unit',
  U0155: 'instrument cluster',
  U0156: 'information display A',
  U0157: 'information display B',
  U0158: 'head-up display',
  U0159: 'parking aid A',
  U015A: 'ABS control unit B',
  U0160: 'acoustic warning unit',
  U0164: 'heating and climate unit',
  U0166: 'auxiliary heater',
  U0167: 'immobiliser',
  U0168: 'vehicle security unit',
  U0169: 'sunroof unit',
  U0180: 'automatic light control unit',
  U0182: 'front light control unit',
  U0183: 'rear light control unit A',
  U0184: 'radio',
  U0185: 'antenna control unit',
  U0197: 'telephone unit',
  U0198: 'telematics unit',
  U0199: 'door control unit A',
  U019B: 'battery charger A',
  U019E: 'gear range control unit',
  U01B0: 'battery monitor',
  U01B7: 'switch input unit A',
  U01BA: 'park lock unit',
  U01BF: 'battery management unit',
  U0200: 'door control unit B',
  U0201: 'door control unit C',
  U0202: 'door control unit D',
  U0203: 'door control unit E',
  U0206: 'folding top control unit',
  U0208: 'seat control unit A',
  U0209: 'seat control unit B',
  U020C: 'wireless charging pad A',
  U0212: 'steering column control unit',
  U0214: 'remote control receiver unit',
  U0215: 'door switch A',
  U0216: 'door switch B',
  U0217: 'door switch C',
  U0218: 'door switch D',
  U0230: 'tailgate unit',
  U0231: 'rain sensor',
  U0236: 'steering column lock',
  U0241: 'headlamp unit A',
  U0242: 'headlamp unit B',
  U0248: 'remote accessory unit',
  U0250: 'impact sensing unit',
  U0254: 'remote start unit',
  U0258: 'radio transceiver',
  U025E: 'electric brake booster A',
  U0291: 'gear selector B',
  U0292: 'drive motor control unit B',
  U0293: 'hybrid or electric drive control unit',
  U0298: 'DC/DC converter A',
}

/** Units, by the code that tells of data from them that cannot be right. */
const DOUBTED: Readonly<Record<string, string>> = {
  U0401: 'engine control unit A',
  U0402: 'gearbox control unit',
  U0415: 'ABS control unit',
  U0417: 'parking brake control unit',
  U0420: 'power steering control unit A',
  U0422: 'body control unit',
  U0423: 'instrument cluster',
  U0426: 'immobiliser',
  U0427: 'vehicle security unit',
  U0428: 'steering angle sensor',
  U0429: 'steering column control unit',
  U0431: 'body control unit A',
  U0442: 'engine control unit B',
  U0443: 'body control unit B',
  U0447: 'gateway A',
  U0448: 'gateway B',
  U0452: 'airbag control unit',
  U0455: 'seat occupancy unit',
  U0499: 'telematics unit',
  U049A: 'door control unit A',
  U0501: 'door control unit B',
  U0537: 'steering column lock',
  U0549: 'remote accessory unit',
}

/** Units, by the code that tells of software that does not go with theirs. */
const MISMATCHED: Readonly<Record<string, string>> = {
  U0301: 'engine control unit',
  U0315: 'ABS control unit',
  U0317: 'parking brake control unit',
  U0320: 'power steering control unit',
  U0322: 'body control unit',
  U0323: 'instrument cluster',
  U0326: 'immobiliser',
  U0327: 'vehicle security unit',
  U0328: 'steering angle sensor',
  U0329: 'steering column control unit',
  U0331: 'body control unit A',
  U0336: 'airbag control unit',
  U0339: 'body control unit B',
}

const SUPPLY: Readonly<Record<string, string>> = {
  P0560: 'on-board voltage wrong',
  P0561: 'on-board voltage fluctuates',
  P0562: 'on-board voltage too low',
  P0563: 'on-board voltage too high',
  P0620: 'generator control line faulty',
  P0621: 'generator lamp line faulty',
  P0622: 'generator field line faulty',
  P0625: 'generator field line too low',
  P0626: 'generator field line too high',
  P063A: 'generator senses a wrong voltage',
  P063C: 'generator senses too low a voltage',
  P063D: 'generator senses too high a voltage',
  P065A: 'charging system works wrongly',
  P0641: 'sensor supply A broken',
  P0642: 'sensor supply A too low',
  P0643: 'sensor supply A too high',
  P0651: 'sensor supply B broken',
  P0652: 'sensor supply B too low',
  P0653: 'sensor supply B too high',
  P0657: 'actuator supply A broken',
  P0658: 'actuator supply A too low',
  P0659: 'actuator supply A too high',
  P0685: 'main relay of the engine control unit: control line broken',
  P0686: 'main relay of the engine control unit: control line too low',
  P0687: 'main relay of the engine control unit: control line too high',
  P0688: 'main relay of the engine control unit: output not seen',
  P0689: 'main relay of the engine control unit: output too low',
  P068A: 'main relay of the engine control unit dropped too early',
  P068B: 'main relay of the engine control unit dropped too late',
  P0690: 'main relay of the engine control unit: output too high',
  P2502: 'charging voltage wrong',
  C0564: 'ABS control unit: supply too low',
  C0565: 'ABS control unit: supply too high',
  U3003: 'battery: wrong voltage at the unit',
  U3004: 'accessory supply relay faulty',
  U3005: 'accessory supply after switching off faulty',
  U3006: 'unit supply A broken',
  U3007: 'unit supply B broken',
  U3008: 'unit earth A faulty',
  U3009: 'unit earth B faulty',
  U3013: 'unit supply C broken',
  U3014: 'unit supply D broken',
  U3015: 'unit earth C faulty',
  U3016: 'unit earth D faulty',
  U3018: 'unit supplies A and B disagree',
  U3019: 'unit supplies B and C disagree',
  U3500: 'unit supply A out of range',
  U3501: 'unit supply A too low',
  U3502: 'unit supply A too high',
  U3503: 'unit supply A comes and goes',
  U3504: 'unit supply B out of range',
  U3505: 'unit supply B too low',
  U3506: 'unit supply B too high',
  U3507: 'unit supply B comes and goes',
}

const IGNITION: Readonly<Record<string, string>> = {
  P0512: 'start request line faulty',
  P0615: 'starter relay A line faulty',
  P0616: 'starter relay A line too low',
  P0617: 'starter relay A line too high',
  P0850: 'park/neutral input faulty',
  P0851: 'park/neutral input too low',
  P2530: 'ignition run input faulty',
  P2531: 'ignition run input too low',
  P2532: 'ignition run input too high',
  P2533: 'ignition on/start input faulty',
  P2534: 'ignition on/start input too low',
  P2535: 'ignition on/start input too high',
  P2536: 'ignition accessory input faulty',
  P26E4: 'starter relay B line faulty',
  P26F0: 'starter relay A does not let go',
  P26F1: 'starter relay A does not pull in',
  U300A: 'key switch of the car faulty',
  U300B: 'terminal for accessory, run and crank wrong',
  U300C: 'terminal for locked, run and crank wrong',
  U300D: 'terminal for run and crank wrong',
  U300E: 'run terminal wrong',
  U300F: 'accessory terminal wrong',
  U3010: 'crank terminal wrong',
  U3011: 'locked-position terminal wrong',
  U3022: 'terminal for accessory and locked wrong',
  U3023: 'unit supply A and the run terminal disagree',
  U3024: 'unit supply B and the run terminal disagree',
}

const KEYS: Readonly<Record<string, string>> = {
  P0513: 'a key the immobiliser does not accept',
  P0633: 'no key taught to the engine control unit',
  P0648: 'immobiliser lamp line faulty',
  U3033: 'security certificate of the unit missing or not valid',
  U3034: 'key or certificate for authenticated messages missing or not valid',
  U3035: 'authenticated message: proof not valid',
  U3036: 'authenticated message: proof works wrongly',
}

const RESTRAINT: Readonly<Record<string, string>> = {
  B0001: 'driver airbag stage 1: firing circuit faulty',
  B0002: 'driver airbag stage 2: firing circuit faulty',
  B0004: 'driver knee airbag: firing circuit faulty',
  B0005: 'collapsing steering column: firing circuit faulty',
  B0010: 'passenger airbag stage 1: firing circuit faulty',
  B0011: 'passenger airbag stage 2: firing circuit faulty',
  B0020: 'left side airbag: firing circuit faulty',
  B0021: 'left curtain airbag 1: firing circuit faulty',
  B0028: 'right side airbag: firing circuit faulty',
  B0029: 'right curtain airbag 1: firing circuit faulty',
  B0070: 'driver belt tensioner A: firing circuit faulty',
  B0072: 'passenger belt tensioner A: firing circuit faulty',
}

const UNIT: Readonly<Record<string, string>> = {
  P0601: 'engine control unit: memory checksum wrong',
  P0602: 'engine control unit: not or wrongly programmed',
  P0603: 'engine control unit: standby memory lost',
  P0604: 'engine control unit: working memory faulty',
  P0605: 'engine control unit: program memory faulty',
  P0606: 'engine control unit: processor faulty',
  P0607: 'engine control unit works wrongly',
  P0610: 'engine control unit: equipment coding wrong',
  P062F: 'engine control unit: EEPROM faulty',
  P0630: 'engine control unit: VIN missing or of another car',
  P0631: 'gearbox control unit: VIN missing or of another car',
  P06B8: 'engine control unit: lasting memory faulty',
  U3000: 'unit faulty',
  U3001: 'unit was not shut down in order',
  U3002: 'VIN missing or of another car',
  U3012: 'unit was not woken in order',
  U3510: 'unit without calibration',
}

/** Conditions of one bus, in the order of its codes. */
const BUS_CONDITIONS = [
  'faulty',
  'disturbed',
  'CAN high broken',
  'CAN high too low',
  'CAN high too high',
  'CAN low broken',
  'CAN low too low',
  'CAN low too high',
  'CAN high and low touch',
] as const

/** The first codes of the buses that have nine codes in a row each, numbered in decimal. */
const BUSES: readonly (readonly [first: number, name: string])[] = [
  [1, 'fast CAN bus'],
  [10, 'medium-speed CAN bus'],
  [19, 'slow CAN bus'],
  [28, 'bus A'],
  [37, 'bus B'],
]

function* busWords(): Generator<readonly [string, string]> {
  for (const [first, name] of BUSES) {
    for (const [index, condition] of BUS_CONDITIONS.entries()) {
      yield [`U${String(first + index).padStart(4, '0')}`, `${name}: ${condition}`]
    }
  }
  for (const [index, letter] of ['A', 'B', 'C', 'D', 'E', 'F', 'G'].entries()) {
    yield [`U${String(73 + index).padStart(4, '0')}`, `unit left bus ${letter} after errors`]
  }
}

function* allWords(): Generator<readonly [string, DtcWords]> {
  const tables: readonly (readonly [DtcTopic, Iterable<readonly [string, string]>, string])[] = [
    ['lost-communication', Object.entries(SILENT), 'nothing heard from: '],
    ['invalid-data', Object.entries(DOUBTED), 'data cannot be right from: '],
    ['software-mismatch', Object.entries(MISMATCHED), 'software does not go with: '],
    ['supply', Object.entries(SUPPLY), ''],
    ['ignition-and-start', Object.entries(IGNITION), ''],
    ['immobiliser-and-key', Object.entries(KEYS), ''],
    ['restraint', Object.entries(RESTRAINT), ''],
    ['control-unit', Object.entries(UNIT), ''],
    ['bus', busWords(), ''],
  ]
  for (const [topic, rows, before] of tables) {
    for (const [code, text] of rows) yield [code, { topic, text: before + text }]
  }
}

/** Words by code without its failure type: `U0167`. */
export const DTC_WORDS: ReadonlyMap<string, DtcWords> = new Map(allWords())
