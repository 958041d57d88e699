package roundbook.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.heading.Term;
import roundbook.job.Log.Bark;
import roundbook.units.LengthUnit;

/**
 * Settles which column of a block is read for each field, where several claim it.
 *
 * <p>A heading all of whose words are known goes before one with a stranger in it, a measured
 * column before one that was reckoned or ordered, one under bark before one over bark, and then the
 * one whose numbers fit. A heading with a stranger counts only where its numbers fit. Two diameters
 * at one place that say so are two readings across each other.
 */
final class Claims {
  private static final double FITS = 0.8;
  private static final int INCHES = 12;
  private static final int CENTIMETRES = 100;

  private final Map<Field, List<Heading>> claims = new EnumMap<>(Field.class);
  private final Map<Field, Heading> settled = new EnumMap<>(Field.class);
  private final List<Heading> unread = new ArrayList<>();
  private final List<Heading> headings;
  private final Fit fit;

  /**
   * Begins with a block.
   *
   * @param headings its headings, by rising column
   * @param fit tells how the numbers under them fit
   */
  Claims(List<Heading> headings, Fit fit) {
    this.headings = headings;
    this.fit = fit;
  }

  /** Returns the columns that are read. */
  Map<Field, Heading> settle() {
    List<Heading> left = withoutRests();
    for (Heading heading : left) {
      Optional<Field> field = heading.field();
      if (field.isEmpty()) {
        unread.add(heading);
      } else {
        claims.computeIfAbsent(field.get(), each -> new ArrayList<>()).add(heading);
      }
    }
    claims.forEach(this::settle);
    settleTag();
    passOver(Field.DIAMETER, Unread.NOWHERE);
    passOver(Field.DBH, Unread.STANDING);
    passGirths();
    return settled;
  }

  /** Returns the columns that are not read, each with the reason, by rising column. */
  List<Heading> unread() {
    return unread.stream().sorted(java.util.Comparator.comparingInt(Heading::column)).toList();
  }

  /** Finds the inches beside the feet of a length, and the centimetres beside its metres. */
  private List<Heading> withoutRests() {
    List<Heading> left = new ArrayList<>(headings);
    for (int i = 0; i + 1 < headings.size(); i++) {
      Heading whole = headings.get(i);
      Heading rest = headings.get(i + 1);
      boolean alone = whole.wording().isUnitAlone() && !hasLength();
      boolean beside = whole.field().filter(Field.LENGTH::equals).isPresent() || alone;
      if (beside && isRest(whole, rest)) {
        left.remove(rest);
        left.set(left.indexOf(whole), whole.meaning(Field.LENGTH));
        settled.put(Field.LENGTH_REST, rest.meaning(Field.LENGTH_REST));
        return left;
      }
    }
    return left;
  }

  private boolean hasLength() {
    return headings.stream()
        .anyMatch(each -> each.field().filter(Field.LENGTH::equals).isPresent());
  }

  private boolean isRest(Heading whole, Heading rest) {
    boolean along =
        rest.wording().isUnitAlone() || rest.field().filter(Field.LENGTH::equals).isPresent();
    LengthUnit large = whole.unit().orElse(null);
    LengthUnit small = rest.unit().orElse(null);
    return along
        && (large == LengthUnit.FOOT && small == LengthUnit.INCH && fit.isPart(rest, small, INCHES)
            || large == LengthUnit.METRE
                && small == LengthUnit.CENTIMETRE
                && fit.isPart(rest, small, CENTIMETRES));
  }

  private void settle(Field field, List<Heading> wanted) {
    List<Heading> sure = new ArrayList<>();
    for (Heading heading : wanted) {
      if (!heading.doubtful() || isMeasure(field) && fit.share(heading) >= FITS) {
        sure.add(heading);
      } else if (isMeasure(field)) {
        unread.add(heading.unread(fit.isEmpty(heading) ? Unread.EMPTY : Unread.NO_FIT));
      } else {
        sure.add(heading);
      }
    }
    if (!sure.isEmpty()) {
      choose(field, sure);
    }
  }

  private static boolean isMeasure(Field field) {
    return field.diameter() || field.girth() || field == Field.LENGTH;
  }

  private void choose(Field field, List<Heading> wanted) {
    Heading best = wanted.get(0);
    for (Heading heading : wanted.subList(1, wanted.size())) {
      best = rank(field, heading) > rank(field, best) ? heading : best;
    }
    settled.put(field, best);
    for (Heading heading : wanted) {
      if (heading != best && !isAcross(field, best, heading)) {
        unread.add(heading.unread(why(best, heading)));
      }
    }
  }

  /** Ranks a claim; of equal ones the first is taken. */
  private double rank(Field field, Heading heading) {
    double rank = heading.doubtful() ? 0 : 100;
    rank += heading.wording().has(Term.NOMINAL) ? 0 : 50;
    rank += heading.estimated() ? 0 : 25;
    rank += heading.bark() == Bark.OVER ? 0 : 1;
    rank += heading.bark() == Bark.OFF ? 9 : 0;
    double share = isMeasure(field) && claims.get(field).size() > 1 ? fit.share(heading) : 0;
    return rank + Math.rint(share * 5);
  }

  private boolean isAcross(Field field, Heading best, Heading other) {
    boolean both =
        field.diameter()
            && best.wording().has(Term.READING)
            && other.wording().has(Term.READING)
            && best.unit().equals(other.unit())
            && best.bark() == other.bark()
            && !settled.containsKey(field.across());
    if (both) {
      settled.put(field.across(), other.meaning(field.across()));
    }
    return both;
  }

  private static Unread why(Heading best, Heading other) {
    if (best.bark() == Bark.OFF && other.bark() == Bark.OVER) {
      return Unread.OVER_BARK;
    }
    if (other.wording().has(Term.NOMINAL)) {
      return Unread.NOMINAL;
    }
    return other.estimated() && !best.estimated() ? Unread.ESTIMATED : Unread.SAME;
  }

  /** Finds what names the log: the tag painted on it before what is stuck on it or only counts. */
  private void settleTag() {
    Heading logs = settled.remove(Field.LOGS);
    boolean named = settled.containsKey(Field.TAG) || settled.containsKey(Field.RUNNING);
    if (logs != null) {
      boolean count = !settled.containsKey(Field.COUNT) && (named || fit.isCount(logs));
      settled.put(count ? Field.COUNT : Field.TAG, logs.meaning(count ? Field.COUNT : Field.TAG));
    }
    Field[] order = {Field.TAG, Field.STEM, Field.RUNNING, Field.LABEL};
    if (settled.containsKey(Field.STEM) && settled.containsKey(Field.RUNNING)) {
      // A number counts the logs of a stem only where a stem stands in several rows.
      boolean within =
          !settled.get(Field.RUNNING).wording().has(Term.RUNNING)
              && fit.repeats(settled.get(Field.STEM));
      order[1] = within ? Field.RUNNING : Field.STEM;
      order[2] = within ? Field.STEM : Field.RUNNING;
    }
    for (Field field : order) {
      Heading heading = settled.get(field);
      if (heading != null && !settled.containsKey(Field.TAG)) {
        settled.remove(field);
        settled.put(Field.TAG, heading.meaning(Field.TAG));
      }
    }
    passOver(Field.RUNNING, Unread.RUNNING);
    passOver(Field.LABEL, Unread.LABEL);
  }

  private void passOver(Field field, Unread why) {
    boolean needed = field == Field.DIAMETER || field == Field.DBH;
    boolean measured = settled.keySet().stream().anyMatch(Claims::isDiameter);
    if (settled.containsKey(field) && (!needed || measured)) {
      unread.add(settled.remove(field).unread(why));
    }
  }

  private static boolean isDiameter(Field field) {
    return field.diameter() || field.girth();
  }

  /** A girth beside the diameter of the same place is not read. */
  private void passGirths() {
    for (Field field : List.of(Field.BUTT, Field.MID, Field.TIP)) {
      if (settled.containsKey(field)) {
        passOver(field.asGirth(), Unread.SAME);
      }
    }
  }
}
