package roundbook.intake;

import java.util.List;
import java.util.Optional;
import roundbook.job.DiameterProfile;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Value;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Completes a row's diameters and checks that its ends and middle make a log. */
final class EndsCheck {
  private static final Length SLIGHT = Length.ofInchFraction(1, 4);

  private final Block block;
  private final Row row;
  private final String tag;
  private Length butt;
  private Length mid;
  private Length tip;
  private Optional<Problem> swap = Optional.empty();

  EndsCheck(Block block, Row row, String tag) {
    this.block = block;
    this.row = row;
    this.tag = tag;
  }

  /** Takes the diameters that were read; those that were not are null. */
  void put(Length atButt, Length atMid, Length atTip) {
    butt = atButt;
    mid = atMid;
    tip = atTip;
  }

  /** Takes what is missing from diameters measured all along the log. */
  void fill(DiameterProfile profile, Length length) {
    butt = butt == null ? profile.at(Length.ZERO) : butt;
    mid = mid == null ? profile.at(length.dividedBy(2)) : mid;
    tip = tip == null ? profile.at(length) : tip;
  }

  /** Returns that the ends were read the other way round; empty when they were not. */
  Optional<Problem> swap() {
    return swap;
  }

  /** Returns the diameters, ends turned round where they are swapped; empty with an error. */
  Optional<Diameters> complete(Length length, boolean upperLog) {
    boolean swapped = butt != null && tip != null && tip.minus(butt).isMoreThan(SLIGHT);
    Optional<Diameters> diameters =
        swapped
            ? Diameters.of(length, tip, mid, butt, upperLog)
            : Diameters.of(length, butt, mid, tip, upperLog);
    if (diameters.isEmpty()) {
      int column = column(Field.BUTT, Field.MID, Field.TIP);
      block.refuse(block.problem(row, column, ProblemCode.MISSING_CELL, "diameter"), tag);
      return diameters;
    }
    diameters = diameters.map(this::marked);
    missingEnds();
    if (swapped) {
      swap = Optional.of(swapped(diameters.get()));
    } else {
      checkEnds(diameters.get());
    }
    checkTaper(length, diameters.get());
    return diameters;
  }

  /** Marks diameters as estimated whose headings say that they were not measured. */
  private Diameters marked(Diameters read) {
    Log.Sources sources = read.sources();
    Log.Sources marked =
        new Log.Sources(
            source(Field.BUTT, sources.butt()),
            source(Field.MID, sources.mid()),
            source(Field.TIP, sources.tip()));
    return new Diameters(read.butt(), read.mid(), read.tip(), marked);
  }

  private Log.Source source(Field field, Log.Source read) {
    Heading heading = block.through(field);
    return heading != null && heading.estimated() ? Log.Source.ESTIMATED : read;
  }

  private Length get(Field field) {
    return field == Field.BUTT ? butt : tip;
  }

  private void missingEnds() {
    boolean machine = block.table().marks().contains(Table.Mark.LINES);
    if (machine || butt != null && tip != null) {
      return;
    }
    for (Field field : List.of(Field.BUTT, Field.TIP)) {
      Heading heading = block.through(field);
      if (heading != null && get(field) == null) {
        Problem missing =
            block.problem(row, heading.column(), ProblemCode.MISSING_CELL, "estimated");
        block.say(missing.with("end", field.phrase()).about(tag));
      }
    }
  }

  private Problem swapped(Diameters diameters) {
    int column = block.through(Field.BUTT).column();
    return block
        .problem(row, column, ProblemCode.BUTT_TIP_SWAPPED, "row")
        .with("butt", shown(diameters.butt()))
        .with("tip", shown(diameters.tip()))
        .about(tag);
  }

  private void checkEnds(Diameters diameters) {
    boolean bothEnds = butt != null && tip != null;
    if (bothEnds && diameters.tip().isMoreThan(diameters.butt())) {
      say(ProblemCode.BUTT_SMALLER_THAN_TIP, column(Field.BUTT));
    } else if (mid != null && outside(diameters)) {
      say(ProblemCode.MID_OUTSIDE_ENDS, column(Field.MID));
    }
  }

  private boolean outside(Diameters diameters) {
    boolean over = butt != null && diameters.mid().isMoreThan(diameters.butt());
    boolean under = tip != null && diameters.mid().isLessThan(diameters.tip());
    return over || under;
  }

  private void checkTaper(Length length, Diameters diameters) {
    if (Plausible.tapersTooMuch(length, diameters.butt(), diameters.tip())) {
      say(ProblemCode.TAPER_LARGE, column(Field.BUTT, Field.TIP));
    }
  }

  private int column(Field... fields) {
    for (Field field : fields) {
      Heading heading = block.through(field);
      if (heading != null) {
        return heading.column();
      }
    }
    return 0;
  }

  private void say(ProblemCode code, int column) {
    block.say(block.problem(row, column, code, "").about(tag));
  }

  private Value shown(Length length) {
    LengthUnit unit = block.units().diameter().filter(LengthUnit::metric).orElse(LengthUnit.INCH);
    return Value.decimal(length.decimal(unit, 3), unit);
  }
}
