export * from './connection';
export * from './cut';
export * from './entry';
export * from './job';
export * from './part';
export * from './shop';
export * from './tool';
