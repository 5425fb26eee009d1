import { expect, it } from 'vitest';
import { CAMERA_ENDED, cameraFault, NO_READER, NOT_SECURE } from '@/app/_shared/scan/camera-fault';

// source: published. W3C Media Capture and Streams, getUserMedia: the names of what is refused, and why.
it.each([
  ['NotAllowedError', 'may not use the camera'],
  ['NotFoundError', 'has no camera'],
  ['OverconstrainedError', 'has no camera that fits'],
  ['NotReadableError', 'holds the camera'],
  ['AbortError', 'did not start'],
])('says of %s what it is and what to do instead', (name, words) => {
  const { sentence } = cameraFault(Object.assign(new Error('x'), { name }));
  expect(sentence).toContain(words);
  expect(sentence).toMatch(/type the ID\.$/);
});

it('never leaves anybody without a way on', () => {
  expect(cameraFault('odd').sentence).toContain('did not start');
  for (const { sentence } of [NOT_SECURE, NO_READER, CAMERA_ENDED])
    expect(sentence).toMatch(/[Tt]ype the ID/);
  expect([NOT_SECURE, NO_READER, CAMERA_ENDED].map(({ elsewhere }) => elsewhere)).toEqual([
    true,
    false,
    false,
  ]);
});
