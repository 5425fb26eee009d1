import { describe, expect, it } from 'vitest';
import { decodeText, FILE_BYTES_MAX } from '@/lib/import/decode-text';

const utf8 = new TextEncoder();

function refusal(bytes: Uint8Array): string {
  const text = decodeText(bytes);
  return text.ok ? `read: ${text.value.slice(0, 20)}` : text.refusal.sentence;
}

describe('decodeText', () => {
  it('reads UTF-8, with or without a byte order mark', () => {
    expect(decodeText(utf8.encode('größe,9⁄16'))).toEqual({ ok: true, value: 'größe,9⁄16' });
    const marked = decodeText(Uint8Array.of(0xef, 0xbb, 0xbf, 0x61));
    expect(marked.ok && marked.value.replace('\uFEFF', '')).toBe('a');
  });

  it('names UTF-16, with its mark and without', () => {
    expect(refusal(Buffer.from('\uFEFFtool_id,kind', 'utf16le'))).toContain('UTF-16');
    expect(refusal(Buffer.from('tool_id,kind\nD-1,die', 'utf16le'))).toContain('UTF-16');
    expect(refusal(Buffer.from('\uFEFFtool_id,kind', 'utf16le').swap16())).toContain('UTF-16');
    expect(refusal(Buffer.from('tool_id,kind\nD-1,die', 'utf16le').swap16())).toContain('UTF-16');
  });

  it('names workbooks, other binary files and other encodings', () => {
    expect(refusal(Uint8Array.of(0x50, 0x4b, 3, 4, 20, 0, 6, 0))).toContain('workbook');
    expect(refusal(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13))).toContain(
      'not a text file',
    );
    expect(refusal(utf8.encode('a,b\n1,\u0000'))).toContain('not a text file');
    expect(refusal(Uint8Array.of(0x61, 0xe9, 0x2c, 0x62))).toContain('not written in UTF-8');
  });

  it('refuses the empty and the too large', () => {
    expect(refusal(new Uint8Array(0))).toContain('empty');
    expect(refusal(new Uint8Array(FILE_BYTES_MAX + 1).fill(97))).toContain('larger than 50 MB');
  });
});
