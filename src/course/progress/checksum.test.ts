import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checksum } from './checksum.ts';

test('returns the catalogued check value of "123456789"', () => {
  expect(checksum('123456789')).toBe('cbf43926');
});

test('agrees with an independent CRC-32 on any text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(checksum(text)).toBe(crc32(Buffer.from(text, 'utf8')).toString(16).padStart(8, '0'));
    }),
  );
});
