import { codeSymbol } from '@/app/_shared/codes/code-symbol';
import type { CodeKind } from '@/lib/labels/code-kind';

const WIDTH = 640;
const HEIGHT = 480;
const PAPER = 225;
const INK = 30;

/**
 * A film in YUV4MPEG2 as a browser's false camera plays it round and round: a label of ours held still, on a grey bench.
 * Its code comes from the same drawing that is printed.
 */
export function cameraFilm(kind: CodeKind, text: string): Buffer {
  const { across, upright, dark } = codeSymbol(kind, text);
  const luma = Buffer.alloc(WIDTH * HEIGHT, 140);
  const unit = Math.floor((HEIGHT * 0.55) / Math.max(across, upright));
  const at = { x: (WIDTH - across * unit) >> 1, y: (HEIGHT - upright * unit) >> 1 };
  fill(
    luma,
    { x: at.x - 4 * unit, y: at.y - 4 * unit, w: (across + 8) * unit, h: (upright + 8) * unit },
    PAPER,
  );
  dark.forEach((isDark, index) => {
    const x = at.x + (index % across) * unit;
    const y = at.y + Math.floor(index / across) * unit;
    if (isDark) fill(luma, { x, y, w: unit, h: unit }, INK);
  });
  const grey = Buffer.alloc((WIDTH * HEIGHT) / 2, 128);
  const frame = Buffer.concat([Buffer.from('FRAME\n'), luma, grey]);
  const head = Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F10:1 Ip A1:1 C420jpeg\n`);
  return Buffer.concat([head, ...Array.from({ length: 10 }, () => frame)]);
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

function fill(luma: Buffer, { x, y, w, h }: Box, value: number): void {
  for (let row = Math.max(0, y); row < Math.min(HEIGHT, y + h); row += 1)
    luma.fill(value, row * WIDTH + Math.max(0, x), row * WIDTH + Math.min(WIDTH, x + w));
}
