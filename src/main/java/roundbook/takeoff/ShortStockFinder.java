package roundbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.notch.Notch;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut.Sides;
import roundbook.takeoff.ShortStock.Part;
import roundbook.units.Length;
import roundbook.wood.RoundProfile;

/** Finds short logs without a place for the pieces beside openings. */
final class ShortStockFinder {
  private final Job job;
  private final Stack stack;
  private final List<Log> free;
  private final Set<String> taken = new HashSet<>();

  ShortStockFinder(Job job, Stack stack) {
    this.job = job;
    this.stack = stack;
    Set<String> placed =
        stack.courses().stream()
            .flatMap(course -> course.logs().stream())
            .map(log -> log.piece().log().tag())
            .collect(Collectors.toSet());
    this.free =
        job.logs().stream()
            .filter(log -> !placed.contains(log.tag()) && !log.traits().skip())
            .sorted(Comparator.comparing(Log::length).thenComparing(Log::tag))
            .toList();
  }

  /** A side of an opening: the left as seen from outside, or the right. */
  private record Place(PlacedLog log, Length length, boolean left) {
    /** Returns where it begins, from the left trimmed end. */
    Length from() {
      return left ? Length.ZERO : log.piece().trimmed().minus(length);
    }
  }

  /** Returns what short stock can stand where, the shortest log that serves in each place. */
  List<ShortStock> find(List<OpeningCut> openings) {
    List<ShortStock> found = new ArrayList<>();
    for (OpeningCut opening : openings) {
      if (opening.opening().shortLogs()) {
        opening.of(LogCut.Kind.THROUGH).forEach(cut -> of(opening, cut).ifPresent(found::add));
      }
    }
    return found;
  }

  private Optional<ShortStock> of(OpeningCut opening, LogCut cut) {
    Sides sides = cut.sides().orElseThrow();
    boolean once = !taken.contains(cut.log().piece().log().tag());
    if (sides.tooShort() || !sides.atCorners() || !once) {
      return Optional.empty();
    }
    Optional<Part> left = part(new Place(cut.log(), sides.left().length(), true), "");
    Optional<Part> right =
        left.flatMap(
            part -> part(new Place(cut.log(), sides.right().length(), false), part.log().tag()));
    if (right.isEmpty()) {
      return Optional.empty();
    }
    taken.addAll(List.of(left.get().log().tag(), right.get().log().tag()));
    taken.add(cut.log().piece().log().tag());
    return Optional.of(new ShortStock(opening, cut.log(), left.get(), right.get()));
  }

  private Optional<Part> part(Place place, String other) {
    return free.stream()
        .filter(log -> !taken.contains(log.tag()) && !log.tag().equals(other))
        .filter(log -> log.length().isLessThan(whole(place.log())))
        .flatMap(log -> Stream.of(true, false).map(out -> new Part(log, place.length(), out)))
        .filter(part -> serves(part, place))
        .findFirst();
  }

  /** A log long enough for the whole wall is no short stock. */
  private Length whole(PlacedLog log) {
    Length allowance = job.rules().length(Setting.SQUARING_ALLOWANCE);
    return log.piece().trimmed().plus(allowance.times(2));
  }

  private boolean serves(Part part, Place place) {
    Length allowance = job.rules().length(Setting.SQUARING_ALLOWANCE);
    if (part.log().length().isLessThan(part.length().plus(allowance.times(2)))) {
      return false;
    }
    Piece piece = new Piece(part.log(), allowance, part.length());
    RoundProfile profile = RoundProfile.inchesOf(piece);
    RoundProfile fromLeft = part.buttOut() == place.left() ? profile : profile.reversed();
    return showsFaces(profile, place) && holds(piece, part, place) && evenGaps(fromLeft, place);
  }

  private static boolean showsFaces(RoundProfile profile, Place place) {
    double thickness = place.log().wall().thickness().inches();
    return profile.stations().stream().allMatch(each -> each.diameter() > thickness);
  }

  private boolean holds(Piece piece, Part part, Place place) {
    Wall wall = place.log().wall();
    Wall crossing = place.left() ? job.building().after(wall) : job.building().before(wall);
    Length neck = crossing.thickness().plus(job.rules().overhang());
    Length inner = part.buttOut() ? neck : piece.trimmed().minus(neck);
    Length outer = part.buttOut() ? Length.ZERO : piece.trimmed();
    Notch notch = stack.courses().get(place.log().round() - 1).notch();
    NeckFit.Corner corner =
        new NeckFit.Corner(
            wall.thickness(), crossing.thickness(), job.rules().overhang(), Length.ZERO);
    Length thinnest = piece.at(inner).least(piece.at(outer));
    return !thinnest.isLessThan(new NeckFit(notch, corner, thinnest).leastForBearing());
  }

  private boolean evenGaps(RoundProfile part, Place place) {
    return stack.joints(place.log().wall()).stream()
        .filter(joint -> joint.lower().equals(place.log()) || joint.upper().equals(place.log()))
        .allMatch(joint -> isEven(joint, part, place));
  }

  /** The part's gap to its planned neighbour lies within the limits at both its ends. */
  private boolean isEven(Joint joint, RoundProfile part, Place place) {
    PlacedLog other = joint.lower().equals(place.log()) ? joint.upper() : joint.lower();
    double from = place.from().inches();
    Length inner = place.left() ? joint.leftFace() : joint.rightFace();
    double cut = place.left() ? part.length() : 0;
    return Stream.of(inner.inches() - from, cut)
        .map(at -> (Along.left(other).at(from + at) + part.at(at)) / 2)
        .map(reach -> Along.inches(joint.spacing().inches() - reach))
        .allMatch(gap -> Joint.flag(gap, job.rules()) == Joint.Flag.NONE);
  }
}
