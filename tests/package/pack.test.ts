import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { packageRoot } from '../support/test-host.js';

describe('the package', () => {
  it('works when packed and installed elsewhere, fonts and data included', () => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'prepwright-pack-'));
    const run = (program: string, args: string[], cwd: string) =>
      execFileSync(program, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
    try {
      const packed = run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], packageRoot);
      const [{ filename }] = JSON.parse(packed) as [{ filename: string }];
      fs.writeFileSync(path.join(folder, 'package.json'), '{"private":true}');
      run(
        'npm',
        ['install', '--omit=dev', '--no-audit', '--no-fund', '--prefer-offline', path.join(folder, filename)],
        folder,
      );
      fs.writeFileSync(path.join(folder, 'film.md'), 'INT. KITCHEN - DAY\n\nNora pours tea into a chipped cup.\n');
      run(path.join(folder, 'node_modules/.bin/prepwright'), ['compile', 'film.md'], folder);
      expect(fs.readdirSync(path.join(folder, 'film-breakdown'))).toContain('sheets.pdf');
    } finally {
      fs.rmSync(folder, { recursive: true });
    }
  }, 180_000);
});
