/** @module Holds a recording's messages away from the page, so that scrolling and zooming stay smooth. */
import type { LogAsk, LogReply } from './log-messages.ts'
import { MessageLog, NotTheKept } from './message-log.ts'

let log: MessageLog | undefined

function reply(message: LogReply, transfer: Transferable[] = []): void {
  postMessage(message, { transfer })
}

addEventListener('message', (event: MessageEvent<LogAsk>) => {
  work(event.data).catch((error: unknown) =>
    reply({
      what: 'failed',
      why: error instanceof NotTheKept ? 'other-bytes' : 'unreadable',
      words: error instanceof Error ? error.message : String(error),
    }),
  )
})

async function work(ask: LogAsk): Promise<void> {
  if (ask.what === 'open') {
    log = await MessageLog.read(ask.blob, ask.sha256, (bytes, messages) =>
      reply({ what: 'progress', bytes, messages }),
    )
    reply({ what: 'opened', strip: log.strip })
    return
  }
  if (log === undefined) return
  if (ask.what === 'question') {
    const answer = log.ask(ask.question)
    reply({ what: 'answer', ticket: ask.ticket, answer }, [answer.matches.buffer])
    return
  }
  reply({ what: 'lines', ticket: ask.ticket, lines: await log.lines(ask.messages) })
}
