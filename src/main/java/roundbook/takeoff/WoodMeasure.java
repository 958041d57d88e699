package roundbook.takeoff;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import roundbook.job.Saddle;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.PieceWood.Weights;
import roundbook.units.Length;
import roundbook.wood.CornerNeck;
import roundbook.wood.PlaneCut;
import roundbook.wood.RoundProfile;
import roundbook.wood.SawnLog;
import roundbook.wood.Species;

/** Measures the wood of every placed log. */
final class WoodMeasure {
  private static final double CUBIC_FOOT = 1728;

  private final Stack stack;
  private final List<OpeningCut> openings;
  private final double service;

  WoodMeasure(Stack stack, List<OpeningCut> openings, double service) {
    this.stack = stack;
    this.openings = openings;
    this.service = service;
  }

  List<PieceWood> pieces() {
    return stack.courses().stream()
        .flatMap(course -> course.places().stream())
        .flatMap(this::wood)
        .toList();
  }

  private Stream<PieceWood> wood(FilledPlace place) {
    return place.isShared()
        ? place.logs().stream().map(log -> shortLog(place, log))
        : Stream.of(whole(place));
  }

  /** Returns the wood of a short log beside an opening, which has a neck at its corner only. */
  private PieceWood shortLog(FilledPlace place, PlacedLog log) {
    SawnLog sawn = sawn(log);
    boolean atLeft = log.isLeft();
    boolean buttOut = log.buttOut();
    Wall crossing =
        atLeft ? stack.building().after(log.wall()) : stack.building().before(log.wall());
    double neck = crossing.thickness().plus(stack.rules().overhang()).inches();
    double length = sawn.profile().length();
    double diameter = sawn.profile().at(buttOut ? neck / 2 : length - neck / 2);
    boolean whole = log.wall().laidFirst();
    double from = whole || !buttOut ? 0 : neck;
    double to = whole || buttOut ? length : length - neck;
    double bed = isFlat(place) ? bedCut(sawn, from, to) : 0;
    Length end = atLeft ? log.to() : log.fromLeft();
    Predicate<Length> here = x -> x.isLessThan(end) == atLeft;
    double others = openingsCut(place, here) + saddlesCut(place, here);
    return piece(log, sawn.volume() - endCut(log, !atLeft, neck, diameter) - bed - others);
  }

  private SawnLog sawn(PlacedLog log) {
    return new SawnLog(RoundProfile.inchesOf(log.piece()), log.wall().thickness().inches());
  }

  private PieceWood whole(FilledPlace place) {
    SawnLog sawn = sawn(place.first());
    double ends = endsCut(place, sawn.profile());
    double saddles = saddlesCut(place, left -> true);
    double cut = ends + saddles + bedCut(place, sawn) + openingsCut(place, left -> true);
    return piece(place.first(), sawn.volume() - cut);
  }

  private PieceWood piece(PlacedLog log, double finished) {
    SawnLog sawn = sawn(log);
    Species.Match match = Species.find(log.piece().log().traits().species());
    return new PieceWood(
        log,
        match,
        sawn.roundVolume(),
        sawn.volume(),
        finished,
        weights(match.species(), sawn.volume(), finished),
        WallProfiles.inches(sawn.balancePoint()));
  }

  private Weights weights(Species species, double sawn, double finished) {
    Species.Spread spread = species.greenSpread();
    double feet = sawn / CUBIC_FOOT;
    return new Weights(
        feet * species.greenPounds(),
        feet * spread.least(),
        feet * spread.most(),
        finished / CUBIC_FOOT * species.poundsOfGreenFoot(service));
  }

  private boolean isFlat(FilledPlace place) {
    return Bed.isFlat(stack.rules(), place.round(), place.wall());
  }

  private double endsCut(FilledPlace place, RoundProfile profile) {
    double overhang = stack.rules().overhang().inches();
    double atButt = place.crossingAtButt(stack.building()).thickness().inches() + overhang;
    double atTip = place.crossingAtTip(stack.building()).thickness().inches() + overhang;
    PlacedLog log = place.first();
    double tip = profile.length() - atTip / 2;
    boolean start = place.buttAtStart();
    return endCut(log, start, atButt, profile.at(atButt / 2))
        + endCut(log, !start, atTip, profile.at(tip));
  }

  /**
   * Returns what one notch takes. The first log of a flat bed has no lower notch; the last
   * second-laid log has no upper one.
   */
  private double endCut(PlacedLog log, boolean atStart, double length, double diameter) {
    Wall wall = log.wall();
    Notch notch = stack.courses().get(log.round() - 1).notch();
    double slope = stack.rules().slope().ratio();
    double thickness = wall.thickness().inches();
    double across = stack.building().saddle(wall, atStart).isPresent() ? 0 : slope;
    boolean drains = stack.building().drains(wall, atStart, stack.rules());
    double past = stack.rules().overhang().inches();
    double shoulder = drains ? slope * (length - past) : 0;
    double along = drains ? -slope : slope;
    double high = notch.neckHeight().inches() + shoulder;
    CornerNeck neck = new CornerNeck(high, thickness, length, across, along);
    double half = length * SawnLog.section(diameter, thickness) / 2;
    double under = thickness * length * (notch.lower().inches() + shoulder + along * length / 2);
    boolean noLower = Bed.isFlat(stack.rules(), log.round(), wall) && wall.laidFirst();
    boolean noUpper = log.round() == stack.courses().size() && !wall.laidFirst();
    double lowerCut = noLower ? 0 : half - under;
    double upperCut = noUpper ? 0 : neck.removedFrom(diameter) - (half - under);
    return lowerCut + upperCut;
  }

  /**
   * Returns what saddles take of a log where they begin at some distances from its left end: the
   * top falls across it as at a corner, the underside is level.
   */
  private double saddlesCut(FilledPlace place, Predicate<Length> where) {
    double sum = 0;
    for (Saddle saddle : stack.building().saddles(place.wall())) {
      Length left = saddle.from().plus(stack.rules().overhang());
      if (where.test(left)) {
        sum += saddleCut(place, saddle, left.plus(saddle.partition().thickness().dividedBy(2)));
      }
    }
    return sum;
  }

  private double saddleCut(FilledPlace place, Saddle saddle, Length middle) {
    Wall wall = place.wall();
    Notch notch = stack.courses().get(place.round() - 1).notch();
    double thickness = wall.thickness().inches();
    double length = saddle.partition().thickness().inches();
    double slope = stack.rules().slope().ratio();
    double across = saddle.isLevel() ? 0 : slope;
    CornerNeck neck = new CornerNeck(notch.neckHeight().inches(), thickness, length, across, 0);
    double diameter = place.fromLeft(middle).inches();
    double half = length * SawnLog.section(diameter, thickness) / 2;
    double under = half - thickness * length * notch.lower().inches();
    boolean noUpper = place.round() == stack.courses().size() && !wall.laidFirst();
    return (isFlat(place) ? 0 : under) + (noUpper ? 0 : neck.removedFrom(diameter) - under);
  }

  /** Returns what the flat bed takes: all along, or between the shoulders. */
  private double bedCut(FilledPlace place, SawnLog sawn) {
    if (!isFlat(place)) {
      return 0;
    }
    if (place.wall().laidFirst()) {
      return bedCut(sawn, 0, sawn.profile().length());
    }
    Length overhang = stack.rules().overhang();
    double near = place.nearShoulder(stack.building(), overhang).inches();
    return bedCut(sawn, near, place.farShoulder(stack.building(), overhang).inches());
  }

  /** Returns what a flat bed takes between two distances from the butt. */
  private double bedCut(SawnLog sawn, double from, double to) {
    SawnLog part = new SawnLog(sawn.profile().between(from, to), sawn.thickness());
    return new PlaneCut(part, bedReach()).volume();
  }

  /**
   * Returns what openings take of a log where they begin at some distances from its left end; one
   * beside which short logs lie takes nothing of them.
   */
  private double openingsCut(FilledPlace place, Predicate<Length> where) {
    double sum = 0;
    for (OpeningCut opening : openings) {
      Length left = opening.opening().left().plus(stack.rules().overhang());
      for (LogCut cut : opening.cut()) {
        boolean open = cut.through() && place.isShared();
        if (cut.log().equals(place) && where.test(left) && !open) {
          sum += openingCut(opening, cut);
        }
      }
    }
    return sum;
  }

  private double openingCut(OpeningCut opening, LogCut cut) {
    double from = opening.opening().left().plus(stack.rules().overhang()).inches();
    RoundProfile part =
        WallProfiles.left(cut.log()).between(from, from + opening.opening().width().inches());
    SawnLog sawn = new SawnLog(part, cut.log().wall().thickness().inches());
    double centre = stack.centre(cut.log()).inches();
    double over = new PlaneCut(sawn, opening.opening().head().inches() - centre).volume();
    double under = new PlaneCut(sawn, centre - opening.opening().sill().inches()).volume();
    double bed = isFlat(cut.log()) ? new PlaneCut(sawn, bedReach()).volume() : 0;
    return sawn.volume() - over - Math.max(under, bed);
  }

  private double bedReach() {
    return stack.courses().get(0).notch().lower().inches();
  }
}
