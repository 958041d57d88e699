package roundbook.report.list;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.CellNames;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ExchangeWords;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.units.Length;

/**
 * Every log of the tally: as read, and what becomes of it.
 *
 * <p>The columns that are printed are for people; those right of them hold what a new plan needs,
 * exactly, and the tally's own further columns. Formulas find logs by the names of the columns.
 */
final class LogListSheet {
  /** Name of the column of tags, as text. */
  static final String TAGS = CellNames.TAGS;

  /** Name of the column of exact lengths in the job's unit. */
  static final String LENGTHS = CellNames.log("lengths");

  /** Name of the column of butt diameters in the job's unit. */
  static final String BUTTS = CellNames.log("butts");

  /** Name of the column of middle diameters in the job's unit. */
  static final String MIDS = CellNames.log("mids");

  /** Name of the column of tip diameters in the job's unit. */
  static final String TIPS = CellNames.log("tips");

  /** Names of the columns by their number on the sheet; the first and last read back a plan. */
  private static final List<String> COLUMNS =
      List.of(
          "rows",
          "tags",
          "",
          "butts",
          "mids",
          "tips",
          "",
          "species",
          "sweeps",
          "",
          "rounds",
          "walls",
          "lost",
          "",
          "lengths",
          "stations",
          "butt_sources",
          "mid_sources",
          "tip_sources",
          "barks",
          "keeps",
          "wished_walls",
          "wished_rounds",
          "skips",
          "remarks",
          "files",
          "sheets",
          "off_butts",
          "sides",
          "side_lengths",
          "side_butts");

  private static final int STATION_DECIMALS = 9;
  private static final int FIRST_ROW = 4;
  private static final int LOST_COLUMN = 13;
  private static final double[] WIDTHS = {5, 9, 11, 9.5, 9.5, 9.5, 12, 11, 7.5, 9, 7, 6, 6, 23};

  private final CrewContext context;
  private final Cells cells;
  private final List<String> extras;
  private final Set<String> names = new HashSet<>();

  private LogListSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.extras = extras(context);
  }

  private static List<String> extras(CrewContext context) {
    return List.copyOf(
        context.plan().uses().stream()
            .flatMap(use -> use.log().extra().keySet().stream())
            .collect(Collectors.toCollection(LinkedHashSet::new)));
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new LogListSheet(context).sheet());
  }

  /** Returns the names of the columns that formulas look logs up in; none without logs. */
  static SortedMap<String, String> names(CrewContext context) {
    SortedMap<String, String> names = new TreeMap<>();
    int last = FIRST_ROW + context.plan().uses().size() - 1;
    if (last >= FIRST_ROW) {
      String tab = Tab.LOG_LIST.in(context.words());
      List<String> columns = new ArrayList<>(COLUMNS);
      for (int extra = 1; extra <= extras(context).size(); extra++) {
        columns.add("extra_" + extra);
      }
      for (int at = 1; at <= columns.size(); at++) {
        if (!columns.get(at - 1).isEmpty()) {
          String name = CellNames.log(columns.get(at - 1));
          names.put(name, new Area(FIRST_ROW, at, last, at).on(tab));
        }
      }
    }
    return names;
  }

  private Sheet sheet() {
    ListSheet list =
        new ListSheet(context, Tab.LOG_LIST, context.page(PageKind.TABLE).lying(), WIDTHS)
            .title(Tab.LOG_LIST)
            .text(Role.NOTE, context.text("log_list.note", cells.unitWord()))
            .head(headings())
            .repeatHead();
    list.sheet().widths(DoubleStream.concat(DoubleStream.of(WIDTHS), more()).toArray());
    context.plan().uses().forEach(use -> list.row(row(use)));
    if (list.next() > FIRST_ROW) {
      Area lost = new Area(FIRST_ROW, LOST_COLUMN, list.next() - 1, LOST_COLUMN);
      list.sheet()
          .rule(
              new Rule.OneOf(
                  lost,
                  List.of("x"),
                  Rule.Advice.refusing(
                      context.text("log_list.lost"), context.text("log_list.lost.advice"))));
    }
    long unread = context.found().stream().filter(LogListSheet::isUnread).count();
    if (unread > 0) {
      list.text(Role.PLAIN_BOLD, context.text("log_list.unread", unread));
    }
    return list.build();
  }

  private DoubleStream more() {
    return DoubleStream.concat(
        DoubleStream.of(12, 40, 11, 11, 11, 9, 9, 9, 9, 7, 40, 18, 12, 9, 7, 11, 9),
        extras.stream().mapToDouble(heading -> 14));
  }

  private static boolean isUnread(roundbook.problem.Problem problem) {
    return problem.severity() == roundbook.problem.Severity.ERROR && problem.where().row() > 0;
  }

  private String[] headings() {
    return Stream.of(
            context.words().lines("log_list.head"), context.words().lines("log_list.more"), extras)
        .flatMap(List::stream)
        .toArray(String[]::new);
  }

  private List<Cell> row(LogUse use) {
    Log log = context.plan().job().tallied(use.log());
    List<Cell> row = new ArrayList<>();
    row.add(cells.count(log.origin().row()));
    row.add(cells.bold(log.tag()).align(Cell.Align.CENTRE));
    row.add(cells.tape(log.length()));
    row.add(cells.exact(log.butt()));
    row.add(cells.exact(log.mid()));
    row.add(cells.exact(log.tip()));
    row.add(source(log.sources().mid()));
    row.add(cells.text(log.traits().species()));
    row.add(log.traits().sweep().isZero() ? cells.text("") : cells.exact(log.traits().sweep()));
    row.add(cells.word("use." + key(use.use())));
    row.add(cells.centre(use.placed().map(placed -> "" + placed.round()).orElse("")));
    row.add(cells.centre(use.placed().map(placed -> placed.wall().name()).orElse("")));
    boolean lost = context.plan().job().built().lost().contains(log.tag());
    Cell box = lost ? Cell.text("x").role(Role.TYPED_IN_TEXT) : Cell.blank(Role.TYPED_IN_TEXT);
    row.add(box.named(lostName(log)));
    row.add(cells.text(note(use)));
    row.addAll(further(use, log));
    return row;
  }

  /** A log that another job has taken is skipped by the next plan from this workbook. */
  private List<Cell> further(LogUse use, Log log) {
    List<Cell> row = new ArrayList<>();
    row.add(cells.exact(log.length()));
    row.add(cells.text(stations(log)));
    row.add(cells.text(log.sources().butt().word()));
    row.add(cells.text(log.sources().mid().word()));
    row.add(cells.text(log.sources().tip().word()));
    row.add(cells.text(key(log.traits().bark())));
    row.add(cells.text(key(log.traits().keep())));
    row.add(cells.centre(log.place().wall()));
    row.add(
        cells.centre(log.place().round().isPresent() ? "" + log.place().round().getAsInt() : ""));
    boolean lost = context.plan().job().built().lost().contains(log.tag());
    boolean skip = log.traits().skip() && !lost || use.use() == Use.TAKEN;
    row.add(cells.centre(skip ? "x" : ""));
    row.add(cells.text(log.traits().remarks()));
    row.add(cells.text(log.origin().file()));
    row.add(cells.text(log.origin().sheet()));
    row.add(
        use.placed()
            .map(placed -> cells.exact(placed.piece().cutOffButt()))
            .orElse(cells.text("")));
    row.addAll(side(use));
    extras.forEach(extra -> row.add(cells.text(log.extra().getOrDefault(extra, ""))));
    return row;
  }

  /** Returns on which side of an opening a short log lies, how long it is cut, its butt's end. */
  private List<Cell> side(LogUse use) {
    return context.plan().pieces().stream()
        .flatMap(piece -> piece.halves().stream())
        .filter(half -> use.placed().filter(half.placed()::equals).isPresent())
        .findFirst()
        .map(
            half ->
                List.of(
                    cells.text(half.left() ? "left" : "right"),
                    cells.exact(half.placed().piece().trimmed()),
                    cells.text(half.buttOut() ? "corner" : "opening")))
        .orElse(List.of(cells.text(""), cells.text(""), cells.text("")));
  }

  private Cell source(Log.Source source) {
    String words = context.text("source." + source.word());
    return source == Log.Source.ESTIMATED ? cells.bold(words) : cells.text(words);
  }

  private String note(LogUse use) {
    Log.Keep keep = use.log().traits().keep();
    boolean lost = context.plan().job().built().lost().contains(use.log().tag());
    return Stream.of(
            lost ? context.text("log_list.is_lost") : use.note().in(context.sentences()),
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

  /** Returns all stations of a profile as {@code distance=diameter} in the job's unit. */
  private String stations(Log log) {
    return log.profile().stations().stream().map(this::station).collect(Collectors.joining("; "));
  }

  private String station(Station station) {
    return exact(station.fromButt()) + "=" + exact(station.diameter());
  }

  /** Returns a length with so many decimals that nothing of it is lost. */
  private String exact(Length length) {
    BigDecimal number = length.decimal(context.rules().unit(), STATION_DECIMALS);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  private String lostName(Log log) {
    String name = Book.nameOf("Lost", log.origin().row());
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
