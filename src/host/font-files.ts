import fs from 'node:fs';
import { createRequire } from 'node:module';
import type { FontFace } from '../render/types.js';

const require = createRequire(import.meta.url);

const files: Record<FontFace, string> = {
  sans: 'source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  'sans-bold': 'source-sans-3/700Bold/SourceSans3_700Bold.ttf',
  'sans-italic': 'source-sans-3/400Regular_Italic/SourceSans3_400Regular_Italic.ttf',
  mono: 'courier-prime/400Regular/CourierPrime_400Regular.ttf',
  'mono-bold': 'courier-prime/700Bold/CourierPrime_700Bold.ttf',
  'mono-italic': 'courier-prime/400Regular_Italic/CourierPrime_400Regular_Italic.ttf',
  'mono-bold-italic': 'courier-prime/700Bold_Italic/CourierPrime_700Bold_Italic.ttf',
  'mono-wide': 'source-code-pro/400Regular/SourceCodePro_400Regular.ttf',
};

const read = new Map<FontFace, Uint8Array>();

/** The bytes of a face, from the font packages; read once. */
export function readFontFile(face: FontFace): Uint8Array {
  const known = read.get(face);
  if (known) return known;
  const bytes = fs.readFileSync(require.resolve(`@expo-google-fonts/${files[face]}`));
  read.set(face, bytes);
  return bytes;
}
