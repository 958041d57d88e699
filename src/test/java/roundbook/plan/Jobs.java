package roundbook.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.BuildRules.Value;
import roundbook.job.Building;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.job.Wall;
import roundbook.problem.CellRef;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Jobs made up for tests: rules with their defaults, four walls, logs by formula or seed. */
public final class Jobs {
  private Jobs() {}

  /** Returns the default rules in inches, or in millimetres. */
  public static BuildRules rules(boolean metric) {
    Map<Setting, Value> values = new EnumMap<>(Setting.class);
    for (Setting setting : Setting.values()) {
      String text = setting.standard(metric);
      if (!text.isEmpty()) {
        values.put(setting, new Value(value(setting, text, metric), Origin.DEFAULT));
      }
    }
    BuildRules rules = BuildRules.of(values);
    return metric ? rules.with(Setting.UNITS, "mm", Origin.OPTION) : rules;
  }

  private static Object value(Setting setting, String text, boolean metric) {
    if (setting.kind() == SettingKind.LENGTH) {
      return metric ? Length.ofMillimetres(Long.parseLong(text)) : inches(text);
    }
    boolean number = setting.kind() == SettingKind.NUMBER || setting.kind() == SettingKind.COUNT;
    return number ? new BigDecimal(text) : text;
  }

  /** Reads inches written as {@code 3}, {@code 1/2}, {@code 3 1/2} or {@code 3.5}. */
  public static Length inches(String text) {
    Length sum = Length.ZERO;
    for (String part : text.split(" ")) {
      String[] fraction = part.split("/");
      sum =
          sum.plus(
              fraction.length == 2
                  ? Length.ofInchFraction(Long.parseLong(fraction[0]), Long.parseLong(fraction[1]))
                  : Length.of(new BigDecimal(part), LengthUnit.INCH));
    }
    return sum;
  }

  /** Returns four walls of these outside lengths, N and S laid first. */
  public static Building building(Length northSouth, Length eastWest, Length thickness) {
    return new Building(
        List.of(
            new Wall("N", northSouth, true, thickness, ""),
            new Wall("E", eastWest, false, thickness, ""),
            new Wall("S", northSouth, true, thickness, ""),
            new Wall("W", eastWest, false, thickness, "")));
  }

  /** Returns a log of these diameters in inches. */
  public static Log log(String tag, Length length, String butt, String mid, String tip) {
    DiameterProfile profile = DiameterProfile.of(length, inches(butt), inches(mid), inches(tip));
    return log(tag, length, profile);
  }

  /** Returns a log of a profile. */
  public static Log log(String tag, Length length, DiameterProfile profile) {
    return new Log(
        tag,
        length,
        profile,
        Log.Sources.MEASURED,
        Log.Traits.NONE,
        Log.Wish.ANYWHERE,
        new CellRef("made-up.csv", "", Integer.parseInt(tag.replaceAll("\\D", "")) + 1, 0),
        Map.of());
  }

  /** Returns a job of so many logs with random sizes, half of them long enough for N and S. */
  public static Job random(long seed, int logs) {
    return random(seed, logs, false);
  }

  /** Returns a random job in inches or in millimetres; the walls are 20 by 14 feet outside. */
  public static Job random(long seed, int logs, boolean metric) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Log> made = new ArrayList<>();
    Length step = metric ? Length.ofMillimetres(5) : Length.ofInchFraction(1, 4);
    for (int i = 1; i <= logs; i++) {
      Length length = Length.ofInches((i % 2 == 0 ? 252 : 180) + random.nextInt(40));
      Length mid = Length.ofInchFraction(88 + random.nextInt(40), 8).roundedTo(step);
      Length taper = Length.ofInchFraction(8 + random.nextInt(16), 8).roundedTo(step);
      DiameterProfile profile =
          DiameterProfile.of(length, mid.plus(taper), mid, mid.minus(taper.dividedBy(2)));
      made.add(log("L" + i, length, profile));
    }
    BuildRules rules = rules(metric);
    Building building = building(Length.ofInches(240), Length.ofInches(168), rules.thickness());
    return new Job(rules, building, made, List.of(), List.of());
  }
}
