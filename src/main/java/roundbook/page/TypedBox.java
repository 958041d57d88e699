package roundbook.page;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import roundbook.units.Length;

/**
 * The boxes of a round's page that are typed in on site: what each stands for, how its cells are
 * named, what may be typed. The writer of the pages and the reader of what came back walk this list
 * alone, in its order.
 *
 * <p>The names are the same in every language, so that a later revision and other programs find
 * them.
 */
public enum TypedBox {
  /** The middle diameter as hewn, such as {@code Measured_1_N}. */
  MEASURED("Measured", Per.LOG, Entry.DIAMETER),
  /** The butt diameter as hewn. */
  MEASURED_BUTT("Measured_butt", Per.LOG, Entry.DIAMETER),
  /** The tip diameter as hewn. */
  MEASURED_TIP("Measured_tip", Per.LOG, Entry.DIAMETER),
  /** The tag of the log used instead. */
  USED("Used", Per.LOG, Entry.USED),
  /** The lower mark as cut. */
  LOWER_CUT("Lower_cut", Per.WALL, Entry.MARK),
  /** The upper mark as cut. */
  UPPER_CUT("Upper_cut", Per.WALL, Entry.MARK),
  /** The x that says a round is cut. */
  CUT("Cut", Per.ROUND, Entry.CUT),
  /** The x that says the log of a wall is cut, or both short ones. */
  LOG_CUT("Cut", Per.WALL, Entry.CUT),
  /** A corner's height as read on top of a round's first-laid logs. */
  FIRST_READING("Reading_first", Per.CORNER, Entry.READING),
  /** A corner's height as read after a round. */
  READING("Reading", Per.CORNER, Entry.READING),
  /** The gap over a round's log at one of three stations, on the wall's page. */
  GAP("Gap", Per.STATION, Entry.GAP);

  private final String start;
  private final Per per;
  private final Entry entry;

  TypedBox(String start, Per per, Entry entry) {
    this.start = start;
    this.per = per;
    this.entry = entry;
  }

  /** Returns the layout of names that first had it. */
  public int since() {
    return this == LOG_CUT || this == GAP ? 3 : 2;
  }

  /** What a round's page has one box for. */
  public enum Per {
    /** Each log: one in a place, or one each side of an opening. */
    LOG,
    /** Each wall. */
    WALL,
    /** The round. */
    ROUND,
    /** Each corner. */
    CORNER,
    /** Each station of the joint over a log, on the wall's page. */
    STATION;

    /** Returns the boxes that there are for one of these. */
    public List<TypedBox> boxes() {
      return Arrays.stream(TypedBox.values()).filter(box -> box.per == this).toList();
    }
  }

  /** What may be typed; lengths are typed as numbers of the job's unit, from nothing to a most. */
  public enum Entry {
    /** A diameter. */
    DIAMETER(48, 1200),
    /** A mark. */
    MARK(48, 1200),
    /** The tag of a log on the log list. */
    USED(0, 0),
    /** An x. */
    CUT(0, 0),
    /** A gap. */
    GAP(12, 300),
    /** A height above the first bed. */
    READING(600, 15_000);

    private final long inches;
    private final long millimetres;

    Entry(long inches, long millimetres) {
      this.inches = inches;
      this.millimetres = millimetres;
    }

    /** Returns the largest length that is believed; zero where no length is typed. */
    public Length most(boolean metric) {
      return metric ? Length.ofMillimetres(millimetres) : Length.ofInches(inches);
    }

    /** Returns the word by which texts about it are found. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Returns what may be typed. */
  public Entry entry() {
    return entry;
  }

  /** Returns the name of a round's cell. */
  public String named(int round) {
    return Book.nameOf(start, round);
  }

  /** Returns the name of the cell of a log's place, a wall or a corner, or of the round itself. */
  public String named(int round, String where) {
    return per == Per.ROUND ? named(round) : Book.nameOf(start, round, where);
  }
}
