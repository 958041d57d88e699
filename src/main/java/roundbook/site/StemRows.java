package roundbook.site;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.job.Stem;
import roundbook.job.Stem.Stretch;
import roundbook.job.Stems;
import roundbook.job.Stems.CrossCut;
import roundbook.page.CutColumn;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.NamedBook;
import roundbook.table.NamedBook.Range;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;

/** Reads the sheet of cross-cuts back: the stems, their pieces, what is cut and measured. */
final class StemRows {
  private static final String X = "x";

  private final NamedBook book;
  private final Fields fields;
  private final LengthReader reader;
  private final Problems problems;
  private final Map<CutColumn, Range> columns = new EnumMap<>(CutColumn.class);
  private final List<Stem> stems = new ArrayList<>();
  private final Map<String, CrossCut> cuts = new LinkedHashMap<>();

  StemRows(NamedBook book, Fields fields, LengthReader reader, Problems problems) {
    this.book = book;
    this.fields = fields;
    this.reader = reader;
    this.problems = problems;
  }

  /** Reads all that the sheet holds; nothing where there is none. */
  StemRows read() {
    for (CutColumn column : CutColumn.values()) {
      book.range(column.named()).ifPresent(range -> columns.put(column, range));
    }
    rows(CutColumn.STEMS, this::stem);
    rows(CutColumn.PIECES, (table, row) -> piece(row));
    return this;
  }

  /** Takes a row of a table. */
  private interface Taker {
    void take(Table table, Row row);
  }

  private void rows(CutColumn column, Taker taker) {
    Range range = columns.get(column);
    Optional<Table> table = Optional.ofNullable(range).flatMap(each -> book.sheet(each.sheet()));
    table.ifPresent(
        each ->
            each.forEach(
                row -> {
                  if (row.number() >= range.top() && row.number() <= range.bottom()) {
                    taker.take(each, row);
                  }
                }));
  }

  private void stem(Table table, Row row) {
    String tag = text(row, CutColumn.STEMS);
    Optional<Length> length = length(text(row, CutColumn.LENGTHS));
    List<Length[]> stations = pairs(text(row, CutColumn.STATIONS));
    if (tag.isEmpty()) {
      return;
    }
    if (length.isEmpty() || stations.size() < 2) {
      CellRef where = table.at(row, columns.get(CutColumn.STEMS).left());
      problems.add(
          Problem.of(ProblemCode.CELL_LOST, "log", where).with("log", tag).found(tag).about(tag));
      return;
    }
    stems.add(
        new Stem(
            tag,
            length.get(),
            new DiameterProfile(
                stations.stream().map(each -> new Station(each[0], each[1])).toList()),
            pairs(text(row, CutColumn.BAD)).stream()
                .map(each -> new Stretch(each[0], each[1]))
                .toList(),
            traits(row),
            text(row, CutColumn.LOGS).equals(X),
            origin(row)));
  }

  private Log.Traits traits(Row row) {
    return new Log.Traits(
        text(row, CutColumn.SPECIES),
        LogRows.constant(Log.Bark.class, text(row, CutColumn.BARKS), Log.Bark.UNSTATED),
        length(text(row, CutColumn.SWEEPS)).orElse(Length.ZERO),
        LogRows.constant(Log.Keep.class, text(row, CutColumn.KEEPS), Log.Keep.ANY),
        false,
        text(row, CutColumn.REMARKS));
  }

  private CellRef origin(Row row) {
    String number = text(row, CutColumn.ROWS);
    boolean whole = number.matches("\\d{1,9}");
    return new CellRef(
        text(row, CutColumn.FILES),
        text(row, CutColumn.SHEETS),
        whole ? Integer.parseInt(number) : row.number(),
        0);
  }

  private void piece(Row row) {
    String tag = text(row, CutColumn.PIECES);
    if (tag.isEmpty()) {
      return;
    }
    boolean cut = fields.ticked(CutColumn.cutBox(tag));
    Optional<Length> mid = fields.length(CutColumn.midBox(tag));
    Length from = length(text(row, CutColumn.FROMS)).orElse(Length.ZERO);
    cuts.put(tag, new CrossCut(text(row, CutColumn.OF_STEMS), from, cut || mid.isPresent(), mid));
  }

  private String text(Row row, CutColumn column) {
    Range range = columns.get(column);
    return range == null ? "" : row.cell(range.left()).text();
  }

  private Optional<Length> length(String text) {
    return reader.read(text.toLowerCase(Locale.ROOT)).map(LengthReader.Reading::length);
  }

  /** Reads pairs of lengths written {@code one=other; one=other}. */
  private List<Length[]> pairs(String text) {
    List<Length[]> pairs = new ArrayList<>();
    for (String each : text.split(";")) {
      String[] halves = each.split("=");
      Optional<Length> one = length(halves[0].strip());
      Optional<Length> other = halves.length == 2 ? length(halves[1].strip()) : Optional.empty();
      if (one.isPresent() && other.isPresent()) {
        pairs.add(new Length[] {one.get(), other.get()});
      }
    }
    return pairs;
  }

  /** Returns the stems with the pieces of them. */
  Stems stems() {
    return new Stems(stems, cuts, Optional.empty());
  }
}
