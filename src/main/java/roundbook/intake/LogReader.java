package roundbook.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import roundbook.job.BuildRules;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.job.Log.Bark;
import roundbook.job.Log.Traits;
import roundbook.job.Log.Wish;
import roundbook.job.Setting;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** Reads the rows of one block of a tally, each as a log, or as several alike. */
final class LogReader {
  private static final int MOST_ALIKE = 1000;
  private static final Length APART = Length.of(3, LengthUnit.MILLIMETRE);

  private final Block block;
  private final Length barkOff;
  private final Tags tags;
  private final TraitReader traitReader;
  private final ColumnDoubts doubts;
  private final int lastHeaded;
  private final int tagColumn;
  private final Predicate<Row> sums;
  private final Predicate<Row> figures;
  private final Dittos dittos;

  /**
   * Begins with a block.
   *
   * @param block the block
   * @param rules the job's settings
   * @param sums tells rows that name figures over others in this block
   * @param figures tells rows that hold such figures and no word
   */
  LogReader(Block block, BuildRules rules, Predicate<Row> sums, Predicate<Row> figures) {
    this.sums = sums;
    this.figures = figures;
    this.dittos = new Dittos(block);
    this.block = block;
    this.barkOff = rules.optionalLength(Setting.BARK_OFF).orElse(Length.ZERO);
    this.tags = new Tags(block);
    this.traitReader = new TraitReader(block, rules.text(Setting.SPECIES));
    this.doubts = new ColumnDoubts(block);
    this.lastHeaded = block.header().lastColumn();
    this.tagColumn = block.has(Field.TAG) ? block.heading(Field.TAG).column() : 0;
  }

  /** Leaves the rows that nothing has to be said of to their reader, where there are any. */
  void leave(PlainRows plain) {
    boolean peels = block.bark() == Bark.OVER && !barkOff.isZero();
    if (!peels && PlainRows.has(block)) {
      plain.begin(block, traitReader, doubts);
    }
  }

  /** Reads a row and gives its logs to the taker; none when it has an error. */
  void read(Row row, Consumer<Log> taker) {
    if (block.isBlank(row)) {
      return;
    }
    if (sums.test(row)) {
      block.say(block.problem(row, column(row), ProblemCode.SUMMARY_ROW, ""));
      return;
    }
    if (figures.test(row)) {
      block.say(
          block
              .problem(row, 0, ProblemCode.SUMMARY_ROW, "figures")
              .as(Severity.WARNING)
              .remedyOf("tag-it"));
      return;
    }
    Optional<String> tag = tags.read(row);
    boolean fits = extraCellsFit(row, tag.orElse(""));
    if (tag.isEmpty() || !fits) {
      return;
    }
    Measures measures = new Measures(block, row, tag.get());
    EndsCheck ends = new EndsCheck(block, row, tag.get());
    Length length = measures.length();
    ends.put(
        measures.diameter(Field.BUTT), measures.diameter(Field.MID), measures.diameter(Field.TIP));
    Optional<DiameterProfile> stations = stations(row, length);
    stations.ifPresent(profile -> ends.fill(profile, length));
    if (measures.passed()) {
      doubts.takePassed(row);
    }
    int count = count(row, tag.get());
    if (traitReader.isSkipAsked(row)) {
      askSkip(row, tag.get());
      return;
    }
    if (!measures.refused() && count > 0) {
      Optional<Diameters> diameters = ends.complete(length, traitReader.upperLog(row));
      ends.swap().ifPresent(doubts::takeSwap);
      if (diameters.isPresent()) {
        give(new Seen(row, tag.get(), count, length, diameters.get(), measures), stations, taker);
      }
    }
  }

  /** Returns a row with its ditto marks filled in by the log above. */
  Row dittosFilled(Row row, Row above) {
    return dittos.filled(row, above);
  }

  private void askSkip(Row row, String tag) {
    int column = block.heading(Field.SKIP).column();
    Problem problem = block.problem(row, column, ProblemCode.BAD_NUMBER, "skip");
    block.refuse(problem.with("text", block.text(row, Field.SKIP)).remedyOf("skip"), tag);
  }

  private int column(Row row) {
    return block.columns().values().stream()
        .mapToInt(Heading::column)
        .filter(column -> block.words().isSummary(row.cell(column).text()))
        .findFirst()
        .orElse(0);
  }

  private Optional<DiameterProfile> stations(Row row, Length length) {
    return length == null || !block.has(Field.PROFILE)
        ? Optional.empty()
        : Stations.read(block.text(row, Field.PROFILE), length);
  }

  /** Says what is doubtful about whole columns, once for blocks side by side. */
  void end(Set<ProblemCode> said) {
    doubts.say(!barkOff.isZero(), said);
  }

  /** A row as far as it was read. */
  private record Seen(
      Row row, String tag, int count, Length length, Diameters diameters, Measures measures) {}

  private void give(Seen seen, Optional<DiameterProfile> stations, Consumer<Log> taker) {
    Row row = seen.row();
    Traits traits = traitReader.traits(row, seen.measures(), seen.tag());
    doubts.take(row, seen.diameters(), traits.bark());
    Length length = seen.length();
    DiameterProfile profile =
        peeled(
            stations.map(along -> anchored(along, seen)).orElseGet(() -> straight(seen, length)),
            traits.bark());
    Wish wish = traitReader.wish(row, seen.tag());
    Map<String, String> extra = traitReader.extra(row);
    traitReader.sayUnfit(row, traits, extra, seen.tag());
    if (traitReader.hasSweepClass(row)) {
      doubts.takeSweepClass();
    }
    for (int i = 1; i <= seen.count(); i++) {
      taker.accept(
          new Log(
              name(seen, i),
              length,
              profile,
              seen.diameters().sources(),
              traits,
              wish,
              block.table().at(row, tagColumn),
              extra));
    }
  }

  private static String name(Seen seen, int i) {
    if (seen.tag().isEmpty()) {
      return seen.row().number() + "-" + i;
    }
    return seen.count() == 1 ? seen.tag() : seen.tag() + "-" + i;
  }

  /**
   * Returns a profile that goes through the diameters that were read themselves: single stations of
   * a stem, the last above all, are noisy. Stations nearer to them than half of their spacing go.
   */
  private DiameterProfile anchored(DiameterProfile measured, Seen seen) {
    Length length = seen.length();
    TreeMap<Length, Length> all = new TreeMap<>();
    measured.stations().forEach(each -> all.put(each.fromButt(), each.diameter()));
    Length spacing = length.dividedBy(2L * measured.stations().size());
    Diameters read = seen.diameters();
    boolean apart = false;
    List<Station> anchors =
        List.of(
            new Station(Length.ZERO, read.butt()),
            new Station(length.dividedBy(2), read.mid()),
            new Station(length, read.tip()));
    for (Station anchor : anchors) {
      Length at = anchor.fromButt();
      Length off = measured.at(at).minus(anchor.diameter()).absolute();
      apart |= off.isMoreThan(APART);
      all.subMap(at.minus(spacing), true, at.plus(spacing), true).clear();
      all.put(at, anchor.diameter());
    }
    if (apart) {
      doubts.takeProfileApart();
    }
    List<Station> stations = new ArrayList<>();
    all.forEach((at, diameter) -> stations.add(new Station(at, diameter)));
    return new DiameterProfile(stations);
  }

  /** Returns the profile of the three diameters, straight between them. */
  private DiameterProfile straight(Seen seen, Length length) {
    Diameters diameters = seen.diameters();
    Length middle = middle(seen, length);
    return new DiameterProfile(
        List.of(
            new Station(Length.ZERO, diameters.butt()),
            new Station(middle, diameters.mid()),
            new Station(length, diameters.tip())));
  }

  /** Returns where the middle diameter was taken: at half the length unless the tally says. */
  private Length middle(Seen seen, Length length) {
    Length half = length.dividedBy(2);
    if (!block.has(Field.MID_AT) || seen.diameters().sources().mid() != Log.Source.MEASURED) {
      return half;
    }
    Optional<Length> told = seen.measures().other(Field.MID_AT, block.units().length());
    boolean inside =
        told.filter(at -> at.isMoreThan(Length.ZERO) && at.isLessThan(length)).isPresent();
    if (told.isPresent() && !inside) {
      int column = block.heading(Field.MID_AT).column();
      block.say(
          block
              .problem(seen.row(), column, ProblemCode.OUT_OF_RANGE, "mid-at")
              .as(Severity.WARNING)
              .about(seen.tag()));
    }
    return inside ? told.get() : half;
  }

  private DiameterProfile peeled(DiameterProfile profile, Bark bark) {
    boolean thinner = bark == Bark.OVER && !barkOff.isZero();
    return thinner ? profile.thinnedBy(barkOff) : profile;
  }

  /** Returns how many logs the row stands for; negative with an error. */
  private int count(Row row, String tag) {
    Cell cell = block.cell(row, Field.COUNT);
    if (cell.isBlank()) {
      return 1;
    }
    int column = block.heading(Field.COUNT).column();
    Optional<Integer> count =
        new LengthReader(LengthUnit.MILLIMETRE, block.table().decimalComma())
            .number(cell.text())
            .filter(each -> each.stripTrailingZeros().scale() <= 0)
            .filter(each -> each.compareTo(BigDecimal.valueOf(MOST_ALIKE)) <= 0)
            .map(BigDecimal::intValue);
    if (count.isEmpty()) {
      block.refuse(
          block
              .problem(row, column, ProblemCode.BAD_NUMBER, "count")
              .with("text", cell.text())
              .with("most", MOST_ALIKE),
          tag);
    } else if (count.get() != 1 && count.get() != 0) {
      block.say(
          block
              .problem(row, column, ProblemCode.QUANTITY_ROW, "")
              .with("count", count.get())
              .about(tag));
    }
    return count.orElse(-1);
  }

  /** Numbers after the last heading of a text table show that decimal commas cut cells in two. */
  private boolean extraCellsFit(Row row, String tag) {
    Cell first = null;
    boolean numbers = true;
    for (Cell cell : row.cells()) {
      if (!cell.isBlank() && cell.column() > lastHeaded) {
        first = first == null ? cell : first;
        numbers &= Character.isDigit(cell.text().isEmpty() ? 'x' : cell.text().charAt(0));
      }
    }
    if (first == null) {
      return true;
    }
    boolean cut = numbers && block.table().sheet().isEmpty();
    if (cut) {
      block.refuse(
          block
              .problem(row, first.column(), ProblemCode.EXTRA_CELL, "cut")
              .remedyOf("decimal-points"),
          tag);
    } else {
      block.say(block.problem(row, first.column(), ProblemCode.EXTRA_CELL, "kept").about(tag));
    }
    return !cut;
  }
}
