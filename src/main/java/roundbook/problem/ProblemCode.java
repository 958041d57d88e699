package roundbook.problem;

import static roundbook.problem.Severity.ERROR;
import static roundbook.problem.Severity.INFO;
import static roundbook.problem.Severity.WARNING;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The kinds of problems, each with its usual severity and remedy.
 *
 * <p>The identifier in messages and tables is the constant's name in lower case with hyphens. Every
 * code stands in DEVELOPERS.md with what it means; a test holds that list against this one.
 */
public enum ProblemCode {
  /** A number stands as a date, which a spreadsheet makes of a fraction. */
  DATE_IN_NUMBER(ERROR, "Set the column to Text and type the value again."),
  /** A value cannot be read as the number it should be. */
  BAD_NUMBER(ERROR, "Type the value again."),
  /** A value lies outside what a wall log can have. */
  OUT_OF_RANGE(ERROR, "Check the value and its unit."),
  /** A needed column is missing. */
  MISSING_COLUMN(ERROR, "Add the column, or name it in the settings."),
  /** A needed cell is empty. */
  MISSING_CELL(WARNING, "Fill the cell."),
  /** No unit is given and several are plausible. */
  UNIT_UNKNOWN(
      ERROR,
      "Write the unit in the heading, such as Length ft, or give --set Length_unit=ft and"
          + " --set Diameter_unit=in."),
  /** No unit is given and the only plausible one was taken. */
  UNIT_ASSUMED(WARNING, "Write the unit in the heading if this is wrong."),
  /** A middle diameter was not measured and is estimated. */
  MID_ESTIMATED(WARNING, "Measure the middle of these logs before they are cut."),
  /** An end diameter was not measured and is estimated. */
  END_ESTIMATED(WARNING, "Measure the end."),
  /** The text is not valid UTF-8; the usual Western encoding was taken. */
  ENCODING_GUESSED(WARNING, "Save the file as UTF-8 if names look wrong."),
  /** The file holds nothing. */
  EMPTY_FILE(ERROR, "Check that the right file was given."),
  /** There are headings but no logs under them. */
  NO_ROWS(ERROR, "Fill in the logs."),
  /** The table runs sideways: a log a column. */
  TRANSPOSED_TABLE(ERROR, "Turn the table so that each log is a row."),
  /** A sheet was not read. */
  SHEET_SKIPPED(INFO, "Name it with --sheet to read it."),
  /** A total, average or count row was passed over. */
  SUMMARY_ROW(INFO, ""),
  /** Headings that stand again further down were passed over. */
  REPEATED_HEADER(INFO, ""),
  /** A row of free text was passed over. */
  NOTE_ROW(INFO, ""),
  /** A hidden row was read like any other. */
  HIDDEN_ROW(WARNING, "Delete the row if it should not count."),
  /** A struck-through row was read like any other. */
  STRUCK_ROW(WARNING, "Delete the row if it should not count."),
  /** Two logs have the same tag. */
  DUPLICATE_ID(ERROR, "Give each log a tag of its own."),
  /** The same log stands twice. */
  DUPLICATE_ROW(WARNING, "Delete one of the rows."),
  /** A log has no tag. */
  MISSING_ID(WARNING, "Tag the logs before they are cut."),
  /** A row stands for several logs alike. */
  QUANTITY_ROW(INFO, ""),
  /** The butt is far thinner than the tip; the two were read the other way round. */
  BUTT_TIP_SWAPPED(WARNING, "Check which end is the butt."),
  /** The butt is a little thinner than the tip. */
  BUTT_SMALLER_THAN_TIP(WARNING, "Check which end is the butt."),
  /** The middle is thicker than both ends or thinner than both. */
  MID_OUTSIDE_ENDS(WARNING, "Check the three diameters."),
  /** A log tapers more than logs do. */
  TAPER_LARGE(WARNING, "Check the diameters and the length."),
  /** Two columns mean the same; one of them was read. */
  DUPLICATE_COLUMN(WARNING, "Delete or rename the column that should not be read."),
  /** A cell stands where there is no heading. */
  EXTRA_CELL(WARNING, "Give the column a heading, or delete the cell."),
  /** Lengths look like feet and inches with a point between. */
  MAYBE_FEET_DOT_INCHES(WARNING, "Write 16' 6\" if feet and inches were meant."),
  /** A value was read with a doubt the tally itself shows. */
  DOUBTFUL_VALUE(WARNING, "Measure again."),
  /** A girth was turned into a diameter. */
  GIRTH_CONVERTED(WARNING, "Check that these are girths."),
  /** Bark over or off is mixed or not told. */
  BARK_UNCERTAIN(WARNING, "Say over or off in a bark column; sizes are of peeled wood."),
  /** The file's ending does not say what it holds. */
  WRONG_EXTENSION(WARNING, "Rename the file."),
  /** The file could not be opened or read. */
  UNREADABLE(ERROR, "Check the file's name, its permissions, and that nothing has it locked."),
  /** The file is not what its name says, nor any other table. */
  NOT_A_WORKBOOK(ERROR, "Save the table as .xlsx or .csv and run again."),
  /** The file is locked with a password. */
  ENCRYPTED(ERROR, "Take the password off, save it again and run again."),
  /** The file is larger than a tally can be, or unpacks to far more than it should. */
  TOO_LARGE(ERROR, "Save the tally alone as a new file."),
  /** The workbook is one that this program wrote for the crew. */
  CREW_WORKBOOK(ERROR, "Give the job workbook or the tally instead."),
  /** The workbook is none that this program wrote for a crew. */
  NOT_A_CREW_WORKBOOK(ERROR, "Give the crew workbook, named ... - rounds rev1.xlsx or so."),
  /** The crew workbook was written by a version that lays its cells out otherwise. */
  OTHER_VERSION(ERROR, "Plan again from the tally with this version, or use the other version."),
  /** A cell or a list that the next plan needs is gone from the crew workbook. */
  CELL_LOST(ERROR, "Type what was typed into a fresh copy of this revision, and use that."),
  /** Two things that were typed on site cannot both be true. */
  CONTRADICTION(ERROR, "Correct one of them."),
  /** A log was cut and never measured. */
  NOT_MEASURED(WARNING, "Measure the middle of each log as hewn, and type it on the round's page."),
  /** Logs as hewn differ from the tally, all much alike. */
  TALLY_BIAS(INFO, "Type the value as Tally_correction on the Settings sheet, and run replan."),
  /** A setting has a value that cannot be used. */
  BAD_SETTING(ERROR, "Correct the value."),
  /** A setting's name is not known. */
  UNKNOWN_SETTING(WARNING, "Check the spelling."),
  /** The walls do not make a building. */
  BAD_WALLS(ERROR, "Correct the Walls sheet or give --walls."),
  /** A workbook of a job holds no settings. */
  NO_JOB_SHEET(WARNING, "Add the sheet Job, or give its values with --set."),
  /** An opening names no wall of the building, or lies over another. */
  BAD_OPENING(ERROR, "Correct the opening."),
  /** A pin names a log, wall or round that does not exist, or two pins disagree. */
  BAD_PIN(ERROR, "Correct the pin."),
  /** A job without rounds or height takes all it can of a shared yard. */
  TAKES_ALL(WARNING, "Give Rounds or Wall_height, or name the job last."),
  /** The revision before was made from another file or another revision. */
  OTHER_INPUT(WARNING, "If they are two jobs, rename one of the files and plan it again."),
  /** The search for a good choice of logs was ended by the user before its time. */
  SEARCH_STOPPED(WARNING, "Plan again and let it run to its end; it will find a better choice."),
  /** There are not enough logs for the rounds that were wanted. */
  TOO_FEW_LOGS(ERROR, "Order the logs listed, or build fewer rounds."),
  /** A log is too short for every wall. */
  TOO_SHORT(WARNING, "Use it for short pieces, or check its length."),
  /** A log is too thin to show two faces at the thickness. */
  TOO_THIN(WARNING, "Use it elsewhere, or check its diameters."),
  /** Two neighbouring logs would nearly touch. */
  GAP_SMALL(WARNING, "Swap a log, or flatten the crown there."),
  /** Two neighbouring logs would stand too far apart. */
  GAP_LARGE(WARNING, "Swap a log, or plan for more filling there."),
  /** The middle diameters of a round differ too much. */
  SPREAD_LARGE(WARNING, "Swap a log of the round."),
  /** A round is larger than the one below it by more than the step allowed. */
  STEP_LARGE(WARNING, "Check the order of the rounds."),
  /** The walls would be higher than hewn log walls are built. */
  WALL_HIGH(WARNING, "Check the number of rounds or the height."),
  /** A log's end is too thin for the marks of its round. */
  TIP_THIN(WARNING, "What each word asks, and whether the log may lie here: see Notch chart."),
  /** The thinnest part of the neck is under the least allowed. */
  NECK_THIN(WARNING, "Use larger logs, a smaller slope or a thinner wall."),
  /** An opening does not lie inside its wall, or has no size. */
  OPENING_OUTSIDE(WARNING, "Correct the opening's measures."),
  /** A piece beside an opening is too short to hold its notch. */
  OPENING_PIECE_SHORT(WARNING, "Move the opening away from the corner."),
  /** A log that is long enough for more is cut to a short piece beside an opening. */
  LONG_LOG_CUT(WARNING, "Buy a shorter log for the place if this one is wanted whole."),
  /** No whole log lies over an opening, or the one that does is cut too deep. */
  OPENING_HEADER(WARNING, "Lower the head, or add a round; a header is for an engineer."),
  /** An opening cuts a log of the first round in two. */
  OPENING_SILL(WARNING, "Raise the sill over the first log, or anchor both its pieces."),
  /** A log that is kept for a header got another place. */
  HEADER_ELSEWHERE(
      WARNING, "Pin it to the round and wall of a header named on the Openings sheet."),
  /** No number of rounds comes near the height wanted, or no height is told. */
  ORDER_HEIGHT(ERROR, "Give another height, or the number of rounds with Rounds."),
  /** No wall could be built of logs of the diameters wanted. */
  ORDER_BAND(ERROR, "Change Mid_bottom or Mid_top, or what the message names."),
  /** A trailer takes not one log of a kind. */
  LOAD_SMALL(ERROR, "Name what the trailer takes, or order shorter or thinner logs."),
  /** A price does not say what it is for. */
  BAD_PRICE(ERROR, "Correct the sheet Prices."),
  /** The style template has no style for something; the built-in one is used. */
  STYLE_MISSING(WARNING, "Name the cell in the template, or leave it: the built-in style is used."),
  /** A text is longer than a cell can hold and was cut. */
  TEXT_CUT(WARNING, "Shorten the text."),
  /** Nothing could be planned from what was given. */
  NOTHING_PLANNED(ERROR, "Mend the problems above and run again.");

  private final Severity severity;
  private final String remedy;

  ProblemCode(Severity severity, String remedy) {
    this.severity = severity;
    this.remedy = remedy;
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
  public String remedy() {
    return remedy;
  }
}
