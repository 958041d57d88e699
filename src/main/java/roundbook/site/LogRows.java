package roundbook.site;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.HeldLog;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.page.CellNames;
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
  private final NamedBook book;
  private final Fields fields;
  private final LengthReader reader;
  private final Problems problems;
  private final Map<String, Range> columns = new HashMap<>();
  private final List<Log> logs = new ArrayList<>();
  private final Map<Place, Held> plan = new TreeMap<>();
  private final Map<Place, HeldLog> shortLogs = new TreeMap<>();
  private final Map<String, CellRef> lost = new TreeMap<>();
  private final Set<String> tags = new TreeSet<>();

  LogRows(NamedBook book, Fields fields, BuildRules printed, Problems problems) {
    this.book = book;
    this.fields = fields;
    this.reader = new LengthReader(printed.unit(), false);
    this.problems = problems;
  }

  /** Reads every row; false when the list is gone. */
  boolean read() {
    String start = CellNames.log("");
    for (String name : book.beginning(start)) {
      book.range(name).ifPresent(range -> columns.put(name.substring(start.length()), range));
    }
    Range tagged = columns.get("tags");
    Optional<Table> table = Optional.ofNullable(tagged).flatMap(range -> book.sheet(range.sheet()));
    if (table.isEmpty() || !columns.keySet().containsAll(Set.of("lengths", "stations", "lost"))) {
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

  private void read(Table table, Row row, Optional<Row> heading) {
    String tag = text(row, "tags");
    if (tag.isEmpty()) {
      return;
    }
    Optional<Length> length = length(table, row, "lengths");
    List<Station> stations = stations(text(row, "stations"));
    if (length.isEmpty() || stations.size() < 2 || !tags.add(tag)) {
      CellRef where = table.at(row, columns.get("tags").left());
      problems.add(
          Problem.of(ProblemCode.CELL_LOST, "log", where).with("log", tag).found(tag).about(tag));
      return;
    }
    logs.add(log(row, tag, length.get(), stations, heading));
    place(table, row, tag);
    Cell box = row.cell(columns.get("lost").left());
    CellRef where = table.at(row, columns.get("lost").left());
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
            source(row, "butt_sources"), source(row, "mid_sources"), source(row, "tip_sources")),
        new Log.Traits(
            text(row, "species"),
            constant(Log.Bark.class, text(row, "barks"), Log.Bark.UNSTATED),
            reader.read(text(row, "sweeps")).map(LengthReader.Reading::length).orElse(Length.ZERO),
            constant(Log.Keep.class, text(row, "keeps"), Log.Keep.ANY),
            !text(row, "skips").isEmpty(),
            text(row, "remarks")),
        new Log.Wish(text(row, "wished_walls"), number(row, "wished_rounds")),
        new CellRef(
            text(row, "files"), text(row, "sheets"), number(row, "rows").orElse(row.number()), 0),
        heading.map(head -> extras(row, head)).orElse(Map.of()));
  }

  private Map<String, String> extras(Row row, Row heading) {
    Map<String, String> extras = new LinkedHashMap<>();
    for (int extra = 1; columns.containsKey("extra_" + extra); extra++) {
      String value = text(row, "extra_" + extra);
      if (!value.isEmpty()) {
        extras.put(text(heading, "extra_" + extra), value);
      }
    }
    return extras;
  }

  private void place(Table table, Row row, String tag) {
    OptionalInt round = number(row, "rounds");
    String wall = text(row, "walls");
    if (round.isPresent() && !wall.isEmpty()) {
      Length cut = length(table, row, "off_butts").orElse(Length.ZERO);
      Place place = new Place(round.getAsInt(), wall);
      String side = text(row, "sides");
      if (side.isEmpty()) {
        plan.put(place, new Held(tag, cut));
      } else {
        Length trimmed = length(table, row, "side_lengths").orElse(Length.ZERO);
        boolean buttOut = text(row, "side_butts").equals("corner");
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

  private String text(Row row, String column) {
    Range range = columns.get(column);
    return range == null ? "" : row.cell(range.left()).text();
  }

  private Optional<Length> length(Table table, Row row, String column) {
    Range range = columns.get(column);
    return range == null
        ? Optional.empty()
        : fields.length(row.cell(range.left()), table.at(row, range.left()));
  }

  private OptionalInt number(Row row, String column) {
    String text = text(row, column);
    return text.matches("\\d{1,9}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
  }

  private Log.Source source(Row row, String column) {
    return constant(Log.Source.class, text(row, column), Log.Source.MEASURED);
  }

  private static <T extends Enum<T>> T constant(Class<T> type, String word, T other) {
    for (T each : type.getEnumConstants()) {
      if (each.name().equalsIgnoreCase(word.strip())) {
        return each;
      }
    }
    return other;
  }
}
