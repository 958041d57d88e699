package roundbook.report.list;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.AsBuilt;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.LogColumn;
import roundbook.page.Role;
import roundbook.plan.PickOrder;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.report.frame.Cells;
import roundbook.report.frame.Columns;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ExchangeWords;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * The columns of the log list.
 *
 * <p>Those that are printed are for people; those right of them hold what a new plan needs,
 * exactly, and the tally's own further columns.
 */
final class LogListColumns {
  private final CrewContext context;
  private final Cells cells;
  private final Set<String> names = new HashSet<>();
  private final PickOrder pick;
  private final Columns<LogUse> columns;
  private final int printed;

  LogListColumns(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.pick = PickOrder.of(context.plan());
    this.columns = new Columns<>(context, "log_list.head");
    putPrinted();
    this.printed = columns.widths().length;
    putFurther();
    putExtras();
  }

  /** Returns all columns, those that are printed first. */
  Columns<LogUse> all() {
    return columns;
  }

  /** Returns the widths of those that are printed, in characters. */
  double[] onPage() {
    return Arrays.copyOf(columns.widths(), printed);
  }

  /** Puts the columns that are for people. */
  private void putPrinted() {
    columns
        .add(LogColumn.ROWS, "row", 5, use -> cells.count(log(use).origin().row()))
        .add(LogColumn.TAGS, "log", 9, use -> cells.bold(log(use).tag()).align(Cell.Align.CENTRE))
        .add("length", 9.5, use -> cells.tape(log(use).length()))
        .add(LogColumn.BUTTS, "butt", 8.5, use -> cells.exact(log(use).butt()))
        .add(LogColumn.MIDS, "mid", 8.5, use -> cells.exact(log(use).mid()))
        .add(LogColumn.TIPS, "tip", 8.5, use -> cells.exact(log(use).tip()))
        .add("mid_is", 11, use -> source(log(use).sources().mid()))
        .add(LogColumn.SPECIES, "species", 11, use -> cells.text(log(use).traits().species()))
        .add(LogColumn.SWEEPS, "sweep", 7.5, use -> sweep(log(use).traits().sweep()))
        .add("use", 9, use -> cells.word("use." + key(use.use())))
        .add(LogColumn.ROUNDS, "round", 7, use -> placed(use, each -> "" + each.round()))
        .add(LogColumn.WALLS, "wall", 6, use -> placed(use, each -> each.wall().name()))
        .add("pick", 7, use -> picked(use, String::valueOf))
        .add("deck", 7, use -> picked(use, this::layers))
        .add(LogColumn.HEWN_MIDS, "hewn_mid", 8.5, use -> hewnBox(use, "Hewn_mid", Measures::mid))
        .add(
            LogColumn.HEWN_BUTTS,
            "hewn_butt",
            8.5,
            use -> hewnBox(use, "Hewn_butt", Measures::butt))
        .add(LogColumn.HEWN_TIPS, "hewn_tip", 8.5, use -> hewnBox(use, "Hewn_tip", Measures::tip))
        .add(LogColumn.LOST, "lost", 6, this::lostBox)
        .add("note", 30, use -> cells.text(note(use)));
  }

  /**
   * Puts the columns that a new plan is made from. A log that another job has taken is skipped by
   * the next plan from this workbook.
   */
  private void putFurther() {
    columns
        .add(LogColumn.LENGTHS, "lengths", 12, use -> cells.exact(log(use).length()))
        .add(LogColumn.STATIONS, "stations", 40, use -> cells.text(stations(log(use))))
        .add(LogColumn.BUTT_SOURCES, "butt_is", 11, use -> cells.text(sources(use).butt().word()))
        .add(LogColumn.MID_SOURCES, "mid_was", 11, use -> cells.text(sources(use).mid().word()))
        .add(LogColumn.TIP_SOURCES, "tip_is", 11, use -> cells.text(sources(use).tip().word()))
        .add(LogColumn.BARKS, "bark", 9, use -> cells.text(key(log(use).traits().bark())))
        .add(LogColumn.KEEPS, "keep", 9, use -> cells.text(key(log(use).traits().keep())))
        .add(LogColumn.WISHED_WALLS, "wish_wall", 9, use -> cells.centre(log(use).place().wall()))
        .add(LogColumn.WISHED_ROUNDS, "wish_round", 9, use -> wishedRound(log(use)))
        .add(LogColumn.SKIPS, "skip", 7, this::skip)
        .add(LogColumn.REMARKS, "remarks", 40, use -> cells.text(log(use).traits().remarks()))
        .add(LogColumn.FILES, "file", 18, use -> cells.text(log(use).origin().file()))
        .add(LogColumn.SHEETS, "sheet", 12, use -> cells.text(log(use).origin().sheet()))
        .add(LogColumn.HEWN_BEFORE, "hewn_before", 20, use -> cells.text(hewnBefore(use)))
        .add(LogColumn.OFF_BUTTS, "off_butt", 9, this::offButt)
        .add(LogColumn.SIDES, "side", 7, use -> half(use, this::side))
        .add(LogColumn.SIDE_LENGTHS, "side_length", 11, use -> half(use, this::sideLength))
        .add(LogColumn.SIDE_BUTTS, "side_butt", 9, use -> half(use, this::sideButt));
  }

  /** Puts the tally's own further columns. */
  private void putExtras() {
    int extra = 0;
    for (String heading : extras(context)) {
      extra++;
      columns.own(
          LogColumn.extra(extra),
          heading,
          14,
          use -> cells.text(log(use).extra().getOrDefault(heading, "")));
    }
  }

  private static Set<String> extras(CrewContext context) {
    return context.plan().uses().stream()
        .flatMap(use -> use.log().extra().keySet().stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private Log log(LogUse use) {
    return context.plan().job().tallied(use.log());
  }

  private Log.Sources sources(LogUse use) {
    return log(use).sources();
  }

  private Cell sweep(Length sweep) {
    return sweep.isZero() ? cells.text("") : cells.exact(sweep);
  }

  private Cell placed(LogUse use, Function<PlacedLog, String> what) {
    return cells.centre(use.placed().map(what).orElse(""));
  }

  private Cell picked(LogUse use, IntFunction<String> what) {
    OptionalInt number = pick.number(use.log());
    return cells.centre(number.isPresent() ? what.apply(number.getAsInt()) : "");
  }

  /** Returns the layers of piles 2, 3 and 4 high in which the log of a number lies. */
  private String layers(int number) {
    return pick.layer(2, number) + " " + pick.layer(3, number) + " " + pick.layer(4, number);
  }

  /** Returns the box of a diameter as hewn, with what was typed into it before. */
  private Cell hewnBox(LogUse use, String name, Function<Measures, Optional<Length>> diameter) {
    Format blank = context.rules().metric() ? Format.GENERAL : Format.FRACTION;
    return yard(use)
        .flatMap(diameter)
        .map(cells::exact)
        .orElseGet(() -> Cell.blank(Role.TYPED_IN).format(blank))
        .role(Role.TYPED_IN)
        .named(boxName(name, log(use)));
  }

  private Optional<Measures> yard(LogUse use) {
    AsBuilt built = context.plan().job().built();
    return Optional.ofNullable(built.ahead().get(use.log().tag())).map(AsBuilt.Ahead::measures);
  }

  private String hewnBefore(LogUse use) {
    ExactText exact = new ExactText(context.rules());
    return yard(use)
        .map(
            known ->
                Stream.of(known.butt(), known.mid(), known.tip())
                    .map(each -> each.map(exact::length).orElse(""))
                    .collect(Collectors.joining(";")))
        .orElse("");
  }

  private Cell lostBox(LogUse use) {
    Cell box =
        isLost(use) ? Cell.text("x").role(Role.TYPED_IN_TEXT) : Cell.blank(Role.TYPED_IN_TEXT);
    return box.named(boxName("Lost", log(use)));
  }

  private boolean isLost(LogUse use) {
    return context.plan().job().built().lost().contains(use.log().tag());
  }

  private Cell wishedRound(Log log) {
    OptionalInt round = log.place().round();
    return cells.centre(round.isPresent() ? "" + round.getAsInt() : "");
  }

  private Cell skip(LogUse use) {
    boolean skip = log(use).traits().skip() && !isLost(use) || use.use() == Use.TAKEN;
    return cells.centre(skip ? "x" : "");
  }

  private Cell offButt(LogUse use) {
    return use.placed()
        .map(placed -> cells.exact(placed.piece().cutOffButt()))
        .orElse(cells.text(""));
  }

  /** Returns a cell of a short log beside an opening; an empty one of any other log. */
  private Cell half(LogUse use, Function<PiecePlan.Half, Cell> cell) {
    return context.plan().pieces().stream()
        .flatMap(piece -> piece.halves().stream())
        .filter(half -> use.placed().filter(half.placed()::equals).isPresent())
        .findFirst()
        .map(cell)
        .orElse(cells.text(""));
  }

  private Cell side(PiecePlan.Half half) {
    return cells.text(half.left() ? "left" : "right");
  }

  private Cell sideLength(PiecePlan.Half half) {
    return cells.exact(half.placed().piece().trimmed());
  }

  private Cell sideButt(PiecePlan.Half half) {
    return cells.text(half.buttOut() ? "corner" : "opening");
  }

  private Cell source(Log.Source source) {
    String words = context.text("source." + source.word());
    return source == Log.Source.ESTIMATED ? cells.bold(words) : cells.text(words);
  }

  private String note(LogUse use) {
    Log.Keep keep = use.log().traits().keep();
    return Stream.of(
            isLost(use) ? context.text("log_list.is_lost") : use.note().in(context.sentences()),
            could(use.log()),
            keep == Log.Keep.ANY ? "" : context.text("keep.for", context.text("keep." + key(keep))),
            use.log().traits().remarks())
        .filter(part -> !part.isBlank())
        .collect(Collectors.joining(" · "));
  }

  /** Returns the places that a log without one could take; empty for any other log. */
  private String could(Log log) {
    return context.plan().exchanges().spares().stream()
        .filter(spare -> spare.log().equals(log))
        .map(spare -> new ExchangeWords(context).places(spare.places()))
        .map(places -> context.text("log_list.could", places))
        .findFirst()
        .orElse("");
  }

  private String stations(Log log) {
    return new ExactText(context.rules()).stations(log.profile());
  }

  /** Returns the name of a row's box, one of its own where two tallies have a row of a number. */
  private String boxName(String what, Log log) {
    String name = Book.nameOf(what, log.origin().row());
    String own = name;
    for (int more = 2; !names.add(own); more++) {
      own = name + "_" + more;
    }
    return own;
  }

  private static String key(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
