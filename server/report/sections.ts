/** Everything a report says, in order: the content that all formats for people share. */
import type { ReportedSession } from "./reported-session.ts";
import { remarks, type Section } from "./section.ts";
import { blockSection } from "./sections/block.ts";
import { conditionsSection } from "./sections/conditions.ts";
import { dataSection } from "./sections/data.ts";
import { nextSection } from "./sections/next.ts";
import { sessionSection } from "./sections/session.ts";
import { setAsideSection } from "./sections/set-aside.ts";
import { swingsSection } from "./sections/swings.ts";
import { hasShots } from "./summary.ts";

export interface Limits {
  /** Most rows that are named in one place, and most findings about the data that are listed. */
  readonly rows: number;
  readonly findings: number;
}

export const SHORT: Limits = { rows: 8, findings: 10 };
export const COMPLETE: Limits = { rows: Infinity, findings: Infinity };

/** All of it. */
export function sectionsOf(session: ReportedSession, limits: Limits): Section[] {
  const { report } = session;
  const blocks = hasShots(report) ? report.blocks : []; // a page of "not measured" would say no more
  const next = hasShots(report) ? nextSection(report) : null;
  return [
    sessionSection(report),
    ...blocks.map((block) => blockSection(block, session, limits.rows)),
    ...(next === null ? [] : [next]),
    ...sectionsAfterBlocks(session, limits),
  ];
}

/** What is said about the session as a whole. */
export function sectionsAfterBlocks(session: ReportedSession, limits: Limits): Section[] {
  const { report } = session;
  return [
    hasShots(report) ? swingsSection(report) : null,
    remarks("Bear in mind", report.cautions),
    setAsideSection(report, limits.rows),
    conditionsSection(session),
    dataSection(report, limits.findings),
    remarks("Notes", report.notes),
  ].filter((section) => section !== null);
}
