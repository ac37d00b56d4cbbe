#!/usr/bin/env node
import { main } from '../dist/cli/main.js';
import { createNodeHost } from '../dist/host/node-host.js';

process.stdout.on('error', (error) => {
  // A closed pipe (`| head`) is no failure of ours.
  if (error.code !== 'EPIPE') throw error;
});
process.exitCode = await main(process.argv.slice(2), createNodeHost());
