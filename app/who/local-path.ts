import type { Route } from 'next';

/**
 * Where to go back to: only a path within this house; anything else leads to the front page. Two slashes together, and dots
 * that climb, are refused: once resolved, such a path could begin with the name of another host.
 */
export function localPath(path: string): Route {
  const plain = /^\/[\w\-./%?=&]*$/.test(path) && !/\/[/.]/.test(path);
  return (plain ? path : '/') as Route;
}
