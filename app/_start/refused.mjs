/** An expected refusal of the start or test command: one sentence for a person, no stack. */
export class Refused extends Error {
  name = 'Refused';
}

/** Prints what ended the command and gives the exit code: a refusal in its sentence, a bug with its stack. */
export function reportEnd(error) {
  if (error instanceof Refused) console.error(error.message);
  else console.error('Edgekeep stopped on an error of its own, please report it:', error);
  return 1;
}
