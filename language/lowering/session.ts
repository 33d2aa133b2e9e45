/** Players, sources and sessions: from the tree to the model. */

import { signed } from "../../shared/interval.ts";
import type {
  ColumnContent as ColumnContentModel,
  Column as ColumnModel,
  Hand,
  Player as PlayerModel,
  Session as SessionModel,
  Source as SourceModel,
  Usual as UsualModel,
} from "../../shared/plan-model.ts";
import {
  type Column,
  type ColumnContent,
  type Instrument,
  isBlanks,
  isBlockStart,
  isCategory,
  isColumn,
  isDecimalMark,
  isHandedness,
  isHeaderRow,
  isLoadLimit,
  isPlayerLevel,
  isSeparator,
  isSessionData,
  isSessionDate,
  isSessionInstrument,
  isSessionPlan,
  isSessionPlayer,
  isShotOrder,
  isThousandsMark,
  isUsual,
  type MetricColumn,
  type Plan,
  type Player,
  type Session,
  type Source,
  type Usual,
} from "../generated/tree/ast.ts";
import { directionModel } from "../types/directions.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { shownIn, unitModel } from "../types/units.ts";
import { lowerQuantity } from "./amounts.ts";
import { lowerConditions } from "./conditions.ts";
import { type FileName, placeOf } from "./place.ts";
import { IncompleteError, resolved } from "./unresolved.ts";

export function lowerPlayer(player: Player, fileName: FileName): PlayerModel {
  const hand = handOf(player);
  return {
    name: player.name,
    hand,
    level: player.statements.find(isPlayerLevel)?.level ?? null,
    usual: player.statements.filter(isUsual).map((line) => lowerUsual(line, hand ?? "right", fileName)),
    limits: player.statements.filter(isLoadLimit).map((limit) => ({
      count: limit.count,
      fullEffort: limit.fullEffort,
      period: limit.period ?? "session",
      location: placeOf(limit, fileName),
    })),
    location: placeOf(player, fileName),
  };
}

/** Null where it is not stated. */
export function handOf(player: Player): Hand | null {
  const stated = player.statements.find(isHandedness);
  if (stated === undefined) return null;
  return stated.hand === "left-handed" ? "left" : "right";
}

function lowerUsual(line: Usual, hand: Hand, fileName: FileName): UsualModel {
  return {
    metric: resolved(line.metric).name,
    value: signed(lowerQuantity(line.amount, NO_BINDINGS), hand),
    spread: line.spread === undefined ? null : lowerQuantity(line.spread, NO_BINDINGS).value,
    shots: line.shots ?? null,
    club: line.club === undefined ? null : resolved(line.club).name,
    location: placeOf(line, fileName),
  };
}

export function lowerSource(source: Source, fileName: FileName): SourceModel {
  const { statements } = source;
  return {
    name: source.name,
    separator: statements.find(isSeparator)?.mark ?? null,
    decimal: statements.find(isDecimalMark)?.mark ?? "point",
    thousands: statements.find(isThousandsMark)?.mark ?? null,
    blanks: statements.filter(isBlanks).flatMap(({ texts }) => texts),
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
    case "MetricColumn":
      return lowerMetricColumn(content);
    case "ClubColumn":
      return {
        kind: "club",
        spellings: content.spellings.map(({ text, club }) => ({ text, club: resolved(club).name })),
      };
    case "BlockColumn":
      return { kind: "block" };
    case "PlayerColumn":
      return {
        kind: "player",
        spellings: content.spellings.map(({ text, player }) => ({ text, player: resolved(player).name })),
      };
    case "DateColumn":
      return { kind: "date", order: content.order ?? null };
    case "SessionColumn":
      return { kind: "session" };
    case "TimeColumn":
      return { kind: "time" };
    case "ExclusionColumn":
      return { kind: "exclusion", texts: [...content.texts] };
  }
}

function lowerMetricColumn({
  metric: reference,
  unit,
  positive,
  sidesIn,
  spellings,
}: MetricColumn): ColumnContentModel {
  const metric = resolved(reference);
  const meanings = spellings.map(({ text, meaning }) => ({ text, meaning: resolved(meaning) }));
  if (metric.categories.length > 0) {
    return {
      kind: "category",
      metric: metric.name,
      spellings: meanings.map(({ text, meaning }) => ({ text, category: meaning.name })),
    };
  }
  return {
    kind: "metric",
    metric: metric.name,
    unit: unit === undefined ? shownIn(metric).unit : unitModel(resolved(unit)),
    positive: positive === undefined ? null : directionModel(resolved(positive)),
    sides: meanings.flatMap(({ text, meaning }) =>
      isCategory(meaning) ? [] : [{ text, direction: directionModel(meaning) }],
    ),
    sidesIn: sidesIn ?? null,
  };
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
      row: line.row ?? null,
      time: line.time === undefined ? null : secondsOf(line.time),
      file: line.file ?? null,
      location: placeOf(line, fileName),
    })),
    instrument: instrumentOf(session)?.name ?? null,
    conditions: lowerConditions(session),
    location: placeOf(session, fileName),
  };
}

/** `10:42` or `10:42:30`, in seconds after midnight. */
function secondsOf(time: string): number {
  const [hours = 0, minutes = 0, seconds = 0] = time.split(":").map(Number);
  return (hours * 60 + minutes) * 60 + seconds;
}

/** What the readings of a session were taken with, where it says so. @throws IncompleteError */
export function instrumentOf(session: Session): Instrument | undefined {
  const stated = session.statements.find(isSessionInstrument);
  return stated === undefined ? undefined : resolved(stated.instrument);
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
