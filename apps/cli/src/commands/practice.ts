import { writeFileSync } from 'node:fs'
import { createInterface } from 'node:readline'
import { candumpLine, PcapngWriter } from '@shearline/bus'
import { type Code, isCode, say as sayWords } from '@shearline/jobfile'
import { Attempt, type Exercise, exercises, playVisit, type Visit } from '@shearline/practice-car'
import type { Command } from 'commander'
import { CouldNot, exit, paint, print, printJson, say } from '../output/answer.ts'
import { ACTION_HELP, actionOf } from '../practice/actions.ts'

/** Points from which an exercise counts as passed. Ours. */
const PASSED = 80

/** `shearline practice`: exercises at a simulated car, and recordings of simulated visits. */
export function addPractice(program: Command): void {
  const practice = program
    .command('practice')
    .description('Practise on a simulated car of an invented make: exercises, and recordings of visits')
  practice
    .command('list')
    .description('The exercises')
    .option('--json', 'one JSON list')
    .action((flags: { json?: boolean }) => {
      if (flags.json === true) printJson(exercises().map(describe))
      else for (const each of exercises()) print(`${each.id.padEnd(24)} ${words(`practice.${each.id}`)}`)
    })
  practice
    .command('run')
    .description('Do an exercise; actions come from the keyboard, a pipe, or --do')
    .argument('<exercise>', 'its name, see "practice list"')
    .option('--do <actions>', `actions with semicolons between: ${ACTION_HELP}`)
    .option('--recording <file>', 'keep what passed on the bus (.log or .pcapng)')
    .option('--json', 'one JSON object at the end')
    .action(async (id: string, flags: { do?: string; recording?: string; json?: boolean }) => {
      const exercise = exercises().find((each) => each.id === id)
      if (exercise === undefined)
        throw new CouldNot(`There is no exercise "${id}".`, 'See "shearline practice list".')
      await run(exercise, flags)
    })
  practice
    .command('visit')
    .description('Play a whole visit by chance and write its recording, with the truth about its faults')
    .requiredOption('--out <file>', 'the recording (.log or .pcapng)')
    .option('--seed <number>', 'the same number plays the same visit', '1')
    .option('--json', 'one JSON object')
    .action((flags: { out: string; seed: string; json?: boolean }) => {
      const seed = Number(flags.seed)
      if (!Number.isInteger(seed)) throw new CouldNot(`--seed ${flags.seed} is no whole number.`, 'Give one.')
      const visit = playVisit(seed)
      keep(flags.out, visit.car)
      const answer = { marks: visit.marks, notes: visit.notes, truth: visit.truth }
      if (flags.json === true) printJson(answer)
      else
        for (const { unit, code, there, what } of visit.truth)
          print(`${unit.padEnd(16)} ${code}  ${there} ${what}`)
    })
}

async function run(
  exercise: Exercise,
  flags: { do?: string; recording?: string; json?: boolean },
): Promise<void> {
  const attempt = new Attempt(exercise)
  const steps: { action: string; said: string }[] = []
  const tell = flags.json === true ? say : print
  tell(paint(words(`practice.${exercise.id}`), 'bold'))
  tell(words(`practice.${exercise.id}.story`))
  tell(
    `Keys: ${exercise.car.keys.map((key) => `${key.label}${key.onBench ? '' : ' (not here)'}`).join(', ')}`,
  )
  for await (const line of linesOf(flags.do)) {
    if (line.trim() === '') continue
    if (['done', 'quit'].includes(line.trim())) break
    const action = actionOf(line)
    if (action === null) {
      if (flags.do !== undefined)
        throw new CouldNot(`"${line.trim()}" is no action.`, `Actions: ${ACTION_HELP}.`)
      tell(`"${line.trim()}" is no action. Actions: ${ACTION_HELP}, done.`)
      continue
    }
    const outcome = attempt.act(action)
    for (const { code, values } of outcome.incident === undefined ? [outcome] : [outcome, outcome.incident]) {
      const said = words(`practice.did.${code}`, values)
      steps.push({ action: line.trim(), said })
      tell(`  ${line.trim().padEnd(14)} ${said}`)
    }
  }
  const score = attempt.score()
  if (flags.recording !== undefined) keep(flags.recording, attempt.car)
  if (flags.json === true)
    printJson({ exercise: exercise.id, steps, ...score, passed: score.points >= PASSED })
  else {
    for (const mark of score.marks)
      print(`${String(mark.points).padStart(4)}  ${words(`practice.mark.${mark.code}`, mark.values)}`)
    print(
      paint(
        `${score.points} of 100 points, ${score.minutes} minutes, lowest ${score.lowestVolts.toFixed(2)} V`,
        'bold',
      ),
    )
  }
  if (score.points < PASSED) process.exitCode = exit.no
}

async function* linesOf(given: string | undefined): AsyncGenerator<string> {
  if (given !== undefined) {
    yield* given.split(';')
    return
  }
  if (process.stdin.isTTY) say(`Actions: ${ACTION_HELP}, done.`)
  yield* createInterface({ input: process.stdin })
}

function keep(file: string, car: Visit['car']): void {
  const { frames } = car.trace
  if (file.endsWith('.pcapng')) {
    const writer = new PcapngWriter()
    writeFileSync(file, Buffer.concat([writer.header(), ...frames.map((frame) => writer.frame(frame))]))
  } else {
    writeFileSync(file, frames.map(candumpLine).join(''))
  }
}

function describe(exercise: Exercise): object {
  const { id, wanted, backup, car } = exercise
  return {
    id,
    title: words(`practice.${id}`),
    story: words(`practice.${id}.story`),
    wanted,
    backup,
    rule: car.rule,
  }
}

/** The words of a code; the code itself when the catalogue has none, so that nothing is hidden. */
function words(code: string, values: Readonly<Record<string, string | number>> = {}): string {
  return isCode(code) ? sayWords('en', code as Code, values) : code
}
