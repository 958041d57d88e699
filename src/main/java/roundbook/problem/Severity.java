package roundbook.problem;

import java.util.Locale;

/** How much a problem matters to the person who must mend it. */
public enum Severity {
  /** The log, row or file is not used. */
  ERROR,
  /** It is used, but the person must see it. */
  WARNING,
  /** It was skipped on purpose and is only counted. */
  INFO;

  /** Returns the word used in messages and tables. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
