/** Serves a data folder and a built bench as a process of its own, so that it can be killed: DATA BENCH PORT. */
import { serve } from '@shearline/server'

const [data = '', benchFolder = '', port = '0'] = process.argv.slice(2)
const running = await serve({ data, benchFolder, port: Number(port) })
console.log(`open at ${running.url}`)
