package roundbook.report.frame;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import roundbook.job.Wall;
import roundbook.page.Book;
import roundbook.page.Sheet;
import roundbook.report.words.Words;

/** The sheets that a crew workbook has once each, in the order of their tabs. */
public enum Tab {
  /** The first page. */
  START,
  /** What a builder checks with a pencil and an offcut. */
  PROOF,
  /** The notch numbers of every round. */
  NOTCH_CHART,
  /** What an order costs; in the workbook of an order. */
  COST,
  /** What is hauled with what; in the workbook of an order. */
  LOADS,
  /** The trees to mark; in the workbook of an order. */
  TREES,
  /** Corner readings. */
  LEVELS,
  /** What is cut and measured. */
  AS_BUILT,
  /** What to hew or saw, log by log. */
  HEWING,
  /** Where stems are cut; only where there are stems. */
  CROSS_CUTS,
  /** Every log of the tally. */
  LOG_LIST,
  /** Which spare could stand where. */
  SPARES,
  /** Doors and windows. */
  OPENINGS,
  /** Bed, tops and settling. */
  HEIGHTS,
  /** Logs on hand, quantities, waste. */
  MATERIALS,
  /** The filling of every joint. */
  CHINKING,
  /** The page for the yard. */
  ORDER,
  /** What the yard gives for other places than the walls. */
  OTHER_LOGS,
  /** Weights and cautions. */
  LIFTING,
  /** Tags for the logs. */
  TAGS,
  /** The slope at full size. */
  TEMPLATE,
  /** Heights at full size. */
  STORY_POLE,
  /** Everything in doubt. */
  PROBLEMS,
  /** Every setting and what was asked. */
  SETTINGS;

  /** Returns the sheets after the walls, in the order of their tabs. */
  public static List<Tab> lists() {
    return Arrays.stream(values()).dropWhile(tab -> tab != LEVELS).toList();
  }

  /** Returns the id that is the same in every language, such as {@code cut_list}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns the name on the tab. */
  public String in(Words words) {
    return words.text("tab." + id());
  }

  /** Returns the name on a round's tab, such as {@code Round 01}. */
  public static String ofRound(Words words, int round) {
    return words.text("tab.round", twoDigits(round));
  }

  /** Returns the id of a round's sheet, such as {@code round_01}. */
  public static String roundId(int round) {
    return "round_" + twoDigits(round);
  }

  private static String twoDigits(int round) {
    return round < 10 ? "0" + round : String.valueOf(round);
  }

  /** Returns the name on a wall's tab, such as {@code Wall N}. */
  public static String ofWall(Words words, Wall wall) {
    return Sheet.safeName(words.text("tab.wall", wall.name()));
  }

  /** Returns the id of a wall's sheet, such as {@code wall_N}. */
  public static String wallId(Wall wall) {
    return Book.nameOf("wall", wall.name());
  }
}
