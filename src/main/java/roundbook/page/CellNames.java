package roundbook.page;

/**
 * The defined names by which cells of a crew workbook are found again, but for those of {@link
 * TypedBox} and {@link LogColumn}.
 *
 * <p>They are the same in every language, so that a later revision and other programs find them.
 */
public final class CellNames {
  /** Name of the cell with the layout of the names, which {@link #LAYOUT_NOW} is. */
  public static final String LAYOUT = "Made_layout";

  /** The layout of this version: a workbook of a later one is not read back. */
  public static final int LAYOUT_NOW = 3;

  /** The oldest layout that is still read back; boxes that came later are not missed in it. */
  public static final int LAYOUT_LEAST = 2;

  /** Name of the cell with the version of the program. */
  public static final String VERSION = "Made_by_version";

  /** Name of the cell with the revision. */
  public static final String REVISION = "Made_revision";

  /** Name of the cell with the name of the file that the first revision was made from. */
  public static final String FROM = "Made_from";

  /** Name of the cell with the number of rounds that were wanted. */
  public static final String WANTED = "Made_rounds_wanted";

  /** Name of the cell with the tags of the logs that were lost when the workbook was made. */
  public static final String LOST_BEFORE = "Made_lost";

  /** What stands between the tags of lost logs. */
  public static final String BETWEEN_TAGS = "; ";

  /** What the names of the boxes for lost logs begin with. */
  public static final String LOST = "Lost_";

  private CellNames() {}

  /** Returns the name of the lower mark that the second-laid log gets at a corner. */
  public static String secondLower(int round, String corner) {
    return Book.nameOf("Lower_second", round, corner);
  }

  /** Returns the name of how much the top of a corner is to be pared down after a round. */
  public static String pare(int round, String corner) {
    return Book.nameOf("Pare", round, corner);
  }

  /** Returns the name of a setting's value as this revision was planned with. */
  public static String was(String setting) {
    return Book.nameOf("Was", setting);
  }

  /** Returns the name of the cell with the first letter of who set a setting. */
  public static String setBy(String setting) {
    return Book.nameOf("Set_by", setting);
  }

  /** Returns the name of a column of the problems found while the tally was read. */
  public static String problem(String column) {
    return Book.nameOf("Problem", column);
  }

  /** Returns the name of one value of a list on the Settings sheet, such as {@code Wall_1_name}. */
  public static String item(String list, int number, String what) {
    return Book.nameOf(list, number, what);
  }

  /** Returns the name of what a cut round was cut to, such as {@code Built_size_1}. */
  public static String built(String what, int round) {
    return Book.nameOf("Built", what, round);
  }

  /** Returns the name of what is recorded of a log or a corner, such as {@code Built_mid_1_N}. */
  public static String built(String what, int round, String where) {
    return Book.nameOf("Built", what, round, where);
  }
}
