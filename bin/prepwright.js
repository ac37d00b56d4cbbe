#!/usr/bin/env node
import { existsSync } from 'node:fs';

if (!existsSync(new URL('../dist/bundle/main.js', import.meta.url))) {
  process.stderr.write('Prepwright is not built yet. In its folder, run: npm ci && npm run build\n');
  process.exit(70);
}
const { main } = await import('../dist/bundle/main.js');
const { createNodeHost } = await import('../dist/bundle/node-host.js');

process.stdout.on('error', (error) => {
  // A closed pipe (`| head`) is no failure of ours.
  if (error.code !== 'EPIPE') throw error;
});
process.exitCode = await main(process.argv.slice(2), createNodeHost());
