/** A session as JSON for other programs, in a published shape. */
import * as z from 'zod';
import { Entry } from '../session/entry.ts';
import { CoachHistory, OwnerReport } from './shapes.ts';
import { Sheet } from '../sheet/schema.ts';

export const SessionExport = z.object({
  /** Where the schema of this file is served. */
  $schema: z.literal('/schema/session-1.json'),
  /** Of this shape: a later one that is not the same to read gets another number. */
  v: z.literal(1),
  /** Hash of the code and tables that wrote it. */
  engine: z.string(),
  session: z.string().regex(/^[a-z0-9-]{6,40}$/),
  coach: z.string(),
  /** IANA time zone of the coach's wall clock. */
  zone: z.string(),
  /** Digest over all entries, in order, as the log keeps it. */
  mark: z.string().regex(/^[a-f0-9]{64}$/),
  /** Versions of the coach sheet that it was judged by, by content hash, as they were written. */
  sheets: z.record(z.string(), z.unknown()),
  entries: z.array(Entry),
});
export type SessionExport = z.infer<typeof SessionExport>;

const schemaOf = (shape: z.ZodType | z.core.$ZodType, name: string, title: string): Record<string, unknown> => ({
  ...(z.toJSONSchema(shape, { target: 'draft-2020-12', io: 'input', unrepresentable: 'any' }) as Record<
    string,
    unknown
  >),
  $id: `urn:soapwater:${name}`,
  title,
});

/** Name -> schema (JSON Schema 2020-12), made of the shapes that are checked with. Served at `/schema/NAME.json`. */
export const publishedSchemas: Readonly<Record<string, () => Record<string, unknown>>> = {
  'session-1': () => schemaOf(SessionExport, 'session-1', 'A session with its entries and sheets'),
  'report-1': () => schemaOf(OwnerReport, 'report-1', "The owner's report of a session"),
  'history-1': () => schemaOf(CoachHistory, 'history-1', 'A coach over all its visits'),
  'sheet-1': () => schemaOf(Sheet, 'sheet-1', 'A coach sheet'),
};
