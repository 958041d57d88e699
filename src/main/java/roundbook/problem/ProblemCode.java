package roundbook.problem;

import static roundbook.problem.Severity.ERROR;
import static roundbook.problem.Severity.INFO;
import static roundbook.problem.Severity.WARNING;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The kinds of problems, each with its usual severity.
 *
 * <p>The identifier in messages and tables is the constant's name in lower case with hyphens. What
 * each means stands in the manual page too; a test holds its list against this one.
 */
public enum ProblemCode {
  /** A number stands as a date, which a spreadsheet makes of a fraction. */
  DATE_IN_NUMBER(ERROR),
  /** A value cannot be read as the number it should be. */
  BAD_NUMBER(ERROR),
  /** A value lies outside what a wall log can have. */
  OUT_OF_RANGE(ERROR),
  /** A needed column is missing. */
  MISSING_COLUMN(ERROR),
  /** A needed cell is empty. */
  MISSING_CELL(WARNING),
  /** No unit is given and several are plausible. */
  UNIT_UNKNOWN(ERROR),
  /** No unit is given and the only plausible one was taken. */
  UNIT_ASSUMED(WARNING),
  /** A middle diameter was not measured and is estimated. */
  MID_ESTIMATED(WARNING),
  /** An end diameter was not measured and is estimated. */
  END_ESTIMATED(WARNING),
  /** The text is not valid UTF-8; the usual Western encoding was taken. */
  ENCODING_GUESSED(WARNING),
  /** The file holds nothing. */
  EMPTY_FILE(ERROR),
  /** There are headings but no logs under them. */
  NO_ROWS(ERROR),
  /** The table runs sideways: a log a column. */
  TRANSPOSED_TABLE(ERROR),
  /** A sheet was not read. */
  SHEET_SKIPPED(INFO),
  /** A total, average or count row was passed over. */
  SUMMARY_ROW(INFO),
  /** Headings that stand again further down were passed over. */
  REPEATED_HEADER(INFO),
  /** A row of free text was passed over. */
  NOTE_ROW(INFO),
  /** A hidden row was read like any other. */
  HIDDEN_ROW(WARNING),
  /** A struck-through row was read like any other. */
  STRUCK_ROW(WARNING),
  /** Two logs have the same tag. */
  DUPLICATE_ID(ERROR),
  /** The same log stands twice. */
  DUPLICATE_ROW(WARNING),
  /** A log has no tag. */
  MISSING_ID(WARNING),
  /** A row stands for several logs alike. */
  QUANTITY_ROW(INFO),
  /** The butt is far thinner than the tip; the two were read the other way round. */
  BUTT_TIP_SWAPPED(WARNING),
  /** The butt is a little thinner than the tip. */
  BUTT_SMALLER_THAN_TIP(WARNING),
  /** The middle is thicker than both ends or thinner than both. */
  MID_OUTSIDE_ENDS(WARNING),
  /** A log tapers more than logs do. */
  TAPER_LARGE(WARNING),
  /** Two columns mean the same; one of them was read. */
  DUPLICATE_COLUMN(WARNING),
  /** A column is only carried through. */
  COLUMN_NOT_READ(INFO),
  /** A heading was read in spite of a word that is not known, or means two things. */
  HEADING_DOUBTFUL(WARNING),
  /** Rows hold a tag and nothing else. */
  NUMBERED_ROW(INFO),
  /** Something written beside a log says that it cannot be built with. */
  LOG_UNFIT(WARNING),
  /** A cell stands where there is no heading. */
  EXTRA_CELL(WARNING),
  /** Lengths look like feet and inches with a point between. */
  MAYBE_FEET_DOT_INCHES(WARNING),
  /** A value was read with a doubt the tally itself shows. */
  DOUBTFUL_VALUE(WARNING),
  /** A girth was turned into a diameter. */
  GIRTH_CONVERTED(WARNING),
  /** Bark over or off is mixed or not told. */
  BARK_UNCERTAIN(WARNING),
  /** The file's ending does not say what it holds. */
  WRONG_EXTENSION(WARNING),
  /** The file could not be opened or read. */
  UNREADABLE(ERROR),
  /** The file is not what its name says, nor any other table. */
  NOT_A_WORKBOOK(ERROR),
  /** The file is locked with a password. */
  ENCRYPTED(ERROR),
  /** The file is larger than a tally can be, or unpacks to far more than it should. */
  TOO_LARGE(ERROR),
  /** The workbook is one that this program wrote for the crew. */
  CREW_WORKBOOK(ERROR),
  /** The workbook is none that this program wrote for a crew. */
  NOT_A_CREW_WORKBOOK(ERROR),
  /** The crew workbook was written by a version that lays its cells out otherwise. */
  OTHER_VERSION(ERROR),
  /** A cell or a list that the next plan needs is gone from the crew workbook. */
  CELL_LOST(ERROR),
  /** Two things that were typed on site cannot both be true. */
  CONTRADICTION(ERROR),
  /** A log was cut and never measured. */
  NOT_MEASURED(WARNING),
  /** Logs as hewn differ from the tally, all much alike. */
  TALLY_BIAS(INFO),
  /** The walls as a whole stand over or under the plan. */
  WALLS_STAND(INFO),
  /** A top stands too high to be levelled by marks and is to be pared. */
  PARE_TOP(WARNING),
  /** Gaps measured on the walls are not those of the plan. */
  GAPS_DIFFER(WARNING),
  /** A setting has a value that cannot be used. */
  BAD_SETTING(ERROR),
  /** A setting's name is not known. */
  UNKNOWN_SETTING(WARNING),
  /** The walls do not make a building. */
  BAD_WALLS(ERROR),
  /** A workbook of a job holds no settings. */
  NO_JOB_SHEET(WARNING),
  /** An opening names no wall of the building, or lies over another. */
  BAD_OPENING(ERROR),
  /** Something of a felled stem is wrong, so that it is left out. */
  BAD_STEM(ERROR),
  /** A stem has fewer stations than are wanted, or its top was not measured. */
  STEM_STATIONS(WARNING),
  /** A pin names a log, wall or round that does not exist, or two pins disagree. */
  BAD_PIN(ERROR),
  /** A job without rounds or height takes all it can of a shared yard. */
  TAKES_ALL(WARNING),
  /** The revision before was made from another file or another revision. */
  OTHER_INPUT(WARNING),
  /** The search for a good choice of logs was ended by the user before its time. */
  SEARCH_STOPPED(WARNING),
  /** There are not enough logs for the rounds that were wanted. */
  TOO_FEW_LOGS(ERROR),
  /** A log is too short for every wall. */
  TOO_SHORT(WARNING),
  /** A log is too thin to show two faces at the thickness. */
  TOO_THIN(WARNING),
  /** Two neighbouring logs would nearly touch. */
  GAP_SMALL(WARNING),
  /** Two neighbouring logs would stand too far apart. */
  GAP_LARGE(WARNING),
  /** Bowed logs bring a gap out of its limits that straight ones keep in them. */
  GAP_SWEEP(WARNING),
  /** A gap may well leave its limits. */
  GAP_WATCH(INFO),
  /** The middle diameters of a round differ too much. */
  SPREAD_LARGE(WARNING),
  /** A round is larger than the one below it by more than the step allowed. */
  STEP_LARGE(WARNING),
  /** The walls would be higher than hewn log walls are built. */
  WALL_HIGH(WARNING),
  /** A log's end loses bearing, or face over the upper mark, to the round of the log. */
  TIP_THIN(WARNING),
  /** The thinnest part of the neck is under the least allowed. */
  NECK_THIN(WARNING),
  /** An opening does not lie inside its wall, or has no size. */
  OPENING_OUTSIDE(WARNING),
  /** A piece beside an opening is too short to hold its notch. */
  OPENING_PIECE_SHORT(WARNING),
  /** A log that is long enough for more is cut to a short piece beside an opening. */
  LONG_LOG_CUT(WARNING),
  /** No whole log lies over an opening, or the one that does is cut too deep. */
  OPENING_HEADER(WARNING),
  /** A leaf does not go between the bucks of its opening. */
  OPENING_LEAF(WARNING),
  /** An opening cuts a log of the first round in two. */
  OPENING_SILL(WARNING),
  /** A log that is kept for a header got another place. */
  HEADER_ELSEWHERE(WARNING),
  /** Logs are kept for plates of walls that are not laid last in the last round. */
  PLATE_ELSEWHERE(WARNING),
  /** No number of rounds comes near the height wanted, or no height is told. */
  ORDER_HEIGHT(ERROR),
  /** No wall could be built of logs of the diameters wanted. */
  ORDER_BAND(ERROR),
  /** A trailer takes not one log of a kind. */
  LOAD_SMALL(ERROR),
  /** A price does not say what it is for. */
  BAD_PRICE(ERROR),
  /** Logs for other places than the walls cannot be looked for as they are told. */
  BAD_OTHER_LOG(ERROR),
  /** The style template has no style for something; the built-in one is used. */
  STYLE_MISSING(WARNING),
  /** A text is longer than a cell can hold and was cut. */
  TEXT_CUT(WARNING),
  /** Nothing could be planned from what was given. */
  NOTHING_PLANNED(ERROR);

  private final Severity severity;

  ProblemCode(Severity severity) {
    this.severity = severity;
  }

  /** Returns the identifier used in messages and tables, such as {@code date-in-number}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the code of an identifier; empty where there is none. */
  public static Optional<ProblemCode> of(String id) {
    return Arrays.stream(values()).filter(code -> code.id().equals(id)).findFirst();
  }

  /** Returns whether any of these problems is of this kind. */
  public boolean isIn(List<Problem> problems) {
    return problems.stream().anyMatch(problem -> problem.code() == this);
  }

  /** Returns the usual severity; a problem may carry another. */
  public Severity severity() {
    return severity;
  }

  /** Returns what the person can usually do. */
  public Phrase remedy() {
    return Phrase.of("remedy." + id());
  }
}
