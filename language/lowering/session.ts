/** Players, sources and sessions: from the tree to the model. */
import type {
  ColumnContent as ColumnContentModel,
  Column as ColumnModel,
  Player as PlayerModel,
  Session as SessionModel,
  Source as SourceModel,
} from "../../shared/plan-model.ts";
import {
  type Column,
  type ColumnContent,
  isBlockStart,
  isColumn,
  isDecimalMark,
  isHandedness,
  isHeaderRow,
  isSeparator,
  isSessionData,
  isSessionDate,
  isSessionPlan,
  isSessionPlayer,
  isShotOrder,
  type Plan,
  type Player,
  type Session,
  type Source,
} from "../generated/tree/ast.ts";
import { directionModel } from "../types/directions.ts";
import { shownIn, unitModel } from "../types/units.ts";
import { type FileName, placeOf } from "./place.ts";
import { IncompleteError, resolved } from "./unresolved.ts";

export function lowerPlayer(player: Player, fileName: FileName): PlayerModel {
  const handedness = player.statements.find(isHandedness);
  const hand = handedness === undefined ? null : handedness.hand === "left-handed" ? "left" : "right";
  return { name: player.name, hand, location: placeOf(player, fileName) };
}

export function lowerSource(source: Source, fileName: FileName): SourceModel {
  const { statements } = source;
  return {
    name: source.name,
    separator: statements.find(isSeparator)?.mark ?? null,
    decimal: statements.find(isDecimalMark)?.mark ?? "point",
    headerRow: statements.find(isHeaderRow)?.row ?? 1,
    columns: statements.filter(isColumn).map((column) => lowerColumn(column, fileName)),
    orderedBy: statements.find(isShotOrder)?.header ?? null,
    location: placeOf(source, fileName),
  };
}

function lowerColumn(column: Column, fileName: FileName): ColumnModel {
  return {
    header: column.header,
    content: lowerContent(column.content),
    location: placeOf(column, fileName),
  };
}

function lowerContent(content: ColumnContent): ColumnContentModel {
  switch (content.$type) {
    case "MetricColumn": {
      const metric = resolved(content.metric);
      return {
        kind: "metric",
        metric: metric.name,
        unit: content.unit === undefined ? shownIn(metric).unit : unitModel(resolved(content.unit)),
        positive: content.positive === undefined ? null : directionModel(resolved(content.positive)),
      };
    }
    case "ClubColumn":
      return {
        kind: "club",
        spellings: content.spellings.map(({ text, club }) => ({ text, club: resolved(club).name })),
      };
    case "BlockColumn":
      return { kind: "block" };
    case "ExclusionColumn":
      return { kind: "exclusion", texts: [...content.texts] };
  }
}

/** @throws IncompleteError where the session does not say its plan or player. */
export function lowerSession(session: Session, fileName: FileName): SessionModel {
  const { statements } = session;
  return {
    name: session.name,
    date: statements.find(isSessionDate)?.date ?? null,
    plan: planOf(session).name,
    player: playerOf(session).name,
    data: statements.filter(isSessionData).map((line) => ({
      path: line.path,
      source: resolved(line.source).name,
      location: placeOf(line, fileName),
    })),
    starts: statements.filter(isBlockStart).map((line) => ({
      block: resolved(line.block).name,
      row: line.row,
      location: placeOf(line, fileName),
    })),
    location: placeOf(session, fileName),
  };
}

/** The plan a session was practised against. @throws IncompleteError */
export function planOf(session: Session): Plan {
  return resolved(stated(session.statements.find(isSessionPlan), session, "plan").plan);
}

/** Who practised. @throws IncompleteError */
export function playerOf(session: Session): Player {
  return resolved(stated(session.statements.find(isSessionPlayer), session, "player").player);
}

/** The sources of a session's tables. @throws IncompleteError */
export function sourcesOf(session: Session): Source[] {
  return session.statements.filter(isSessionData).map((line) => resolved(line.source));
}

function stated<T>(statement: T | undefined, session: Session, what: string): T {
  if (statement === undefined)
    throw new IncompleteError(`The session ${JSON.stringify(session.name)} states no ${what}.`);
  return statement;
}
