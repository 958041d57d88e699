package roundbook.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.Building;
import roundbook.job.GapSpot;
import roundbook.job.Measures;
import roundbook.job.Wall;
import roundbook.page.CellNames;
import roundbook.page.TypedBox;
import roundbook.table.NamedBook;
import roundbook.units.Length;

/** Reads what was typed on the rounds' pages, and what was recorded before. */
final class TypedFields {
  private final NamedBook book;
  private final Fields fields;
  private final Building building;
  private final Map<Place, Held> plan;
  private final int layout;
  private final int rounds;

  TypedFields(NamedBook book, Fields fields, Building building, Map<Place, Held> plan, int layout) {
    this.book = book;
    this.fields = fields;
    this.building = building;
    this.plan = plan;
    this.layout = layout;
    this.rounds = plan.keySet().stream().mapToInt(Place::round).max().orElse(0);
  }

  /** Returns all parts of a round's places that have a log of their own. */
  private List<Place> parts(int round) {
    return building.walls().stream()
        .flatMap(wall -> SiteReport.parts(plan, new Place(round, wall.name())).stream())
        .toList();
  }

  /** Returns the boxes of the rounds' pages that are gone, the first of each round. */
  Map<Integer, String> missing() {
    Map<Integer, String> missing = new TreeMap<>();
    for (int round = 1; round <= rounds; round++) {
      for (String name : names(round)) {
        if (book.cell(name).isEmpty()) {
          missing.putIfAbsent(round, name);
        }
      }
    }
    return missing;
  }

  /** Returns the names of all boxes of a round's page. */
  private List<String> names(int round) {
    List<String> names = new ArrayList<>();
    for (TypedBox.Per per : TypedBox.Per.values()) {
      List<String> each =
          switch (per) {
            case LOG -> parts(round).stream().map(Place::named).toList();
            case WALL -> building.walls().stream().map(Wall::name).toList();
            case CORNER -> building.corners();
            case ROUND -> List.of("");
            case STATION -> spots(round).stream().map(GapSpot::named).toList();
          };
      List<TypedBox> boxes = per.boxes().stream().filter(box -> box.since() <= layout).toList();
      each.forEach(where -> boxes.forEach(box -> names.add(box.named(round, where))));
    }
    return names;
  }

  /** Returns the stations of the joints over a round. */
  private List<GapSpot> spots(int round) {
    return round == rounds
        ? List.of()
        : building.walls().stream()
            .flatMap(
                wall ->
                    Stream.of(GapSpot.Station.values())
                        .map(at -> new GapSpot(round, wall.name(), at)))
            .toList();
  }

  /** Returns the gaps that were measured. */
  Map<GapSpot, Length> gaps() {
    Map<GapSpot, Length> gaps = new TreeMap<>();
    for (int round = 1; round <= rounds; round++) {
      for (GapSpot spot : spots(round)) {
        fields
            .length(TypedBox.GAP.named(spot.below(), spot.named()))
            .ifPresent(gap -> gaps.put(spot, gap));
      }
    }
    return gaps;
  }

  /** Returns what is ticked cut; says what cannot be. */
  CutTicks ticks(AsBuilt recorded) {
    return CutTicks.read(fields, building, rounds, recorded);
  }

  /** Returns what was measured, by place; only where something was. */
  Map<Place, Measures> measures() {
    Map<Place, Measures> all = new TreeMap<>();
    for (int round = 1; round <= rounds; round++) {
      for (Wall wall : building.walls()) {
        put(all, new Place(round, wall.name()));
      }
      parts(round).forEach(part -> put(all, part));
    }
    return all;
  }

  /** A short log beside an opening has diameters of its own; the marks are those of the place. */
  private void put(Map<Place, Measures> all, Place place) {
    int round = place.round();
    String name = place.named();
    boolean whole = place.side() == PlacePart.WHOLE;
    Measures measures =
        new Measures(
            fields.length(TypedBox.MEASURED_BUTT.named(round, name)),
            fields.length(TypedBox.MEASURED.named(round, name)),
            fields.length(TypedBox.MEASURED_TIP.named(round, name)),
            whole ? fields.length(TypedBox.LOWER_CUT.named(round, name)) : Optional.empty(),
            whole ? fields.length(TypedBox.UPPER_CUT.named(round, name)) : Optional.empty());
    if (!measures.isEmpty()) {
      all.put(place, measures);
    }
  }

  /** Returns the logs used instead, as they were typed. */
  Map<Place, String> used() {
    Map<Place, String> used = new TreeMap<>();
    for (int round = 1; round <= rounds; round++) {
      for (Place part : parts(round)) {
        String tag = fields.text(TypedBox.USED.named(round, part.named()));
        if (!tag.isEmpty()) {
          used.put(part, tag);
        }
      }
    }
    return used;
  }

  /** Returns the heights that were typed into the boxes of corners. */
  Map<Corner, Length> readings(TypedBox box) {
    Map<Corner, Length> readings = new TreeMap<>();
    for (int round = 1; round <= rounds; round++) {
      for (String corner : building.corners()) {
        Corner here = new Corner(round, corner);
        fields.length(box.named(round, corner)).ifPresent(read -> readings.put(here, read));
      }
    }
    return readings;
  }

  /** Returns what the sheet As built holds: what was built when the workbook was written. */
  AsBuilt recorded() {
    List<CutSize> cut = new ArrayList<>();
    for (int round = 1; book.has(CellNames.built("size", round)); round++) {
      cut.add(
          new CutSize(
              fields.length(CellNames.built("size", round)).orElse(Length.ZERO),
              fields.length(CellNames.built("gap", round)).orElse(Length.ZERO),
              fields.length(CellNames.built("correction", round)).orElse(Length.ZERO),
              openBefore(round)));
    }
    Map<Place, Held> held = new TreeMap<>();
    Map<Place, Measures> measures = new TreeMap<>();
    plan.forEach(
        (place, log) -> {
          List<Place> parts = SiteReport.parts(plan, place);
          if (book.has(CellNames.built("log", place.round(), parts.get(0).named()))) {
            held.put(place, log);
            measures.put(place, recorded(place));
            parts.forEach(part -> measures.put(part, recorded(part)));
          }
        });
    return AsBuilt.NOTHING
        .withCut(cut)
        .withPlaces(held, measures)
        .withReadings(recordedReadings("readings"), recordedReadings("first_readings"))
        .withLost(lostBefore());
  }

  /** Returns the walls whose logs were not cut in a round of which some were. */
  private Set<String> openBefore(int round) {
    String name = CellNames.built("walls", round);
    if (!book.has(name)) {
      return Set.of();
    }
    List<String> cut = List.of(fields.text(name).split(CellNames.BETWEEN_TAGS));
    Set<String> open = new TreeSet<>();
    building.walls().stream()
        .map(Wall::name)
        .filter(wall -> !cut.contains(wall))
        .forEach(open::add);
    return open;
  }

  /** Returns the logs that were lost when the workbook was made. */
  private Set<String> lostBefore() {
    String tags = fields.text(CellNames.LOST_BEFORE);
    return tags.isEmpty() ? Set.of() : new TreeSet<>(List.of(tags.split(CellNames.BETWEEN_TAGS)));
  }

  private Map<Corner, Length> recordedReadings(String what) {
    Map<Corner, Length> readings = new TreeMap<>();
    for (int each = 1; book.has(CellNames.built(what, each)); each++) {
      int round = each;
      for (String reading : fields.text(CellNames.built(what, round)).split(";")) {
        String[] halves = reading.strip().split("=");
        if (halves.length == 2) {
          Corner corner = new Corner(round, halves[0]);
          fields.plain(halves[1]).ifPresent(read -> readings.put(corner, read));
        }
      }
    }
    return readings;
  }

  private Measures recorded(Place place) {
    return new Measures(
        recorded("butt", place),
        recorded("mid", place),
        recorded("tip", place),
        recorded("lower", place),
        recorded("upper", place));
  }

  private Optional<Length> recorded(String what, Place place) {
    return fields.length(CellNames.built(what, place.round(), place.named()));
  }
}
