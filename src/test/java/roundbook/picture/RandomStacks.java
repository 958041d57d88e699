package roundbook.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.SplittableRandom;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.DiameterProfile;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.picture.words.Wording;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Stacks of made-up logs, walls and openings from a seed, of every kind that can be asked for. */
public final class RandomStacks {
  static final String LONG_TAG = "Lot 7/2 #1042 from the upper landing, second heap";

  private static final ResourceBundle WORDS =
      ResourceBundle.getBundle("roundbook.report.words.words", java.util.Locale.ROOT);

  private final SplittableRandom random;
  private final BuildRules rules;
  private final Building building;
  private final int rounds;

  private RandomStacks(long seed, int rounds) {
    this.random = new SplittableRandom(seed);
    this.rounds = rounds;
    boolean metric = seed % 2 == 1;
    String bed = List.of("flat", "starter", "level").get((int) (seed / 2 % 3));
    this.rules =
        Jobs.rules(metric)
            .with(Setting.FIRST_BED, bed, Origin.WORKBOOK)
            .with(Setting.SLOPE_RUN, BigDecimal.valueOf(2 + seed % 4), Origin.WORKBOOK)
            .with(
                Setting.BUTTS_RUN, seed % 4 < 2 ? "clockwise" : "counterclockwise", Origin.OPTION);
    this.building = building();
  }

  /** Returns a stack of a seed; odd seeds are metric. */
  public static Stack of(long seed, int rounds) {
    return new RandomStacks(seed, rounds).stack();
  }

  /** Returns openings for the walls of a stack, some of them badly placed. */
  public static List<Opening> openings(Stack stack, long seed) {
    SplittableRandom random = new SplittableRandom(seed * 31 + 7);
    List<Opening> openings = new ArrayList<>();
    for (Wall wall : stack.building().walls()) {
      int count = random.nextInt(4);
      for (int i = 0; i < count; i++) {
        Length sill = Length.ofInches(random.nextInt(40));
        openings.add(
            new Opening(
                i == 0 ? "Door" : "Window to the yard, left " + i,
                wall.name(),
                Length.ofInches(random.nextInt(160)),
                Length.ofInches(4 + random.nextInt(60)),
                sill,
                sill.plus(Length.ofInches(10 + random.nextInt(80))),
                random.nextInt(2) == 0,
                "",
                new CellRef("made-up.csv", "", 1, 0)));
      }
    }
    return openings;
  }

  /** Returns English wording in the unit of a stack. */
  public static Wording wording(Stack stack) {
    return new Wording(format(stack), RandomStacks::english);
  }

  /** Returns wording half as long again, with accents, as another language may be. */
  static Wording longWording(Stack stack) {
    return new Wording(
        format(stack),
        (key, values) -> {
          String text = english(key, values);
          return "Ä" + text + "ğý" + text.substring(0, text.length() / 2);
        });
  }

  static String english(String key, Object... values) {
    try {
      String text = WORDS.getString(key);
      for (int i = 0; i < values.length; i++) {
        text = text.replace("{" + i + "}", String.valueOf(values[i]));
      }
      return text;
    } catch (MissingResourceException missing) {
      throw new AssertionError("no word for " + key, missing);
    }
  }

  private static LengthFormat format(Stack stack) {
    return LengthFormat.forJob(stack.rules().unit(), stack.rules().printStep());
  }

  private Building building() {
    Length across = Length.ofInches(110 + random.nextInt(350));
    Length deep = Length.ofInches(110 + random.nextInt(250));
    Length thick = rules.thickness();
    Length other = random.nextInt(3) == 0 ? thick.plus(Length.ofInches(1)) : thick;
    return new Building(
        List.of(
            new Wall("N", across, true, thick, ""),
            new Wall("E", deep, false, other, ""),
            new Wall("S", across, true, thick, ""),
            new Wall("W", deep, false, thick, "")));
  }

  private Stack stack() {
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= rounds; round++) {
      List<FilledPlace> logs = new ArrayList<>();
      for (Wall wall : building.walls()) {
        logs.add(log(wall, round));
      }
      courses.add(Course.of(round, logs, rules));
    }
    return Stack.of(rules, building, courses);
  }

  private FilledPlace log(Wall wall, int round) {
    Length trimmed = building.trimmed(wall, rules.overhang());
    Length length = trimmed.plus(Length.ofInches(4 + random.nextInt(30)));
    Length mid = Length.ofInchFraction(10 * 16 + random.nextInt(6 * 16), 16);
    Length half = Length.ofInchFraction(random.nextInt(3 * 16), 16);
    DiameterProfile profile =
        DiameterProfile.of(length, mid.plus(half), mid, mid.minus(half.dividedBy(2)));
    int number = round * 10 + building.walls().indexOf(wall);
    String tag = random.nextInt(4) == 0 ? LONG_TAG + number : "L" + number;
    Log log =
        new Log(
            tag,
            length,
            profile,
            Log.Sources.MEASURED,
            Log.Traits.NONE,
            Log.Wish.ANYWHERE,
            new CellRef("made-up.csv", "", number, 0),
            java.util.Map.of());
    Piece piece = new Piece(log, Length.ofInches(2), trimmed);
    return FilledPlace.of(piece, wall, round, rules.clockwise(round));
  }
}
