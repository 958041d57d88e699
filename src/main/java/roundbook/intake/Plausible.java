package roundbook.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.problem.Phrase;
import roundbook.problem.Value;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * What a wall log's measures can be: 6 to 60 ft long, 4 to 36 in thick.
 *
 * <p>Logs taper by 0.03 to 0.6 in a foot; of measured spruce and pine logs 95 % taper by less than
 * 0.41 in a foot.
 */
final class Plausible {
  /** The units that lengths are written in. */
  static final List<LengthUnit> LENGTH_UNITS =
      List.of(
          LengthUnit.FOOT,
          LengthUnit.INCH,
          LengthUnit.METRE,
          LengthUnit.CENTIMETRE,
          LengthUnit.MILLIMETRE);

  /** The units that diameters are written in. */
  static final List<LengthUnit> DIAMETER_UNITS =
      List.of(LengthUnit.INCH, LengthUnit.CENTIMETRE, LengthUnit.MILLIMETRE);

  private static final Length SHORTEST = Length.of(6, LengthUnit.FOOT);
  private static final Length LONGEST = Length.of(60, LengthUnit.FOOT);
  private static final Length THINNEST = Length.ofInches(4);
  private static final Length THICKEST = Length.ofInches(36);
  private static final double TAPER_LEAST = 0.03 / 12;
  private static final double TAPER_MOST = 0.6 / 12;

  private Plausible() {}

  static boolean length(Length length) {
    return !length.isLessThan(SHORTEST) && !length.isMoreThan(LONGEST);
  }

  static boolean diameter(Length diameter) {
    return !diameter.isLessThan(THINNEST) && !diameter.isMoreThan(THICKEST);
  }

  /** Returns whether a log tapers by more than 0.6 in a foot. */
  static boolean tapersTooMuch(Length length, Length butt, Length tip) {
    return butt.minus(tip).absolute().times(20).isMoreThan(length);
  }

  /** Returns whether bare numbers make a log in a pair of units. */
  static boolean log(Sample.Bare bare, Units.Pair pair) {
    double along = bare.length() * pair.length().nanometres();
    double thick = bare.thick() * pair.diameter().nanometres();
    double thin = bare.thin() * pair.diameter().nanometres();
    double taper = Math.abs(thick - thin) / along;
    boolean sizes =
        within(along, SHORTEST, LONGEST)
            && within(thick, THINNEST, THICKEST)
            && within(thin, THINNEST, THICKEST);
    return sizes && (thick == thin || taper >= TAPER_LEAST && taper <= TAPER_MOST);
  }

  private static boolean within(double nanometres, Length least, Length most) {
    return nanometres >= least.nanometres() && nanometres <= most.nanometres();
  }

  /** Returns the bare number in each unit in which it would be plausible, such as {@code 4.9 m}. */
  static Optional<Value> suggestion(BigDecimal bare, boolean along) {
    List<Value> lengths = new ArrayList<>();
    for (LengthUnit unit : along ? LENGTH_UNITS : DIAMETER_UNITS) {
      Length length = Length.of(bare, unit);
      if (along ? length(length) : diameter(length)) {
        lengths.add(shown(bare, length, unit, along));
      }
    }
    return lengths.isEmpty() ? Optional.empty() : Optional.of(Value.list("list.or", lengths));
  }

  private static Value shown(BigDecimal bare, Length length, LengthUnit unit, boolean along) {
    LengthUnit other = along ? LengthUnit.FOOT : LengthUnit.INCH;
    Value own = Value.decimal(bare, unit);
    return unit == other
        ? own
        : Phrase.of("value.both")
            .with("own", own)
            .with("other", Value.decimal(length.decimal(other, 1), other));
  }
}
