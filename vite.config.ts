import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The page: built into dist/web; while developing, its API is the program on PORT (4180). */
export default defineConfig(({ command }) => {
  // What is built is what people use, also where tests build it.
  if (command === 'build') process.env.NODE_ENV = 'production';
  return {
    root: 'web',
    plugins: [react()],
    build: {
      outDir: '../dist/web',
      emptyOutDir: true,
      assetsInlineLimit: 0,
      chunkSizeWarningLimit: 1_000,
      // The knowledge of the trade is pure, so a view brings along only what it asks of the front door.
      rolldownOptions: {
        treeshake: { moduleSideEffects: [{ test: /[\\/]indexer[\\/]/, sideEffects: false }] },
      },
    },
    server: {
      host: '127.0.0.1',
      port: 4181,
      proxy: { '/api': `http://127.0.0.1:${process.env.PORT ?? 4180}` },
    },
  };
});
