// Prints how the whole compile compares with its yardstick, as a ratio of medians in one run, and how it grows.
// usage: npm run speed   (after npm run build)
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeLongScript } from './long-script.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'prepwright-speed-'));
const sample = fs.readFileSync(path.join(root, 'samples/slack-water/slack-water.md'), 'utf8');
const rounds = Number(process.argv[2] ?? 5);

function time(args: readonly string[]): number {
  const start = process.hrtime.bigint();
  const child = spawnSync(process.execPath, args, { encoding: 'utf8', cwd: root });
  if (child.status !== 0) throw new Error(child.stderr);
  return Number(process.hrtime.bigint() - start) / 1e6;
}

function write(scenes: number): string {
  const file = path.join(folder, `${scenes}.md`);
  fs.writeFileSync(file, makeLongScript(sample, scenes));
  return file;
}

const out = (file: string) => `${file}-out`;
const compile = (file: string) => time(['bin/prepwright.js', 'compile', file, '--quiet', '--out', out(file)]);

function countPages(file: string): number[] {
  return fs
    .readdirSync(out(file))
    .filter((name) => name.endsWith('.pdf'))
    .map((name) => (fs.readFileSync(path.join(out(file), name), 'latin1').match(/\/Type \/Page\b(?!s)/g) ?? []).length);
}

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

const small = write(120);
const large = write(1200);
compile(small);
const pages = countPages(small);
const ours: number[] = [];
const yardstick: number[] = [];
for (let round = 0; round < rounds; round++) {
  ours.push(compile(small));
  yardstick.push(time(['tests/speed/yardstick.js', small, pages.join(',')]));
}
const ten = median([compile(large), compile(large), compile(large)]);
const total = pages.reduce((sum, count) => sum + count, 0);
console.log(
  `120 scenes, ${total} PDF pages: ${median(ours).toFixed(0)} ms, yardstick ${median(yardstick).toFixed(0)} ms, ratio ${(median(ours) / median(yardstick)).toFixed(2)}`,
);
console.log(
  `1200 scenes: ${ten.toFixed(0)} ms, ${(ten / median(ours)).toFixed(1)} times as long for ten times the script`,
);
const sampleFile = path.join(root, 'samples/slack-water/slack-water.md');
const finder = spawnSync(process.execPath, ['tests/speed/measure-finder.js', small, sampleFile], { cwd: root });
console.log(finder.stdout.toString().trimEnd(), finder.stderr.toString());
fs.rmSync(folder, { recursive: true });
