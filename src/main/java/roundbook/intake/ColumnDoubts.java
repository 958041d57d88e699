package roundbook.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import roundbook.job.Log.Bark;
import roundbook.job.Log.Source;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.LengthUnit;

/** Gathers what is doubtful about a whole column, and says it once when all rows are read. */
final class ColumnDoubts {
  private static final int FEW = 3;
  private static final Pattern TWELFTHS = Pattern.compile("\\d+(?:\\.(?:0\\d?|1[01]?))?");
  private static final Pattern TELLING = Pattern.compile("\\d+\\.(?:0[1-9]|11)");
  private static final Pattern WHOLE = Pattern.compile("\\d+(?:\\.0+)?");

  private final Block block;
  private Set<ProblemCode> said = new HashSet<>();
  private final List<Problem> swaps = new ArrayList<>();
  private int logs;
  private int passed;
  private Row firstPassed;
  private int sweepClasses;
  private int profilesApart;
  private int midsEstimated;
  private int buttsEstimated;
  private int tipsEstimated;
  private int firstEstimated;
  private String firstTag = "";
  private boolean twelfths = true;
  private boolean telling;
  private int notWhole;
  private int over;
  private int off;

  ColumnDoubts(Block block) {
    this.block = block;
    twelfths = block.units().length().filter(unit -> unit == LengthUnit.FOOT).isPresent();
  }

  /** Takes a row that was read as a log. */
  void take(Row row, Diameters diameters, Bark bark) {
    logs++;
    over += bark == Bark.OVER ? 1 : 0;
    off += bark == Bark.OFF ? 1 : 0;
    if (diameters.sources().mid() == Source.ESTIMATED) {
      midsEstimated++;
      if (firstEstimated == 0) {
        firstEstimated = row.number();
        firstTag = block.cell(row, Field.TAG).text().strip();
      }
    }
    buttsEstimated += diameters.sources().butt() == Source.ESTIMATED ? 1 : 0;
    tipsEstimated += diameters.sources().tip() == Source.ESTIMATED ? 1 : 0;
    if (twelfths) {
      takeLength(block.cell(row, Field.LENGTH));
    }
  }

  private void takeLength(Cell length) {
    if (!isWhole(length)) {
      twelfths = TWELFTHS.matcher(length.text()).matches() && length.unit().isEmpty();
      telling |= TELLING.matcher(length.text()).matches();
      notWhole += WHOLE.matcher(length.text()).matches() ? 0 : 1;
    }
  }

  private static boolean isWhole(Cell length) {
    String text = length.text();
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return !text.isEmpty() && length.unit().isEmpty();
  }

  /** Takes a log whose ends were read the other way round. */
  void takeSwap(Problem swap) {
    swaps.add(swap);
  }

  /** Takes a row that a harvester cut for something else than a wall. */
  void takePassed(Row row) {
    passed++;
    firstPassed = firstPassed == null ? row : firstPassed;
  }

  /** Takes a log whose sweep is a class and no measure. */
  void takeSweepClass() {
    sweepClasses++;
  }

  /** Takes a log whose profile differs from the machine's own diameters. */
  void takeProfileApart() {
    profilesApart++;
  }

  /** Says what was gathered. */
  void say(boolean barkOff, Set<ProblemCode> said) {
    this.said = said;
    if (passed > 0) {
      block.say(
          block
              .problem(
                  firstPassed, 0, ProblemCode.OUT_OF_RANGE, passed == 1 ? "passed.one" : "passed")
              .with("count", passed)
              .as(Severity.INFO)
              .remedy());
    }
    if (logs == 0) {
      return;
    }
    sayMids();
    sayEnds(Field.BUTT, buttsEstimated);
    sayEnds(Field.TIP, tipsEstimated);
    sayTags();
    sayCounted(Field.SWEEP, "sweep-class", sweepClasses);
    sayCounted(Field.PROFILE, "profile", profilesApart);
    sayGirths();
    saySwaps();
    sayBark(barkOff);
    if (twelfths && telling && notWhole >= FEW) {
      Optional<Heading> lengths = Optional.of(block.heading(Field.LENGTH));
      block.say(block.ofColumn(ProblemCode.MAYBE_FEET_DOT_INCHES, "", lengths));
    }
  }

  private void sayCounted(Field field, String variant, int count) {
    if (count > 0) {
      Optional<Heading> heading = Optional.of(block.heading(field));
      block.say(
          block
              .ofColumn(ProblemCode.DOUBTFUL_VALUE, variant, heading)
              .with("count", count)
              .with("logs", logs)
              .remedy());
    }
  }

  private void sayMids() {
    Heading mids = block.through(Field.MID);
    if (mids != null && mids.estimated()) {
      block.say(
          block
              .ofColumn(ProblemCode.MID_ESTIMATED, "heading", Optional.of(mids))
              .with("heading", mids.text()));
    } else if (midsEstimated > 0 && mids == null && said.add(ProblemCode.MID_ESTIMATED)) {
      block.say(block.ofColumn(ProblemCode.MID_ESTIMATED, "every", Optional.empty()));
    } else if (midsEstimated > 0 && mids != null) {
      block.say(
          block
              .ofColumn(
                  ProblemCode.MID_ESTIMATED,
                  firstTag.isEmpty() ? "some" : "some-tagged",
                  Optional.of(mids))
              .with("tag", firstTag)
              .with("count", midsEstimated)
              .with("logs", logs)
              .with("row", firstEstimated));
    }
  }

  /** Single missing ends are said by their rows; here are whole columns, and machine's files. */
  private void sayEnds(Field end, int estimated) {
    boolean machine = block.table().marks().contains(Table.Mark.LINES);
    if (estimated > 0 && (block.through(end) == null || machine)) {
      block.say(
          block
              .ofColumn(ProblemCode.END_ESTIMATED, "", Optional.ofNullable(block.through(end)))
              .with("end", end.phrase())
              .with("count", estimated)
              .with("logs", logs));
    }
  }

  private void sayTags() {
    if (!block.has(Field.TAG) && said.add(ProblemCode.MISSING_ID)) {
      block.say(block.ofColumn(ProblemCode.MISSING_ID, "column", Optional.empty()));
    }
  }

  private void sayGirths() {
    block.columns().entrySet().stream()
        .filter(each -> each.getKey().girth())
        .findFirst()
        .ifPresent(
            each ->
                block.say(
                    block.ofColumn(ProblemCode.GIRTH_CONVERTED, "", Optional.of(each.getValue()))));
  }

  /** Ends swapped in every row are one mistake in the headings, not one in each row. */
  private void saySwaps() {
    if (swaps.size() == logs && logs >= FEW) {
      Optional<Heading> butts = Optional.of(block.through(Field.BUTT));
      block.say(block.ofColumn(ProblemCode.BUTT_TIP_SWAPPED, "every", butts));
    } else {
      swaps.forEach(block::say);
    }
  }

  private void sayBark(boolean barkOff) {
    Optional<Heading> where = Optional.ofNullable(block.heading(Field.BARK));
    if (block.barksDiffer()) {
      block.say(block.ofColumn(ProblemCode.BARK_UNCERTAIN, "columns", where));
    }
    boolean differ = over > 0 && off > 0 && !barkOff;
    if (differ || over + off > 0 && over + off < logs) {
      block.say(
          block
              .ofColumn(ProblemCode.BARK_UNCERTAIN, "mixed", where)
              .with("logs", logs)
              .with("over", over)
              .with("off", off)
              .with("unsaid", logs - over - off));
    } else if (over + off < logs && barkOff) {
      Problem unsaid = block.ofColumn(ProblemCode.BARK_UNCERTAIN, "unsaid", where);
      block.say(unsaid.as(Severity.INFO));
    } else if (over > 0 && !barkOff) {
      block.say(
          block
              .ofColumn(ProblemCode.BARK_UNCERTAIN, "over", where)
              .as(Severity.INFO)
              .remedyOf("bark-off"));
    }
  }
}
