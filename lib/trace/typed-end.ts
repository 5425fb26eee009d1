/** An end as it is asked for by its place on a line. */
export interface TypedEnd {
  readonly jobLineId: string;
  readonly endNo: number;
}

const LINE_AND_END = /^(\S+?\.\d{1,3})(?:\s*[/#,]\s*|\s+(?:end\s*)?(?:no\.?\s*)?)(\d{1,6})$/i;

/**
 * Reads what was typed as a job line and the number of an end on it: "J-057.1 end 2", "J-057.1 2", "J-057.1/2". Undefined
 * where it reads as nothing of the kind; a mark such as "S-18 end 2" is no line.
 * Domain: any text. Errors: none.
 * @example typedEnd('j-057.1 end 2') // => { "jobLineId": "J-057.1", "endNo": 2 }
 */
export function typedEnd(typed: string): TypedEnd | undefined {
  const found = LINE_AND_END.exec(typed.normalize('NFKC').trim());
  const [, line, no] = found ?? [];
  if (line === undefined || no === undefined || Number(no) === 0) return undefined;
  return { jobLineId: line.toUpperCase(), endNo: Number(no) };
}
