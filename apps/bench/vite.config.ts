import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

/** The engines declare no side effects: a page that uses one function of them must not carry the rest. */
const engines = /[\\/]packages[\\/](bus|keywork|jobfile)[\\/]src[\\/]/

const treeshake = { moduleSideEffects: (id: string) => !engines.test(id) }

export default defineConfig({
  base: './',
  plugins: [react()],
  resolve: { conditions: ['@shearline/source', 'module', 'browser', 'development|production'] },
  worker: { format: 'es', rolldownOptions: { treeshake } },
  build: {
    outDir: 'dist',
    target: 'es2023',
    cssTarget: ['chrome123', 'firefox120', 'safari17.5'],
    // A strict content policy allows no data: addresses for code, styles or fonts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { treeshake },
  },
  server: { proxy: { '/api': 'http://127.0.0.1:4700' } },
})
