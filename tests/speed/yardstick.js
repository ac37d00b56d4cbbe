// What the compile is measured against: the same text parsed by remark-parse, and as many pages painted by pdfkit.
// usage: node yardstick.js SCRIPT PAGES_LIST   (how many pages each document has: 12,40,3)
import fs from 'node:fs';
import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

const [file, list] = process.argv.slice(2);
const text = fs.readFileSync(file, 'utf8');
const tree = unified().use(remarkParse).parse(text);
if (tree.children.length === 0) throw new Error('nothing parsed');

const font = fs.readFileSync(
  createRequire(import.meta.url).resolve('@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf'),
);
const lines = text.split('\n').filter((line) => line.trim() !== '');

for (const pages of list.split(',').map(Number)) {
  const doc = new PDFDocument({ autoFirstPage: false, size: 'LETTER', margin: 0 });
  const chunks = [];
  doc.on('data', (chunk) => chunks.push(chunk));
  const ended = new Promise((done) => doc.on('end', done));
  doc.registerFont('sans', font);
  for (let page = 0; page < pages; page++) {
    doc.addPage();
    doc.font('sans', 10);
    for (let row = 0; row < 45; row++) {
      doc.text(lines[(page * 45 + row) % lines.length].slice(0, 90), 57, 50 + row * 15, { lineBreak: false });
    }
  }
  doc.end();
  await ended;
  if (Buffer.concat(chunks).length === 0) throw new Error('nothing painted');
}
