package roundbook.site;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.HeldLog;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.page.LogColumn;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Cell;
import roundbook.table.NamedBook;
import roundbook.table.NamedBook.Range;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;

/**
 * Reads the log list, row by row: columns by their names, so that a list may be sorted or widened.
 *
 * <p>A lost log is the one in whose row the x stands, whatever the name of that box: names stay
 * where they are when rows are sorted.
 */
final class LogRows {
  private static final Set<LogColumn> NEEDED =
      Set.of(LogColumn.LENGTHS, LogColumn.STATIONS, LogColumn.LOST);

  private final NamedBook book;
  private final Fields fields;
  private final LengthReader reader;
  private final Problems problems;
  private final Map<LogColumn, Range> columns = new EnumMap<>(LogColumn.class);
  private final List<Range> extras = new ArrayList<>();
  private final List<Log> logs = new ArrayList<>();
  private final Map<Place, Held> plan = new TreeMap<>();
  private final Map<Place, HeldLog> shortLogs = new TreeMap<>();
  private final Map<String, CellRef> lost = new TreeMap<>();
  private final Map<String, Map<LogColumn, Box>> yard = new TreeMap<>();
  private final Map<String, Measures> yardBefore = new TreeMap<>();
  private final Set<String> tags = new TreeSet<>();

  /** A length that was typed into a row. */
  private record Box(Length length, String text, CellRef where) {}

  LogRows(NamedBook book, Fields fields, BuildRules printed, Problems problems) {
    this.book = book;
    this.fields = fields;
    this.reader = new LengthReader(printed.unit(), false);
    this.problems = problems;
  }

  /** Reads every row; false when the list is gone. */
  boolean read() {
    for (LogColumn column : LogColumn.values()) {
      book.range(column.named()).ifPresent(range -> columns.put(column, range));
    }
    IntStream.iterate(1, extra -> extra + 1)
        .mapToObj(extra -> book.range(LogColumn.extra(extra)))
        .takeWhile(Optional::isPresent)
        .forEach(range -> extras.add(range.get()));
    Range tagged = columns.get(LogColumn.TAGS);
    Optional<Table> table = Optional.ofNullable(tagged).flatMap(range -> book.sheet(range.sheet()));
    if (table.isEmpty() || !columns.keySet().containsAll(NEEDED)) {
      problems.add(Problem.of(ProblemCode.CELL_LOST, "log-list", CellRef.ofFile(book.file())));
      return false;
    }
    Map<Integer, Row> heading = new HashMap<>();
    table
        .get()
        .forEach(
            row -> {
              if (row.number() == tagged.top() - 1) {
                heading.put(0, row);
              } else if (row.number() >= tagged.top() && row.number() <= tagged.bottom()) {
                read(table.get(), row, Optional.ofNullable(heading.get(0)));
              }
            });
    logs.sort(java.util.Comparator.comparing(Log::origin));
    return true;
  }

  /** Returns the logs in the order they were tallied. */
  List<Log> logs() {
    return logs;
  }

  /** Returns the log planned for each place. */
  Map<Place, Held> plan() {
    return plan;
  }

  /** Returns the lost logs with the places of their ticks. */
  Map<String, CellRef> lost() {
    return lost;
  }

  /** Returns what was measured of logs as they lie in the yard, by tag. */
  Map<String, Measures> yard() {
    Map<String, Measures> all = new TreeMap<>();
    yard.forEach(
        (tag, boxes) ->
            all.put(
                tag,
                Measures.hewn(
                    typed(boxes, LogColumn.HEWN_BUTTS),
                    typed(boxes, LogColumn.HEWN_MIDS),
                    typed(boxes, LogColumn.HEWN_TIPS))));
    return all;
  }

  private static Optional<Length> typed(Map<LogColumn, Box> boxes, LogColumn column) {
    return Optional.ofNullable(boxes.get(column)).map(Box::length);
  }

  /** Returns where a log's diameter as hewn stands. */
  CellRef yardAt(String tag, LogColumn column) {
    return yard.get(tag).get(column).where();
  }

  /** Returns the logs that had been measured so when the list was written. */
  Map<String, AsBuilt.Ahead> yardBefore() {
    Map<String, AsBuilt.Ahead> before = new TreeMap<>();
    logs.stream()
        .filter(log -> yardBefore.containsKey(log.tag()))
        .forEach(log -> before.put(log.tag(), new AsBuilt.Ahead(yardBefore.get(log.tag()), log)));
    return before;
  }

  /** Takes what only a copy has measured in the yard; says where both have and differ. */
  void takeYard(LogRows copy) {
    copy.yard.forEach(
        (tag, boxes) ->
            boxes.forEach(
                (column, theirs) -> {
                  Box own =
                      yard.computeIfAbsent(tag, each -> new EnumMap<>(LogColumn.class))
                          .computeIfAbsent(column, each -> theirs);
                  if (!own.length().equals(theirs.length())) {
                    problems.add(
                        Problem.of(ProblemCode.CONTRADICTION, "copies", own.where())
                            .with("own", own.text())
                            .with("other", theirs.text())
                            .with("where", theirs.where().toString())
                            .found(own.text())
                            .remedyOf("clear-wrong"));
                  }
                }));
  }

  private void hewn(Table table, Row row, String tag) {
    Map<LogColumn, Box> boxes = new EnumMap<>(LogColumn.class);
    for (LogColumn column : LogColumn.HEWN) {
      length(table, row, column)
          .ifPresent(
              length -> {
                int at = columns.get(column).left();
                boxes.put(column, new Box(length, row.cell(at).text(), table.at(row, at)));
              });
    }
    if (!boxes.isEmpty()) {
      yard.put(tag, boxes);
    }
    String[] before = text(row, LogColumn.HEWN_BEFORE).split(";", -1);
    if (before.length == LogColumn.HEWN.size()) {
      yardBefore.put(
          tag,
          Measures.hewn(fields.plain(before[0]), fields.plain(before[1]), fields.plain(before[2])));
    }
  }

  private void read(Table table, Row row, Optional<Row> heading) {
    String tag = text(row, LogColumn.TAGS);
    if (tag.isEmpty()) {
      return;
    }
    Optional<Length> length = length(table, row, LogColumn.LENGTHS);
    List<Station> stations = stations(text(row, LogColumn.STATIONS));
    if (length.isEmpty() || stations.size() < 2 || !tags.add(tag)) {
      CellRef where = table.at(row, columns.get(LogColumn.TAGS).left());
      problems.add(
          Problem.of(ProblemCode.CELL_LOST, "log", where).with("log", tag).found(tag).about(tag));
      return;
    }
    logs.add(log(row, tag, length.get(), stations, heading));
    place(table, row, tag);
    hewn(table, row, tag);
    Cell box = row.cell(columns.get(LogColumn.LOST).left());
    CellRef where = table.at(row, columns.get(LogColumn.LOST).left());
    if (fields.ticked(box, where)) {
      lost.put(tag, where);
    }
  }

  private Log log(
      Row row, String tag, Length length, List<Station> stations, Optional<Row> heading) {
    return new Log(
        tag,
        length,
        new DiameterProfile(stations),
        new Log.Sources(
            source(row, LogColumn.BUTT_SOURCES),
            source(row, LogColumn.MID_SOURCES),
            source(row, LogColumn.TIP_SOURCES)),
        new Log.Traits(
            text(row, LogColumn.SPECIES),
            constant(Log.Bark.class, text(row, LogColumn.BARKS), Log.Bark.UNSTATED),
            reader
                .read(text(row, LogColumn.SWEEPS))
                .map(LengthReader.Reading::length)
                .orElse(Length.ZERO),
            constant(Log.Keep.class, text(row, LogColumn.KEEPS), Log.Keep.ANY),
            !text(row, LogColumn.SKIPS).isEmpty(),
            text(row, LogColumn.REMARKS)),
        new Log.Wish(text(row, LogColumn.WISHED_WALLS), number(row, LogColumn.WISHED_ROUNDS)),
        new CellRef(
            text(row, LogColumn.FILES),
            text(row, LogColumn.SHEETS),
            number(row, LogColumn.ROWS).orElse(row.number()),
            0),
        heading.map(head -> extras(row, head)).orElse(Map.of()));
  }

  private Map<String, String> extras(Row row, Row heading) {
    Map<String, String> read = new LinkedHashMap<>();
    for (Range extra : extras) {
      String value = row.cell(extra.left()).text();
      if (!value.isEmpty()) {
        read.put(heading.cell(extra.left()).text(), value);
      }
    }
    return read;
  }

  private void place(Table table, Row row, String tag) {
    OptionalInt round = number(row, LogColumn.ROUNDS);
    String wall = text(row, LogColumn.WALLS);
    if (round.isPresent() && !wall.isEmpty()) {
      Length cut = length(table, row, LogColumn.OFF_BUTTS).orElse(Length.ZERO);
      Place place = new Place(round.getAsInt(), wall);
      String side = text(row, LogColumn.SIDES);
      if (side.isEmpty()) {
        plan.put(place, new Held(tag, cut));
      } else {
        Length trimmed = length(table, row, LogColumn.SIDE_LENGTHS).orElse(Length.ZERO);
        boolean buttOut = text(row, LogColumn.SIDE_BUTTS).equals("corner");
        beside(place, side.equals("left"), HeldLog.beside(tag, cut, trimmed, buttOut));
      }
    }
  }

  /** Two short logs fill their place once both rows are read. */
  private void beside(Place place, boolean left, HeldLog log) {
    HeldLog other = shortLogs.put(place.side(left), log);
    HeldLog across = shortLogs.get(place.side(!left));
    if (other == null && across != null) {
      plan.put(place, new Held(left ? List.of(log, across) : List.of(across, log)));
    }
  }

  private List<Station> stations(String text) {
    List<Station> stations = new ArrayList<>();
    for (String each : text.split(";")) {
      String[] halves = each.strip().split("=");
      Optional<Length> at = reader.read(halves[0]).map(LengthReader.Reading::length);
      Optional<Length> diameter =
          halves.length == 2
              ? reader.read(halves[1]).map(LengthReader.Reading::length)
              : Optional.empty();
      if (at.isPresent() && diameter.isPresent()) {
        stations.add(new Station(at.get(), diameter.get()));
      }
    }
    return stations;
  }

  private String text(Row row, LogColumn column) {
    Range range = columns.get(column);
    return range == null ? "" : row.cell(range.left()).text();
  }

  private Optional<Length> length(Table table, Row row, LogColumn column) {
    Range range = columns.get(column);
    return range == null
        ? Optional.empty()
        : fields.length(row.cell(range.left()), table.at(row, range.left()));
  }

  private OptionalInt number(Row row, LogColumn column) {
    String text = text(row, column);
    return text.matches("\\d{1,9}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
  }

  private Log.Source source(Row row, LogColumn column) {
    return constant(Log.Source.class, text(row, column), Log.Source.MEASURED);
  }

  /** Returns the constant of a word; another where there is none. */
  static <T extends Enum<T>> T constant(Class<T> type, String word, T other) {
    for (T each : type.getEnumConstants()) {
      if (each.name().equalsIgnoreCase(word.strip())) {
        return each;
      }
    }
    return other;
  }
}
