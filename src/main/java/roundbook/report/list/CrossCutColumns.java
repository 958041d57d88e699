package roundbook.report.list;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.job.Stem.Stretch;
import roundbook.page.Cell;
import roundbook.page.CutColumn;
import roundbook.page.Role;
import roundbook.picture.stem.StemDrawing;
import roundbook.picture.stem.StemDrawing.Drawn;
import roundbook.plan.CrossCuts.CutStem;
import roundbook.plan.CrossCuts.Fate;
import roundbook.plan.CrossCuts.Part;
import roundbook.report.frame.Cells;
import roundbook.report.frame.Columns;
import roundbook.report.frame.CrewContext;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/** The columns of the cross-cuts, and of the stems under them. */
final class CrossCutColumns {
  private static final int PRINTED = 12;

  private final CrewContext context;
  private final Cells cells;
  private final Columns<Row> parts;
  private final Columns<Stem> stems;

  /**
   * A part of a stem.
   *
   * @param stem the stem
   * @param part the part
   */
  record Row(Stem stem, Part part) {
    private boolean isWood() {
      return part.log().isPresent();
    }
  }

  CrossCutColumns(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.parts = new Columns<>(context, "cross_cuts.head");
    this.stems = new Columns<>(context, "cross_cuts.stem");
    putParts();
    putStems();
  }

  Columns<Row> parts() {
    return parts;
  }

  Columns<Stem> stems() {
    return stems;
  }

  /** Returns the widths of both tables: of the wider, column by column. */
  double[] widths() {
    double[] widths = Arrays.copyOf(parts.widths(), stems.widths().length);
    for (int i = parts.widths().length; i < widths.length; i++) {
      widths[i] = stems.widths()[i];
    }
    return widths.length > parts.widths().length ? widths : parts.widths();
  }

  /** Returns the widths of the columns that are printed. */
  double[] onPage() {
    return Arrays.copyOf(parts.widths(), PRINTED);
  }

  /** Returns the number of the column of boxes to tick. */
  int done() {
    return 10;
  }

  private void putParts() {
    own(parts, CutColumn.OF_STEMS, "stem", 8, row -> bold(row.stem().tag()));
    parts
        .add("cut_at", 14, this::cutAt)
        .add("from", 12, row -> body(row, cells.tape(row.part().from())))
        .add("length", 12, row -> body(row, cells.tape(row.part().raw())));
    own(parts, CutColumn.PIECES, "piece", 9, row -> bold(tag(row)));
    parts
        .add("butt", 9, row -> diameter(row, Piece::butt))
        .add("mid", 9, row -> diameter(row, Piece::mid))
        .add("tip", 9, row -> diameter(row, Piece::tip))
        .add("for", 12, this::use);
    own(parts, CutColumn.DONE, "cut", 6, this::done);
    own(parts, CutColumn.MEASURED, "measured", 11, this::measured);
    parts.add("remark", 26, row -> body(row, cells.text(remark(row))));
    own(parts, CutColumn.FROMS, "exact_from", 11, this::exactFrom);
  }

  private <T> void own(
      Columns<T> columns,
      CutColumn column,
      String key,
      double width,
      java.util.function.Function<T, Cell> cell) {
    String heads = columns == parts ? "cross_cuts.head." : "cross_cuts.stem.";
    columns.own(column.named(), context.text(heads + key), width, cell);
  }

  private Cell bold(String text) {
    return cells.bold(text).align(Cell.Align.CENTRE);
  }

  private static Cell body(Row row, Cell cell) {
    return row.isWood() ? cell : cell.role(Role.WASTE);
  }

  private Cell cutAt(Row row) {
    boolean left = row.part().fate() == Fate.TOP || row.part().fate() == Fate.SPARE && isLast(row);
    return left
        ? body(row, cells.text("–").align(Cell.Align.CENTRE))
        : cells.tape(row.part().to()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE);
  }

  /** Returns whether no piece above it has a place, so that it stays on its stem. */
  private boolean isLast(Row row) {
    return roundbook.plan.CrossCuts.of(context.plan()).stems().stream()
        .filter(each -> each.stem().equals(row.stem()))
        .flatMap(each -> each.parts().stream())
        .filter(each -> each.from().isMoreThan(row.part().from()))
        .noneMatch(each -> each.fate() == Fate.PLACED);
  }

  private static String tag(Row row) {
    return row.part().log().map(Log::tag).orElse("");
  }

  private Cell diameter(Row row, java.util.function.Function<Piece, Length> where) {
    return row.part()
        .log()
        .map(log -> where.apply(piece(row, log)))
        .map(diameter -> cells.printed(diameter).align(Cell.Align.CENTRE))
        .orElseGet(() -> body(row, cells.text("")));
  }

  /** Returns the piece as trimmed where it has a place, else all of it but what is squared off. */
  private Piece piece(Row row, Log log) {
    Length squared = context.rules().length(Setting.SQUARING_ALLOWANCE);
    return row.part()
        .placed()
        .map(PlacedLog::piece)
        .orElseGet(() -> new Piece(log, squared, log.length().minus(squared.times(2))));
  }

  private Cell use(Row row) {
    String use =
        row.part()
            .placed()
            .map(placed -> context.text("cross_cuts.place", placed.round(), placed.wall().name()))
            .orElseGet(() -> row.isWood() ? context.text("use.spare") : "");
    return body(row, cells.centre(use));
  }

  private Cell done(Row row) {
    if (!row.isWood()) {
      return body(row, cells.text(""));
    }
    boolean cut = context.plan().job().stems().cuts().get(tag(row)).isCut();
    Cell box = cut ? Cell.text("x").role(Role.TYPED_IN_TEXT) : Cell.blank(Role.TYPED_IN_TEXT);
    return box.named(CutColumn.cutBox(tag(row)));
  }

  private Cell measured(Row row) {
    return row.isWood()
        ? Cell.blank(Role.TYPED_IN).named(CutColumn.midBox(tag(row)))
        : body(row, cells.text(""));
  }

  private String remark(Row row) {
    boolean first = row.part().from().isZero();
    String key =
        switch (row.part().fate()) {
          case PLACED -> "";
          case SPARE -> isLast(row) ? "cross_cuts.spare_stays" : "cross_cuts.spare_cut";
          case WASTE -> first ? "cross_cuts.butt_off" : "cross_cuts.saw_out";
          case TOP -> row.stem().isLog() ? "cross_cuts.rest" : "cross_cuts.top";
        };
    return key.isEmpty() ? row.stem().traits().remarks() : context.text(key);
  }

  private Cell exactFrom(Row row) {
    return row.isWood() ? cells.exact(row.part().from()) : cells.text("");
  }

  private void putStems() {
    own(stems, CutColumn.STEMS, "stem", 8, stem -> bold(stem.tag()));
    own(stems, CutColumn.LENGTHS, "length", 14, stem -> cells.exact(stem.length()));
    own(stems, CutColumn.SPECIES, "species", 12, stem -> cells.text(stem.traits().species()));
    own(stems, CutColumn.BARKS, "bark", 12, stem -> cells.text(key(stem.traits().bark())));
    own(stems, CutColumn.SWEEPS, "sweep", 9, stem -> cells.exact(stem.traits().sweep()));
    own(stems, CutColumn.KEEPS, "keep", 9, stem -> cells.text(key(stem.traits().keep())));
    own(stems, CutColumn.LOGS, "log", 9, stem -> cells.centre(stem.isLog() ? "x" : ""));
    own(stems, CutColumn.ROWS, "row", 9, stem -> cells.count(stem.origin().row()));
    own(stems, CutColumn.FILES, "file", 12, stem -> cells.text(stem.origin().file()));
    own(stems, CutColumn.SHEETS, "sheet", 6, stem -> cells.text(stem.origin().sheet()));
    own(stems, CutColumn.REMARKS, "remarks", 11, stem -> cells.text(stem.traits().remarks()));
    own(stems, CutColumn.BAD, "bad", 26, stem -> cells.text(bad(stem)));
    own(stems, CutColumn.STATIONS, "stations", 11, stem -> cells.text(stations(stem)));
  }

  private String stations(Stem stem) {
    return new ExactText(context.rules()).stations(context.plan().job().tallied(stem).profile());
  }

  private String bad(Stem stem) {
    ExactText exact = new ExactText(context.rules());
    return stem.bad().stream()
        .map((Stretch each) -> exact.length(each.from()) + "=" + exact.length(each.to()))
        .collect(Collectors.joining("; "));
  }

  private static String key(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  /** Returns a stem as it is drawn. */
  Drawn drawn(CutStem stem) {
    List<StemDrawing.Stretch> stretches =
        stem.parts().stream()
            .map(
                part ->
                    new StemDrawing.Stretch(
                        part.from(),
                        part.to(),
                        part.log().map(Log::tag).orElse(""),
                        part.log().isPresent()))
            .toList();
    return new Drawn(stem.stem(), stretches);
  }
}
