import { describe, expect, it } from 'vitest';
import { foundIn } from './finds-of.js';

const worn = (text: string) => foundIn(text).flatMap((one) => (one.worn ? [one.name] : []));

describe('clothes that are packed or folded', () => {
  it.each(['Nora packs a case with shirts and socks.', 'Felix folds a jumper into the trunk.', 'Nora irons a skirt.'])(
    'are on nobody: %s',
    (text) => {
      expect(worn(text)).toEqual([]);
    },
  );

  it.each(['Nora puts a hat on the chair.', 'Felix puts a ring on the windowsill.'])(
    'lie where they are put: %s',
    (text) => {
      expect(worn(text)).toEqual([]);
    },
  );

  it('leave what somebody wears on them', () => {
    expect(worn('Nora, in a red coat, packs a case with shirts.')).toEqual(['red coat']);
    expect(worn('Nora puts a hat on and leaves.')).toEqual(['hat']);
  });
});
