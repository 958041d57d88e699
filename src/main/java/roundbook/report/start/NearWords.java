package roundbook.report.start;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.WrongTally;
import roundbook.report.words.Words;
import roundbook.rounds.Nearness;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/**
 * How near the best a plan is, in the words of a language: by how much another could be better,
 * what that is in gaps, and what to do.
 *
 * @param words the words
 * @param again whether the plan is that of a re-plan
 */
public record NearWords(Words words, boolean again) {
  private static final String KEY = "start.near.";

  /** Returns the sentences; empty where it was not asked. */
  public Optional<String> told(Plan plan) {
    return plan.choice()
        .nearness()
        .map(near -> told(near, plan.job().rules()) + (isCut(plan) ? " " + text("cut") : ""));
  }

  private boolean isCut(Plan plan) {
    return again && plan.job().built().cutSize(1).isPresent();
  }

  private String told(Nearness near, BuildRules rules) {
    if (near.percent() == 0) {
      return text("proved");
    }
    Length asHewn = WrongTally.asHewn(rules);
    boolean little = near.isLittle(asHewn);
    String hewing = little ? little(asHewn, rules) : "";
    String more = more(little, near, rules);
    return near.known()
        .map(percent -> text("some", percent) + gaps(near, rules) + "." + hewing + more)
        .orElseGet(
            () -> text("unknown." + unknown(near, rules)) + hewing + (near.ended() ? "" : more));
  }

  private static String unknown(Nearness near, BuildRules rules) {
    boolean exact = rules.sizeStep().isZero();
    return exact ? "exact" : near.ended() ? "ended" : "timed";
  }

  /** Returns what gaps are off now and at least; of a single round, which has none, nothing. */
  private String gaps(Nearness near, BuildRules rules) {
    LengthUnit unit = rules.unit();
    return near.gapOff().isZero()
        ? ""
        : text(
            "gaps",
            decimal(near.leastGapOff(), unit, RoundingMode.DOWN),
            decimal(near.gapOff(), unit, RoundingMode.HALF_UP),
            unit.symbol());
  }

  /**
   * Returns a length in hundredths of millimetres or thousandths of other units, so that small
   * gains are seen.
   */
  private String decimal(Length length, LengthUnit unit, RoundingMode rounding) {
    int decimals = unit == LengthUnit.MILLIMETRE ? 2 : 3;
    BigDecimal exact = length.decimal(unit, 6);
    return words.number(exact.setScale(decimals, rounding).toPlainString());
  }

  /** Returns that nothing is to be done, for hewing varies gaps more. */
  private String little(Length asHewn, BuildRules rules) {
    LengthFormat formats = LengthFormat.forJob(rules.unit(), rules.printStep());
    String hewn = formats.withDecimalMark(words.decimalMark()).mark(asHewn);
    return " " + text("little", hewn, formats.symbol());
  }

  /** Returns what may bring another choice, as far as it needs to be said. */
  private String more(boolean little, Nearness near, BuildRules rules) {
    String key = (little ? "little." : "") + stands(near, rules);
    return words.has(KEY + key) ? " " + text(key) : "";
  }

  /** Returns what stands between this choice and a better one. */
  private String stands(Nearness near, BuildRules rules) {
    if (again) {
      return "again";
    } else if (rules.text(Setting.BALANCE_FOR).equals("worst")) {
      return "worst";
    }
    return near.ended() ? "ended" : "timed";
  }

  private String text(String key, Object... values) {
    return words.text(KEY + key, values);
  }
}
