package roundbook.app;

/** The exit codes of the program, worse ones with higher rank. */
enum Exit {
  /** Done; warnings allowed. */
  DONE(0, 0),
  /** Not enough logs: a partial plan and the order are written. */
  SHORT_OF_LOGS(4, 1),
  /** The input has errors and nothing was planned. */
  BAD_INPUT(3, 2),
  /** A file cannot be read or written. */
  NO_ACCESS(5, 3),
  /** The command line is wrong. */
  USAGE(2, 4),
  /** The program is at fault. */
  FAULT(1, 5);

  private final int code;
  private final int rank;

  Exit(int code, int rank) {
    this.code = code;
    this.rank = rank;
  }

  int code() {
    return code;
  }

  Exit worse(Exit other) {
    return other.rank > rank ? other : this;
  }
}
