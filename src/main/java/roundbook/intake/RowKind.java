package roundbook.intake;

/** What a row under the headings is. */
enum RowKind {
  /** A log, or several alike. */
  LOG,
  /** A row that may be headings: words only. */
  HEADINGS,
  /** A total, average or count. */
  SUMMARY,
  /** Free text. */
  NOTE,
  /** The number of a log that was never written in. */
  NUMBERED,
  /** A line drawn with hyphens or the like. */
  RULE
}
