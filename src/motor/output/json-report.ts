import * as z from 'zod/mini';
import { headlineText, type ReportContent, type Shown } from './content';
import { usualCautions } from './usual-cautions';

const cell = () =>
  z.strictObject({
    text: z.string(),
    value: z.optional(z.number()),
    unit: z.optional(z.string()),
    kind: z.optional(z.string()),
    verdict: z.optional(z.enum(['pass', 'marginal', 'fail'])),
  });

/**
 * zod schema of a JSON report: `reportSchema.safeParse(JSON.parse(text))`. Every value is given in full precision,
 * with unit and kind for a quantity, and as printed in the other formats.
 *
 * @example reportSchema.safeParse({}).success // => false
 */
export const reportSchema = /* @__PURE__ */ (() =>
  z.strictObject({
    version: z.literal(2),
    title: z.string(),
    kind: z.string(),
    headline: z.string(),
    verdict: z.optional(z.enum(['holds', 'does not hold', 'not judged'])),
    summary: z.record(z.string(), cell()),
    sections: z.array(
      z.strictObject({
        id: z.string(),
        title: z.string(),
        lead: z.array(z.string()),
        tables: z.array(
          z.strictObject({
            name: z.string(),
            columns: z.array(z.string()),
            rows: z.array(z.record(z.string(), cell())),
          }),
        ),
        cautions: z.array(z.string()),
        remarks: z.array(z.string()),
      }),
    ),
    beforeFiring: z.array(z.string()),
  }))();

/** A report in JSON. */
export type ReportJson = z.output<typeof reportSchema>;

/** A report as plain data: values in full precision, each with the string that the other formats print. */
export function reportJson(content: ReportContent): ReportJson {
  return {
    version: 2,
    title: content.title,
    kind: content.kind,
    headline: headlineText(content),
    ...(content.verdict !== undefined && { verdict: content.verdict }),
    summary: Object.fromEntries(content.keyFigures.map(([name, shown]) => [name, plain(shown)])),
    sections: content.sections.map(({ id, title, lead, tables, cautions, remarks }) => ({
      id,
      title,
      lead: [...lead],
      tables: tables.map(({ name, columns, rows }) => ({
        name,
        columns: columns.map((column) => column.name),
        rows: rows.map((row) =>
          Object.fromEntries(columns.map((column, j) => [column.name, plain(row[j] ?? { text: '' })])),
        ),
      })),
      cautions: [...cautions],
      remarks: [...remarks],
    })),
    beforeFiring: [...usualCautions],
  };
}

const plain = ({ text, value, unit, kind, verdict }: Shown): Shown => ({
  text,
  ...(value !== undefined && { value }),
  ...(unit !== undefined && { unit }),
  ...(kind !== undefined && { kind }),
  ...(verdict !== undefined && { verdict }),
});
