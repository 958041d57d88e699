package roundbook.replan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Log;
import roundbook.job.Log.Keep;
import roundbook.job.Wall;
import roundbook.plan.Plan;
import roundbook.replan.Change.Why;
import roundbook.rounds.Fit;
import roundbook.rounds.KeepingChooser.Move;
import roundbook.site.SiteReport;

/** Finds the reason of every place whose log or cut is another than in the revision before. */
final class Reasons {
  private final SiteReport site;
  private final Plan plan;
  private final AsBuilt built;
  private final Map<Place, Held> now;
  private final List<Move> moves;
  private final boolean dealtAnew;

  /**
   * Begins with a plan.
   *
   * @param moves the changes that pay
   * @param dealtAnew whether stems were cut anew, and all that is not built dealt with them
   */
  Reasons(SiteReport site, Plan plan, List<Move> moves, boolean dealtAnew) {
    this.site = site;
    this.plan = plan;
    this.built = plan.job().built();
    this.now = Replanner.places(plan);
    this.moves = moves;
    this.dealtAnew = dealtAnew;
  }

  List<Change> all() {
    TreeSet<Place> places = new TreeSet<>(site.plan().keySet());
    places.addAll(now.keySet());
    List<Change> changes = new ArrayList<>();
    for (Place place : places) {
      Optional<Held> before = Optional.ofNullable(site.plan().get(place));
      Optional<Held> after = Optional.ofNullable(now.get(place));
      if (!before.equals(after)) {
        changes.add(change(place, before, after));
      }
    }
    return changes;
  }

  private Change change(Place place, Optional<Held> before, Optional<Held> after) {
    String was = before.map(Held::words).orElse("");
    String is = after.map(Held::words).orElse("");
    if (after.isEmpty()) {
      return new Change(place, was, is, Why.DROPPED, "");
    }
    if (before.isEmpty()) {
      return new Change(place, was, is, Why.NEW_ROUND, "");
    }
    if (site.uses(place)) {
      return new Change(place, was, is, Why.USED_HERE, "");
    }
    return gone(place, before.get(), is)
        .or(() -> anew(place, was, is))
        .or(() -> kept(place, was, is))
        .or(() -> fillsHole(place, was, is))
        .or(() -> paying(place, was, is))
        .orElseGet(() -> new Change(place, was, is, Why.MAKES_ROOM, movedTo(was)));
  }

  private Optional<Change> gone(Place place, Held before, String is) {
    String was = before.words();
    if (was.equals(is)) {
      return Optional.empty();
    }
    Optional<String> lost = before.tags().stream().filter(built.lost()::contains).findFirst();
    if (lost.isPresent()) {
      return Optional.of(new Change(place, was, is, Why.LOST, lost.get()));
    }
    Optional<Place> elsewhere =
        before.tags().stream()
            .flatMap(tag -> built.placeOf(tag).stream())
            .filter(at -> !at.equals(place) && !built.isMovable(at))
            .findFirst();
    if (elsewhere.isPresent()) {
      return Optional.of(new Change(place, was, is, Why.USED_ELSEWHERE, named(elsewhere.get())));
    }
    Optional<Log> log = plan.job().log(was);
    if (dealtAnew) {
      return Optional.empty();
    }
    Wall wall = plan.job().building().wall(place.wall()).orElseThrow();
    boolean serves = log.filter(each -> new Fit(plan.job()).serves(each, wall)).isPresent();
    return serves ? Optional.empty() : Optional.of(new Change(place, was, is, Why.UNFIT, was));
  }

  private Optional<Change> anew(Place place, String was, String is) {
    return dealtAnew
        ? Optional.of(new Change(place, was, is, Why.DEALT_ANEW, ""))
        : Optional.empty();
  }

  /** Says that a log was put where such logs are kept for, in the stead of one that is not. */
  private Optional<Change> kept(Place place, String was, String is) {
    Keep keep = keep(is);
    boolean wanted = keep == Keep.SILL || keep == Keep.PLATE || keep == Keep.HEADER;
    return wanted && keep(was) != keep
        ? Optional.of(new Change(place, was, is, Why.KEPT, is))
        : Optional.empty();
  }

  private Keep keep(String tag) {
    return plan.job().log(tag).map(log -> log.traits().keep()).orElse(Keep.ANY);
  }

  /** Says that a log went where another one is gone, whatever that did to the gaps besides. */
  private Optional<Change> fillsHole(Place place, String was, String is) {
    return now.entrySet().stream()
        .filter(each -> each.getValue().words().equals(was) && !each.getKey().equals(place))
        .map(Map.Entry::getKey)
        .filter(
            other ->
                Optional.ofNullable(site.plan().get(other))
                    .flatMap(before -> gone(other, before, was))
                    .isPresent())
        .findFirst()
        .map(other -> new Change(place, was, is, Why.MAKES_ROOM, named(other)));
  }

  private Optional<Change> paying(Place place, String was, String is) {
    boolean moved =
        moves.stream().anyMatch(move -> move.place().equals(place) || move.other().equals(place));
    return moved ? Optional.of(new Change(place, was, is, Why.PAYS, "")) : Optional.empty();
  }

  private String movedTo(String tag) {
    return now.entrySet().stream()
        .filter(each -> each.getValue().words().equals(tag))
        .map(each -> named(each.getKey()))
        .findFirst()
        .orElse("");
  }

  private static String named(Place place) {
    return place.round() + " " + place.wall();
  }
}
