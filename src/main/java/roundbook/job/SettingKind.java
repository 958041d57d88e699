package roundbook.job;

/** The kinds of values that the Job sheet holds. */
public enum SettingKind {
  /** Free text. */
  TEXT,
  /** One of a few words. */
  CHOICE,
  /** A whole number, zero or more. */
  COUNT,
  /** A decimal number, zero or more. */
  NUMBER,
  /** A length in the job's unit. */
  LENGTH
}
