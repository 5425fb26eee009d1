import type { ImportKind } from '@/lib/import/column';

/** The three files in shop words. */
export const KIND_WORDS: Readonly<
  Record<ImportKind, { readonly label: string; readonly row: string; readonly use: string }>
> = {
  tools: {
    label: 'Tools',
    row: 'one row for each marked tool',
    use: 'What the crib holds: blades, dies, guides, gauges, wrenches, fluid, each with its mark, its size, and what it had cut before. Bring it in first: cuts are logged on tools that the shop knows.',
  },
  cuts: {
    label: 'Cuts',
    row: 'one row for so many ends on one tool',
    use: 'The log of what was coned and threaded: which tool, which day, how many ends, how many good, and how its edge ended. This is what wear is worked out from.',
  },
  jobs: {
    label: 'Jobs',
    row: 'one row for each line of a job',
    use: 'What is to be made: size, service, material, ends and dates. The plan then says which lines can be made, and what is missing for the others.',
  },
};
