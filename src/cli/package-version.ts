import type { Host } from '../host/types.js';

/** The version in the package's own package.json. */
export function packageVersion(host: Pick<Host, 'readData'>): string {
  const text = new TextDecoder().decode(host.readData('package.json'));
  return String((JSON.parse(text) as { version: unknown }).version);
}
